/** The import rule of DEVELOPERS.md, read from its table and held against every import in the code. */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { parseSync } from 'oxc-parser';
import { describe, expect, it } from 'vitest';

const guide = readFileSync('DEVELOPERS.md', 'utf8');
const [, afterHeading = ''] = guide.split('## Who may import whom');
const [table = ''] = afterHeading.split('\n## ');

/** Folder or file -> what it may import: own paths, packages, or a prefix that ends with ':' such as `node:`. */
const rules = new Map(
  [...table.matchAll(/^\| ([\w./-]+) +\| ([^|]+?) +\|$/gmu)]
    .filter(([, folder]) => !/^-+$/u.test(folder ?? '') && folder !== 'folder')
    .map(([, folder = '', allowed = '']) => [folder, allowed.split(',').map((word) => word.trim())] as const),
);

const filesBelow = (folder: string): string[] =>
  readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    if (statSync(path).isDirectory()) return filesBelow(path);
    return path.endsWith('.ts') ? [path] : [];
  });

/** Static and dynamic imports and re-exports, types too. */
function importsOf(file: string): string[] {
  const { module, errors } = parseSync(file, readFileSync(file, 'utf8'));
  expect(errors, file).toEqual([]);
  return [
    ...module.staticImports.map((i) => i.moduleRequest.value),
    ...module.staticExports.flatMap((e) =>
      e.entries.flatMap((x) => (x.moduleRequest ? [x.moduleRequest.value] : [])),
    ),
    ...module.dynamicImports.map((i) =>
      readFileSync(file, 'utf8').slice(i.moduleRequest.start, i.moduleRequest.end).replace(/['"]/gu, ''),
    ),
  ];
}

const within = (path: string, place: string): boolean => path === place || path.startsWith(`${place}/`);
const ruleFor = (file: string): readonly string[] | undefined =>
  [...rules].filter(([place]) => within(file, place)).sort(([a], [b]) => b.length - a.length)[0]?.[1];
const resolve = (file: string, request: string): string =>
  request.startsWith('.') ? normalize(join(dirname(file), request)) : request;
const permits = (allowed: string, target: string): boolean =>
  allowed.endsWith(':') ? target.startsWith(allowed) : within(target, allowed);

const files = ['src', 'adapters', 'demo-data'].flatMap(filesBelow);
const graph = new Map(files.map((file) => [file, importsOf(file).map((request) => resolve(file, request))]));

describe('the import rule', () => {
  it('has a row for every file', () => {
    expect(files.filter((file) => !ruleFor(file))).toEqual([]);
  });

  it('is kept by every import', () => {
    const broken = [...graph].flatMap(([file, targets]) =>
      targets.filter((t) => !ruleFor(file)?.some((a) => permits(a, t))).map((t) => `${file} imports ${t}`),
    );
    expect(broken).toEqual([]);
  });

  it('would notice an adapter in the core', () => {
    expect(ruleFor('src/maintenance/due/state.ts')?.some((a) => permits(a, 'adapters/main.ts'))).toBe(false);
    expect(ruleFor('src/store/memory/store.ts')?.some((a) => permits(a, 'better-sqlite3'))).toBe(false);
  });

  it('allows no cycle', () => {
    const done = new Set<string>();
    const cycles: string[] = [];
    const visit = (file: string, path: readonly string[]): void => {
      if (path.includes(file)) cycles.push([...path.slice(path.indexOf(file)), file].join(' -> '));
      if (done.has(file) || path.includes(file)) return;
      for (const target of graph.get(file) ?? []) visit(target, [...path, file]);
      done.add(file);
    };
    for (const file of files) visit(file, []);
    expect(cycles).toEqual([]);
  });
});

describe('DEVELOPERS.md', () => {
  it('names only paths that exist', () => {
    const named = [...guide.matchAll(/`((?:src|adapters|tests|demo-data|\.ci)\/[\w./-]*)`/gu)].map(
      ([, p = '']) => p,
    );
    const missing = [...named, ...rules.keys()].filter((path) => {
      try {
        return !statSync(path);
      } catch {
        return true;
      }
    });
    expect(missing).toEqual([]);
  });
});

/**
 * `npm run bench [case ...]`: every case in a process of its own, so that its peak memory is its own. Prints, and
 * writes tests/bench/results.json with the host. Asserts nothing: figures belong to the machine that made them.
 */
import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { cpus, totalmem } from 'node:os';
import type { Figures } from './case.ts';

const CASES: Readonly<Record<string, () => Promise<{ run: () => Promise<Figures> }>>> = {
  message: () => import('./cases/message.ts'),
  reading: () => import('./cases/reading.ts'),
  digest: () => import('./cases/digest.ts'),
  rules: () => import('./cases/rules.ts'),
  fold: () => import('./cases/fold.ts'),
  start: () => import('./cases/start.ts'),
  burst: () => import('./cases/burst.ts'),
  heap: () => import('./cases/heap.ts'),
  memory: () => import('./cases/memory.ts'),
  million: () => import('./cases/million.ts'),
};
const RESULTS = 'tests/bench/results.json';

async function inThisProcess(name: string): Promise<void> {
  const figures = await (await CASES[name]?.())?.run();
  const peak = process.resourceUsage().maxRSS / 1024;
  console.log(JSON.stringify({ ...figures, 'peak memory, MB': peak }));
}

function inItsOwn(name: string): Figures {
  const self = process.argv[1] ?? '';
  const { stdout, stderr, status } = spawnSync(process.execPath, ['--import', 'tsx', self, '--case', name], {
    encoding: 'utf8',
    maxBuffer: 1 << 26,
  });
  if (status !== 0) throw new Error(`${name}: ${stderr}`);
  return JSON.parse(stdout.trim().split('\n').at(-1) ?? '{}');
}

const round = (value: number): number => Number(value.toPrecision(4));

function all(names: readonly string[]): void {
  const host = {
    cpu: cpus()[0]?.model ?? '',
    cores: cpus().length,
    memoryGB: Math.round(totalmem() / 2 ** 30),
    node: process.version,
  };
  const known: { cases?: Record<string, Figures> } = read();
  const cases: Record<string, Figures> = { ...known.cases };
  for (const name of names) {
    const figures = Object.entries(inItsOwn(name)).map(([what, value]) => [what, round(value)] as const);
    cases[name] = Object.fromEntries(figures);
    console.log(`${name}\n${figures.map(([what, value]) => `  ${what}: ${value}`).join('\n')}`);
  }
  writeFileSync(RESULTS, `${JSON.stringify({ host, cases }, null, 2)}\n`);
}

function read(): { cases?: Record<string, Figures> } {
  try {
    return JSON.parse(readFileSync(RESULTS, 'utf8'));
  } catch {
    return {};
  }
}

const [flag, ...rest] = process.argv.slice(2);
if (flag === '--case') await inThisProcess(rest[0] ?? '');
else all(flag === undefined ? Object.keys(CASES) : [flag, ...rest]);

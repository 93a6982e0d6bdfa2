/** Repeated fields and copies without end: found before the file is unfolded. */
import { isScalar, visit } from 'yaml';
import type { Alias, Document, Node } from 'yaml';
import type { Fault } from './fault.ts';

/** An alias copies its anchor: one bank of machines may share a build, a bomb may not unfold. */
const MAX_COPIED_CHARACTERS = 4_000_000;

export const keyText = (key: unknown): string | undefined => (isScalar(key) ? String(key.value) : undefined);

/** The library's own check compares every key with every other; this one does not. */
export function keyFaults(document: Document.Parsed, lineAt: (node: unknown) => number): Fault[] {
  const faults: Fault[] = [];
  visit(document, {
    Map: (_, map) => {
      const seen = new Set<string>();
      for (const pair of map.items) {
        const key = keyText(pair.key);
        if (key === undefined)
          faults.push({ line: lineAt(pair.key), text: 'a field name must be plain text' });
        else if (seen.has(key)) faults.push({ line: lineAt(pair.key), text: `"${key}" is given twice` });
        else seen.add(key);
      }
    },
  });
  return faults;
}

export function aliasFaults(document: Document.Parsed, lineAt: (node: unknown) => number): Fault[] {
  const faults: Fault[] = [];
  let copied = 0;
  visit(document, {
    Alias: (_, alias: Alias) => {
      const anchored = alias.resolve(document);
      const line = lineAt(alias);
      if (!anchored)
        faults.push({
          line,
          text: `*${alias.source} names nothing above it; a text that begins with * needs quotes`,
        });
      else if (holdsAlias(anchored))
        faults.push({ line, text: `*${alias.source} copies something that copies itself` });
      else copied += anchored.range ? anchored.range[1] - anchored.range[0] : 0;
      if (copied <= MAX_COPIED_CHARACTERS) return undefined;
      faults.push({ line, text: 'aliases (*) copy too much' });
      return visit.BREAK;
    },
  });
  return faults;
}

function holdsAlias(node: Node): boolean {
  let found = false;
  visit(node, {
    Alias: () => {
      found = true;
      return visit.BREAK;
    },
  });
  return found;
}

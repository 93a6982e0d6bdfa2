/** Which reference value is held by which file: none is missing, and none is named that the file does not hold. */
import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const HELD: Readonly<Record<string, string>> = {
  'belt.test.ts': 'L-O1 L-O2 L-O3 E-O2',
  'feeder.test.ts': 'E-O1',
  'filament.test.ts': 'F-O1 F-O2 F-O3 F-O4',
  'first-passage.test.ts': 'I-O1 I-O2 I-O3 I-O4 I-O5',
  'rules-of-thumb.test.ts': 'R-O1 R-O2 R-O3 R-O4',
  'screws.test.ts': 'Z-O1 Z-O2 Z-O3 Z-O4',
  'time-zones.test.ts': 'D-O1 D-O2 D-O3',
  'vocabulary.test.ts': 'V-O1 V-O2',
};
const folder = new URL('.', import.meta.url);

/** "L-O1 to L-O3" names L-O2 too. */
function namedIn(text: string): Set<string> {
  const ids = new Set(text.match(/\b[A-Z]-O\d\b/gu));
  for (const [, kind = '', from, to] of text.matchAll(/\b([A-Z])-O(\d) to \1-O(\d)\b/gu))
    for (let n = Number(from); n <= Number(to); n += 1) ids.add(`${kind}-O${n}`);
  return ids;
}

describe('reference values', () => {
  it('are held by these files and no others', () =>
    expect(
      readdirSync(folder).filter((name) => name.endsWith('.test.ts') && name !== 'list.test.ts'),
    ).toEqual(Object.keys(HELD)));
  it.each(Object.entries(HELD))('%s: %s', (file, ids) => {
    const named = namedIn(readFileSync(new URL(file, folder), 'utf8'));
    expect([...named].toSorted()).toEqual(ids.split(' ').toSorted());
  });
});

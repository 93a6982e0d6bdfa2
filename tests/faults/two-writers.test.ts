/** Two processes write to one database at once. FETTLE_FAULT_SECONDS: for how long, 2 by default. */
import { describe, expect, it } from 'vitest';
import { openSqliteStore } from '../../src/store/open.ts';
import { freshFiles } from '../store/folder.ts';
import { aftermath } from './aftermath.ts';
import { ended, firstLine, start } from './processes.ts';

const fresh = freshFiles();
const seconds = Number(process.env['FETTLE_FAULT_SECONDS'] ?? 2);

interface Acknowledged {
  outcome: string;
  key: string;
  ms: number;
}
const acknowledged = (line: string): readonly Acknowledged[] => {
  const [outcome = '', key, ms] = line.split(' ');
  return key === undefined ? [] : [{ outcome, key, ms: Number(ms) }];
};

describe('two writers at once', () => {
  it(
    'lose nothing, double nothing, and never decide on what is no longer true',
    async () => {
      const file = fresh();
      await (await openSqliteStore(file)).close();
      const writers = ['a', 'b'].map((name) => start('writer.ts', [file, name, String(seconds)]));
      await Promise.all(writers.map(firstLine));
      for (const { child } of writers) child.stdin?.write('go\n');
      const all = (await Promise.all(writers.map(ended))).map(({ lines }) => lines.flatMap(acknowledged));
      const found = aftermath(file);
      report(all);

      const written = all.flat().filter(({ outcome }) => outcome === 'written');
      const keys = new Set(written.map(({ key }) => key));
      expect(keys.size).toBe(written.length);
      expect([...found.entries.keys()].toSorted()).toEqual([...keys].toSorted());
      expect([...found.entries.values()].every((count) => count === 2)).toBe(true);
      expect(found.handled.toSorted()).toEqual([...keys].toSorted());
      expect(found.notes.filter(({ saw, position }) => position !== saw + 2)).toEqual([]);
      for (const { outcome, key } of all.flat()) if (outcome === 'repeated') expect(keys.has(key)).toBe(true);
      for (const lines of all) expect(lines.some(({ outcome }) => outcome === 'written')).toBe(true);
      expect(found.integrity).toBe('ok');
    },
    (seconds + 30) * 1000,
  );
});

function report(all: readonly (readonly Acknowledged[])[]): void {
  for (const lines of all) {
    const of = (wanted: string): number => lines.filter(({ outcome }) => outcome === wanted).length;
    const times = lines.map(({ ms }) => ms).toSorted((a, b) => a - b);
    const p = (share: number): number => times[Math.floor(share * (times.length - 1))] ?? 0;
    console.log(
      `${of('written')} written, ${of('repeated')} repeated, ${of('busy')} busy; ` +
        `p50 ${p(0.5)} ms, p99 ${p(0.99)} ms, longest ${p(1)} ms`,
    );
  }
}

import type { Entry } from '../../src/maintenance/entry/entry.ts';
import type { EntrySource } from '../../src/maintenance/record/extend.ts';
import { isCorrection } from '../../src/maintenance/record/standing.ts';

/** A journal that gives what it promises and not one entry more. */
export function frugal(entries: readonly Entry[]): EntrySource & { reads: string[] } {
  const reads: string[] = [];
  const closure = (seeds: readonly Entry[]): readonly Entry[] => {
    const ids = new Set(seeds.map((seed) => seed.id));
    for (let size = -1; size < ids.size;) {
      size = ids.size;
      for (const one of entries) {
        if (!isCorrection(one)) continue;
        if (ids.has(one.target)) ids.add(one.id);
        if (ids.has(one.id)) ids.add(one.target);
      }
    }
    return entries.filter((one) => ids.has(one.id));
  };
  const names = (one: Entry, machine: string): boolean =>
    ('machine' in one && one.machine === machine) || (one.kind === 'amended' && one.set.machine === machine);
  return {
    reads,
    familyOf: (ids) => Promise.resolve(closure(entries.filter((one) => ids.includes(one.id)))),
    ofMachine: (machine) => {
      reads.push(machine);
      return Promise.resolve(closure(entries.filter((one) => names(one, machine))));
    },
    ofNoMachine: () => {
      reads.push('(none)');
      return Promise.resolve(
        closure(
          entries.filter((one) => !isCorrection(one) && !('machine' in one && one.machine !== undefined)),
        ),
      );
    },
  };
}

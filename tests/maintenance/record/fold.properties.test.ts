import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openCalendar } from '../../../src/maintenance/calendar.ts';
import type { Entry } from '../../../src/maintenance/entry/entry.ts';
import { dehydrate, hydrate } from '../../../src/maintenance/record/checkpoint.ts';
import { extendShop } from '../../../src/maintenance/record/extend.ts';
import { foldShop } from '../../../src/maintenance/record/fold.ts';
import { isCorrection } from '../../../src/maintenance/record/standing.ts';
import { anyEntries, entry, KINDS, NOW, oneOf, ZONE } from '../../support/entries.ts';
import { frugal } from '../../support/source.ts';

const calendar = openCalendar(ZONE);
const shuffled = (entries: readonly Entry[]) =>
  fc.shuffledSubarray([...entries], { minLength: entries.length, maxLength: entries.length });
const takeBackOf = (target: string, id: string): Entry =>
  entry({ kind: 'takenBack', target }, { id, at: NOW, message: id });

describe('any set of entries', () => {
  it('folds to the same record in whatever order it arrived', () => {
    const arrivals = anyEntries.chain((entries) => fc.tuple(fc.constant(entries), shuffled(entries)));
    fc.assert(
      fc.property(arrivals, ([entries, arrived]) => {
        expect(foldShop(arrived, calendar)).toEqual(foldShop(entries, calendar));
      }),
      { numRuns: 300 },
    );
  });

  it('folds step by step to what a full fold gives, however it is cut', async () => {
    const cuts = anyEntries
      .chain((entries) => shuffled(entries))
      .chain((entries) => fc.tuple(fc.constant(entries), fc.array(fc.nat(entries.length), { maxLength: 4 })));
    await fc.assert(
      fc.asyncProperty(cuts, async ([entries, places]) => {
        let record = foldShop([], calendar);
        let from = 0;
        for (const to of [...places.toSorted((a, b) => a - b), entries.length]) {
          const known = entries.slice(0, to);
          record = await extendShop(record, entries.slice(from, to), frugal(known), calendar);
          from = to;
        }
        expect(record).toEqual(foldShop(entries, calendar));
      }),
      { numRuns: 300 },
    );
  });

  it('comes back from its checkpoint as it was', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        for (const machine of foldShop(entries, calendar).machines.values())
          expect(hydrate(dehydrate(machine))).toEqual(machine);
      }),
      { numRuns: 100 },
    );
  });
});

describe.each(KINDS)('an entry of the kind %s', (kind) => {
  const alone = (entries: readonly Entry[], id: string): Entry[] =>
    // corrections of the entry itself would be left without a target
    entries.filter((other) => !(isCorrection(other) && other.target === id));

  it('that is taken back leaves what never having had it leaves', () => {
    fc.assert(
      fc.property(anyEntries, oneOf(kind, 100), (entries, extra) => {
        const others = alone(entries, extra.id);
        const without = foldShop(others, calendar);
        expect(foldShop([...others, extra, takeBackOf(extra.id, 'e101')], calendar)).toEqual(without);
      }),
      { numRuns: 25 },
    );
  });

  it('counts again once its take-back is taken back', () => {
    fc.assert(
      fc.property(anyEntries, oneOf(kind, 100), (entries, extra) => {
        const redone = [takeBackOf(extra.id, 'e101'), takeBackOf('e101', 'e102')];
        expect(foldShop([...entries, extra, ...redone], calendar)).toEqual(
          foldShop([...entries, extra], calendar),
        );
      }),
      { numRuns: 25 },
    );
  });
});

describe('an amendment', () => {
  it('that is taken back leaves the entry as it was said', () => {
    fc.assert(
      fc.property(anyEntries, oneOf('amended', 100), (entries, amended) => {
        const back = takeBackOf(amended.id, 'e101');
        expect(foldShop([...entries, amended, back], calendar)).toEqual(foldShop(entries, calendar));
      }),
      { numRuns: 200 },
    );
  });
});

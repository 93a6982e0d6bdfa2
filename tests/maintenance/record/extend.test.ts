import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openCalendar } from '../../../src/maintenance/calendar.ts';
import type { Entry } from '../../../src/maintenance/entry/entry.ts';
import { extendShop, planExtension, shopAt } from '../../../src/maintenance/record/extend.ts';
import { foldShop } from '../../../src/maintenance/record/fold.ts';
import { anyEntries, enrolment, entry, instant, ZONE } from '../../support/entries.ts';
import { frugal } from '../../support/source.ts';

const calendar = openCalendar(ZONE);
const alder = enrolment('alder', {}, 4000);
const birch = enrolment('birch');
const ran = (when: string, hours: number, machine = 'alder'): Entry =>
  entry({ kind: 'usage', machine, hours }, { when });
const first = ran('2026-03-02T11:00:00Z', 5);
const base = [alder, birch, first];
const record = foldShop(base, calendar);

const added = async (entries: readonly Entry[]): Promise<string[]> => {
  const source = frugal([...base, ...entries]);
  expect(await extendShop(record, entries, source, calendar)).toEqual(
    foldShop([...base, ...entries], calendar),
  );
  return source.reads;
};

describe('a record that is kept up to date', () => {
  it('reads nothing again for what comes on top', async () => {
    expect(await added([ran('2026-03-03T11:00:00Z', 2)])).toEqual([]);
  });

  it('reads the machine again for a late word', async () => {
    expect(await added([ran('2026-03-01T11:00:00Z', 2)])).toEqual(['alder']);
  });

  it('reads both machines again when an entry moves from one to the other', async () => {
    const moved = entry({ kind: 'amended', target: first.id, set: { machine: 'birch' } });
    expect((await added([moved])).toSorted()).toEqual(['alder', 'birch']);
  });

  it('reads both again when that move is taken back', async () => {
    const moved = entry({ kind: 'amended', target: first.id, set: { machine: 'birch' } });
    const back = entry({ kind: 'takenBack', target: moved.id });
    const before = foldShop([...base, moved], calendar);
    const source = frugal([...base, moved, back]);
    expect(await extendShop(before, [back], source, calendar)).toEqual(record);
    expect(source.reads.toSorted()).toEqual(['alder', 'birch']);
  });

  it('reads the shelf again for a swap, and no machine', async () => {
    expect(await added([entry({ kind: 'swapped', machine: 'alder', part: 'sock' })])).toEqual(['(none)']);
  });

  it('leaves the record that it was given as it was', async () => {
    const frozen = structuredClone(record);
    await added([ran('2026-03-03T11:00:00Z', 2), entry({ kind: 'takenBack', target: first.id })]);
    expect(record).toEqual(frozen);
  });

  it('is told apart by a plan', () => {
    const plan = planExtension(
      record,
      [ran('2026-03-01T11:00:00Z', 2), ran('2026-03-03T11:00:00Z', 1, 'birch')],
      [],
      calendar,
    );
    expect([...plan.refold]).toEqual(['alder']);
    expect([...plan.onTop.keys()]).toEqual(['birch']);
    expect(plan.floor).toBe(false);
  });

  it('equals a full fold from a journal that gives no entry too many', async () => {
    await fc.assert(
      fc.asyncProperty(anyEntries, fc.nat(24), async (entries, cut) => {
        const before = foldShop(entries.slice(0, cut), calendar);
        const extended = await extendShop(before, entries.slice(cut), frugal(entries), calendar);
        expect(extended).toEqual(foldShop(entries, calendar));
      }),
      { numRuns: 400 },
    );
  });
});

describe('the record as of a moment', () => {
  it('has this machine as it was then', async () => {
    const later = ran('2026-03-09T11:00:00Z', 3);
    const now = foldShop([...base, later], calendar);
    const then = await shopAt(
      now,
      'alder',
      instant('2026-03-05T11:00:00Z'),
      frugal([...base, later]),
      calendar,
    );
    expect(then.machines.get('alder')?.totals.hours).toBe(4005);
    expect(now.machines.get('alder')?.totals.hours).toBe(4008);
  });

  it('is the record itself where nothing came later', async () => {
    expect(await shopAt(record, 'alder', instant('2026-03-05T11:00:00Z'), frugal(base), calendar)).toBe(
      record,
    );
  });
});

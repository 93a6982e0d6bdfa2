/** Sums of hours that read as they were said. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openCalendar } from '../../../src/maintenance/calendar.ts';
import type { Entry } from '../../../src/maintenance/entry/entry.ts';
import { dehydrate } from '../../../src/maintenance/record/checkpoint.ts';
import { foldShop } from '../../../src/maintenance/record/fold.ts';
import { tidy } from '../../../src/maintenance/record/tidy.ts';
import { enrolment, entry, ZONE } from '../../support/entries.ts';

const calendar = openCalendar(ZONE);
const START = Date.parse('2026-01-02T11:00:00Z');
const HOUR = 3_600_000;
const ran = (hours: readonly number[], startHours?: number) => {
  const usages = hours.map((h, n) =>
    entry(
      { kind: 'usage', machine: 'alder', hours: h, grams: h, material: 'pla' },
      { at: START + n * 5 * HOUR },
    ),
  );
  const machine = foldShop([enrolment('alder', {}, startHours), ...usages], calendar).machines.get('alder');
  if (!machine) throw new Error('no alder');
  return machine;
};
/** Hundredths of an hour, as people say them. */
const said = fc.array(
  fc.integer({ min: 1, max: 500 }).map((h) => h / 100),
  { minLength: 1, maxLength: 60 },
);

describe('hours', () => {
  it('of ten tenths are one, and of 900 prints of 20 minutes 300', () => {
    expect(ran(Array.from({ length: 10 }, () => 0.1)).totals.hours).toBe(1);
    expect(ran(Array.from({ length: 900 }, () => 1 / 3)).totals.hours).toBe(300);
  });

  it('said in hundredths add up to hundredths, everywhere in the record', () => {
    fc.assert(
      fc.property(said, fc.integer({ min: 0, max: 20_000 }), (hours, start) => {
        const machine = ran(hours, start);
        const hundredths = hours.reduce((sum, h) => sum + Math.round(h * 100), 0);
        expect(machine.totals.hours).toBe((start * 100 + hundredths) / 100);
        expect(machine.loggedHours).toBe(hundredths / 100);
        expect(machine.totals.gramsOf.pla).toBe(hundredths / 100);
        expect(dehydrate(machine)).not.toMatch(/\d\.\d{12}/u);
      }),
      { numRuns: 100 },
    );
  });

  it('stay tidy over a counter that becomes known and one that runs ahead', () => {
    const read = (hours: number, n: number): Entry =>
      entry({ kind: 'meter', machine: 'alder', hours }, { at: START + n * 24 * HOUR });
    const used = entry({ kind: 'usage', machine: 'alder', hours: 0.1 }, { at: START });
    const { machines } = foldShop(
      [
        enrolment('alder'),
        used,
        read(2311.3, 1),
        { ...used, id: 'e2', at: START + 30 * HOUR },
        read(2311.5, 2),
      ],
      calendar,
    );
    expect(machines.get('alder')).toMatchObject({ totals: { hours: 2311.5 }, unloggedHours: 0.1 });
  });

  it('leave no dust on days on which nothing ran', () => {
    const logs = [0.1, 0.2, 0.3].map((hours, n) =>
      entry({ kind: 'usage', machine: 'alder', hours }, { at: START + n * 4 * 24 * HOUR }),
    );
    const read = entry({ kind: 'meter', machine: 'alder', hours: 4000.6 }, { at: START + 9 * 24 * HOUR });
    const alder = foldShop([enrolment('alder', {}, 4000), ...logs, read], calendar).machines.get('alder');
    expect(alder).toMatchObject({ unloggedHours: 0, totals: { hours: 4000.6, runDays: 3 } });
    expect(alder?.runByDay.hours).toEqual([0.1, 0, 0, 0, 0.2, 0, 0, 0, 0.3]);
  });

  it('of a print since midnight are on that day alone, however its hours were added up', () => {
    const atEighteenPastMidnight = Date.parse('2026-01-10T00:18:00+01:00');
    const print = entry(
      { kind: 'usage', machine: 'alder', hours: 0.1 + 0.2 },
      { at: atEighteenPastMidnight },
    );
    const alder = foldShop([enrolment('alder'), print], calendar).machines.get('alder');
    expect(alder).toMatchObject({ totals: { runDays: 1 }, runByDay: { hours: [0.3] } });
  });

  it('are not rounded to anything that somebody could say', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2_000_000_000 }), (millionths) => {
        expect(tidy(millionths / 1e6)).toBe(millionths / 1e6);
      }),
    );
  });
});

import { describe, expect, it } from 'vitest';
import { dayOfDate, openCalendar } from '../../../src/maintenance/calendar.ts';
import type { Entry, EntryFields } from '../../../src/maintenance/entry/entry.ts';
import { foldShop } from '../../../src/maintenance/record/fold.ts';
import type { MachineRecord } from '../../../src/maintenance/record/record.ts';
import { hoursOn } from '../../../src/maintenance/record/runs.ts';
import { enrolment, entry, ZONE } from '../../support/entries.ts';

const calendar = openCalendar(ZONE);
const on = (date: string, fields: EntryFields): Entry => entry(fields, { when: `${date}T11:00:00Z` });
const ran = (date: string, hours: number): Entry => on(date, { kind: 'usage', machine: 'alder', hours });
const read = (date: string, hours: number, fresh?: true): Entry =>
  on(date, { kind: 'meter', machine: 'alder', hours, ...(fresh ? { newCounter: fresh } : {}) });
const alder = (...entries: Entry[]): MachineRecord => {
  const machine = foldShop(entries, calendar).machines.get('alder');
  if (!machine) throw new Error('no alder');
  return machine;
};
const byDay = (machine: MachineRecord, date: string): number => hoursOn(machine.runByDay, dayOfDate(date));
const known = enrolment('alder', {}, 4000);

describe('the counter', () => {
  it('goes on from the figure at enrolment with what is logged', () => {
    expect(alder(known, ran('2026-03-02', 6), ran('2026-03-03', 2.5)).totals.hours).toBe(4008.5);
  });

  it('is set by the first reading, which books nothing', () => {
    const machine = alder(enrolment('alder'), ran('2026-03-02', 6), read('2026-03-05', 900));
    expect(machine.totals.hours).toBe(900);
    expect(machine.unloggedHours).toBe(0);
  });

  it('keeps what was used since a task when the first reading comes after it', () => {
    const dusted = on('2026-03-02', { kind: 'done', machine: 'alder', task: 'dust-off' });
    const machine = alder(enrolment('alder'), dusted, ran('2026-03-03', 6), read('2026-03-05', 900));
    expect(machine.totals.hours - (machine.tasks['dust-off']?.totals.hours ?? 0)).toBe(6);
  });

  it('books what nobody logged between two readings', () => {
    const machine = alder(known, ran('2026-03-02', 6), read('2026-03-11', 4020));
    expect(machine.totals.hours).toBe(4020);
    expect(machine.unloggedHours).toBe(14);
    expect(machine.conflicts).toEqual([]);
  });

  it('follows the reading when more was logged than it shows, and says so', () => {
    const machine = alder(known, ran('2026-03-02', 12), read('2026-03-03', 4008));
    expect(machine.totals.hours).toBe(4008);
    expect(machine.conflicts).toMatchObject([
      { what: 'logged-more-than-counter', figures: { logged: 12, counter: 8 } },
    ]);
  });

  it('shows whole hours: half an hour less than logged is no conflict', () => {
    expect(alder(known, ran('2026-03-02', 12.5), read('2026-03-03', 4012)).conflicts).toEqual([]);
  });

  it('stays where it was at a reading below it, which is a conflict', () => {
    const machine = alder(known, read('2026-03-02', 4050), read('2026-03-03', 405));
    expect(machine.totals.hours).toBe(4050);
    expect(machine.conflicts).toMatchObject([{ what: 'counter-back' }]);
  });

  it('starts anew where a new one was fitted, and what was used since a task stays', () => {
    const dusted = on('2026-03-02', { kind: 'done', machine: 'alder', task: 'dust-off' });
    const machine = alder(
      known,
      dusted,
      ran('2026-03-03', 6),
      read('2026-03-04', 0, true),
      ran('2026-03-05', 2),
    );
    expect(machine.totals.hours).toBe(2);
    expect(machine.totals.hours - (machine.tasks['dust-off']?.totals.hours ?? 0)).toBe(8);
    expect(machine.conflicts).toEqual([]);
  });

  it('of a machine that started new counts from nought, and its first reading books the difference', () => {
    const rowan = on('2026-03-02', {
      kind: 'enrolled',
      machine: 'alder',
      build: {},
      inUseSince: '2026-02-20',
      new: true,
    });
    const machine = alder(rowan, read('2026-03-05', 40));
    expect(machine.unloggedHours).toBe(40);
    expect(machine.startedNew).toBe(true);
  });

  it('at enrolment is a reading of that day: hours told later for days before are in it', () => {
    const enrolled = entry(
      { kind: 'enrolled', machine: 'alder', build: {}, startHours: 4000, inUseSince: '2026-02-01' },
      { when: '2026-03-05T11:00:00Z' },
    );
    const machine = alder(enrolled, ran('2026-03-02', 6));
    expect(machine.totals.hours).toBe(4000);
    expect(machine.conflicts).toEqual([]);
  });
});

describe('hours by day', () => {
  it('end when the usage ended: a night print counts on both days', () => {
    const night = entry({ kind: 'usage', machine: 'alder', hours: 10 }, { when: '2026-03-11T05:00:00Z' });
    const machine = alder(known, night);
    expect(byDay(machine, '2026-03-10')).toBe(4);
    expect(byDay(machine, '2026-03-11')).toBe(6);
    expect(machine.totals.runDays).toBe(2);
  });

  it('are all of the day where only the date was said', () => {
    const day = entry(
      { kind: 'usage', machine: 'alder', hours: 14 },
      { when: '2026-03-10T11:00:00Z', precision: 'day' },
    );
    const machine = alder(known, day);
    expect(byDay(machine, '2026-03-10')).toBe(14);
    expect(machine.totals.runDays).toBe(1);
  });

  it('count a day once, however often it ran', () => {
    expect(alder(known, ran('2026-03-02', 1), ran('2026-03-02', 2)).totals.runDays).toBe(1);
  });

  it('know a day of which only the filament was told', () => {
    const weighed = on('2026-03-02', { kind: 'usage', machine: 'alder', grams: 120, material: 'pla' });
    const machine = alder(known, weighed, weighed);
    expect(machine.totals.runDays).toBe(1);
    expect(machine.totals.hours).toBe(4000);
  });

  it('have what nobody logged laid evenly between the readings', () => {
    const machine = alder(known, read('2026-03-01', 4000), read('2026-03-11', 4050));
    expect(byDay(machine, '2026-03-02')).toBe(5);
    expect(byDay(machine, '2026-03-11')).toBe(5);
    expect(byDay(machine, '2026-03-01')).toBeLessThan(1);
  });

  it('do not make an idle machine run every day because its counter was read', () => {
    const machine = alder(enrolment('alder'), read('2026-03-01', 4000), read('2026-03-11', 4016));
    expect(machine.totals.runDays).toBe(2);
  });
});

describe('filament', () => {
  const loaded = on('2026-03-01', { kind: 'loaded', machine: 'alder', material: 'nylon-cf', grams: 1000 });

  it('is that of the spool loaded where nobody says otherwise', () => {
    expect(alder(known, loaded, ran('2026-03-02', 6)).totals.hoursOf).toEqual({ 'nylon-cf': 6 });
  });

  it('is what was said where somebody did', () => {
    const petg = on('2026-03-02', { kind: 'usage', machine: 'alder', hours: 6, material: 'petg' });
    expect(alder(known, loaded, petg).totals.hoursOf).toEqual({ petg: 6 });
  });

  it('is unknown after a spool of which nobody said the material', () => {
    const other = on('2026-03-02', { kind: 'loaded', machine: 'alder' });
    expect(alder(known, loaded, other, ran('2026-03-03', 6)).totals.hoursOf).toEqual({});
  });

  it('is weighed by its length, thicker filament by its thickness', () => {
    const metres = on('2026-03-02', { kind: 'usage', machine: 'alder', metres: 10, material: 'pla' });
    // source: pi d^2 / 4 x length x density, 29.8255 g for 10 m of PLA 1.75
    expect(alder(known, metres).totals.gramsOf.pla).toBeCloseTo(29.825495, 5);
    const thick = enrolment('alder', { filamentMm: 2.85 });
    expect(alder(thick, metres).totals.gramsOf.pla).toBeCloseTo((1000 * 10) / 126.415030404905, 5);
  });

  it('that nobody weighed is kept apart from what was', () => {
    const weighed = on('2026-03-02', {
      kind: 'usage',
      machine: 'alder',
      hours: 2,
      grams: 50,
      material: 'pla',
    });
    const guessed = on('2026-03-03', { kind: 'usage', machine: 'alder', hours: 3, material: 'pla' });
    const { totals } = alder(known, weighed, guessed);
    expect(totals.gramsOf).toEqual({ pla: 50 });
    expect(totals.unweighedHoursOf).toEqual({ pla: 3 });
  });
});

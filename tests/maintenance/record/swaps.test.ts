import { describe, expect, it } from 'vitest';
import { dayOfDate, openCalendar } from '../../../src/maintenance/calendar.ts';
import type { Part } from '../../../src/maintenance/codes.ts';
import { dueRow } from '../../../src/maintenance/due/rows.ts';
import type { Entry, EntryFields } from '../../../src/maintenance/entry/entry.ts';
import { foldShop } from '../../../src/maintenance/record/fold.ts';
import type { MachineRecord, ShopRecord } from '../../../src/maintenance/record/record.ts';
import { enrolment, entry, ZONE } from '../../support/entries.ts';
import { contextOn } from '../../support/machines.ts';

const calendar = openCalendar(ZONE);
const on = (date: string, fields: EntryFields, given = {}): Entry =>
  entry(fields, { when: `${date}T11:00:00Z`, ...given });
const swap = (date: string, part: Part, more: object = {}): Entry =>
  on(date, { kind: 'swapped', machine: 'alder', part, ...more });
const ran = (date: string, hours: number): Entry => on(date, { kind: 'usage', machine: 'alder', hours });
const shop = (...entries: Entry[]): ShopRecord => foldShop(entries, calendar);
const alder = (...entries: Entry[]): MachineRecord => {
  const machine = shop(...entries).machines.get('alder');
  if (!machine) throw new Error('no alder');
  return machine;
};
const known = enrolment('alder', { nozzle: { material: 'brass', boreMm: 0.4 } }, 4000);
const count = (part: Part, n: number, fitted?: string, given = {}): Entry =>
  on('2026-02-01', { kind: 'stockCounted', part, count: n, ...(fitted ? { fitted } : {}) }, given);

describe('a part that is stated', () => {
  const said = (date: string, more: object): Entry =>
    on(date, { kind: 'stated', machine: 'alder', part: 'liner', ...more });
  const liner = (...entries: Entry[]) => alder(known, ...entries).parts.liner;

  it('takes the date told later for one of unknown age, and keeps its words', () => {
    const unknown = said('2026-02-01', { fitted: 'long one' });
    expect(liner(unknown)).toMatchObject({ ageKnown: false, text: 'long one' });
    const told = [unknown, said('2026-03-01', { on: '2025-10-10' })];
    expect(liner(...told)).toMatchObject({ ageKnown: true, day: dayOfDate('2025-10-10'), text: 'long one' });
    expect(alder(known, ...told).tasks['replace-liner']).toMatchObject({ day: dayOfDate('2025-10-10') });
  });

  it('keeps a known age against an older date', () => {
    const fitted = swap('2026-02-01', 'liner');
    expect(liner(fitted, said('2026-03-01', { on: '2025-10-10' }))?.entry).toBe(fitted.id);
    const dated = said('2026-02-01', { on: '2026-01-20' });
    expect(liner(dated, said('2026-03-01', { on: '2025-10-10' }))?.entry).toBe(dated.id);
  });

  it('settles a belt that was in doubt', () => {
    const doubt = swap('2026-02-20', 'belt');
    const before = swap('2026-02-01', 'x-belt');
    expect(alder(known, before, doubt).parts['x-belt']?.ageKnown).toBe(false);
    const xSince = on('2026-03-01', { kind: 'stated', machine: 'alder', part: 'x-belt', on: '2026-02-01' });
    expect(alder(known, before, doubt, xSince).parts['x-belt']).toMatchObject({
      ageKnown: true,
      day: dayOfDate('2026-02-01'),
    });
  });
});

describe('the guide tube', () => {
  const bowden = enrolment('alder', {
    feed: 'bowden', hotEnd: 'lined', tubeLengthMm: 510, tubeNeededMm: 500,
  }); // prettier-ignore
  const trim = (date: string): Entry => on(date, { kind: 'done', machine: 'alder', task: 'trim-tube' });
  const slipped = on('2026-03-10', { kind: 'seen', machine: 'alder', symptom: 'tube-slipped' });
  const raised = (...entries: Entry[]) => {
    const record = alder(bowden, ...entries, slipped);
    return (['trim-tube', 'replace-guide-tube'] as const).filter(
      (task) => dueRow(record, task, contextOn('2026-03-11'))?.raised,
    );
  };

  it('is trimmed as often as somebody did, a new one never yet', () => {
    expect(alder(bowden).tubeTrims).toBeUndefined();
    expect(alder(bowden, trim('2026-02-01'), trim('2026-02-20')).tubeTrims).toBe(2);
    const anew = [trim('2026-02-01'), trim('2026-02-20'), swap('2026-03-01', 'guide-tube')];
    expect(alder(bowden, ...anew).tubeTrims).toBeUndefined();
    expect(alder(bowden, ...anew, trim('2026-03-04')).tubeTrims).toBe(1);
  });

  it('keeps its trims when another part is swapped', () =>
    expect(alder(bowden, trim('2026-02-01'), swap('2026-03-01', 'tube-fitting')).tubeTrims).toBe(1));

  it('that slipped is trimmed while it is long enough, then replaced', () => {
    // 510 mm, 500 needed, 5 mm a trim at most: two trims
    expect(raised()).toEqual(['trim-tube']);
    expect(raised(trim('2026-02-01'))).toEqual(['trim-tube']);
    expect(raised(trim('2026-02-01'), trim('2026-02-20'))).toEqual(['replace-guide-tube']);
    const anew = [trim('2026-02-01'), trim('2026-02-20'), swap('2026-03-01', 'guide-tube')];
    expect(raised(...anew)).toEqual(['trim-tube']);
  });
});

describe('a swap', () => {
  it('ends the life of the part that came out, from its own swap', () => {
    const machine = alder(
      known,
      swap('2026-02-01', 'heater'),
      ran('2026-02-05', 5),
      swap('2026-02-11', 'heater', { reason: 'broken' }),
    );
    expect(machine.lives).toHaveLength(2);
    expect(machine.lives[1]).toMatchObject({
      part: 'heater',
      hours: 5,
      days: 10,
      reason: 'broken',
      ageKnown: true,
    });
  });

  it('of a part that was in at enrolment ends a life of unknown age', () => {
    expect(alder(known, swap('2026-02-01', 'heater')).lives).toMatchObject([{ ageKnown: false, days: 31 }]);
  });

  it('of a part of a machine that started new ends a life of known age', () => {
    const rowan = on('2026-02-01', {
      kind: 'enrolled',
      machine: 'alder',
      build: {},
      inUseSince: '2026-02-01',
      new: true,
    });
    expect(alder(rowan, swap('2026-02-11', 'heater')).lives).toMatchObject([{ ageKnown: true, days: 10 }]);
  });

  it('is its replacement done, and settles what was put off', () => {
    const later: Entry = on('2026-02-01', {
      kind: 'putOff',
      machine: 'alder',
      task: 'replace-heater',
      until: '2026-04-01',
    });
    const machine = alder(known, later, swap('2026-02-11', 'heater'));
    expect(machine.tasks['replace-heater']?.why).toBe('swapped');
    expect(machine.putOffs).toEqual({});
  });

  it('told as a task is the swap that it was', () => {
    const done = on('2026-02-11', { kind: 'done', machine: 'alder', task: 'replace-heater' });
    expect(alder(known, done).lives).toHaveLength(1);
  });

  it('of the nozzle changes what is in the hot end, as far as it was said', () => {
    const { nozzle } = alder(known, swap('2026-02-11', 'nozzle', { fitted: 'hardened 0.6' }));
    expect(nozzle).toEqual({ material: 'hardened', boreMm: 0.6 });
    expect(alder(known, swap('2026-02-11', 'nozzle')).nozzle).toEqual({ material: 'brass', boreMm: 0.4 });
    expect(alder(known, swap('2026-02-11', 'nozzle', { fitted: 'a ruby one' })).nozzle).toEqual({
      material: 'gem',
      boreMm: 0.4,
    });
  });

  it('of "a belt" leaves both belts in, of unknown age from there', () => {
    const machine = alder(known, swap('2026-02-01', 'x-belt'), swap('2026-02-11', 'belt'));
    expect(machine.lives.map((life) => life.part)).toEqual(['x-belt', 'belt']);
    expect(machine.parts['x-belt']?.ageKnown).toBe(false);
    expect(machine.parts['y-belt']).toBeUndefined();
  });

  it('that was amended to another machine leaves the first as if it had never been there', () => {
    const birch = enrolment('birch');
    const swapped = swap('2026-02-11', 'heater');
    const moved = on('2026-02-12', { kind: 'amended', target: swapped.id, set: { machine: 'birch' } });
    const { machines } = shop(known, birch, swapped, moved);
    expect(machines.get('alder')?.lives).toEqual([]);
    expect(machines.get('birch')?.lives).toHaveLength(1);
  });
});

describe('the shelf', () => {
  it('gives one spare to a swap, in whichever order the words were said', () => {
    const { shelf } = shop(
      known,
      count('nozzle', 3, 'brass 0.4'),
      count('nozzle', 2, '0.6 hardened'),
      swap('2026-02-11', 'nozzle', { fitted: 'Hardened 0,6 mm' }),
    );
    expect(shelf.map((item) => item.count)).toEqual([3, 1]);
  });

  it('gives the same as was in before where nobody said', () => {
    const { shelf } = shop(
      known,
      count('nozzle', 3, 'brass 0.4'),
      count('nozzle', 2, 'hardened 0.6'),
      swap('2026-02-11', 'nozzle'),
    );
    expect(shelf.map((item) => item.count)).toEqual([2, 2]);
  });

  it('gives as many as came out together', () => {
    expect(shop(known, count('wheel', 6), swap('2026-02-11', 'wheel', { count: 4 })).shelf[0]?.count).toBe(2);
  });

  it('never falls below nought: a part from an empty shelf is a conflict', () => {
    const { shelf, conflicts } = shop(known, count('sock', 0), swap('2026-02-11', 'sock'));
    expect(shelf[0]?.count).toBe(0);
    expect(conflicts).toMatchObject([{ what: 'shelf-empty' }]);
  });

  it('says nothing of a part that it does not keep', () => {
    expect(shop(known, swap('2026-02-11', 'sock')).conflicts).toEqual([]);
  });

  it('believes a count, also one that was told beside the swap it comes after', () => {
    const together = { saidAt: Date.parse('2026-02-11T11:00:00Z'), at: Date.parse('2026-02-11T11:00:00Z') };
    const counted = count('sock', 0, undefined, { ...together, act: 0 });
    const taken = on(
      '2026-02-11',
      { kind: 'swapped', machine: 'alder', part: 'sock' },
      { ...together, act: 1 },
    );
    const { shelf, conflicts } = shop(known, count('sock', 1), counted, taken);
    expect(shelf[0]?.count).toBe(0);
    expect(conflicts).toEqual([]);
  });

  it('grows by what arrives', () => {
    const arrived = on('2026-02-11', { kind: 'stockMoved', part: 'oil', change: 2 });
    expect(shop(arrived, arrived).shelf).toEqual([{ part: 'oil', count: 4 }]);
  });

  it('gets its spare back when the swap is taken back', () => {
    const swapped = swap('2026-02-11', 'sock');
    const back = on('2026-02-11', { kind: 'takenBack', target: swapped.id });
    expect(shop(known, count('sock', 2), swapped, back).shelf[0]?.count).toBe(2);
  });
});

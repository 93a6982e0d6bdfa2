import { describe, expect, it } from 'vitest';
import { openCalendar } from '../../../src/maintenance/calendar.ts';
import type { Part, Symptom, Task } from '../../../src/maintenance/codes.ts';
import { dueRow } from '../../../src/maintenance/due/rows.ts';
import type { Entry, EntryFields } from '../../../src/maintenance/entry/entry.ts';
import { foldShop } from '../../../src/maintenance/record/fold.ts';
import type { MachineRecord } from '../../../src/maintenance/record/record.ts';
import { enrolment, entry, ZONE } from '../../support/entries.ts';
import { contextOn } from '../../support/machines.ts';

const calendar = openCalendar(ZONE);
const on = (date: string, fields: EntryFields): Entry => entry(fields, { when: `${date}T11:00:00Z` });
const say = (date: string, kind: 'down' | 'up' | 'opened' | 'closed' | 'retired'): Entry =>
  on(date, { kind, machine: 'alder' });
const seen = (date: string, symptom: Symptom): Entry => on(date, { kind: 'seen', machine: 'alder', symptom });
const gone = (date: string, symptom?: Symptom): Entry =>
  on(date, { kind: 'cleared', machine: 'alder', ...(symptom ? { symptom } : {}) });
const done = (date: string, task: Task): Entry => on(date, { kind: 'done', machine: 'alder', task });
const known = enrolment('alder');
const alder = (...entries: Entry[]): MachineRecord => {
  const machine = foldShop([known, ...entries], calendar).machines.get('alder');
  if (!machine) throw new Error('no alder');
  return machine;
};

describe('a symptom', () => {
  it('stays open since it was first seen, until it is gone', () => {
    const twice = [seen('2026-03-02', 'squeak'), seen('2026-03-04', 'squeak')];
    expect(alder(...twice).symptoms.squeak).toMatchObject({ count: 2, open: { entry: twice[0]?.id } });
    expect(alder(...twice, gone('2026-03-05', 'squeak')).symptoms.squeak?.open).toBeUndefined();
  });

  it('opens anew when it comes again', () => {
    const machine = alder(seen('2026-03-02', 'squeak'), gone('2026-03-03'), seen('2026-03-04', 'squeak'));
    expect(machine.symptoms.squeak).toMatchObject({ count: 2, open: { day: 20516 } });
  });

  it('of a jam that was cleared had happened, though nobody told it before', () => {
    expect(alder(done('2026-03-02', 'clear-jam')).symptoms['no-extrusion']).toMatchObject({ count: 1 });
  });

  it('of a jam told and then cleared is one jam', () => {
    const machine = alder(seen('2026-03-02', 'no-extrusion'), done('2026-03-02', 'clear-jam'));
    expect(machine.symptoms['no-extrusion']?.count).toBe(1);
    expect(machine.symptoms['no-extrusion']?.open).toBeUndefined();
  });
});

describe('a symptom told with a part', () => {
  const stopped = (date: string, part?: Part): Entry =>
    on(date, { kind: 'seen', machine: 'alder', symptom: 'fan-stopped', ...(part ? { part } : {}) });

  it('is kept at each part, the last time of each', () => {
    const told = [
      stopped('2026-03-02', 'board-fan'),
      stopped('2026-03-03', 'part-fan'),
      stopped('2026-03-04', 'board-fan'),
      stopped('2026-03-05'),
    ];
    const { byPart, count } = alder(...told).symptoms['fan-stopped'] ?? {};
    expect(count).toBe(4);
    expect(byPart?.['board-fan']?.entry).toBe(told[2]?.id);
    expect(byPart?.['part-fan']?.entry).toBe(told[1]?.id);
    expect(Object.keys(byPart ?? {})).toHaveLength(2);
  });

  it('told without a part is at none', () =>
    expect(alder(stopped('2026-03-05')).symptoms['fan-stopped']).not.toHaveProperty('byPart'));

  it('makes a board fan a matter of safety, and another fan not', () => {
    const checkFans = (part: Part) =>
      dueRow(alder(stopped('2026-03-10', part)), 'check-fans', contextOn('2026-03-11'));
    expect(checkFans('board-fan')).toMatchObject({ class: 'safety', state: 'overdue' });
    expect(checkFans('part-fan')).toMatchObject({ class: 'print failure', state: 'due' });
  });

  it('moves with a counter that becomes known, like every mark', () => {
    const read = on('2026-03-06', { kind: 'meter', machine: 'alder', hours: 4000 });
    const { totals, symptoms } = alder(stopped('2026-03-02', 'board-fan'), read);
    expect(symptoms['fan-stopped']?.byPart?.['board-fan']?.totals.hours).toBe(totals.hours);
  });
});

describe('a safety symptom', () => {
  const smell = seen('2026-03-02', 'burning-smell');

  it('holds the machine at once; others stand beside it', () => {
    const machine = alder(smell, seen('2026-03-03', 'smoke'), seen('2026-03-04', 'burning-smell'));
    expect(machine.hold).toMatchObject({
      symptom: 'burning-smell',
      also: ['smoke'],
      since: { entry: smell.id },
    });
  });

  it.each([
    ['that it is gone', gone('2026-03-03', 'burning-smell')],
    ['that all is well', gone('2026-03-03')],
    ['that the machine is back', say('2026-03-03', 'up')],
  ])('holds on when somebody says %s', (_what, entry) => {
    expect(alder(smell, entry).hold?.symptom).toBe('burning-smell');
  });

  it('is lifted by what was found, which is kept', () => {
    const released = on('2026-03-03', { kind: 'released', machine: 'alder', found: 'loose plug, replaced' });
    const machine = alder(smell, released);
    expect(machine.hold).toBeUndefined();
    expect(machine.symptoms['burning-smell']?.open).toBeUndefined();
    expect(machine.found).toMatchObject([{ text: 'loose plug, replaced' }]);
  });

  it('that was taken back never held it', () => {
    expect(alder(smell, on('2026-03-02', { kind: 'takenBack', target: smell.id })).hold).toBeUndefined();
  });

  it('is not the usual smell of plastic', () => {
    expect(alder(seen('2026-03-02', 'plastic-smell')).hold).toBeUndefined();
  });
});

describe('a machine out of use', () => {
  it('is back with the days that it stood still', () => {
    const machine = alder(say('2026-03-02', 'down'), say('2026-03-09', 'up'));
    expect(machine.back?.idleDays).toBe(7);
    expect(machine.downSpells).toHaveLength(1);
    expect(machine.down).toBeUndefined();
  });

  it('is out since the first word of it', () => {
    expect(alder(say('2026-03-02', 'down'), say('2026-03-05', 'down')).down?.day).toBe(20514);
  });

  it('stood still only since it last ran', () => {
    const ran = on('2026-03-07', { kind: 'usage', machine: 'alder', hours: 1 });
    expect(alder(say('2026-03-02', 'down'), ran, say('2026-03-09', 'up')).back?.idleDays).toBe(2);
  });
});

describe('a plan', () => {
  const later = on('2026-03-02', { kind: 'putOff', machine: 'alder', task: 'dust-off', until: '2026-03-20' });

  it('stands until its task is done', () => {
    expect(alder(later).putOffs['dust-off']).toMatchObject({ until: '2026-03-20' });
    expect(alder(later, done('2026-03-03', 'dust-off')).putOffs).toEqual({});
  });

  it('made after the task was done stands', () => {
    expect(alder(done('2026-03-01', 'dust-off'), later).putOffs['dust-off']).toBeDefined();
  });

  it('is not settled by another task', () => {
    expect(alder(later, done('2026-03-03', 'clean-plate')).putOffs['dust-off']).toBeDefined();
  });

  it('for the whole machine is kept by doing any of it', () => {
    const claim = on('2026-03-02', { kind: 'claimed', machine: 'alder' });
    expect(alder(claim).claimAll).toBeDefined();
    expect(alder(claim, done('2026-03-03', 'clean-plate')).claimAll).toBeUndefined();
  });
});

describe('a baseline', () => {
  it('counts from the counter figure that was stated, also before the counter was known', () => {
    const stated = on('2026-03-02', {
      kind: 'stated',
      machine: 'alder',
      task: 'grease-screw',
      on: '2026-01-20',
      hours: 3768,
    });
    const read = on('2026-03-05', { kind: 'meter', machine: 'alder', hours: 4100 });
    expect(alder(stated).tasks['grease-screw']).toMatchObject({ hoursUnknown: true });
    const since = alder(stated, read).tasks['grease-screw'];
    expect(since).toMatchObject({ why: 'stated', totals: { hours: 3768 } });
    expect(since?.hoursUnknown).toBeUndefined();
  });

  it('never replaces what was done since', () => {
    const stated = on('2026-03-04', { kind: 'stated', machine: 'alder', task: 'dust-off', on: '2026-02-01' });
    expect(alder(done('2026-03-02', 'dust-off'), stated).tasks['dust-off']?.why).toBe('done');
  });

  it('of the whole machine stands beside its tasks', () => {
    expect(alder(on('2026-03-02', { kind: 'stated', machine: 'alder' })).baseline?.why).toBe('stated');
  });
});

describe('what does not fit', () => {
  it('is an entry for a machine that nobody enrolled, told once', () => {
    const ran = on('2026-03-02', { kind: 'usage', machine: 'willow', hours: 1 });
    const { machines } = foldShop([ran, on('2026-03-03', { ...ran })], calendar);
    expect(machines.get('willow')?.conflicts).toMatchObject([{ what: 'not-enrolled' }]);
  });

  it('is an entry of a day before the machine was in use', () => {
    expect(alder(done('2025-12-30', 'dust-off')).conflicts).toMatchObject([{ what: 'before-enrolment' }]);
  });

  it('is an entry after the machine left', () => {
    const machine = alder(say('2026-03-02', 'retired'), done('2026-03-03', 'dust-off'));
    expect(machine.conflicts).toMatchObject([{ what: 'after-retirement' }]);
  });

  it('is a second enrolment, which changes nothing', () => {
    const again = { ...enrolment('alder', { feed: 'direct' as const }), inUseSince: '2026-02-01' };
    const machine = alder(again);
    expect(machine.conflicts).toMatchObject([{ what: 'enrolled-twice' }]);
    expect(machine.build).toEqual({});
  });

  it('is nothing of all this in a quiet month', () => {
    expect(alder(done('2026-03-02', 'dust-off'), say('2026-03-03', 'retired')).conflicts).toEqual([]);
  });
});

describe('a machine that comes back', () => {
  it('keeps its past and takes the counter that it comes with', () => {
    const again = entry(
      { kind: 'enrolled', machine: 'alder', build: {}, inUseSince: '2026-03-08', startHours: 12 },
      { when: '2026-03-08T11:00:00Z' },
    );
    const machine = alder(
      on('2026-03-01', { kind: 'meter', machine: 'alder', hours: 4000 }),
      done('2026-03-02', 'dust-off'),
      say('2026-03-03', 'retired'),
      again,
    );
    expect(machine).toMatchObject({
      totals: { hours: 12 },
      tasks: { 'dust-off': { totals: { hours: 12 } } },
    });
    expect(machine.retired).toBeUndefined();
    expect(machine.conflicts).toEqual([]);
  });
});

describe('a ball screw', () => {
  it('is what was greased where the build has one, whatever it was called', () => {
    const juniper = enrolment('juniper', { zDrive: 'ball-screw' });
    const greased = on('2026-03-02', { kind: 'done', machine: 'juniper', task: 'grease-screw' });
    const tasks = foldShop([juniper, greased], calendar).machines.get('juniper')?.tasks ?? {};
    expect(Object.keys(tasks)).toEqual(['grease-ball-screw']);
  });
});

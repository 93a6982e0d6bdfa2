/** What raises a task out of its turn, and what does not. */
import { describe, expect, it } from 'vitest';
import { AFTER_A_CRASH } from '../../../src/maintenance/care/bundles.ts';
import type { Task } from '../../../src/maintenance/codes.ts';
import { dueRow, machineDue, raisedRows } from '../../../src/maintenance/due/rows.ts';
import { BUILDS } from '../../support/builds.ts';
import type { DemoMachine } from '../../support/builds.ts';
import { TODAY, contextOn, recordOf, sixDaysAWeek } from '../../support/machines.ts';
import type { Story } from '../../support/machines.ts';

const on = (machine: DemoMachine, task: Task, story: Story, date = TODAY) =>
  dueRow(recordOf(machine, BUILDS[machine], story, date), task, contextOn(date));

describe('a symptom', () => {
  const jam: Story = { seen: { 'no-extrusion': ['2026-03-09 15:00'] } };

  it('raises its tasks at once, by its own entry', () => {
    const row = on('birch', 'check-tube', { ...jam, done: { 'check-tube': '2026-03-01' } });
    expect(row).toMatchObject({ state: 'due', trigger: 'raised', share: 1, raised: { daysAgo: 2 } });
    expect(row?.raisedBy).toBe(row?.raised?.mark.entry);
  });
  it('is settled by the deed that came after it', () =>
    expect(on('birch', 'check-tube', { ...jam, done: { 'check-tube': '2026-03-09 16:00' } })).toMatchObject({
      state: 'fine',
      raisedBy: null,
    }));
  it('told in one breath with the deed, raises nothing: "cleared a jam, cleaned the feeder"', () =>
    expect(
      on('birch', 'clean-feeder', { ...jam, done: { 'clean-feeder': '2026-03-09 15:00' } })?.raisedBy,
    ).toBeNull());
  it('raises only what the machine has', () => expect(on('cedar', 'check-tube', jam)).toBeUndefined());
  it('leaves the trigger to an interval that has gone further', () => {
    const row = on('birch', 'clean-feeder', { ...jam, done: { 'clean-feeder': '2025-12-01' } });
    expect(row).toMatchObject({ trigger: 'days', used: 100, state: 'overdue' });
    expect(row?.raisedBy).not.toBeNull();
  });
  it('waits a tenth of the task’s own days before it is overdue', () => {
    const story: Story = { ...jam, done: { 'clean-feeder': '2026-03-01' } };
    expect(on('birch', 'clean-feeder', story, '2026-03-15')?.state).toBe('due');
    expect(on('birch', 'clean-feeder', story, '2026-03-16')?.state).toBe('overdue');
  });
  it('of the wrong kind raises nothing: a burning smell asks for no new filter', () => {
    const story: Story = {
      seen: { 'burning-smell': ['2026-03-10'] },
      done: { 'replace-filter': '2026-02-20' },
    };
    expect(on('elm', 'replace-filter', story)?.raisedBy).toBeNull();
    const stale: Story = {
      seen: { 'plastic-smell': ['2026-03-10'] },
      done: { 'replace-filter': '2026-02-20' },
    };
    expect(on('elm', 'replace-filter', stale)?.raisedBy).not.toBeNull();
  });
});

describe('a safety symptom', () => {
  const smoke: Story = { seen: { smoke: ['2026-03-10 22:40'] }, done: { 'check-wiring': '2026-03-01' } };
  it('raises the wiring, due the same night', () => {
    const night = { ...contextOn('2026-03-10'), now: Date.parse('2026-03-10T22:00:00Z') };
    const record = recordOf('cedar', BUILDS.cedar, smoke);
    expect(dueRow(record, 'check-wiring', night)).toMatchObject({ state: 'due', class: 'safety' });
  });
  it('has no grace: overdue the next morning', () =>
    expect(on('cedar', 'check-wiring', smoke)).toMatchObject({ state: 'overdue', trigger: 'raised' }));
});

describe('more than one of a kind', () => {
  const jams = (...whens: string[]): Story => ({
    ran: sixDaysAWeek(5), seen: { 'no-extrusion': whens }, swapped: { nozzle: '2025-12-01' }, done: { 'check-liner': '2026-01-05' },
  }); // prettier-ignore
  it('a second jam within 50 h raises the liner, a lone one does not', () => {
    expect(on('birch', 'check-liner', jams('2026-03-02'))).toBeUndefined();
    expect(on('birch', 'check-liner', jams('2026-03-02', '2026-03-09'))).toMatchObject({ trigger: 'raised' });
  });
  it('a second jam after more than 50 h does not', () =>
    expect(on('birch', 'check-liner', jams('2026-02-10', '2026-03-09'))).toBeUndefined());
  it('jams before the last look count no more', () => {
    const story = { ...jams('2026-03-02', '2026-03-09'), done: { 'check-liner': '2026-03-06' } };
    expect(on('birch', 'check-liner', story)).toBeUndefined();
  });
  it('two layer shifts in 30 days raise the belt, in 31 not', () => {
    const shifts = (first: string): Story => ({
      seen: { 'layer-shift': [first, '2026-03-10'] }, done: { 'check-belt': '2026-01-01' },
    }); // prettier-ignore
    expect(on('hazel', 'check-belt', shifts('2026-02-08'))?.raisedBy).not.toBeNull();
    expect(on('hazel', 'check-belt', shifts('2026-02-07'))?.raisedBy).toBeNull();
  });
  it('ground filament twice after cleaning raises the gear; once before and once after does not', () => {
    const ground = (...whens: string[]): Story => ({
      seen: { 'ground-filament': whens }, done: { 'clean-feeder': '2026-03-01', 'check-feeder-gear': '2026-01-01' },
    }); // prettier-ignore
    expect(on('hazel', 'check-feeder-gear', ground('2026-03-03', '2026-03-08'))?.raisedBy).not.toBeNull();
    expect(on('hazel', 'check-feeder-gear', ground('2026-02-25', '2026-03-08'))?.raisedBy).toBeNull();
  });
});

describe('what was raised on a machine', () => {
  it('is the raised rows of its list, in the same order, without forecasts', () => {
    const record = recordOf('birch', BUILDS.birch, {
      ran: sixDaysAWeek(5),
      baseline: '2026-03-01',
      seen: { crash: ['2026-03-10'], 'no-extrusion': ['2026-03-09'] },
      swapped: { nozzle: '2026-03-10' },
    });
    const raised = machineDue(record, contextOn()).filter((row) => row.raised);
    expect(raised.length).toBeGreaterThan(8);
    expect(raisedRows(record, contextOn())).toEqual(raised.map((row) => ({ ...row, forecast: null })));
  });
  it('is nothing where nothing happened, however much is overdue', () => {
    const record = recordOf('birch', BUILDS.birch, { baseline: '2025-07-01' });
    expect(machineDue(record, contextOn()).some(({ state }) => state === 'overdue')).toBe(true);
    expect(raisedRows(record, contextOn())).toEqual([]);
  });
});

describe('a crash', () => {
  it('raises its bundle as far as the machine has it, in order', () => {
    const rows = machineDue(
      recordOf('birch', BUILDS.birch, { seen: { crash: ['2026-03-10'] } }),
      contextOn(),
    );
    const bundle = rows.filter((row) => row.raised?.bundle === 'crash').map(({ task }) => task);
    const has = AFTER_A_CRASH.filter((task) => task !== 'check-probe' && task !== 'square-gantry');
    expect(bundle.toSorted()).toEqual([...has].toSorted());
  });
});

describe('deeds and parts', () => {
  it('a new nozzle raises the first layer and the heater check', () => {
    const story: Story = { swapped: { nozzle: '2026-03-10' } };
    expect(on('alder', 'check-first-layer', story)).toMatchObject({
      state: 'due',
      raised: { event: { swapped: 'nozzle' } },
    });
    expect(on('alder', 'check-heater', story)?.raisedBy).not.toBeNull();
  });
  it('grease on a plastic nut raises the wipe', () => {
    const story: Story = { done: { 'grease-screw': '2026-03-10', 'clean-screw': '2026-03-01' } };
    expect(on('birch', 'clean-screw', story)).toMatchObject({ state: 'due', trigger: 'raised' });
  });
  it('new firmware raises the protection test, the feeder’s calibration and the first layer', () => {
    const story: Story = { done: { 'update-firmware': '2026-03-10', 'test-protection': '2026-01-01' } };
    for (const task of ['test-protection', 'calibrate-feeder', 'check-first-layer'] as const)
      expect(on('cedar', task, story)?.raisedBy).not.toBeNull();
  });
  it('an abrasive spool that came off raises the feeder; one still on does not', () => {
    const spool = (material: 'pla' | 'nylon-cf'): Story => ({
      ran: sixDaysAWeek(2), material: 'nylon-cf', done: { 'clean-feeder': '2026-03-05' }, loaded: { material, on: '2026-03-10' },
    }); // prettier-ignore
    expect(on('cedar', 'clean-feeder', spool('pla'))?.raisedBy).not.toBeNull();
    expect(on('cedar', 'clean-feeder', spool('nylon-cf'))?.raisedBy).toBeNull();
  });
  it('a thirsty spool asks for drying, a pla spool does not', () => {
    expect(on('cedar', 'dry-filament', { loaded: { material: 'nylon', on: '2026-03-10' } })?.state).toBe(
      'due',
    );
    expect(on('cedar', 'dry-filament', { loaded: { material: 'pla', on: '2026-03-10' } })).toBeUndefined();
  });
  it('a part that makes it graver: a board fan that stands still is a matter of safety', () => {
    const stopped = (part: 'board-fan' | 'part-fan'): Story => ({
      seenAt: { 'fan-stopped': { part, on: '2026-03-10' } },
    });
    expect(on('elm', 'check-fans', stopped('board-fan'))).toMatchObject({
      class: 'safety',
      state: 'overdue',
    });
    expect(on('elm', 'check-fans', stopped('part-fan'))).toMatchObject({
      class: 'print failure',
      state: 'due',
    });
  });
});

describe('back after standing', () => {
  const back = (idleDays: number): Story => {
    const mark = recordOf('x', {}, {}).enrolled;
    if (!mark) throw new Error('the builder enrols every machine');
    return {
      baseline: '2025-12-01',
      more: { back: { ...mark, at: Date.parse('2026-03-10T08:00Z'), day: 20_522, idleDays } },
    };
  };
  const bundle = (days: number) =>
    machineDue(recordOf('birch', BUILDS.birch, back(days)), contextOn())
      .filter((row) => row.raised?.bundle === 'standing')
      .map(({ task }) => task);
  it('for 30 days raises a look at what stood, not for 29', () => {
    expect(bundle(30).toSorted()).toEqual(['check-first-layer', 'check-wheels', 'dust-off']);
    expect(bundle(29)).toEqual([]);
  });
});

describe('a single look after an event', () => {
  const belt: Story = { ran: sixDaysAWeek(5), swapped: { 'x-belt': '2026-02-25' }, baseline: '2026-02-20' };
  it('comes 50 h after a new belt', () => {
    expect(on('hazel', 'tension-belts', belt, '2026-03-07')).toMatchObject({
      trigger: 'once',
      used: 45,
      state: 'coming-up',
    });
    expect(on('hazel', 'tension-belts', belt, '2026-03-09')).toMatchObject({
      trigger: 'once',
      used: 50,
      state: 'due',
    });
  });
  it('is not settled by tensioning at the swap, but by tensioning late enough', () => {
    const tensioned = (date: string): Story => ({ ...belt, done: { 'tension-belts': date } });
    expect(on('hazel', 'tension-belts', tensioned('2026-02-26'), '2026-03-10')?.trigger).toBe('once');
    expect(on('hazel', 'tension-belts', tensioned('2026-03-06'), '2026-03-10')?.trigger).not.toBe('once');
  });
});

describe('the run-in', () => {
  const rowan = (date: string, more: Story = {}) =>
    recordOf('rowan', BUILDS.rowan, { new: true, from: '2026-02-16', ran: sixDaysAWeek(4), ...more }, date);
  const runIn = (date: string, more: Story = {}) => dueRow(rowan(date, more), 'run-in', contextOn(date));

  it('is due at 20 h, not at 16', () => {
    expect(runIn('2026-02-20')).toMatchObject({
      used: 16,
      interval: 20,
      state: 'fine',
      class: 'safety',
    });
    expect(runIn('2026-02-21')).toMatchObject({ used: 20, trigger: 'once', state: 'due' });
  });
  it('is due again at 50 h once the first was done', () => {
    const first: Story = { done: { 'run-in': '2026-02-21' } };
    expect(runIn('2026-02-23', first)).toMatchObject({ used: 24, interval: 50 });
    expect(runIn('2026-03-03', first)).toMatchObject({ used: 52, state: 'due' });
  });
  it('is over once the second was done', () =>
    expect(runIn('2026-03-06', { done: { 'run-in': '2026-03-03' } })).toBeUndefined());
  it('counts as done for its parts: one line, not seven', () => {
    const record = rowan('2026-02-28', { done: { 'run-in': '2026-02-27' } });
    for (const task of ['check-wheels', 'tighten-pulleys', 'check-fasteners', 'check-wiring'] as const)
      expect(dueRow(record, task, contextOn('2026-02-28'))).toMatchObject({
        used: 1,
        since: { why: 'done' },
      });
  });
  it('comes again when a machine was moved', () => {
    const moved: Story = { ran: sixDaysAWeek(5), seen: { moved: ['2026-03-01'] } };
    expect(on('alder', 'run-in', moved)).toMatchObject({ used: 40, state: 'overdue' });
    expect(on('alder', 'run-in', { ran: sixDaysAWeek(5) })).toBeUndefined();
  });
  it('asks for the protection test of a new machine at once', () => {
    expect(dueRow(rowan('2026-02-17'), 'test-protection', contextOn('2026-02-17'))).toMatchObject({
      state: 'overdue',
      raised: { event: { started: true } },
    });
    const tested = rowan('2026-02-17', { done: { 'test-protection': '2026-02-16 15:00' } });
    expect(dueRow(tested, 'test-protection', contextOn('2026-02-17'))?.state).toBe('fine');
  });
});

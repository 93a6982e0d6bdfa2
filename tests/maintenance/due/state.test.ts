/** From one state to the next, each with the day before and the day after. */
import { describe, expect, it } from 'vitest';
import { dueRow, dueRows, machineDue } from '../../../src/maintenance/due/rows.ts';
import { BUILDS } from '../../support/builds.ts';
import { TODAY, contextOn, emptyRoom, recordOf, shopOf, sixDaysAWeek } from '../../support/machines.ts';
import type { Story } from '../../support/machines.ts';
import type { Task } from '../../../src/maintenance/codes.ts';
import type { MachineRecord } from '../../../src/maintenance/record/record.ts';

const own = (task: Task, interval: object, source: 'manual' | 'workshop' = 'workshop') => {
  const mark = recordOf('x', {}).enrolled;
  return { intervals: { [task]: { interval, source, mark } } } as Partial<MachineRecord>;
};
const alder = (story: Story, date = TODAY) => recordOf('alder', BUILDS.alder, story, date);
const on = (date: string, task: Task, story: Story) => dueRow(alder(story, date), task, contextOn(date));

describe('days', () => {
  const weekly: Story = { done: { 'dust-off': '2026-03-04' }, more: own('dust-off', { days: 7 }) };

  it('a seven-day task done on the 4th is not due on the 10th', () =>
    expect(on('2026-03-10', 'dust-off', weekly)).toMatchObject({ state: 'coming-up', used: 6, interval: 7 }));
  it('is due all of the 11th', () => {
    expect(on('2026-03-11', 'dust-off', weekly)).toMatchObject({ state: 'due', used: 7, share: 1 });
    const night = { ...contextOn('2026-03-11'), now: Date.parse('2026-03-11T22:59:00Z') };
    expect(dueRow(alder(weekly), 'dust-off', night)?.state).toBe('due');
    const justAfterMidnight = { ...contextOn('2026-03-11'), now: Date.parse('2026-03-10T23:01:00Z') };
    expect(dueRow(alder(weekly), 'dust-off', justAfterMidnight)?.state).toBe('due');
  });
  it('has at least one day of grace: overdue from the 13th', () => {
    expect(on('2026-03-12', 'dust-off', weekly)).toMatchObject({ state: 'due', grace: 1 });
    expect(on('2026-03-13', 'dust-off', weekly)).toMatchObject({ state: 'overdue', used: 9 });
  });
  it('has a tenth of its interval of grace where that is more than a day', () => {
    const story: Story = { done: { 'tighten-pulleys': '2025-12-02' } };
    expect(on('2026-03-01', 'tighten-pulleys', story)).toMatchObject({ state: 'coming-up', used: 89 });
    expect(on('2026-03-02', 'tighten-pulleys', story)).toMatchObject({ state: 'due', grace: 9 });
    expect(on('2026-03-11', 'tighten-pulleys', story)).toMatchObject({ state: 'due', used: 99 });
    expect(on('2026-03-12', 'tighten-pulleys', story)).toMatchObject({ state: 'overdue', used: 100 });
  });
  it('is coming up a week before, not eight days before', () => {
    const story: Story = { done: { 'dust-off': '2026-02-16' } };
    expect(on('2026-03-12', 'dust-off', story)?.state).toBe('coming-up');
    expect(on('2026-03-11', 'dust-off', story)?.state).toBe('coming-up');
    expect(on('2026-03-10', 'dust-off', story)?.state).toBe('fine');
    const two = { ...contextOn('2026-03-10'), lookAheadDays: 8 };
    expect(dueRow(alder(story, '2026-03-10'), 'dust-off', two)?.state).toBe('coming-up');
  });
  it('counts local dates over the change to summer time', () => {
    const story: Story = { done: { 'dust-off': '2026-03-27 23:30' }, more: own('dust-off', { days: 7 }) };
    expect(on('2026-04-02', 'dust-off', story)?.used).toBe(6);
    expect(on('2026-04-03', 'dust-off', story)).toMatchObject({ state: 'due', used: 7 });
  });
});

describe('hours', () => {
  // four hours on each of six days a week; 299.5, 300 and 330 h come by one long day
  const after = (hours: number): Story => ({
    ran: (day) => (day === 20_515 ? hours : 0), // 2026-03-03
    done: { 'lubricate-rods': '2026-03-01' },
  });
  const rods = (hours: number) => on(TODAY, 'lubricate-rods', after(hours));

  it('is due at its interval, not half an hour before', () => {
    expect(rods(299.5)?.state).toBe('fine');
    expect(rods(300)).toMatchObject({ state: 'due', trigger: 'hours', used: 300, unit: 'h' });
  });
  it('is overdue beyond a tenth more', () => {
    expect(rods(330)).toMatchObject({ state: 'due', grace: 30 });
    expect(rods(332)).toMatchObject({ state: 'overdue', used: 332, share: 332 / 300 });
  });
  it('is due although the sums of logged hours fall a hair short', () => {
    expect(rods(300 - 1e-10)?.state).toBe('due');
  });
  it('a look pays from 150 h: oil only if dry', () => {
    expect(rods(149)?.lookPays).toBeUndefined();
    expect(rods(150)).toMatchObject({ state: 'fine', lookPays: true });
  });
  it('whichever comes first: 180 days with few hours', () => {
    const story: Story = { ran: sixDaysAWeek(0.5), done: { 'lubricate-rods': '2025-09-12' } };
    expect(on(TODAY, 'lubricate-rods', story)).toMatchObject({ state: 'due', trigger: 'days', used: 180 });
  });
});

describe('run-days', () => {
  it('do not count days on which it stood', () => {
    const weekends: Story = {
      ran: (_, weekday) => (weekday > 4 ? 5 : 0),
      done: { 'level-bed': '2026-02-16' },
    };
    expect(on(TODAY, 'level-bed', weekends)).toMatchObject({ state: 'coming-up', used: 6, interval: 7 });
    expect(on('2026-03-15', 'level-bed', weekends)).toMatchObject({ state: 'due', used: 7 });
  });
  it('debris waits for the day after a day with printing', () => {
    const story: Story = { ran: sixDaysAWeek(5), done: { 'clear-debris': '2026-03-10 17:00' } };
    expect(on('2026-03-11', 'clear-debris', story)).toMatchObject({ state: 'due', used: 1 });
    const idleDay: Story = { ...story, ran: (_, weekday) => (weekday === 0 ? 5 : 0) };
    expect(on('2026-03-11', 'clear-debris', idleDay)).toMatchObject({ state: 'fine', used: 0 });
  });
  it('the room may clear it for all machines at once', () => {
    const shop = shopOf(
      [alder({ ran: sixDaysAWeek(5), done: { 'clear-debris': '2026-03-02' } })],
      emptyRoom({ done: { 'clear-debris': '2026-03-10 20:00' } }),
    );
    const debris = dueRows(shop, contextOn()).find(({ task }) => task === 'clear-debris');
    expect(debris).toMatchObject({ machine: 'alder', state: 'fine' });
  });
});

describe('no record', () => {
  it('is neither overdue nor fine: nothing used, nothing forecast', () => {
    expect(on(TODAY, 'lubricate-rods', { ran: sixDaysAWeek(5) })).toMatchObject({
      state: 'no-record', share: null, used: null, since: null, forecast: null, all: [], raisedBy: null,
    }); // prettier-ignore
  });
  it('ends with a baseline: all fine as of that day', () => {
    const row = on(TODAY, 'lubricate-rods', { ran: sixDaysAWeek(5), baseline: '2026-03-02' });
    expect(row).toMatchObject({ state: 'fine', since: { why: 'stated' }, used: 40 });
  });
  it('a baseline makes no part young: a nozzle with a known age keeps it', () => {
    const story: Story = {
      ran: sixDaysAWeek(5), swapped: { nozzle: '2025-10-01' }, baseline: '2026-03-10',
    }; // prettier-ignore
    const row = on(TODAY, 'replace-nozzle', story);
    expect(row).toMatchObject({ since: { why: 'swapped' } });
    expect(row?.used).toBeGreaterThan(100);
  });
  it('a task that something made due is due, record or not', () => {
    const story: Story = { seen: { 'no-extrusion': ['2026-03-10'] } };
    expect(on(TODAY, 'clean-feeder', story)).toMatchObject({ state: 'due', since: null, trigger: 'raised' });
  });
  it('a new machine counts from its start instead', () => {
    const rowan = recordOf('rowan', BUILDS.rowan, { new: true, from: '2026-02-18', ran: sixDaysAWeek(5) });
    const row = dueRow(rowan, 'check-wheels', contextOn());
    expect(row).toMatchObject({ since: { why: 'started', hours: 0 }, used: 21, trigger: 'days' });
  });
  it('hours of a stated date may be unknown: days count alone', () => {
    const story: Story = {
      ran: sixDaysAWeek(5),
      done: { 'lubricate-rods': { on: '2025-12-11', why: 'stated', hoursUnknown: true } },
    };
    const row = on(TODAY, 'lubricate-rods', story);
    expect(row).toMatchObject({ trigger: 'days', used: 90, since: { why: 'stated' } });
    expect(row?.since).not.toHaveProperty('hours');
    expect(row?.all).toHaveLength(1);
  });
});

describe('what a look found', () => {
  const looked = (finding: 'fine' | 'watch' | 'bad'): Story => ({
    done: { 'check-tube': { on: '2026-02-01', finding } },
  });
  it('watch halves the next interval', () => {
    expect(on(TODAY, 'check-tube', looked('fine'))).toMatchObject({ interval: 90, state: 'fine' });
    expect(on(TODAY, 'check-tube', looked('watch'))).toMatchObject({ interval: 45, watched: true });
    expect(on('2026-03-18', 'check-tube', looked('watch'))?.state).toBe('due');
  });
  it('bad raises the remedy: a Bowden tube is cut back', () => {
    expect(on(TODAY, 'trim-tube', looked('bad'))).toMatchObject({ trigger: 'raised' });
    expect(on(TODAY, 'trim-tube', looked('watch'))).toBeUndefined();
    expect(on(TODAY, 'replace-guide-tube', looked('bad'))?.raisedBy).toBeNull();
  });
  it('without length left for a trim the tube is replaced', () => {
    const short = { ...BUILDS.alder, tubeLengthMm: 412, tubeNeededMm: 400 };
    const trimmed = (tubeTrims: number) => {
      const record = recordOf('alder', short, { ...looked('bad'), more: { tubeTrims } });
      return [dueRow(record, 'trim-tube', contextOn()), dueRow(record, 'replace-guide-tube', contextOn())];
    };
    expect(trimmed(1).map((row) => row?.raisedBy ?? null)).toEqual([expect.any(String), null]);
    expect(trimmed(2).map((row) => row?.raisedBy ?? null)).toEqual([null, expect.any(String)]);
  });
  it('bad without a remedy of its own stays open until something is mended', () => {
    const bad: Story = { done: { 'check-fans': { on: '2026-03-09', finding: 'bad' } } };
    expect(on(TODAY, 'check-fans', bad)).toMatchObject({ state: 'due', trigger: 'raised' });
    const mended: Story = { ...bad, swapped: { 'part-fan': '2026-03-10' } };
    expect(on(TODAY, 'check-fans', mended)).toMatchObject({ state: 'fine', raisedBy: null });
  });
});

describe('a faster interval', () => {
  const story = (material: 'pla' | 'nylon-cf'): Story => ({
    ran: sixDaysAWeek(2), material, done: { 'dust-off': '2026-02-20' },
  }); // prettier-ignore
  it('holds while carbon runs, and only then', () => {
    expect(on(TODAY, 'dust-off', story('pla'))).toMatchObject({ state: 'fine', interval: 30 });
    expect(on(TODAY, 'dust-off', story('nylon-cf'))).toMatchObject({
      state: 'overdue',
      interval: 14,
      faster: true,
    });
  });
  it('ends with the filament: what ran before the last look does not count', () => {
    const record = alder({
      ran: (day) => (day < 20_490 ? 4 : 0),
      material: 'nylon-cf',
      done: { 'dust-off': '2026-03-01' },
    });
    expect(dueRow(record, 'dust-off', contextOn())).toMatchObject({ interval: 30 });
  });
  it('begins when the spool is mounted', () => {
    const record = alder({
      done: { 'dust-off': '2026-03-01' },
      loaded: { material: 'pla-cf', on: '2026-03-10' },
    });
    expect(dueRow(record, 'dust-off', contextOn())).toMatchObject({ interval: 14 });
  });
});

describe('whose interval', () => {
  it('one that was set for the machine stands for that of common practice, and is named', () => {
    const story: Story = {
      ran: sixDaysAWeek(5), done: { 'tension-belts': '2026-01-12' }, more: own('tension-belts', { hours: 200 }, 'manual'),
    }; // prettier-ignore
    expect(on(TODAY, 'tension-belts', story)).toMatchObject({
      source: 'manual', interval: 200, trigger: 'hours', state: 'overdue',
    }); // prettier-ignore
    expect(on(TODAY, 'tension-belts', story)?.all).toHaveLength(1);
  });
  it('wear still counts beside it', () => {
    const story: Story = {
      ran: sixDaysAWeek(5), material: 'pla-cf', swapped: { nozzle: '2026-03-02' }, more: own('replace-nozzle', { runDays: 300 }),
    }; // prettier-ignore
    expect(on(TODAY, 'replace-nozzle', story)).toMatchObject({
      trigger: 'dose',
      state: 'overdue',
      source: 'workshop',
    });
  });
});

describe('standing machines', () => {
  it('idle: days run, hours stand', () => {
    const story: Story = { down: '2026-02-01', done: { 'dust-off': '2026-01-20' }, baseline: '2026-01-20' };
    expect(on(TODAY, 'dust-off', story)).toMatchObject({ idle: true, state: 'overdue' });
    expect(on(TODAY, 'clean-plate', story)).toMatchObject({ idle: true, used: 0, forecast: null });
  });
  it('retired: nothing is due on it any more', () => {
    const gone = alder({ baseline: '2025-06-02' });
    expect(machineDue({ ...gone, retired: gone.enrolled ?? never() }, contextOn())).toEqual([]);
  });
});

const never = (): never => {
  throw new Error('the builder enrols every machine');
};

describe('the room', () => {
  it('has its own tasks, and machines have none of them', () => {
    const room = emptyRoom({ done: { 'test-smoke-detector': '2026-02-01' } });
    const tasks = machineDue(room, contextOn());
    expect(tasks).toHaveLength(6);
    expect(tasks[0]).toMatchObject({
      task: 'test-smoke-detector',
      state: 'overdue',
      class: 'safety',
      used: 38,
    });
    expect(dueRow(room, 'dust-off', contextOn())).toBeUndefined();
  });
});

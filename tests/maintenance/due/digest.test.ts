/** The digest: what it lists, what it keeps to one line, and what stays out. */
import { describe, expect, it } from 'vitest';
import { digestOf } from '../../../src/maintenance/due/digest.ts';
import { digestJson } from '../../../src/maintenance/due/digestJson.ts';
import type { MachineRecord, Mark } from '../../../src/maintenance/record/record.ts';
import { BUILDS } from '../../support/builds.ts';
import {
  allDone,
  calendar,
  contextOn,
  emptyRoom,
  recordOf,
  shopOf,
  sixDaysAWeek,
} from '../../support/machines.ts';
import type { Story } from '../../support/machines.ts';

const ROOM = emptyRoom({ baseline: '2026-03-10' });
const digest = (machines: readonly MachineRecord[], room = ROOM) =>
  digestOf(shopOf(machines, room), contextOn());
const markOn = (on: string): Mark => {
  const { down } = recordOf('x', {}, { down: on });
  if (!down) throw new Error('the builder marks it down');
  return down;
};
const FRESH = '2026-03-10 20:00';
const birch = ({ done, ...story }: Story = {}) =>
  recordOf('birch', BUILDS.birch, { ...story, done: { ...allDone(BUILDS.birch, FRESH), ...done } });

describe('machines in a state', () => {
  it('held ones come with what was told, out-of-use ones with what was seen, open ones with whose hands', () => {
    const since = markOn('2026-03-10 22:40');
    const told = digest([
      birch({
        more: { hold: { symptom: 'smoke', also: ['hot-connector'], since, told: [], last: since.at } },
      }),
      recordOf('cedar', BUILDS.cedar, {
        down: '2026-03-09',
        more: { symptoms: { 'no-heat': { open: since, recent: [since], count: 1 } } },
      }),
      recordOf('elm', BUILDS.elm, { baseline: '2026-03-10', more: { opened: markOn('2026-03-11 07:10') } }),
    ]);
    expect(told.held).toMatchObject([
      { machine: 'birch', symptom: 'smoke', also: ['hot-connector'], by: 'ines' },
    ]);
    expect(told.outOfUse).toMatchObject([{ machine: 'cedar', because: ['no-heat'] }]);
    expect(told.open).toMatchObject([{ machine: 'elm', by: 'ines' }]);
  });
  it('an idle machine’s tasks are one line, not rows', () => {
    const cedar = recordOf('cedar', BUILDS.cedar, { down: '2026-02-01', baseline: '2025-06-02' });
    const told = digest([cedar]);
    expect(told.outOfUse[0]?.before).toContain('check-wiring');
    expect(told.outOfUse[0]?.before).toContain('dust-off');
    expect([...told.overdue, ...told.due, ...told.comingUp]).toEqual([]);
    expect(told.round).toEqual([]);
  });
  it('a retired machine is in none of it', () => {
    const gone = birch({
      baseline: '2025-06-02',
      down: '2026-01-01',
      more: { retired: markOn('2026-03-01') },
    });
    const told = digest([gone]);
    expect([told.outOfUse, told.overdue, told.noRecord.tasks]).toEqual([[], [], 0]);
  });
});

describe('no record', () => {
  it('is a count, except safety tasks, which are listed until a first check', () => {
    const { noRecord, overdue, due } = digest([recordOf('birch', BUILDS.birch)]);
    expect(noRecord.machines).toBe(1);
    expect(noRecord.tasks).toBeGreaterThan(10);
    expect(noRecord.safety.map(({ task }) => task).toSorted()).toEqual([
      'check-heater', 'check-mains-lead', 'check-wiring', 'test-protection',
    ]); // prettier-ignore
    expect([...overdue, ...due]).toEqual([]);
  });
  it('ends with a baseline', () => {
    const { noRecord } = digest([birch()]);
    expect(noRecord).toEqual({ tasks: 0, machines: 0, safety: [] });
  });
  it('of the room is listed too', () =>
    expect(digest([], emptyRoom()).noRecord.safety.map(({ machine }) => machine)).toEqual(
      Array(6).fill('room'),
    ));
});

describe('one line', () => {
  const ran: Story = { ran: sixDaysAWeek(5), done: { 'clear-debris': '2026-03-10 07:00' } };
  it('clears the debris of all machines', () => {
    const told = digest([
      birch(ran),
      recordOf('hazel', BUILDS.hazel, { ...ran, done: { ...allDone(BUILDS.hazel, FRESH), ...ran.done } }),
    ]);
    const debris = [...told.overdue, ...told.due].filter(({ task }) => task === 'clear-debris');
    expect(debris).toMatchObject([{ machine: 'room', machines: ['birch', 'hazel'], minutes: 2 }]);
    expect(told.round).toMatchObject([{ machine: 'room', tasks: ['clear-debris'], minutes: 2 }]);
  });
  it('of one machine keeps its name', () => {
    const debris = digest([birch(ran)]).due.filter(({ task }) => task === 'clear-debris');
    expect(debris).toMatchObject([{ machine: 'birch' }]);
  });
  it('the run-in stands for its parts', () => {
    const rowan = recordOf('rowan', BUILDS.rowan, {
      new: true, from: '2026-01-05', ran: (day) => (day % 7 === 4 ? 3 : 0), done: { 'test-protection': '2026-01-05 15:00' },
    }); // prettier-ignore
    const told = digest([rowan]);
    const tasks = [...told.overdue, ...told.due].map(({ task }) => task);
    expect(tasks).toContain('run-in');
    expect(tasks).not.toContain('check-wheels');
    expect(tasks).toContain('dust-off');
  });
});

describe('as JSON', () => {
  it('has the fixed fields, dates as text, figures rounded', () => {
    const dusty = birch({ ran: sixDaysAWeek(5), done: { 'dust-off': '2026-01-20' } });
    const json = digestJson(digest([dusty]), calendar);
    expect(Object.keys(json)).toEqual([
      'date', 'held', 'outOfUse', 'open', 'overdue', 'due', 'comingUp', 'noRecord', 'round', 'fetch', 'shelf',
      'cautions', 'minutes', 'left',
    ]); // prettier-ignore
    const dust = json.overdue.find(({ task }) => task === 'dust-off');
    expect(dust).toEqual({
      machine: 'birch', task: 'dust-off', state: 'overdue', idle: false, class: 'print failure', share: 1.6667,
      trigger: 'days', used: 50, interval: 30, unit: 'days', grace: 3,
      since: { at: '2026-01-20T12:00:00+01:00', hours: 995, why: 'done' },
      all: [{ trigger: 'days', used: 50, interval: 30, share: 1.6667 }],
      source: 'common practice', raisedBy: null, putOff: null, minutes: 10,
      forecast: { p10: '2026-02-19', p50: '2026-02-19', p90: '2026-02-19' },
    }); // prettier-ignore
    expect(JSON.parse(JSON.stringify(json))).toEqual(json);
  });
});

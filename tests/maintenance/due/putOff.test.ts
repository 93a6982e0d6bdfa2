/** Putting off, and what cannot be put off. */
import { describe, expect, it } from 'vitest';
import type { Task } from '../../../src/maintenance/codes.ts';
import { isSafety, latestPutOff, planned } from '../../../src/maintenance/due/plan.ts';
import { dueRow } from '../../../src/maintenance/due/rows.ts';
import type { MachineRecord, PutOff } from '../../../src/maintenance/record/record.ts';
import { BUILDS } from '../../support/builds.ts';
import { TODAY, contextOn, emptyRoom, recordOf, sixDaysAWeek } from '../../support/machines.ts';
import type { Story } from '../../support/machines.ts';

const saidOn = (date: string): PutOff['mark'] => {
  const { enrolled } = recordOf('x', {}, { from: date });
  if (!enrolled) throw new Error('the builder enrols every machine');
  return enrolled;
};
const putOff = (task: Task, to: Omit<PutOff, 'mark'>, said = '2026-03-10'): Partial<MachineRecord> => ({
  putOffs: { [task]: { ...to, mark: saidOn(said) } },
});
const alder = (story: Story, date = TODAY) => recordOf('alder', BUILDS.alder, story, date);
const on = (date: string, task: Task, story: Story) => dueRow(alder(story, date), task, contextOn(date));

describe('a task that was put off', () => {
  const late: Story = {
    done: { 'dust-off': '2026-01-20' },
    more: putOff('dust-off', { until: '2026-03-13', reason: 'show week' }),
  };
  it('waits until the day, and is back on it', () => {
    expect(on('2026-03-12', 'dust-off', late)).toMatchObject({
      state: 'put-off',
      putOff: { until: '2026-03-13', by: 'ines', reason: 'show week' },
    });
    expect(on('2026-03-13', 'dust-off', late)).toMatchObject({ state: 'overdue', putOff: null });
  });
  it('waits for a counter', () => {
    const story = (atHours: number): Story => ({
      ran: sixDaysAWeek(5), startHours: 1000, from: '2026-03-02', done: { 'dust-off': '2026-01-20' },
      more: putOff('dust-off', { atHours }),
    }); // prettier-ignore
    expect(on(TODAY, 'dust-off', story(1041))?.state).toBe('put-off');
    expect(on(TODAY, 'dust-off', story(1040))?.state).toBe('overdue');
  });
  it('is done with once the deed is done', () => {
    const done: Story = { ...late, done: { 'dust-off': '2026-03-11 06:00' } };
    expect(on(TODAY, 'dust-off', done)).toMatchObject({ state: 'fine', putOff: null });
  });
  it('comes back when something new raises it', () => {
    const howling: Story = { ...late, seen: { 'fan-noise': ['2026-03-11 07:00'] } };
    expect(on(TODAY, 'dust-off', howling)?.state).toBe('overdue');
    const known: Story = { ...late, seen: { 'fan-noise': ['2026-03-09'] } };
    expect(on(TODAY, 'dust-off', known)?.state).toBe('put-off');
  });
  it('may be the machine as a whole, whose safety checks stay', () => {
    const all: Story = {
      baseline: '2026-01-20', more: { putOffAll: { until: '2026-03-13', mark: saidOn('2026-03-10') } },
    }; // prettier-ignore
    expect(on(TODAY, 'dust-off', all)?.state).toBe('put-off');
    expect(on(TODAY, 'check-wiring', all)?.state).not.toBe('put-off');
  });
});

describe('a safety task', () => {
  const wiring = (date: string): Story => ({ done: { 'check-wiring': date } });
  it('may wait to the end of its grace: 60 days and 6', () => {
    expect(latestPutOff(alder(wiring('2026-01-10')), 'check-wiring', contextOn())).toBe('2026-03-17');
  });
  it('comes back by itself where somebody wrote a later date', () => {
    const story: Story = { ...wiring('2026-01-10'), more: putOff('check-wiring', { until: '2026-05-01' }) };
    expect(on('2026-03-17', 'check-wiring', story)?.state).toBe('put-off');
    expect(on('2026-03-18', 'check-wiring', story)?.state).toBe('overdue');
  });
  it('raised has no grace at all', () => {
    const shock: Story = { ...wiring('2026-03-01'), seen: { shock: ['2026-03-10'] } };
    expect(latestPutOff(alder(shock), 'check-wiring', contextOn())).toBe('2026-03-10');
  });
  it('without a record cannot wait either', () =>
    expect(latestPutOff(alder({}), 'check-wiring', contextOn())).toBe(TODAY));
  it('goes by the hours that are to come, where they come first', () => {
    const busy: Story = { ran: sixDaysAWeek(20), ...wiring('2026-02-18') };
    const latest = latestPutOff(alder(busy), 'check-wiring', contextOn());
    expect(latest).toBe('2026-03-21'); // 550 h at 20 h a day, Sundays off
  });
  it('any other task may wait as long as people like', () =>
    expect(latestPutOff(alder({}), 'dust-off', contextOn())).toBeUndefined());
  it('a task that is grave only for what raised it is held to the same', () => {
    const story: Story = { seenAt: { 'fan-stopped': { part: 'board-fan', on: '2026-03-10' } } };
    expect(latestPutOff(alder(story), 'check-fans', contextOn())).toBe('2026-03-10');
  });
});

describe('what a machine has', () => {
  it.each([
    ['lubricate-rods', 'alder', true],
    ['lubricate-rods', 'birch', false],
    ['check-liner', 'hazel', false],
    ['replace-wheel', 'birch', true],
    ['replace-wheel', 'alder', false],
    ['test-smoke-detector', 'alder', false],
    ['clear-jam', 'alder', true],
  ] as const)('%s on %s: %s', (task, machine, has) =>
    expect(planned(task, recordOf(machine, BUILDS[machine]))).toBe(has),
  );
  it('the room has its own', () => {
    expect(planned('test-smoke-detector', emptyRoom())).toBe(true);
    expect(planned('dust-off', emptyRoom())).toBe(false);
  });
  it('safety is a matter of the rule', () => {
    expect(isSafety('check-wiring', BUILDS.alder)).toBe(true);
    expect(isSafety('dust-off', BUILDS.alder)).toBe(false);
  });
});

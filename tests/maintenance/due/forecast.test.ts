/** Dates: sure ones, bands, passed ones, and the ones that nobody can tell. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dateOfDay } from '../../../src/maintenance/calendar.ts';
import type { Task } from '../../../src/maintenance/codes.ts';
import type { DueContext } from '../../../src/maintenance/due/context.ts';
import type { DueRow } from '../../../src/maintenance/due/row.ts';
import { dueRow } from '../../../src/maintenance/due/rows.ts';
import { BUILDS } from '../../support/builds.ts';
import { TODAY, contextOn, recordOf, sixDaysAWeek, today } from '../../support/machines.ts';
import type { Story } from '../../support/machines.ts';

const alder = (story: Story, date = TODAY) => recordOf('alder', BUILDS.alder, story, date);
const row = (task: Task, story: Story, context: DueContext = contextOn()): DueRow => {
  const found = dueRow(alder(story), task, context);
  if (!found) throw new Error(`${task} is not planned`);
  return found;
};
const dates = ({ forecast }: DueRow) =>
  forecast && [forecast.p10, forecast.p50, forecast.p90].map((day) => (day === null ? null : dateOfDay(day)));

/** Hours that vary by week: 2, 4, 6 or 8 a day. */
const uneven = (day: number, weekday: number): number =>
  weekday === 6 ? 0 : 2 + 2 * (Math.floor((day + 3) / 7) % 4);

describe('the calendar', () => {
  it('is sure, three times', () =>
    expect(dates(row('tighten-pulleys', { done: { 'tighten-pulleys': '2026-02-01' } }))).toEqual(
      Array<string>(3).fill('2026-05-02'),
    ));
  it('says nothing beyond two years', () =>
    expect(dates(row('replace-x-belt', { swapped: { 'x-belt': '2026-03-01' } }))).toEqual([
      null,
      null,
      null,
    ]));
});

describe('hours', () => {
  it('that never vary give one date: 4 h on each of six days a week, 30 h to go from a Wednesday', () => {
    // 28 hours short of 300 on Wednesday 11 March
    const story: Story = { ran: sixDaysAWeek(4), done: { 'lubricate-rods': '2025-12-20 20:00' } };
    const rods = row('lubricate-rods', story);
    expect(rods.used).toBe(272);
    // Wednesday to Saturday 16 h, Monday and Tuesday 8 h, Wednesday the 28th hour
    expect(dates(rods)).toEqual(Array<string>(3).fill('2026-03-18'));
    expect(rods.state).toBe('coming-up');
  });
  it('skip closed days that are to come', () => {
    const story: Story = { ran: sixDaysAWeek(4), done: { 'lubricate-rods': '2025-12-20 20:00' } };
    const closed = contextOn(TODAY, { holidays: ['2026-03-12', '2026-03-16'] });
    expect(dates(row('lubricate-rods', story, closed))).toEqual(Array<string>(3).fill('2026-03-20'));
  });
  it('a past holiday does not make the coming weeks slower', () => {
    const shut = (day: number) => day >= 20_500 && day < 20_504; // Monday 16 to Thursday 19 February
    const story: Story = {
      ran: (day, weekday) => (weekday === 6 || shut(day) ? 0 : 4), done: { 'lubricate-rods': '2025-12-15 20:00' },
    }; // prettier-ignore
    const holidays = ['2026-02-16', '2026-02-17', '2026-02-18', '2026-02-19'];
    const told = dates(row('lubricate-rods', story, contextOn(TODAY, { holidays })));
    expect(told).toEqual(Array<string>(3).fill('2026-03-17'));
    expect(dates(row('lubricate-rods', story))).not.toEqual(told);
  });
  it('that vary give a band, in order, around what the mean says', () => {
    const rods = row('lubricate-rods', { ran: uneven, done: { 'lubricate-rods': '2026-02-16' } });
    const { p10, p50, p90 } = rods.forecast ?? { p10: null, p50: null, p90: null };
    if (p10 === null || p50 === null || p90 === null) throw new Error('no band');
    expect(p10).toBeLessThan(p50);
    expect(p50).toBeLessThan(p90);
    const left = 300 - (rods.used ?? 0);
    expect(Math.abs(p50 - today - left / (30 / 7))).toBeLessThan(10);
  });
  it('give the same dates each time', () => {
    const story: Story = { ran: uneven, done: { 'lubricate-rods': '2026-02-16' } };
    expect(dates(row('lubricate-rods', story))).toEqual(dates(row('lubricate-rods', story)));
  });
  it('recent weeks count more: who runs twice as much lately is due earlier than who ran so before', () => {
    const change = (before: number, after: number): Story => ({
      ran: (day, weekday) => (weekday === 6 ? 0 : day < today - 28 ? before : after),
      done: { 'lubricate-rods': '2026-03-10 20:00' },
    });
    const risen = row('lubricate-rods', change(4, 8)).forecast?.p50 ?? Infinity;
    const fallen = row('lubricate-rods', change(8, 4)).forecast?.p50 ?? -Infinity;
    expect(risen).toBeLessThan(fallen);
  });
});

describe('what nobody can tell', () => {
  const since = (from: string): Story => ({
    from, ran: sixDaysAWeek(5), done: { 'lubricate-rods': from },
  }); // prettier-ignore
  it('hours with fewer than 14 days of usage on record', () => {
    // Monday to Saturday: 13 days of usage from 24 February on, 14 from the 23rd
    expect(row('lubricate-rods', since('2026-02-24')).forecast).toBeNull();
    expect(row('lubricate-rods', since('2026-02-23')).forecast).not.toBeNull();
  });
  it('hours of a machine that is down', () => {
    const story: Story = { ran: sixDaysAWeek(5), done: { 'lubricate-rods': '2026-01-12' } };
    expect(row('lubricate-rods', { ...story, down: '2026-03-10' })).toMatchObject({
      idle: true,
      forecast: null,
    });
    expect(row('lubricate-rods', story).forecast).not.toBeNull();
  });
  it('but not its days', () => {
    const story: Story = { done: { 'dust-off': '2026-03-01' }, down: '2026-03-10' };
    expect(dates(row('dust-off', story))).toEqual(Array<string>(3).fill('2026-03-31'));
  });
});

describe('a date that has passed', () => {
  it('is the one on which the share reached 1, three times', () => {
    // 5 h a day: 300 h after the 12th of December 2025 (a Friday, done in the morning) are 60 days of usage
    const story: Story = { ran: sixDaysAWeek(5), done: { 'lubricate-rods': '2025-12-12' } };
    const rods = row('lubricate-rods', story);
    expect(rods.used).toBe(380);
    expect(dates(rods)).toEqual(Array<string>(3).fill('2026-02-19'));
  });
  it('of a task that was raised, the day of the event', () =>
    expect(dates(row('clean-feeder', { seen: { 'no-extrusion': ['2026-03-08'] } }))).toEqual(
      Array<string>(3).fill('2026-03-08'),
    ));
  it('of run-days, the day that filled them', () => {
    const story: Story = { ran: sixDaysAWeek(5), done: { 'level-bed': '2026-02-23' } };
    expect(dates(row('level-bed', story))).toEqual(Array<string>(3).fill('2026-03-02'));
  });
});

it('on any history: the three dates are in order and never in the past unless they have passed', () => {
  const hours = fc.array(fc.integer({ min: 0, max: 20 }), { minLength: 56, maxLength: 56 });
  fc.assert(
    fc.property(hours, fc.integer({ min: 1, max: 60 }), (run, daysAgo) => {
      const story: Story = {
        ran: (day) => run[(((day - today) % 56) + 56) % 56] ?? 0,
        done: { 'lubricate-rods': dateOfDay(today - daysAgo) },
      };
      const { forecast, share } = row('lubricate-rods', story);
      if (!forecast) return;
      const [p10, p50, p90] = [forecast.p10, forecast.p50, forecast.p90].map((day) => day ?? Infinity);
      expect(p10).toBeLessThanOrEqual(p50 ?? -1);
      expect(p50).toBeLessThanOrEqual(p90 ?? -1);
      if ((share ?? 0) >= 1) expect(p90).toBeLessThanOrEqual(today);
      else expect(p10).toBeGreaterThanOrEqual(today);
    }),
    { numRuns: 60 },
  );
});

/**
 * A year of eight machines on paper: each working morning all that the round names is done. Once with what the round
 * pulls forward, once each task on its day. Setting up counts once an opening, so what is pulled forward must pay.
 */
import { describe, expect, it } from 'vitest';
import { dateOfDay, dayOfDate, weekdayOf } from '../../../src/maintenance/calendar.ts';
import { partReplacedBy } from '../../../src/maintenance/codes.ts';
import { digestOf } from '../../../src/maintenance/due/digest.ts';
import type { Digest } from '../../../src/maintenance/due/digest.ts';
import { minutesIn, SET_UP_MINUTES } from '../../../src/maintenance/due/round.ts';
import type { RoundStop } from '../../../src/maintenance/due/round.ts';
import type { DueRow } from '../../../src/maintenance/due/row.ts';
import { BUILDS, type DemoMachine } from '../../support/builds.ts';
import {
  contextOn,
  emptyRoom,
  MONDAY_TO_SATURDAY,
  recordOf,
  shopOf,
  type Story,
} from '../../support/machines.ts';

const NAMES = Object.keys(BUILDS) as DemoMachine[];
const START = dayOfDate('2025-06-02');
const DAYS = 365;

/** 3 to 9 h a day, each machine in its own rhythm; no two weeks alike. */
const ran =
  (n: number) =>
  (day: number, weekday: number): number =>
    weekday === 6 ? 0 : 3 + ((day * (n + 3) + Math.floor(day / 7) * 5) % 7);

type Diary = Record<string, Pick<Story, 'done' | 'swapped'>>;
const freshDiary = (): Diary => Object.fromEntries([...NAMES, 'room'].map((name) => [name, {}]));

function note(diary: Diary, { machine, machines, task }: DueRow, at: string): void {
  const part = partReplacedBy(task);
  for (const name of machines ?? [machine]) {
    const mine = (diary[name] ??= {});
    if (part) mine.swapped = { ...mine.swapped, [part]: at };
    else mine.done = { ...mine.done, [task]: at };
  }
}

/** Hands-on, and setting up once for each opening of the stop. */
function cost(rows: readonly DueRow[]): number {
  const openings = new Set(rows.map(({ rule }) => rule.opening));
  return minutesIn(rows) + [...openings].reduce((sum, opening) => sum + SET_UP_MINUTES[opening], 0);
}

interface Year {
  minutes: number;
  visits: number;
  pulled: number;
  lateSafety: string[];
}

const stories = { from: dateOfDay(START), baseline: dateOfDay(START + 69) };

function morning(diary: Diary, date: string): Digest {
  const machines = NAMES.map((name, n) =>
    recordOf(name, BUILDS[name], { ...stories, ran: ran(n), ...diary[name] }, date),
  );
  const room = emptyRoom({ ...stories, ...diary['room'] }, date);
  return digestOf(shopOf(machines, room), contextOn(date));
}

/** What the day's work itself raised for safety, such as the look at the heater after hot-end work: done before the start. */
const raisedToday = ({ overdue, due }: Digest): DueRow[] =>
  [...overdue, ...due].filter((row) => row.class === 'safety' && row.raised !== undefined);

function live(rowsOf: (stop: RoundStop) => readonly DueRow[]): Year {
  const diary = freshDiary();
  const year: Year = { minutes: 0, visits: 0, pulled: 0, lateSafety: [] };
  for (let day = START + 70; day < START + 70 + DAYS; day += 1) {
    if (!MONDAY_TO_SATURDAY.includes(weekdayOf(day))) continue;
    const date = dateOfDay(day);
    const digest = morning(diary, date);
    const late = digest.overdue.filter((row) => row.class === 'safety');
    year.lateSafety.push(...late.map((row) => `${date} ${row.machine} ${row.task}`));
    for (const stop of digest.round) {
      const rows = rowsOf(stop);
      year.minutes += cost(rows);
      year.visits += 1;
      year.pulled += rows.filter((row) => stop.pulledForward.includes(row.task)).length;
      for (const row of rows) note(diary, row, `${date} 12:00`);
    }
    const after = raisedToday(morning(diary, dateOfDay(day + 1)));
    year.minutes += minutesIn(after);
    for (const row of after) note(diary, row, `${date} 20:00`);
  }
  return year;
}

describe('a year of rounds', () => {
  const together = live((stop) => stop.rows);
  const apart = live((stop) => stop.rows.filter((row) => !stop.pulledForward.includes(row.task)));

  it('takes no more minutes than each task on its day', () => {
    const saved = apart.minutes - together.minutes;
    console.log(
      `a year of 8 machines: ${(together.minutes / 60).toFixed(0)} h in ${together.visits} visits with ${together.pulled} tasks pulled forward, ${(apart.minutes / 60).toFixed(0)} h in ${apart.visits} visits without: ${((100 * saved) / apart.minutes).toFixed(1)} % less`,
    );
    expect(together.pulled).toBeGreaterThan(50);
    expect(saved).toBeGreaterThanOrEqual(0);
  });
  it('never lets a safety task go past its grace', () => expect(together.lateSafety).toEqual([]));
});

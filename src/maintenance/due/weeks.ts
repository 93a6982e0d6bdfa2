/**
 * How a machine's next weeks may go: whole weeks of its last eight, drawn again and again, recent ones more
 * often. A resampled week keeps its weekdays and its streaks; closed days run nothing. The draws are the same
 * for every machine and every run (a fixed seed), so the same record always gives the same dates.
 */
import { dayOfDate, weekdayOf } from '../calendar.ts';
import type { Day } from '../calendar.ts';
import type { MachineRecord } from '../record/record.ts';
import { todayOf } from './context.ts';
import type { DueContext } from './context.ts';

export const PATHS = 50;
/** Beyond two years nothing is said. */
export const HORIZON_DAYS = 730;
const WEEKS = Math.ceil(HORIZON_DAYS / 7);
const LOOK_BACK_WEEKS = 8;
/** Sums of hours are not exact. */
const HAIR = 1e-9;
/** A week half so likely to be drawn as one four weeks younger. */
const HALF_LIFE_WEEKS = 4;
/** Fewer days of usage than this carry no forecast. */
export const DAYS_OF_USAGE_NEEDED = 14;

/** mulberry32: small, seeded, good enough to draw weeks with. */
function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

const drawnWeeks = new Map<number, Uint8Array>();
/** Which past week (0 is the youngest) each path repeats in each future week; week by week. */
function drawsOf(weeksBack: number): Uint8Array {
  const known = drawnWeeks.get(weeksBack);
  if (known) return known;
  const random = randomFrom(20_260_311 + weeksBack);
  const weights = Array.from({ length: weeksBack }, (_, week) => 0.5 ** (week / HALF_LIFE_WEEKS));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const draws = Uint8Array.from({ length: WEEKS * PATHS }, () => {
    let left = random() * total;
    const week = weights.findIndex((weight) => (left -= weight) < 0);
    return week < 0 ? 0 : week;
  });
  drawnWeeks.set(weeksBack, draws);
  return draws;
}

interface Closings {
  /** By days from the first day of the horizon. */
  closed: Uint8Array;
  isClosed: (day: Day) => boolean;
}

const keptClosings = new WeakMap<DueContext, Map<Day, Closings>>();
function closingsFrom(first: Day, context: DueContext): Closings {
  const kept = keptClosings.get(context) ?? new Map<Day, Closings>();
  keptClosings.set(context, kept);
  const known = kept.get(first);
  if (known) return known;
  const holidays = new Set(context.holidays.map(dayOfDate));
  const open = new Set(context.workingDays);
  const isClosed = (day: Day): boolean => holidays.has(day) || !open.has(weekdayOf(day));
  const closed = Uint8Array.from({ length: WEEKS * 7 }, (_, ahead) => (isClosed(first + ahead) ? 1 : 0));
  const closings = { closed, isClosed: (day: Day) => holidays.has(day) };
  kept.set(first, closings);
  return closings;
}

/** Hours on one local day of the record; 0 where nothing is on record. */
export function hoursOn(record: MachineRecord, day: Day): number {
  const { hours, lastDay } = record.runByDay;
  return hours[hours.length - 1 - (lastDay - day)] ?? 0;
}

/**
 * The past weeks, youngest first, seven days each. A day on which it could not have run (a holiday, a down
 * spell) takes the mean of the same weekday in the other weeks.
 */
function pastWeeks(
  record: MachineRecord,
  first: Day,
  weeksBack: number,
  lost: (day: Day) => boolean,
): Float64Array {
  const hours = new Float64Array(weeksBack * 7);
  for (let weekday = 0; weekday < 7; weekday += 1) {
    const days = Array.from({ length: weeksBack }, (_, week) => first - 7 * (week + 1) + weekday);
    const ran = days.filter((day) => !lost(day)).map((day) => hoursOn(record, day));
    const mean = ran.length > 0 ? ran.reduce((sum, h) => sum + h, 0) / ran.length : 0;
    days.forEach((day, week) => (hours[week * 7 + weekday] = lost(day) ? mean : hoursOn(record, day)));
  }
  return hours;
}

/** Days ahead by which 10, 50 and 90 % of the paths got there; Infinity beyond the horizon. */
export interface Reach {
  p10: number;
  p50: number;
  p90: number;
}

/** Cumulated hours (or run-days) of each path, week by week, to look up when a figure is reached. */
export interface Paths {
  first: Day;
  /** Days from `first` on which so many are reached. */
  reach(needed: number, what: 'hours' | 'runDays'): Reach;
}

function downOn(record: MachineRecord, context: DueContext): (day: Day) => boolean {
  const spells = record.downSpells.map(({ from, to }) => [
    context.calendar.dayOf(from),
    context.calendar.dayOf(to),
  ]);
  return (day) =>
    spells.some(([from, to]) => from !== undefined && to !== undefined && from < day && day < to);
}

/** Undefined with fewer than 14 days of usage on record. */
export function pathsOf(record: MachineRecord, context: DueContext): Paths | undefined {
  const today = todayOf(context);
  if (record.totals.runDays < DAYS_OF_USAGE_NEEDED || record.firstRunDay === undefined) return undefined;
  const first = hoursOn(record, today) > 0 ? today + 1 : today;
  const weeksBack = Math.min(LOOK_BACK_WEEKS, Math.max(1, Math.floor((first - record.firstRunDay) / 7)));
  const { closed, isClosed } = closingsFrom(first, context);
  const isDown = downOn(record, context);
  const hours = pastWeeks(record, first, weeksBack, (day) => isClosed(day) || isDown(day));
  return drawPaths(first, hours, weeksBack, closed);
}

const chanceOf = (ascending: Float64Array, chance: number): number =>
  ascending[Math.ceil(chance * PATHS) - 1] ?? Infinity;

function drawPaths(first: Day, hours: Float64Array, weeksBack: number, closed: Uint8Array): Paths {
  const draws = drawsOf(weeksBack);
  const source = { weeksBack, draws, closed };
  const drawn: Partial<Record<'hours' | 'runDays', Cumulated>> = {};
  const days = new Float64Array(PATHS);
  return {
    first,
    reach(needed, what) {
      const from = (drawn[what] ??= openCumulated(what === 'hours' ? hours : hours.map(asRunDay), source));
      const weeks = weeksFor(needed, from);
      for (let path = 0; path < PATHS; path += 1) days[path] = reachOne(path, needed - HAIR, from, weeks);
      days.sort();
      return { p10: chanceOf(days, 0.1), p50: chanceOf(days, 0.5), p90: chanceOf(days, 0.9) };
    },
  };
}
const asRunDay = (hours: number): number => (hours > 0 ? 1 : 0);

/** What each past week comes to in one future week, whose closed days run nothing. */
function weekTotals(amount: Float64Array, weeksBack: number, closed: Uint8Array, week: number): Float64Array {
  const totals = new Float64Array(weeksBack);
  for (let past = 0; past < weeksBack; past += 1) {
    let sum = 0;
    for (let day = 0; day < 7; day += 1) if (closed[week * 7 + day] === 0) sum += amount[past * 7 + day] ?? 0;
    totals[past] = sum;
  }
  return totals;
}

/** Do two future weeks close on the same weekdays? Most do, and share their totals. */
function closeAlike(closed: Uint8Array, a: number, b: number): boolean {
  for (let day = 0; day < 7; day += 1) if (closed[a * 7 + day] !== closed[b * 7 + day]) return false;
  return true;
}

interface Source {
  weeksBack: number;
  draws: Uint8Array;
  closed: Uint8Array;
}
/** Total of each path at the start of each week, week by week; reckoned only as far as somebody asked. */
interface Cumulated extends Source {
  amount: Float64Array;
  sums: Float64Array;
  weeks: number;
  totals: Float64Array;
}

const openCumulated = (amount: Float64Array, source: Source): Cumulated => ({
  ...source,
  amount,
  sums: new Float64Array((WEEKS + 1) * PATHS),
  weeks: 0,
  totals: weekTotals(amount, source.weeksBack, source.closed, 0),
});

/** Goes on week by week until every path has come so far, or the horizon is there; the weeks that took. */
function weeksFor(needed: number, from: Cumulated): number {
  const { amount, weeksBack, closed, sums, draws } = from;
  const most = Math.max(...weekTotals(amount, weeksBack, closed, 0));
  if (most * WEEKS < needed) return 0;
  while (from.weeks < WEEKS && slowest(from) < needed) {
    const week = from.weeks;
    if (week > 0 && !closeAlike(closed, week, week - 1))
      from.totals = weekTotals(amount, weeksBack, closed, week);
    for (let at = week * PATHS, next = at + PATHS; at < (week + 1) * PATHS; at += 1, next += 1)
      sums[next] = (sums[at] ?? 0) + (from.totals[draws[at] ?? 0] ?? 0);
    from.weeks += 1;
  }
  return from.weeks;
}

function slowest({ sums, weeks }: Cumulated): number {
  let least = Infinity;
  for (let at = weeks * PATHS; at < (weeks + 1) * PATHS; at += 1) least = Math.min(least, sums[at] ?? 0);
  return least;
}

function reachOne(path: number, needed: number, from: Cumulated, weeks: number): number {
  const { sums, draws, closed, amount } = from;
  if ((sums[weeks * PATHS + path] ?? 0) < needed) return Infinity;
  let [low, high] = [0, weeks];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((sums[middle * PATHS + path] ?? 0) >= needed) high = middle;
    else low = middle;
  }
  let sum = sums[low * PATHS + path] ?? 0;
  const past = draws[low * PATHS + path] ?? 0;
  for (let day = 0; day < 7; day += 1) {
    if (closed[low * 7 + day] === 0) sum += amount[past * 7 + day] ?? 0;
    if (sum >= needed) return low * 7 + day;
  }
  return high * 7;
}

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
/** Which past week (0 is the youngest) each future week of each path repeats. */
function drawsOf(weeksBack: number): Uint8Array {
  const known = drawnWeeks.get(weeksBack);
  if (known) return known;
  const random = randomFrom(20_260_311 + weeksBack);
  const weights = Array.from({ length: weeksBack }, (_, week) => 0.5 ** (week / HALF_LIFE_WEEKS));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const draws = Uint8Array.from({ length: PATHS * WEEKS }, () => {
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

/** Cumulated hours (or run-days) of each path, week by week, to look up when a figure is reached. */
export interface Paths {
  first: Day;
  /** Days from `first` on which each path reaches so many, ascending; Infinity beyond the horizon. */
  reach(needed: number, what: 'hours' | 'runDays'): Float64Array;
  /** Mean hours a local day over the paths' source weeks. */
  hoursADay: number;
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

function drawPaths(first: Day, hours: Float64Array, weeksBack: number, closed: Uint8Array): Paths {
  const draws = drawsOf(weeksBack);
  const amounts = { hours, runDays: hours.map((h) => (h > 0 ? 1 : 0)) };
  const sums: Partial<Record<'hours' | 'runDays', Float64Array>> = {};
  return {
    first,
    hoursADay: hours.reduce((sum, h) => sum + h, 0) / hours.length,
    reach(needed, what) {
      const amount = amounts[what];
      const cumulated = (sums[what] ??= cumulate(amount, weeksBack, draws, closed));
      const days = new Float64Array(PATHS);
      for (let path = 0; path < PATHS; path += 1)
        days[path] = reachOne(path, needed - 1e-9, amount, cumulated, draws, closed);
      return days.sort();
    },
  };
}

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

/** Total of each path at the start of each week. */
function cumulate(
  amount: Float64Array,
  weeksBack: number,
  draws: Uint8Array,
  closed: Uint8Array,
): Float64Array {
  const cumulated = new Float64Array(PATHS * (WEEKS + 1));
  let totals = weekTotals(amount, weeksBack, closed, 0);
  for (let week = 0; week < WEEKS; week += 1) {
    if (week > 0 && !closeAlike(closed, week, week - 1)) totals = weekTotals(amount, weeksBack, closed, week);
    for (let path = 0, at = week; path < PATHS; path += 1, at += WEEKS + 1)
      cumulated[at + 1] = (cumulated[at] ?? 0) + (totals[draws[path * WEEKS + week] ?? 0] ?? 0);
  }
  return cumulated;
}

function reachOne(
  path: number,
  needed: number,
  amount: Float64Array,
  cumulated: Float64Array,
  draws: Uint8Array,
  closed: Uint8Array,
): number {
  const from = path * (WEEKS + 1);
  if ((cumulated[from + WEEKS] ?? 0) < needed) return Infinity;
  let [low, high] = [0, WEEKS];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((cumulated[from + middle] ?? 0) >= needed) high = middle;
    else low = middle;
  }
  let sum = cumulated[from + low] ?? 0;
  const past = draws[path * WEEKS + low] ?? 0;
  for (let day = 0; day < 7; day += 1) {
    if (closed[low * 7 + day] === 0) sum += amount[past * 7 + day] ?? 0;
    if (sum >= needed) return low * 7 + day;
  }
  return high * 7;
}

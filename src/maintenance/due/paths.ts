/**
 * Paths of a machine's coming weeks: its past weeks drawn again and again, recent ones more often. The draws are
 * the same for every machine and every run (a fixed seed), so the same record always gives the same dates.
 */
import type { Day } from '../calendar.ts';

const PATHS = 40;
/** Beyond two years nothing is said. */
export const HORIZON_DAYS = 730;
const WEEKS = Math.ceil(HORIZON_DAYS / 7);
/** Days for which it must be known whether the workshop is closed. */
export const DAYS_AHEAD = WEEKS * 7;
/** A week half so likely to be drawn as one six weeks younger. */
const HALF_LIFE_WEEKS = 6;
/** Weeks that each path draws for itself first; fewer make the band wider. Chosen on made-up machines, see the tests. */
const OWN_WEEKS = 5;
/** Each day's hours are rounded to the microsecond, so that a sum of weeks is off by some ten of them: far below a second. */
const HAIR = 1e-6;

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
/**
 * Which past week (0 is the youngest) each path repeats in each future week; week by week. Each path draws its
 * own few weeks first and goes on from those: eight weeks are a small sample of what a machine runs, and the
 * band must be as wide as that.
 */
function drawsOf(weeksBack: number): Uint8Array {
  const known = drawnWeeks.get(weeksBack);
  if (known) return known;
  const random = randomFrom(20_260_311 + weeksBack);
  const weights = Array.from({ length: weeksBack }, (_, week) => 0.5 ** (week / HALF_LIFE_WEEKS));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const drawn = (): number => {
    let left = random() * total;
    const week = weights.findIndex((weight) => (left -= weight) < 0);
    return Math.max(0, week);
  };
  const own = Array.from({ length: PATHS }, () =>
    Array.from({ length: Math.min(weeksBack, OWN_WEEKS) }, drawn),
  );
  const draws = Uint8Array.from({ length: WEEKS * PATHS }, (_, at) => {
    const mine = own[at % PATHS] ?? [];
    return mine[Math.floor(random() * mine.length)] ?? 0;
  });
  drawnWeeks.set(weeksBack, draws);
  return draws;
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

const chanceOf = (ascending: Float64Array, chance: number): number =>
  ascending[Math.ceil(chance * PATHS) - 1] ?? Infinity;

/**
 * `hours`: seven days a week, the youngest week first. `closed`: 1 where the workshop is closed, by days from `first`.
 */
export function drawPaths(first: Day, hours: Float64Array, weeksBack: number, closed: Uint8Array): Paths {
  const source = { weeksBack, draws: drawsOf(weeksBack), closed };
  const drawn: Partial<Record<Counted, Cumulated>> = {};
  return {
    first,
    reach(needed, what) {
      const from = (drawn[what] ??= openCumulated(what === 'hours' ? hours : hours.map(asRunDay), source));
      const sums = sheetFor(from, what);
      const weeks = weeksFor(needed, from, sums);
      for (let path = 0; path < PATHS; path += 1)
        reached[path] = reachOne(path, needed - HAIR, from, sums, weeks);
      reached.sort();
      return { p10: chanceOf(reached, 0.1), p50: chanceOf(reached, 0.5), p90: chanceOf(reached, 0.9) };
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
/** How far the paths of one machine are reckoned: only as far as somebody asked. */
interface Cumulated extends Source {
  amount: Float64Array;
  /** Weeks reckoned so far, and the total of the slowest path at their end. */
  weeks: number;
  slowest: number;
  totals: Float64Array;
  /** The best that one week can come to. */
  most: number;
}

type Counted = 'hours' | 'runDays';
interface Sheet {
  owner: Cumulated | undefined;
  /** Total of each path at the start of each week, week by week. */
  sums: Float64Array;
}
const emptySheet = (): Sheet => ({ owner: undefined, sums: new Float64Array((WEEKS + 1) * PATHS) });
/**
 * One sheet to reckon on for all machines, because a sheet for each of a thousand costs more than the
 * reckoning. It belongs to the machine that wrote on it last; another one starts it anew.
 */
const sheets: Readonly<Record<Counted, Sheet>> = { hours: emptySheet(), runDays: emptySheet() };
const reached = new Float64Array(PATHS);

function sheetFor(from: Cumulated, what: Counted): Float64Array {
  const sheet = sheets[what];
  if (sheet.owner !== from) {
    sheet.owner = from;
    sheet.sums.fill(0, 0, PATHS);
    from.weeks = 0;
    from.slowest = 0;
    from.totals = weekTotals(from.amount, from.weeksBack, from.closed, 0);
  }
  return sheet.sums;
}

function openCumulated(amount: Float64Array, source: Source): Cumulated {
  const open = weekTotals(amount, source.weeksBack, new Uint8Array(7), 0);
  return { ...source, amount, weeks: 0, slowest: 0, totals: open, most: Math.max(...open) };
}

/** Goes on week by week until every path has come so far, or the horizon is there; the weeks that took. */
function weeksFor(needed: number, from: Cumulated, sums: Float64Array): number {
  if (from.most * WEEKS < needed) return 0;
  while (from.weeks < WEEKS && from.slowest < needed) addWeek(from, sums);
  return from.weeks;
}

function addWeek(from: Cumulated, sums: Float64Array): void {
  const { amount, weeksBack, closed, draws, weeks } = from;
  if (weeks > 0 && !closeAlike(closed, weeks, weeks - 1))
    from.totals = weekTotals(amount, weeksBack, closed, weeks);
  let slowest = Infinity;
  for (let at = weeks * PATHS; at < (weeks + 1) * PATHS; at += 1) {
    const sum = (sums[at] ?? 0) + (from.totals[draws[at] ?? 0] ?? 0);
    sums[at + PATHS] = sum;
    if (sum < slowest) slowest = sum;
  }
  from.weeks += 1;
  from.slowest = slowest;
}

function reachOne(path: number, needed: number, from: Cumulated, sums: Float64Array, weeks: number): number {
  const { draws, closed, amount } = from;
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

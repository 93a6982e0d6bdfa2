/**
 * Paths of a machine's coming weeks: its past days or weeks drawn again and again, recent ones more often. The draws
 * are the same for every machine and every run (a fixed seed), so the same record always gives the same dates.
 */
import type { Day } from '../calendar.ts';

/** Fewer and the ends of a band are off by chance of the draws, more cost a digest more than they mend. */
const PATHS = 160;
/** Beyond two years nothing is said. */
export const HORIZON_DAYS = 730;
const WEEKS = Math.ceil(HORIZON_DAYS / 7);
/** Days for which it must be known whether the workshop is closed. */
export const DAYS_AHEAD = WEEKS * 7;
/** A week half so likely to be drawn as one twelve weeks younger. */
const HALF_LIFE_WEEKS = 12;
/** So far ahead each day is drawn by itself; beyond, whole weeks do as well and take a seventh of the work. */
const WEEKS_BY_DAY = 5;
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

/** Divisible by the number of weekdays that can be alike. */
const PLACES = 210;

interface Draws {
  /** Which past week (0 is the youngest) each path repeats in each future week: week by week, path by path. */
  weeks: Uint8Array;
  /** The same for each single day of the first weeks: day by day, path by path. */
  days: Uint8Array;
  /** Which of the weekdays like it such a day repeats: a place, to be taken modulo their number. */
  alike: Uint8Array;
}

const drawn = new Map<number, Draws>();
/**
 * Each path weighs the past weeks in its own way, as the Bayesian bootstrap does (Rubin, Annals of Statistics 9,
 * 1981: weights from Dirichlet(1, …, 1), here times 0.5^(k / half-life)), and draws by these weights: a dozen weeks
 * are a small sample of what a machine runs, and the band must be as wide as that.
 */
function drawsOf(weeksBack: number): Draws {
  const known = drawn.get(weeksBack);
  if (known) return known;
  const random = randomFrom(20_260_311 + weeksBack);
  const weights = Array.from({ length: PATHS }, () =>
    Array.from({ length: weeksBack }, (_, k) => -Math.log(1 - random()) * 0.5 ** (k / HALF_LIFE_WEEKS)),
  );
  const draw = (_: unknown, at: number): number => drawBy(weights[at % PATHS] ?? [], random);
  const draws = {
    weeks: Uint8Array.from({ length: WEEKS * PATHS }, draw),
    days: Uint8Array.from({ length: WEEKS_BY_DAY * 7 * PATHS }, draw),
    alike: Uint8Array.from({ length: WEEKS_BY_DAY * 7 * PATHS }, () => Math.floor(random() * PLACES)),
  };
  drawn.set(weeksBack, draws);
  return draws;
}

function drawBy(weights: readonly number[], random: () => number): number {
  let left = random() * weights.reduce((sum, weight) => sum + weight, 0);
  return Math.max(0, weights.findIndex((weight) => (left -= weight) < 0));
} // prettier-ignore

/**
 * Days ahead: when half of the paths got there, and the band of at least 80 % of them: from where 10 % to where 90 %
 * got there, or a day within; Infinity beyond the horizon.
 */
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

const BAND = 0.8;
/** An end is drawn in where no more than this lies at or beyond it; and only in a band of so many days. */
const TAIL = 0.17;
const DRAWN_IN = { least: 4, most: 6 };
/** Share of the paths from one day to another, both ends with it. */
function shareWithin(ascending: Float64Array, from: number, to: number): number {
  let inside = 0;
  for (const day of ascending) if (day >= from && day <= to) inside += 1;
  return inside / PATHS;
}
/**
 * A whole day is the finest step: between the days on which 10 and 90 % of the paths got there, both of them counted,
 * lies often far more than 80 %. An end on which little happens is then drawn in by a day, as long as 80 % stay. In a
 * narrower band that is too much, in a wider one a day hardly matters and only costs true days.
 */
function bandOf(ascending: Float64Array): Pick<Reach, 'p10' | 'p90'> {
  const [p10, p90] = [chanceOf(ascending, 0.1), chanceOf(ascending, 0.9)];
  const days = p90 - p10;
  if (!(days >= DRAWN_IN.least && days <= DRAWN_IN.most)) return { p10, p90 };
  const low = shareWithin(ascending, -Infinity, p10) <= TAIL ? p10 + 1 : p10;
  const high = shareWithin(ascending, p90, Infinity) <= TAIL ? p90 - 1 : p90;
  const bands = [[low, high], [low, p90], [p10, high]] as const; // prettier-ignore
  const [from, to] = bands.find((band) => shareWithin(ascending, ...band) >= BAND) ?? [p10, p90];
  return { p10: from, p90: to };
}

/** What a machine's coming weeks are drawn from. */
export interface Past {
  /** Seven days a week, the youngest week first. */
  hours: Float64Array;
  weeksBack: number;
  /** Its prints come in busy and quiet weeks: whole weeks are repeated, which keeps the streaks; else single days. */
  inWeeks: boolean;
  /** What a week so far ahead comes to, against the level of now. */
  growth: (week: number) => number;
  /** 1 where the workshop is closed, by days from the first one. */
  closed: Uint8Array;
  /** By place in the week, the days of the week whose hours it may repeat. */
  alike: readonly (readonly number[])[];
}

export function drawPaths(first: Day, past: Past): Paths {
  const draws = drawsOf(past.weeksBack);
  const made: Partial<Record<Counted, Cumulated>> = {};
  const open = (what: Counted): Cumulated =>
    openCumulated(
      what === 'hours' ? past : { ...past, hours: past.hours.map(asRunDay), growth: () => 1 },
      draws,
    );
  return {
    first,
    reach(needed, what) {
      const from = (made[what] ??= open(what));
      const sums = sheetFor(from, what);
      const weeks = weeksFor(needed, from, sums);
      for (let path = 0; path < PATHS; path += 1)
        reached[path] = reachOne(path, needed - HAIR, from, sums, weeks);
      reached.sort();
      return { ...bandOf(reached), p50: chanceOf(reached, 0.5) };
    },
  };
}
const asRunDay = (hours: number): number => (hours > 0 ? 1 : 0);

/** What each past week comes to in one future week, whose closed days run nothing. */
function weekTotals({ hours, weeksBack, closed }: Past, week: number): Float64Array {
  const totals = new Float64Array(weeksBack);
  for (let past = 0; past < weeksBack; past += 1) {
    let sum = 0;
    for (let day = 0; day < 7; day += 1) if (closed[week * 7 + day] === 0) sum += hours[past * 7 + day] ?? 0;
    totals[past] = sum;
  }
  return totals;
}

/** Do two future weeks close on the same weekdays? Most do, and share their totals. */
function closeAlike(closed: Uint8Array, a: number, b: number): boolean {
  for (let day = 0; day < 7; day += 1) if (closed[a * 7 + day] !== closed[b * 7 + day]) return false;
  return true;
}

/** How far the paths of one machine are reckoned: only as far as somebody asked. */
interface Cumulated extends Past {
  draws: Draws;
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
    from.totals = weekTotals(from, 0);
  }
  return sheet.sums;
}

function openCumulated(past: Past, draws: Draws): Cumulated {
  const { hours } = past;
  let most = 0;
  for (let day = 0; day < 7; day += 1) {
    let best = 0;
    for (let at = day; at < hours.length; at += 7) best = Math.max(best, hours[at] ?? 0);
    most += best;
  }
  const fastest = Math.max(past.growth(0), past.growth(WEEKS));
  return { ...past, draws, weeks: 0, slowest: 0, totals: weekTotals(past, 0), most: most * fastest };
}

/** Goes on week by week until every path has come so far, or the horizon is there; the weeks that took. */
function weeksFor(needed: number, from: Cumulated, sums: Float64Array): number {
  if (from.most * WEEKS < needed) return 0;
  while (from.weeks < WEEKS && from.slowest < needed) addWeek(from, sums);
  return from.weeks;
}

const byDay = (from: Cumulated, week: number): boolean => !from.inWeeks && week < WEEKS_BY_DAY;

function addWeek(from: Cumulated, sums: Float64Array): void {
  const { closed, weeks } = from;
  if (weeks > 0 && !closeAlike(closed, weeks, weeks - 1)) from.totals = weekTotals(from, weeks);
  const growth = from.growth(weeks);
  const single = byDay(from, weeks);
  let slowest = Infinity;
  for (let path = 0; path < PATHS; path += 1) {
    const ran = single ? weekOfDays(from, weeks, path) : weekAsWhole(from, weeks, path);
    const sum = (sums[weeks * PATHS + path] ?? 0) + ran * growth;
    sums[(weeks + 1) * PATHS + path] = sum;
    if (sum < slowest) slowest = sum;
  }
  from.weeks += 1;
  from.slowest = slowest;
}

const weekAsWhole = ({ totals, draws }: Cumulated, week: number, path: number): number =>
  totals[draws.weeks[week * PATHS + path] ?? 0] ?? 0;

function weekOfDays(from: Cumulated, week: number, path: number): number {
  let sum = 0;
  for (let day = 0; day < 7; day += 1) sum += dayOf(from, week, day, path);
  return sum;
}

/** Hours of one path on one day ahead, at the level of now. */
function dayOf(from: Cumulated, week: number, day: number, path: number): number {
  const { hours, closed, draws } = from;
  const ahead = week * 7 + day;
  if (closed[ahead] !== 0) return 0;
  if (!byDay(from, week)) return hours[(draws.weeks[week * PATHS + path] ?? 0) * 7 + day] ?? 0;
  const place = ahead * PATHS + path;
  const like = from.alike[day] ?? [day];
  const weekday = like[(draws.alike[place] ?? 0) % like.length] ?? day;
  return hours[(draws.days[place] ?? 0) * 7 + weekday] ?? 0;
}

function reachOne(path: number, needed: number, from: Cumulated, sums: Float64Array, weeks: number): number {
  if ((sums[weeks * PATHS + path] ?? 0) < needed) return Infinity;
  let [low, high] = [0, weeks];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((sums[middle * PATHS + path] ?? 0) >= needed) high = middle;
    else low = middle;
  }
  const growth = from.growth(low);
  let sum = sums[low * PATHS + path] ?? 0;
  for (let day = 0; day < 7; day += 1) {
    sum += dayOf(from, low, day, path) * growth;
    if (sum >= needed) return low * 7 + day;
  }
  return high * 7;
}

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
const DAYS_BY_DAY = WEEKS_BY_DAY * 7;
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

interface Draws {
  /** Which past week (0 is the youngest) each path repeats in each future week: week by week, path by path. */
  weeks: Uint8Array;
  /** The same for each single day of the first weeks, as the place where that week begins: day by day, path by path. */
  days: Uint8Array;
  /** Which of the weekdays like it such a day repeats, by how many there are. */
  alike: readonly Uint8Array[];
}

/** Divisible by the number of weekdays that can be alike. */
const PLACES = 210;
const ofAlike = (places: Uint8Array): Uint8Array[] =>
  Array.from({ length: 8 }, (_, alike) => places.map((place) => (alike === 0 ? 0 : place % alike)));

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
    days: Uint8Array.from({ length: DAYS_BY_DAY * PATHS }, draw).map((week) => week * 7),
    alike: ofAlike(Uint8Array.from({ length: DAYS_BY_DAY * PATHS }, () => Math.floor(random() * PLACES))),
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

/** How many paths (at most 255) got there on which day; those that never do are in none. */
interface Tally {
  counts: Uint8Array;
  first: number;
  last: number;
}
const tally: Tally = { counts: new Uint8Array(DAYS_AHEAD + 1), first: Infinity, last: -1 };

function count(day: number): void {
  if (day === Infinity) return;
  tally.counts[day] = (tally.counts[day] ?? 0) + 1;
  if (day < tally.first) tally.first = day;
  if (day > tally.last) tally.last = day;
}

function startCounting(): void {
  if (tally.last >= 0) tally.counts.fill(0, tally.first, tally.last + 1);
  tally.first = Infinity;
  tally.last = -1;
}

/** The first day by which so many of the paths got there. */
function dayOfChance(chance: number): number {
  let left = Math.ceil(chance * PATHS);
  for (let day = tally.first; day <= tally.last; day += 1)
    if ((left -= tally.counts[day] ?? 0) <= 0) return day;
  return Infinity;
}

const BAND = 0.8;
/** An end is drawn in where no more than this lies at or beyond it; and only in a band of so many days. */
const TAIL = 0.17;
const DRAWN_IN = { least: 4, most: 6 };
/** Share of the paths from one day to another, both ends with it. */
function shareWithin(from: number, to: number): number {
  let inside = 0;
  const last = Math.min(to, tally.last);
  for (let day = Math.max(from, tally.first); day <= last; day += 1) inside += tally.counts[day] ?? 0;
  return inside / PATHS;
}
/**
 * A whole day is the finest step: between the days on which 10 and 90 % of the paths got there, both of them counted,
 * lies often far more than 80 %. An end on which little happens is then drawn in by a day, as long as 80 % stay. In a
 * narrower band that is too much, in a wider one a day hardly matters and only costs true days.
 */
function bandOf(): Pick<Reach, 'p10' | 'p90'> {
  const [p10, p90] = [dayOfChance(0.1), dayOfChance(0.9)];
  const days = p90 - p10;
  if (!(days >= DRAWN_IN.least && days <= DRAWN_IN.most)) return { p10, p90 };
  const low = shareWithin(-Infinity, p10) <= TAIL ? p10 + 1 : p10;
  // who never gets there lies beyond the end too
  const high = 1 - shareWithin(-Infinity, p90 - 1) <= TAIL ? p90 - 1 : p90;
  const bands = [[low, high], [low, p90], [p10, high]] as const; // prettier-ignore
  const [from, to] = bands.find((band) => shareWithin(...band) >= BAND) ?? [p10, p90];
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
      const sheet = sheetFor(from, what);
      const weeks = weeksFor(needed, from, sheet);
      startCounting();
      for (let path = 0; path < PATHS; path += 1) count(reachOne(path, needed - HAIR, from, sheet, weeks));
      return { ...bandOf(), p50: dayOfChance(0.5) };
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
  /** The same at the end of each day of the first weeks, where those are drawn day by day. */
  days: Float64Array;
}
const emptySheet = (): Sheet => ({
  owner: undefined,
  sums: new Float64Array((WEEKS + 1) * PATHS),
  days: new Float64Array(DAYS_BY_DAY * PATHS),
});
/**
 * One sheet to reckon on for all machines, because a sheet for each of a thousand costs more than the
 * reckoning. It belongs to the machine that wrote on it last; another one starts it anew.
 */
const sheets: Readonly<Record<Counted, Sheet>> = { hours: emptySheet(), runDays: emptySheet() };
/** Totals of the paths while a week is added. */
const running = new Float64Array(PATHS);

function sheetFor(from: Cumulated, what: Counted): Sheet {
  const sheet = sheets[what];
  if (sheet.owner !== from) {
    sheet.owner = from;
    sheet.sums.fill(0, 0, PATHS);
    from.weeks = 0;
    from.slowest = 0;
    from.totals = weekTotals(from, 0);
  }
  return sheet;
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
function weeksFor(needed: number, from: Cumulated, sheet: Sheet): number {
  if (from.most * WEEKS < needed) return 0;
  while (from.weeks < WEEKS && from.slowest < needed) addWeek(from, sheet);
  return from.weeks;
}

const byDay = (from: Cumulated, week: number): boolean => !from.inWeeks && week < WEEKS_BY_DAY;

function addWeek(from: Cumulated, sheet: Sheet): void {
  const { closed, weeks } = from;
  if (weeks > 0 && !closeAlike(closed, weeks, weeks - 1)) from.totals = weekTotals(from, weeks);
  running.set(sheet.sums.subarray(weeks * PATHS, (weeks + 1) * PATHS));
  if (byDay(from, weeks)) addDays(from, sheet);
  else addWhole(from);
  sheet.sums.set(running, (weeks + 1) * PATHS);
  from.weeks += 1;
  let slowest = Infinity;
  for (const sum of running) if (sum < slowest) slowest = sum;
  from.slowest = slowest;
}

function addWhole({ totals, draws, growth, weeks }: Cumulated): void {
  const [grown, start] = [growth(weeks), weeks * PATHS];
  for (let path = 0; path < PATHS; path += 1)
    running[path] = (running[path] ?? 0) + (totals[draws.weeks[start + path] ?? 0] ?? 0) * grown;
}

function addDays(from: Cumulated, { days }: Sheet): void {
  const grown = from.growth(from.weeks);
  for (let day = 0; day < 7; day += 1) {
    const ahead = from.weeks * 7 + day;
    if (from.closed[ahead] === 0) addDay(from, ahead, from.alike[day] ?? [day], grown);
    days.set(running, ahead * PATHS);
  }
}

/** One day of all paths at once: a plain loop, for it runs a million times in a digest of a thousand machines. */
function addDay({ hours, draws }: Cumulated, ahead: number, like: readonly number[], grown: number): void {
  const which = draws.alike[like.length] ?? running;
  const start = ahead * PATHS;
  for (let path = 0; path < PATHS; path += 1) {
    const weekday = like[which[start + path] ?? 0] ?? 0;
    const ran = hours[(draws.days[start + path] ?? 0) + weekday] ?? 0;
    running[path] = (running[path] ?? 0) + ran * grown;
  }
}

function reachOne(path: number, needed: number, from: Cumulated, sheet: Sheet, weeks: number): number {
  const { sums } = sheet;
  if ((sums[weeks * PATHS + path] ?? 0) < needed) return Infinity;
  let [low, high] = [0, weeks];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((sums[middle * PATHS + path] ?? 0) >= needed) high = middle;
    else low = middle;
  }
  return byDay(from, low) ? dayReached(path, needed, low, sheet) : dayWithin(path, needed, low, from, sheet);
}

function dayReached(path: number, needed: number, week: number, { days }: Sheet): number {
  let ahead = week * 7;
  const last = ahead + 6;
  while (ahead < last && (days[ahead * PATHS + path] ?? 0) < needed) ahead += 1;
  return ahead;
}

/** Where whole weeks are repeated, their days come as they came. */
function dayWithin(path: number, needed: number, week: number, from: Cumulated, { sums }: Sheet): number {
  const { hours, closed, draws } = from;
  const growth = from.growth(week);
  const past = (draws.weeks[week * PATHS + path] ?? 0) * 7;
  let sum = sums[week * PATHS + path] ?? 0;
  for (let day = 0; day < 7; day += 1) {
    if (closed[week * 7 + day] === 0) sum += (hours[past + day] ?? 0) * growth;
    if (sum >= needed) return week * 7 + day;
  }
  return (week + 1) * 7;
}

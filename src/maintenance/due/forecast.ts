/** On which local days a share reaches 1: sure for the calendar, a band for what hangs on usage. */
import type { Term } from '../care/rule.ts';
import type { Day } from '../calendar.ts';
import type { MachineRecord, TaskDone } from '../record/record.ts';
import type { ForecastDays, TriggerUse } from './row.ts';
import { HORIZON_DAYS } from './paths.ts';
import type { Paths } from './paths.ts';
import { hoursOn } from './weeks.ts';

/** What a forecast of one machine is made from; the paths are drawn once and shared by its tasks. */
export interface ForecastScene {
  record: MachineRecord;
  today: Day;
  paths: () => Paths | undefined;
  /** It is down: nothing that hangs on usage comes nearer. */
  idle: boolean;
}

export const surely = (day: Day): ForecastDays => ({ p10: day, p50: day, p90: day });

function reached(needed: number, what: 'hours' | 'runDays', scene: ForecastScene): ForecastDays | undefined {
  const paths = scene.idle || !Number.isFinite(needed) ? undefined : scene.paths();
  if (!paths) return undefined;
  const { p10, p50, p90 } = paths.reach(needed, what);
  const day = (ahead: number): Day | null => (ahead > HORIZON_DAYS ? null : paths.first + ahead);
  return { p10: day(p10), p50: day(p50), p90: day(p90) };
}

/** Hours of the machine in which one unit of the trigger was used so far: what is left is taken to go on so. */
export function hoursPerUnit(use: TriggerUse, record: MachineRecord, since: TaskDone): number {
  const hours = record.totals.hours - since.totals.hours;
  return use.used > 0 ? hours / use.used : Infinity;
}

/** Days on record are rounded to the microsecond: their sums may be off by a few. */
const HAIR = 1e-6;

/** The day on which the last `excess` began: walked back over the days on record. */
function dayPassed(
  excess: number,
  record: MachineRecord,
  since: Day,
  amount: (hours: number) => number,
): Day {
  const { hours, lastDay } = record.runByDay;
  const oldest = Math.max(since, lastDay - hours.length + 1);
  let left = excess + HAIR;
  for (let day = lastDay; day >= oldest; day -= 1) {
    const ran = amount(hoursOn(record, day));
    if (ran > 0 && (left -= ran) < 0) return day;
  }
  return Math.min(oldest, lastDay);
}

const asIs = (hours: number): number => hours;
const oneADay = (hours: number): number => (hours > 0 ? 1 : 0);

export function passedOn(
  use: TriggerUse,
  term: Term | undefined,
  record: MachineRecord,
  since: TaskDone,
): Day {
  const excess = use.used - use.interval;
  if (use.unit === 'runDays')
    return dayPassed(excess, record, since.day, oneADay) + (fromNextDay(term) ? 1 : 0);
  const plain = use.unit === 'h' && !(term?.trigger === 'hours' && term.of);
  return dayPassed(plain ? excess : excess * hoursPerUnit(use, record, since), record, since.day, asIs);
}

const fromNextDay = (term: Term | undefined): boolean =>
  term?.trigger === 'runDays' && term.fromNextDay === true;

/** When one repeating trigger reaches its interval; undefined where nobody can tell. */
export function termForecast(
  term: Term,
  use: TriggerUse,
  since: TaskDone,
  scene: ForecastScene,
): ForecastDays | undefined {
  const { record } = scene;
  if (use.unit === 'days') return surely(since.day + Math.ceil(use.interval));
  if (use.used >= use.interval) return surely(passedOn(use, term, record, since));
  if (fromNextDay(term)) return undefined;
  const left = use.interval - use.used;
  if (use.unit === 'runDays') return reached(Math.ceil(left), 'runDays', scene);
  const plain = term.trigger === 'hours' && !term.of;
  return reached(plain ? left : left * hoursPerUnit(use, record, since), 'hours', scene);
}

/** When a single look so many hours or days after an event is owed. */
export function onceForecast(
  use: TriggerUse,
  from: TaskDone,
  scene: ForecastScene,
): ForecastDays | undefined {
  if (use.unit === 'days') return surely(from.day + use.interval);
  if (use.used >= use.interval) return surely(passedOn(use, undefined, scene.record, from));
  return reached(use.interval - use.used, 'hours', scene);
}

const earlier = (a: Day | null, b: Day | null): Day | null =>
  a === null ? b : b === null ? a : Math.min(a, b);

/** The earlier of two, each chance by itself; undefined is none. */
export function earlierOf(
  a: ForecastDays | undefined,
  b: ForecastDays | undefined,
): ForecastDays | undefined {
  if (!a || !b) return a ?? b;
  return { p10: earlier(a.p10, b.p10), p50: earlier(a.p50, b.p50), p90: earlier(a.p90, b.p90) };
}

/** A day beyond two years is not told. */
export function told(days: ForecastDays | undefined, today: Day): ForecastDays | null {
  if (!days) return null;
  const last = today + HORIZON_DAYS;
  if ((days.p10 ?? 0) <= last && (days.p50 ?? 0) <= last && (days.p90 ?? 0) <= last) return days;
  const near = (day: Day | null): Day | null => (day !== null && day > last ? null : day);
  return { p10: near(days.p10), p50: near(days.p50), p90: near(days.p90) };
}

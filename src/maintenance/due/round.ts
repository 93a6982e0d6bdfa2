/** The day's round: machine by machine, what can be done in one opening, and what that takes. */
import { OPENINGS } from '../care/rule.ts';
import type { Opening } from '../care/rule.ts';
import { BUNDLES } from '../care/bundles.ts';
import type { Day } from '../calendar.ts';
import type { Task } from '../codes.ts';
import { inListOrder } from './order.ts';
import type { DueRow } from './row.ts';
import { RIPE } from './soon.ts';

/** Minutes until hands are at the machine in that state; our own estimate. Beside it nothing is set up. */
export const SET_UP_MINUTES: Readonly<Record<Opening, number>> = {
  beside: 0,
  'cold-unplugged': 5,
  'powered-hands-clear': 3,
  hot: 8,
};
export interface RoundStop {
  machine: string;
  /** In the order of the work: what is pulled forward is among them. */
  tasks: readonly Task[];
  /** Hands-on; setting up is not counted. */
  minutes: number;
  pulledForward: readonly Task[];
  openings: readonly { opening: Opening; tasks: readonly Task[]; minutes: number }[];
  rows: readonly DueRow[];
}

export interface Costs {
  calendarDayOf: (at: number) => Day;
  today: Day;
  /** Money an hour of work; without it a part's price cannot be weighed against minutes. */
  hourlyRate?: number;
  /** Price of the spare that the row's task fits, if the shelf knows it. */
  priceOf: (row: DueRow) => number | undefined;
}

/** Not owed yet, but soon: what is not ripe stays where it is, however short it may be. */
export const mayComeForward = ({ state, share }: DueRow): boolean =>
  state === 'coming-up' || (state === 'fine' && (share ?? 0) >= RIPE);

/** Minutes that doing it costs: effort, and what the part's price would buy of work. */
function effort(row: DueRow, costs: Costs): number | undefined {
  if (row.rule.spare === undefined) return row.minutes;
  const price = costs.priceOf(row);
  if (price === undefined || !costs.hourlyRate) return undefined;
  return row.minutes + (price / costs.hourlyRate) * 60;
}

/**
 * Opportunity grouping after Dekker, Wildeman and van der Duyn Schouten (1997): a task is pulled forward when
 *   (effort + part price / hourly rate) x (days early / interval in days) < set-up time of that opening.
 * Minutes on both sides; days early and the interval by the forecast's median.
 * Worked: a 5 min look of a 90-day task, 2 days early: 5 x 2/90 = 0.11 min < 5 min.
 */
export function paysToPullForward(row: DueRow, costs: Costs): boolean {
  const { forecast, since } = row;
  if (!forecast || forecast.p50 === null || !since || !mayComeForward(row)) return false;
  const daysEarly = forecast.p50 - costs.today;
  const intervalDays = forecast.p50 - costs.calendarDayOf(since.at);
  const minutes = effort(row, costs);
  if (minutes === undefined || intervalDays <= 0 || daysEarly < 0) return false;
  return minutes * (daysEarly / intervalDays) < SET_UP_MINUTES[row.rule.opening];
}

const placeInBundle = (row: DueRow): number =>
  row.raised?.bundle === undefined ? -1 : BUNDLES[row.raised.bundle].indexOf(row.task);

/** By the machine's state, a bundle in its own order, then as in the list. */
const inWorkOrder = (a: DueRow, b: DueRow): number =>
  OPENINGS.indexOf(a.rule.opening) - OPENINGS.indexOf(b.rule.opening) ||
  placeInBundle(a) - placeInBundle(b) ||
  inListOrder(a, b);

export const minutesIn = (rows: readonly DueRow[]): number => rows.reduce((sum, row) => sum + row.minutes, 0);

function openingsOf(rows: readonly DueRow[]): RoundStop['openings'] {
  return OPENINGS.flatMap((opening) => {
    const within = rows.filter((row) => row.rule.opening === opening);
    if (within.length === 0) return [];
    return [{ opening, tasks: within.map(({ task }) => task), minutes: minutesIn(within) }];
  });
}

function stopOf(machine: string, todo: readonly DueRow[], pulled: readonly DueRow[]): RoundStop {
  const rows = [...todo, ...pulled].toSorted(inWorkOrder);
  return {
    machine,
    tasks: rows.map(({ task }) => task),
    minutes: minutesIn(rows),
    pulledForward: rows.filter((row) => pulled.includes(row)).map(({ task }) => task),
    openings: openingsOf(rows),
    rows,
  };
}

export interface Cut {
  kept: readonly DueRow[];
  left: readonly DueRow[];
}

/** As much of the list as the day has minutes for, gravest and latest first; safety is never left. */
export function cutToMinutes(rows: readonly DueRow[], minutesADay: number | undefined): Cut {
  if (minutesADay === undefined) return { kept: rows, left: [] };
  const [kept, left]: [DueRow[], DueRow[]] = [[], []];
  let minutes = 0;
  for (const row of rows) {
    const fits = row.class === 'safety' || minutes + row.minutes <= minutesADay;
    if (fits) minutes += row.minutes;
    (fits ? kept : left).push(row);
  }
  return { kept, left };
}

/**
 * The round for what is due (in list order), the machine with the gravest and latest work first. What comes
 * soon and sits behind the same opening is pulled forward where that pays and minutes are left.
 */
export function roundOf(
  todo: readonly DueRow[],
  soon: readonly DueRow[],
  costs: Costs,
  minutesADay?: number,
): RoundStop[] {
  let left = minutesADay === undefined ? Infinity : minutesADay - minutesIn(todo);
  const takes = (row: DueRow): boolean => {
    if (row.minutes > left || !paysToPullForward(row, costs)) return false;
    left -= row.minutes;
    return true;
  };
  const soonOn = byMachine(soon);
  return [...byMachine(todo)].map(([machine, here]) => {
    const opened = new Set(here.map(({ rule }) => rule.opening));
    const pulled = (soonOn.get(machine) ?? []).filter((row) => opened.has(row.rule.opening) && takes(row));
    return stopOf(machine, here, pulled);
  });
}

/** In the order in which the machines first come in the list. */
function byMachine(rows: readonly DueRow[]): Map<string, DueRow[]> {
  const found = new Map<string, DueRow[]>();
  for (const row of rows) {
    const mine = found.get(row.machine);
    if (mine) mine.push(row);
    else found.set(row.machine, [row]);
  }
  return found;
}

/**
 * Hours by local day. A usage ends at its moment and reaches back, so that a long print counts on every day
 * it ran. Where only the date was said, the hours are that day's, and only what a day cannot hold reaches back.
 */
import type { Day, LocalCalendar } from '../calendar.ts';
import type { Instant, Precision } from '../entry/entry.ts';
import { RUN_WINDOW_DAYS, type RunByDay } from './record.ts';
import { tidy } from './tidy.ts';

export const MS_AN_HOUR = 3_600_000;

export interface DayShare {
  day: Day;
  hours: number;
}

/** Newest day first. Hours further back than the window are in the totals and on no day. */
export function hoursByDay(
  entry: { at: Instant; precision: Precision },
  hours: number,
  calendar: LocalCalendar,
): readonly DayShare[] {
  const lastDay = calendar.dayOf(entry.at);
  const shares: DayShare[] = [];
  let end = entry.precision === 'instant' ? entry.at : calendar.at(lastDay + 1, 0);
  let left = hours;
  for (let day = lastDay; left > 0 && day > lastDay - RUN_WINDOW_DAYS; day -= 1) {
    const start = calendar.at(day, 0);
    const here = Math.min(left, Math.max(0, end - start) / MS_AN_HOUR);
    if (here > 0) shares.push({ day, hours: here });
    left = tidy(left - here);
    end = Math.min(end, start);
  }
  return shares;
}

export function hoursOn(run: RunByDay, day: Day): number {
  return run.hours[run.hours.length - 1 - (run.lastDay - day)] ?? 0;
}

/**
 * The run with hours added on these days; days before the window are left out. The days are the fold's own (see
 * `putOnTop`) and are filled in place: half a year of them, copied a million times, was a fifth of a fold.
 */
export function addHours(run: RunByDay, shares: readonly DayShare[]): RunByDay {
  const [first] = shares;
  if (!first) return run;
  let oldest = first.day;
  let newest = first.day;
  for (const { day } of shares) {
    if (day < oldest) oldest = day;
    if (day > newest) newest = day;
  }
  const { lastDay, hours } = stretched(run, oldest, newest);
  for (const share of shares) {
    const index = hours.length - 1 - (lastDay - share.day);
    if (index >= 0) hours[index] = tidy((hours[index] ?? 0) + share.hours);
  }
  return { lastDay, hours };
}

/** Days from `oldest` (or the start of the window) to `newest`, in the run's own list. */
function stretched(run: RunByDay, oldest: Day, newest: Day): { lastDay: Day; hours: number[] } {
  const hours = run.hours as number[];
  const empty = hours.length === 0;
  const lastDay = empty ? newest : Math.max(run.lastDay, newest);
  const ranFrom = empty ? oldest : run.lastDay - hours.length + 1;
  const from = Math.max(lastDay - RUN_WINDOW_DAYS + 1, Math.min(oldest, ranFrom));
  const gone = from - ranFrom;
  if (gone >= hours.length) hours.length = 0;
  // one by one: a day is one move of memory, and more than one day is rare
  else for (let n = gone; n > 0; n -= 1) hours.shift();
  for (let day = ranFrom; day > from; day -= 1) hours.unshift(0);
  while (hours.length < lastDay - from + 1) hours.push(0);
  return { lastDay, hours };
}

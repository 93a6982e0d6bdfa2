/**
 * Which weekdays may repeat each other's hours: a dozen Tuesdays are few, sixty office days are not.
 *   F = n x variance of the weekdays' means / mean variance within a weekday (one-way analysis of variance, n weeks)
 * Up to F_MOST the weekdays on which it runs at all are taken as alike; the others stay by themselves. Seven weekdays of
 * twelve weeks pass 2.2 by chance in 1 of 20 cases, five pass 2.5.
 */
import { variance } from './variance.ts';

const F_MOST = 2;
const WEEKS_NEEDED = 4;

/** `hours`: seven days a week, whole weeks. By place in the week, the places that are like it, itself among them. */
export function alikeWeekdays(hours: Float64Array): readonly (readonly number[])[] {
  const weeks = hours.length / 7;
  const alone = Array.from({ length: 7 }, (_, day) => [day]);
  if (weeks < WEEKS_NEEDED) return alone;
  const ofDay = (day: number): number[] =>
    Array.from({ length: weeks }, (_, week) => hours[week * 7 + day] ?? 0);
  const running = [0, 1, 2, 3, 4, 5, 6].filter((day) => ofDay(day).some((h) => h > 0));
  if (running.length < 2 || !areAlike(running.map(ofDay))) return alone;
  return alone.map((own, day) => (running.includes(day) ? running : own));
}

function areAlike(weekdays: readonly (readonly number[])[]): boolean {
  const n = weekdays[0]?.length ?? 0;
  const within = weekdays.reduce((sum, day) => sum + variance(day), 0) / weekdays.length;
  const between = variance(weekdays.map((day) => day.reduce((sum, h) => sum + h, 0) / n));
  return between * n <= F_MOST * within;
}

/** What the evaluation must be told, because it reads neither clock nor settings. */
import { dateOfDay, weekdayOf } from '../calendar.ts';
import type { Day, LocalCalendar } from '../calendar.ts';
import type { Instant, LocalDate } from '../entry/entry.ts';

export interface DueContext {
  now: Instant;
  calendar: LocalCalendar;
  /** Weekdays on which the workshop is open, 0 is Monday. */
  workingDays: readonly number[];
  /** Closed days besides. */
  holidays: readonly LocalDate[];
  /** How far "coming up" reaches; a week by default. */
  lookAheadDays?: number;
}

export const LOOK_AHEAD_DAYS = 7;
export const todayOf = (context: DueContext): Day => context.calendar.dayOf(context.now);

/** Further back than a year nobody looks: a workshop that is never open has no day before. */
const MOST_CLOSED = 366;

/** Closed days in a row that end yesterday: 2 on a Monday, more after a holiday. */
export function closedBefore(context: DueContext): number {
  const today = todayOf(context);
  const isOpen = (day: Day): boolean =>
    context.workingDays.includes(weekdayOf(day)) && !context.holidays.includes(dateOfDay(day));
  let closed = 0;
  while (closed < MOST_CLOSED && !isOpen(today - closed - 1)) closed += 1;
  return closed < MOST_CLOSED ? closed : 0;
}

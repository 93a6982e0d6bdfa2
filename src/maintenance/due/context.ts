/** What the evaluation must be told, because it reads neither clock nor settings. */
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

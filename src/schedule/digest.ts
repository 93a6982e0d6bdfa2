/** Which morning digest is owed, and when the next one is: by the workshop's own days and clock. */
import { dateOfDay, dayOfDate, weekdayOf, type Day, type LocalCalendar } from '../maintenance/calendar.ts';
import type { Instant, LocalDate } from '../maintenance/entry/entry.ts';

export interface DigestTimes {
  /** 0 is Monday. */
  workingDays: readonly number[];
  holidays: readonly LocalDate[];
  /** `HH:MM`, local. */
  digestAt: string;
}

const NOON = 12 * 60;
const LAST_MINUTE = 24 * 60 - 1;
/** A workshop is not closed for longer at a stretch: where no day comes within a year, none ever does. */
const A_YEAR = 366;

const minuteOf = (clock: string): number => {
  const [hour = 0, minute = 0] = clock.split(':').map(Number);
  return hour * 60 + minute;
};

const isWorkingDay = (day: Day, { workingDays, holidays }: DigestTimes): boolean =>
  workingDays.includes(weekdayOf(day)) && !holidays.includes(dateOfDay(day));

/**
 * The local date whose digest is owed at `now`: from its time until noon, because a morning list in the afternoon
 * helps nobody. Where the workshop wants it after noon, until the end of the day. A time that a clock change leaves
 * out is the moment at which the clock is put forward; one that comes twice is the first.
 */
export function owedDigest(times: DigestTimes, calendar: LocalCalendar, now: Instant): LocalDate | undefined {
  const day = calendar.dayOf(now);
  if (!isWorkingDay(day, times)) return undefined;
  const minute = minuteOf(times.digestAt);
  const until = minute < NOON ? NOON : LAST_MINUTE;
  const owed = now >= calendar.at(day, minute) && now < calendar.at(day, until);
  return owed ? dateOfDay(day) : undefined;
}

/** The next moment after `now` at which a digest becomes owed. */
export function nextDigest(times: DigestTimes, calendar: LocalCalendar, now: Instant): Instant | undefined {
  const today = dayOfDate(calendar.dateOf(now));
  for (let day = today; day < today + A_YEAR; day += 1) {
    const at = calendar.at(day, minuteOf(times.digestAt));
    // a day that was skipped whole, at the date line, has no morning of its own
    if (at > now && calendar.dayOf(at) === day && isWorkingDay(day, times)) return at;
  }
  return undefined;
}

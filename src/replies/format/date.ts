/** Dates as people say them in a workshop, seen from today. */
import { dayOfDate, weekdayOf, type Day } from '../../maintenance/calendar.ts';
import type { LocalDate } from '../../maintenance/entry/entry.ts';

const WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;
const MONTHS = [
  'January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December',
] as const; // prettier-ignore

const parts = (date: LocalDate): { year: string; month: string; day: number } => ({
  year: date.slice(0, 4),
  month: MONTHS[Number(date.slice(5, 7)) - 1] ?? date,
  day: Number(date.slice(8, 10)),
});

export const weekdayName = (day: Day): string => WEEKDAYS[weekdayOf(day)] ?? '';

/** "11 March", with the year when it is not today's: "11 March 2025". */
export function dayMonth(date: LocalDate, today: LocalDate): string {
  const { year, month, day } = parts(date);
  return year === today.slice(0, 4) ? `${day} ${month}` : `${day} ${month} ${year}`;
}

/** "Wednesday 11 March". */
export const fullDate = (date: LocalDate, today: LocalDate): string =>
  `${weekdayName(dayOfDate(date))} ${dayMonth(date, today)}`;

/** "today", "tomorrow", "Friday" within six days ahead, "last Friday" behind, else "24 March". */
export function dateFromToday(date: LocalDate, today: LocalDate): string {
  const ahead = dayOfDate(date) - dayOfDate(today);
  if (ahead === 0) return 'today';
  if (ahead === 1) return 'tomorrow';
  if (ahead === -1) return 'yesterday';
  if (ahead > 1 && ahead <= 6) return weekdayName(dayOfDate(date));
  if (ahead < -1 && ahead >= -6) return `on ${weekdayName(dayOfDate(date))}`;
  return dayMonth(date, today);
}

/**
 * "about 24 March (between 19 and 31)", "about Monday (between 16 and 18 March)", "tomorrow" where that is sure,
 * "likely tomorrow, else by Friday" where it is near: a band about tomorrow would start today.
 */
export function forecastDate(
  p10: LocalDate | null,
  p50: LocalDate,
  p90: LocalDate | null,
  today: LocalDate,
): string {
  const middle = dateFromToday(p50, today);
  if (p10 === p50 && p90 === p50) return middle;
  if (dayOfDate(p50) - dayOfDate(today) <= 1) return soon(middle, p50, p90, today);
  const about = `about ${middle}`;
  if (p10 === null) return about;
  if (p90 === null) return `${about} (not before ${dayMonth(p10, today)})`;
  return `${about} (${between(p10, p90, middle === dayMonth(p50, today) ? p50 : undefined, today)})`;
}

function soon(middle: string, p50: LocalDate, p90: LocalDate | null, today: LocalDate): string {
  if (p90 === null || p90 <= p50) return `likely ${middle}`;
  return `likely ${middle}, else by ${dateFromToday(p90, today)}`;
}

/** Months are named once, or not at all where the date before the bracket names the same. */
function between(from: LocalDate, to: LocalDate, named: LocalDate | undefined, today: LocalDate): string {
  const [first, last] = [parts(from), parts(to)];
  const sameMonth = first.month === last.month && first.year === last.year;
  if (!sameMonth) return `between ${dayMonth(from, today)} and ${dayMonth(to, today)}`;
  const known = named !== undefined && named.slice(0, 7) === to.slice(0, 7);
  return `between ${first.day} and ${known ? last.day : dayMonth(to, today)}`;
}

/** "14:10". */
export const clock = (minuteOfDay: number): string =>
  `${String(Math.floor(minuteOfDay / 60)).padStart(2, '0')}:${String(minuteOfDay % 60).padStart(2, '0')}`;

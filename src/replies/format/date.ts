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

/** "24 March (between 19 and 31)": a forecast with its band, months named only where they differ. */
export function forecastDate(
  p10: LocalDate | null,
  p50: LocalDate,
  p90: LocalDate | null,
  today: LocalDate,
): string {
  const middle = dateFromToday(p50, today);
  if (p10 === p50 && p90 === p50) return middle;
  const early = p10 === null ? undefined : parts(p10);
  const late = p90 === null ? undefined : parts(p90);
  const near = dayOfDate(p50) - dayOfDate(today) <= 1;
  const about = near ? middle : `about ${dayMonth(p50, today)}`;
  if (!early || p10 === null) return about;
  if (!late || p90 === null) return `${about} (not before ${dayMonth(p10, today)})`;
  const month = parts(p50).month;
  const bare = early.month === month && late.month === month && !near;
  const from = bare ? String(early.day) : dayMonth(p10, today);
  const to = bare ? String(late.day) : dayMonth(p90, today);
  return `${about} (between ${from} and ${to})`;
}

/** "14:10". */
export const clock = (minuteOfDay: number): string =>
  `${String(Math.floor(minuteOfDay / 60)).padStart(2, '0')}:${String(minuteOfDay % 60).padStart(2, '0')}`;

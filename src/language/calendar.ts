/** Whole days on the local calendar; dates are YYYY-MM-DD and never touch a time zone. */
import type { LocalDate } from './act.ts';

const DAY = 86_400_000;
const epochDay = (date: LocalDate): number => Math.floor(Date.parse(`${date}T00:00:00Z`) / DAY);
const fromEpochDay = (day: number): LocalDate => new Date(day * DAY).toISOString().slice(0, 10);

export const addDays = (date: LocalDate, days: number): LocalDate => fromEpochDay(epochDay(date) + days);
/** 0 is Sunday. */
export const weekdayOf = (date: LocalDate): number => (epochDay(date) + 4) % 7;

/** Undefined where there is no such day. */
export function dateOf(year: number, month: number, day: number): LocalDate | undefined {
  if (month < 1 || month > 12 || day < 1 || day > 31) return undefined;
  const pad = (n: number): string => String(n).padStart(2, '0');
  const date = `${String(year).padStart(4, '0')}-${pad(month)}-${pad(day)}`;
  const time = Date.parse(`${date}T00:00:00Z`);
  return Number.isNaN(time) || fromEpochDay(Math.floor(time / DAY)) !== date ? undefined : date;
}

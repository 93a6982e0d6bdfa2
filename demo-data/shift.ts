/** The demo is written as of one day; whole days bring it to any other. */
import { dateOfDay, dayOfDate, isDate } from '../src/index.ts';
import type { LocalDate } from '../src/index.ts';

/** The day as of which `workshop.yaml` is written, a Wednesday. */
export const REFERENCE_DAY: LocalDate = '2026-03-11';

/** Every date in the text, comments too, moved by as many days as `today` is from the reference day. */
export function shiftDates(text: string, today: LocalDate): string {
  const days = dayOfDate(today) - dayOfDate(REFERENCE_DAY);
  return text.replaceAll(/\b\d{4}-\d{2}-\d{2}\b/gu, (date) =>
    isDate(date) ? dateOfDay(dayOfDate(date) + days) : date,
  );
}

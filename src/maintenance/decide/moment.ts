/** When a deed happened, as far as the message says. */
import { dayOfDate, isDate, type LocalCalendar } from '../calendar.ts';
import type { Instant, LocalDate, Precision } from '../entry/entry.ts';
import type { Deed } from './deed.ts';

export interface Moment {
  at: Instant;
  precision: Precision;
}

/** A promise and a put-off are made when they are said, whatever day they are about. */
const ABOUT_LATER: ReadonlySet<Deed['kind']> = new Set<Deed['kind']>(['claim', 'defer', 'amend', 'state']);

/** Callers fold the record as of this moment and hand it to `decide`. */
export function momentOf(deed: Deed, saidAt: Instant, calendar: LocalCalendar): Moment {
  const on = 'on' in deed && !ABOUT_LATER.has(deed.kind) ? deed.on : undefined;
  if (on === undefined || !isDate(on)) return { at: saidAt, precision: 'instant' };
  return momentOn(on, saidAt, calendar, 'about' in deed ? deed.about : false);
}

/** 12:00 of that date; of the day of saying, not later than it was said. */
export function momentOn(on: LocalDate, saidAt: Instant, calendar: LocalCalendar, about = false): Moment {
  const noon = calendar.noon(dayOfDate(on));
  const today = calendar.dateOf(saidAt) === on;
  return { at: today ? Math.min(noon, saidAt) : noon, precision: about ? 'about' : 'day' };
}

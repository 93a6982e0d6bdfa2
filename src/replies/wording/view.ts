/** What sentences need besides the facts: today, the zone, and what people are called. */
import { dateOfDay, type Day, type LocalCalendar } from '../../maintenance/calendar.ts';
import type { Instant, LocalDate } from '../../maintenance/entry/entry.ts';
import { clock, dateFromToday } from '../format/date.ts';

/** Entries name a machine by the name that its record began with; people read what it is called now. */
export interface Names {
  /** Undefined where nobody called it anything else. */
  calledAs: (machine: string) => string | undefined;
}

export interface View extends Names {
  calendar: LocalCalendar;
  today: Day;
  personName: (id: string) => string;
}

export const dateWord = (date: LocalDate, { today }: View): string => dateFromToday(date, dateOfDay(today));

/** "14:10" today, "on Monday" or "5 March" before. */
export function since(at: Instant, view: View): string {
  const date = view.calendar.dateOf(at);
  const word = dateWord(date, view);
  return word === 'today' ? clock(view.calendar.minuteOf(at)) : word.replace(/^on /u, '');
}

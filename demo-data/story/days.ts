/** The days of the story: which the shop is open on, and how to find one so many days ago. */
import { dayOfDate, weekdayOf } from '../../src/index.ts';
import type { Day, Instant, LocalCalendar, LocalDate, Workshop } from '../../src/index.ts';
import { STORY_DAYS } from './cast.ts';

export interface Days {
  today: Day;
  /** The first day of the story. */
  first: Day;
  isOpen(day: Day): boolean;
  /** The latest open day that is at least so many days ago. */
  openDay(daysAgo: number): Day;
  at(day: Day, minuteOfDay: number): Instant;
}

export function storyDays(today: LocalDate, workshop: Workshop, calendar: LocalCalendar): Days {
  const working = new Set(workshop.workshop.workingDays);
  const closed = new Set(workshop.workshop.holidays.map(dayOfDate));
  const now = dayOfDate(today);
  const isOpen = (day: Day): boolean => working.has(weekdayOf(day)) && !closed.has(day);
  const openDay = (daysAgo: number): Day => {
    let day = now - daysAgo;
    while (!isOpen(day)) day -= 1;
    return day;
  };
  return {
    today: now,
    first: now - STORY_DAYS,
    isOpen,
    openDay,
    at: (day, minute) => calendar.at(day, minute),
  };
}

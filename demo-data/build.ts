/** The demo as the command line loads it: the workshop file as of today, and the journal that belongs to it. */
import { newPersonId, openCalendar, parseWorkshop } from '../src/index.ts';
import type { Entry, Instant, LocalCalendar, LocalDate, Workshop } from '../src/index.ts';
import { demoJournal } from './journal.ts';
import { shiftDates } from './shift.ts';
import { demoTemplate } from './template.ts';

export { demoTemplate } from './template.ts';

export interface Demo {
  /** YAML, dates as of today. */
  workshopText: string;
  workshop: Workshop;
  /** In the order of saying. */
  entries: Entry[];
  /** Their ids as the entries have them. */
  people: { id: string; name: string; role: 'member' | 'keeper' }[];
}

/** @param now nothing in the demo lies after it */
export function buildDemo(now: Instant): Demo {
  const { workshopText, workshop, calendar, today } = workshopAsOf(now);
  const people = workshop.people.map(({ name, role }) => ({ id: newPersonId(name), name, role }));
  return { workshopText, workshop, entries: demoJournal({ today, calendar, workshop }), people };
}

interface AsOf {
  workshopText: string;
  workshop: Workshop;
  calendar: LocalCalendar;
  today: LocalDate;
}

/** The file says in which zone today is: the day is guessed, and the file read again where the guess was wrong. */
function workshopAsOf(now: Instant, guess: LocalDate = openCalendar('UTC').dateOf(now)): AsOf {
  const workshopText = shiftDates(demoTemplate(), guess);
  const workshop = checked(workshopText);
  const calendar = openCalendar(workshop.workshop.zone);
  const today = calendar.dateOf(now);
  return today === guess ? { workshopText, workshop, calendar, today } : workshopAsOf(now, today);
}

function checked(text: string): Workshop {
  const parsed = parseWorkshop(text);
  if (parsed.ok) return parsed.workshop;
  const faults = parsed.faults.map((fault) => `line ${fault.line}: ${fault.text}`);
  throw new Error(`the demo's workshop file: ${faults.join('; ')}`);
}

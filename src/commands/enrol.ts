/**
 * The workshop file against the record: which facts are missing so that the record says what the file says.
 * Applying the same file again finds none. What the record learned since is never overwritten by an old file:
 * - a task or part that was done, swapped or stated later than the file's date stays;
 * - within one day only what the file itself now says differently is news;
 * - a stock figure is a count of the enrolment day, so only a figure that was changed in the file counts again;
 * - intervals and builds are settings: the file is their home and wins;
 * - a machine that was renamed keeps that name until the file itself gives it another.
 */
import { dateOfDay } from '../maintenance/calendar.ts';
import type { LocalCalendar } from '../maintenance/calendar.ts';
import { ROOM } from '../maintenance/codes.ts';
import type { Draft, EntryFields, Instant } from '../maintenance/entry/entry.ts';
import { foldName } from '../maintenance/machine.ts';
import type { MachineRecord, ShopRecord } from '../maintenance/record/record.ts';
import type { Workshop, WorkshopMachine } from '../workshop.ts';
import { machineFacts } from './enrol/facts.ts';
import { recordNames, type RecordNames } from './enrol/identity.ts';
import { shelfFacts } from './enrol/shelf.ts';
import { intervalFacts, putBack, statedParts, statedTasks } from './enrol/stated.ts';

export interface Enrolment {
  /** Machines by canonical name, in the order of the file. */
  added: string[];
  changed: string[];
  unchanged: string[];
  /** On record and in use, but not in the file. They stay: a machine is retired by saying so. */
  missing: string[];
  /** What the file says and the record cannot take, in sentences for its writer. */
  notes: string[];
  /** In the order in which they must stand in their message (the act index keeps it). */
  drafts: Draft[];
}

interface Moment {
  now: Instant;
  calendar: LocalCalendar;
  /** The file as it was applied last, if it ever was: tells a changed stock figure from an old one. */
  before?: Workshop;
}

/** @returns drafts at `now`; nothing is written here */
export function enrolment(workshop: Workshop, shop: ShopRecord, moment: Moment): Enrolment {
  const result: Enrolment = { added: [], changed: [], unchanged: [], missing: [], notes: [], drafts: [] };
  const add = (facts: readonly EntryFields[]): void => {
    for (const fields of facts) result.drafts.push({ ...fields, at: moment.now, precision: 'instant' });
  };
  const names = recordNames(workshop, shop);
  for (const [machine, name] of names) {
    const record = shop.machines.get(name);
    if (record?.retired) {
      result.notes.push(retiredNote(machine, record, moment.calendar));
      continue;
    }
    const facts = factsOf(machine, name, shop, moment, result.notes);
    add(facts);
    result[!record?.enrolled ? 'added' : facts.length > 0 ? 'changed' : 'unchanged'].push(name);
  }
  add(roomFacts(workshop, shop.room, moment.before));
  add(shelfFacts(workshop.shelf, shop.shelf, moment.before?.shelf));
  result.missing = missingFrom(names, shop);
  result.notes.push(...takenNames(names, result.missing));
  return result;
}

function factsOf(
  machine: WorkshopMachine,
  name: string,
  shop: ShopRecord,
  { now, calendar, before }: Moment,
  notes: string[],
): EntryFields[] {
  const record = shop.machines.get(name);
  const first = record?.enrolled
    ? dateOfDay(record.inUseSince)
    : (machine.inUseSince ?? calendar.dateOf(now));
  const told = before && toldOf(name, before, shop);
  const known = { record, ...(told ? { before: told } : {}) };
  notes.push(...putBack(machine.name, machine.lastDone, known));
  return [
    ...machineFacts(machine, name, { ...known, first }, notes),
    ...statedTasks(name, machine.lastDone, known),
    ...statedParts(name, machine, first, known),
    ...intervalFacts(name, machine.intervals, record),
  ];
}

/** What the file that was applied last said of it. */
const toldOf = (name: string, before: Workshop, shop: ShopRecord): WorkshopMachine | undefined =>
  [...recordNames(before, shop)].find(([, of]) => of === name)?.[0];

const roomFacts = ({ room }: Workshop, record: MachineRecord, before?: Workshop): EntryFields[] => [
  ...statedTasks(ROOM, room.lastDone, { record, ...(before ? { before: before.room } : {}) }),
  ...intervalFacts(ROOM, room.intervals, record),
];

const retiredNote = (machine: WorkshopMachine, record: MachineRecord, calendar: LocalCalendar): string => {
  const on = record.retired ? ` on ${calendar.dateOf(record.retired.at)}` : '';
  return `${machine.name} was retired${on}: take it out of the file, or give the machine that came after it a name of its own.`;
};

/** A name of a machine that is still in use, given to another. */
const takenNames = (names: RecordNames, missing: readonly string[]): string[] =>
  [...names.keys()].flatMap(({ name, aliases }) =>
    aliases
      .filter((alias) => missing.includes(foldName(alias)))
      .map(
        (alias) =>
          `${alias} is an alias of ${name} now, and still the name of a machine on record: retire that one first.`,
      ),
  );

function missingFrom(names: RecordNames, shop: ShopRecord): string[] {
  const named = new Set(names.values());
  const inUse = [...shop.machines.values()].filter((record) => record.enrolled && !record.retired);
  return inUse.map((record) => record.name).filter((name) => !named.has(name));
}

/** What a machine is: enrolled once, changed where the file says otherwise than the record. */
import { dateOfDay } from '../../maintenance/calendar.ts';
import type { EntryFields, LocalDate, MachineFacts } from '../../maintenance/entry/entry.ts';
import { foldName } from '../../maintenance/machine.ts';
import type { MachineRecord } from '../../maintenance/record/record.ts';
import { titled } from '../../replies/wording/names.ts';
import type { WorkshopMachine } from '../../workshop.ts';

interface Known {
  record: MachineRecord | undefined;
  /** What the file that was applied last said of it. */
  before?: WorkshopMachine;
  /** The earliest local date of the machine's entries, if this enrols it. */
  first: LocalDate;
}

export function machineFacts(
  machine: WorkshopMachine,
  name: string,
  { record, before, first }: Known,
  notes: string[],
): EntryFields[] {
  if (!record?.enrolled) return [enrolled(machine, name, first)];
  notes.push(...fixedAtEnrolment(machine, record));
  const set = changes(machine, record, before);
  return Object.keys(set).length > 0 ? [{ kind: 'changed', machine: name, set }] : [];
}

/** The name that a record began with is understood without being an alias. */
const foldedAliases = (machine: WorkshopMachine, name: string): string[] =>
  machine.aliases.map(foldName).filter((alias) => alias !== name);

function enrolled(machine: WorkshopMachine, name: string, first: LocalDate): EntryFields {
  const { build, startHours } = machine;
  return {
    kind: 'enrolled',
    machine: name,
    ...(machine.name === titled(name) ? {} : { calledAs: machine.name }),
    ...(machine.aliases.length > 0 ? { aliases: foldedAliases(machine, name) } : {}),
    build,
    ...(startHours === undefined ? {} : { startHours }),
    inUseSince: first,
    ...(machine.new ? { new: true } : {}),
  };
}

function changes(
  machine: WorkshopMachine,
  record: MachineRecord,
  before: WorkshopMachine | undefined,
): MachineFacts {
  const aliases = foldedAliases(machine, record.name);
  const sameAliases = sameContent(aliases.toSorted(), record.aliases.map(foldName).toSorted());
  return {
    ...(isRenamed(machine, record, before) ? { calledAs: machine.name } : {}),
    ...(sameAliases ? {} : { aliases }),
    ...(sameContent(machine.build, record.build) ? {} : { build: machine.build }),
  };
}

/** A name given in the chat stands against a file that goes on saying what it said before. */
const isRenamed = (
  { name }: WorkshopMachine,
  { name: began, calledAs }: MachineRecord,
  before: WorkshopMachine | undefined,
): boolean =>
  name !== (calledAs ?? titled(began)) && (before ? before.name !== name : calledAs === undefined);

/** Equal as JSON, whatever the order of the fields. */
export const sameContent = (one: unknown, other: unknown): boolean => canonical(one) === canonical(other);
const canonical = (value: unknown): string =>
  JSON.stringify(value, (_, held: unknown) =>
    typeof held === 'object' && held !== null && !Array.isArray(held)
      ? Object.fromEntries(Object.entries(held).toSorted(([a], [b]) => (a < b ? -1 : 1)))
      : held,
  );

function fixedAtEnrolment(machine: WorkshopMachine, record: MachineRecord): string[] {
  const since = dateOfDay(record.inUseSince);
  const moved = machine.inUseSince !== undefined && machine.inUseSince !== since;
  return moved
    ? [
        `${machine.name} is on record since ${since}; inUseSince ${machine.inUseSince} in the file changes nothing now.`,
      ]
    : [];
}

/** What a machine is: enrolled once, changed where the file says otherwise than the record. */
import { dateOfDay } from '../../maintenance/calendar.ts';
import type { EntryFields, LocalDate, MachineFacts } from '../../maintenance/entry/entry.ts';
import { foldName } from '../../maintenance/machine.ts';
import type { MachineRecord } from '../../maintenance/record/record.ts';
import type { WorkshopMachine } from '../../workshop.ts';

/** @param first the earliest local date of the machine's entries, if this enrols it */
export function machineFacts(
  machine: WorkshopMachine,
  name: string,
  record: MachineRecord | undefined,
  first: LocalDate,
  notes: string[],
): EntryFields[] {
  if (!record?.enrolled) return [enrolled(machine, name, first)];
  notes.push(...fixedAtEnrolment(machine, record));
  const set = changes(machine, record);
  return Object.keys(set).length > 0 ? [{ kind: 'changed', machine: name, set }] : [];
}

const foldedAliases = (machine: WorkshopMachine): string[] => machine.aliases.map(foldName);

function enrolled(machine: WorkshopMachine, name: string, first: LocalDate): EntryFields {
  const { build, startHours } = machine;
  return {
    kind: 'enrolled',
    machine: name,
    ...(machine.aliases.length > 0 ? { aliases: foldedAliases(machine) } : {}),
    build,
    ...(startHours === undefined ? {} : { startHours }),
    inUseSince: first,
    ...(machine.new ? { new: true } : {}),
  };
}

function changes(machine: WorkshopMachine, record: MachineRecord): MachineFacts {
  const aliases = foldedAliases(machine);
  const sameAliases = sameContent(aliases.toSorted(), record.aliases.map(foldName).toSorted());
  return {
    ...(sameAliases ? {} : { aliases }),
    ...(sameContent(machine.build, record.build) ? {} : { build: machine.build }),
  };
}

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

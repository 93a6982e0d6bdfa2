/** A machine comes, is described anew, and goes. */
import { dayOfDate, type LocalCalendar } from '../../calendar.ts';
import type { EntryOf } from '../../entry/entry.ts';
import type { Nozzle } from '../../machine.ts';
import { withConflict } from '../conflict.ts';
import { markOf } from '../mark.ts';
import type { MachineRecord } from '../record.ts';
import type { Reducer } from './reducer.ts';

/** A counter at enrolment is folded as a reading of its own (see `fold.ts`). */
export const enrolled: Reducer<'enrolled'> = (machine, entry, calendar) => {
  if (machine.enrolled && !machine.retired)
    return withConflict(machine, { entry: entry.id, at: entry.at, what: 'enrolled-twice' });
  const { retired: _back, ...before } = machine;
  const described: MachineRecord = {
    ...before,
    aliases: entry.aliases ?? [],
    build: entry.build,
    nozzle: entry.build.nozzle ?? {},
    enrolled: markOf(entry, machine.totals, calendar),
    inUseSince: before.enrolled ? before.inUseSince : dayOfDate(entry.inUseSince),
  };
  return entry.new ? startNew(described, entry, calendar) : described;
};

function startNew(
  machine: MachineRecord,
  entry: EntryOf<'enrolled'>,
  calendar: LocalCalendar,
): MachineRecord {
  const mark = markOf(entry, machine.totals, calendar);
  return { ...machine, startedNew: true, counterKnown: true, anchor: { mark, hours: machine.totals.hours } };
}

/** A build is stated as a whole: a feature that is not in it any more is not stated any more. */
export const changed: Reducer<'changed'> = (machine, entry) => {
  const { aliases, build } = entry.set;
  const nozzle = build && !sameNozzle(build.nozzle, machine.build.nozzle) ? build.nozzle : undefined;
  return {
    ...machine,
    ...(aliases ? { aliases } : {}),
    ...(build ? { build } : {}),
    ...(nozzle ? { nozzle } : {}),
  };
};

const sameNozzle = (a: Nozzle | undefined, b: Nozzle | undefined): boolean =>
  a?.material === b?.material && a?.boreMm === b?.boreMm && a?.mount === b?.mount;

export const retired: Reducer<'retired'> = (machine, entry, calendar) => ({
  ...machine,
  retired: markOf(entry, machine.totals, calendar),
});

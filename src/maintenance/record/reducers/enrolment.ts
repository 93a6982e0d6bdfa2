/** A machine comes, is described anew, and goes. */
import { dayOfDate } from '../../calendar.ts';
import type { Nozzle } from '../../machine.ts';
import { noteConflict } from '../conflict.ts';
import { markOf } from '../mark.ts';
import type { Reducer } from './reducer.ts';

/** A counter at enrolment is folded as a reading of its own (see `timeline.ts`). */
export const enrolled: Reducer<'enrolled'> = (machine, entry, calendar) => {
  if (machine.enrolled && !machine.retired) {
    noteConflict(machine, { entry: entry.id, at: entry.at, what: 'enrolled-twice' });
    return;
  }
  // a machine that comes back keeps the past it had; the counter it comes with need not be the old one
  if (!machine.enrolled) machine.inUseSince = dayOfDate(entry.inUseSince);
  else if (entry.startHours !== undefined) machine.counterKnown = false;
  delete machine.retired;
  const mark = markOf(entry, machine.totals, calendar);
  machine.enrolled = mark;
  if (entry.calledAs === undefined) delete machine.calledAs;
  else machine.calledAs = entry.calledAs;
  machine.aliases = entry.aliases ?? [];
  machine.build = entry.build;
  machine.nozzle = entry.build.nozzle ?? {};
  if (!entry.new) return;
  machine.startedNew = true;
  machine.counterKnown = true;
  machine.anchor = { mark, hours: machine.totals.hours };
};

/** A build is stated as a whole: a feature that is not in it any more is not stated any more. */
export const changed: Reducer<'changed'> = (machine, entry) => {
  const { calledAs, aliases, build } = entry.set;
  if (calledAs !== undefined) machine.calledAs = calledAs;
  if (aliases) machine.aliases = aliases;
  if (!build) return;
  if (build.nozzle && !sameNozzle(build.nozzle, machine.build.nozzle)) machine.nozzle = build.nozzle;
  machine.build = build;
};

const sameNozzle = (a: Nozzle, b: Nozzle | undefined): boolean =>
  a.material === b?.material && a.boreMm === b?.boreMm && a.mount === b?.mount;

export const retired: Reducer<'retired'> = (machine, entry, calendar) => {
  machine.retired = markOf(entry, machine.totals, calendar);
};

/** Baselines: nobody saw it done here, but it was stated. */
import { dayOfDate, type LocalCalendar } from '../../calendar.ts';
import { partReplacedBy, replaceTask, type Part } from '../../codes.ts';
import type { EntryOf } from '../../entry/entry.ts';
import { markOf } from '../mark.ts';
import { readNozzle } from '../nozzle.ts';
import type { MachineRecord, TaskDone } from '../record.ts';
import type { Reducer } from './reducer.ts';
import { noteTask } from './settle.ts';

export const stated: Reducer<'stated'> = (machine, entry, calendar) => {
  const part = entry.part ?? (entry.task ? partReplacedBy(entry.task) : undefined);
  const since = baselineOf(machine, entry, calendar);
  if (part) statePart(machine, part, entry, since);
  else if (entry.task) noteTask(machine, entry.task, since);
  else if (entry.tasks) for (const task of entry.tasks) noteTask(machine, task, since);
  else if (!machine.baseline || machine.baseline.at <= since.at) machine.baseline = since;
};

/**
 * Where the statement counts from. Hours: those that were stated; else those of now, if it is about now; else
 * they are not known and only days count. A figure on a counter that is not known yet waits until it is.
 */
function baselineOf(machine: MachineRecord, entry: EntryOf<'stated'>, calendar: LocalCalendar): TaskDone {
  const then = entry.on === undefined ? undefined : dayOfDate(entry.on);
  const about = then === undefined ? entry : { ...entry, at: calendar.noon(then), precision: 'day' as const };
  const mark = { ...markOf(about, machine.totals, calendar), why: 'stated' as const };
  if (entry.hours !== undefined && machine.counterKnown)
    return { ...mark, totals: { ...mark.totals, hours: entry.hours } };
  if (entry.hours !== undefined) return { ...mark, hoursUnknown: true, statedHours: entry.hours };
  return then === undefined || then === calendar.dayOf(entry.at) ? mark : { ...mark, hoursUnknown: true };
}

function statePart(machine: MachineRecord, part: Part, entry: EntryOf<'stated'>, since: TaskDone): void {
  const before = machine.parts[part];
  const ageKnown = entry.on !== undefined || entry.hours !== undefined;
  // one whose age nobody knew is the one that is spoken of now: what is told of it holds
  const same = before !== undefined && !before.ageKnown && ageKnown;
  if (before && !same && before.at > since.at) return;
  const said = entry.fitted ?? (same ? before.text : undefined);
  const text = said === undefined ? {} : { text: said };
  machine.parts = { ...machine.parts, [part]: { ...since, why: 'stated', ageKnown, ...text } };
  if (part === 'nozzle') machine.nozzle = { ...machine.nozzle, ...readNozzle(entry.fitted ?? '') };
  // a part of unknown age says nothing about when it was last replaced
  if (ageKnown) noteTask(machine, replaceTask(part), since);
}

/** A part goes out, another goes in: a life ends, a task is done, a spare leaves the shelf. */
import { replaceTask, type Part } from '../../codes.ts';
import type { EntryOf } from '../../entry/entry.ts';
import { markOf } from '../mark.ts';
import { describeNozzle, readNozzle } from '../nozzle.ts';
import { readNut } from '../nut.ts';
import { positionOf } from '../order.ts';
import type { Draw, FittedPart, MachineRecord, Mark, PartLife } from '../record.ts';
import { tidy } from '../tidy.ts';
import type { Reducer } from './reducer.ts';
import { noteTask, settle } from './settle.ts';

export const swapped: Reducer<'swapped'> = (machine, entry, calendar) => {
  const mark = markOf(entry, machine.totals, calendar);
  const wanted = entry.fitted ?? whatIsIn(machine, entry.part);
  endLife(machine, entry, mark);
  if (entry.part === 'belt') doubtBelts(machine, mark);
  const fitted: FittedPart = { why: 'swapped', ageKnown: true, ...(wanted ? { text: wanted } : {}), ...mark };
  machine.parts = { ...machine.parts, [entry.part]: fitted };
  if (entry.part === 'guide-tube') delete machine.tubeTrims;
  if (entry.part === 'nozzle') machine.nozzle = { ...machine.nozzle, ...readNozzle(entry.fitted ?? '') };
  if (entry.part === 'screw-nut') machine.build = { ...machine.build, ...readNut(entry.fitted ?? '') };
  machine.draws = [...machine.draws, drawOf(machine, entry, wanted)];
  const task = replaceTask(entry.part);
  noteTask(machine, task, { why: 'swapped', ...mark });
  settle(machine, task, entry.by);
};

/** The words for the part that is in, from its swap or from the build. */
export function whatIsIn(machine: MachineRecord, part: Part): string | undefined {
  const text = machine.parts[part]?.text;
  return text ?? (part === 'nozzle' ? describeNozzle(machine.nozzle) : undefined);
}

/**
 * A new "belt" without saying which: either may be the new one, so from here on neither's age is known, and
 * neither's life is taken as ended.
 */
function doubtBelts(machine: MachineRecord, mark: Mark): void {
  for (const belt of ['x-belt', 'y-belt'] as const) {
    const known = machine.parts[belt];
    if (known) machine.parts = { ...machine.parts, [belt]: { ...known, ...mark, ageKnown: false } };
  }
}

/** Several that come out together ("four wheels") are one life: they were one decision and ran the same hours. */
function endLife(machine: MachineRecord, entry: EntryOf<'swapped'>, to: Mark): void {
  const from = bornAt(machine, entry.part);
  if (!from || from.mark.at > to.at) return;
  const life: PartLife = {
    part: entry.part,
    hours: Math.max(0, tidy(to.totals.hours - from.mark.totals.hours)),
    days: to.day - from.mark.day,
    from: from.mark,
    to,
    ageKnown: from.ageKnown,
    ...(entry.reason ? { reason: entry.reason } : {}),
    ...(from.text ? { text: from.text } : {}),
    ...(entry.count === undefined ? {} : { count: entry.count }),
  };
  machine.lives = [...machine.lives, life];
}

/** Since when the part that comes out is known to have been in. */
function bornAt(
  machine: MachineRecord,
  part: Part,
): { mark: Mark; ageKnown: boolean; text?: string } | undefined {
  const text = whatIsIn(machine, part);
  const said = text ? { text } : {};
  const fitted = machine.parts[part];
  if (fitted) return { mark: plainMark(fitted), ageKnown: fitted.ageKnown && !fitted.hoursUnknown, ...said };
  return machine.enrolled ? { mark: machine.enrolled, ageKnown: machine.startedNew, ...said } : undefined;
}

const plainMark = ({ at, day, precision, entry, by, totals }: Mark): Mark => ({
  at,
  day,
  precision,
  entry,
  by,
  totals,
});

const drawOf = (machine: MachineRecord, entry: EntryOf<'swapped'>, want: string | undefined): Draw => ({
  part: entry.part,
  count: entry.count ?? 1,
  position: positionOf(entry),
  machine: machine.name,
  by: entry.by,
  ...(want ? { want } : {}),
});

/** What the file states of the past, where the record does not know better; and the machine's own intervals. */
import { dateOfDay, dayOfDate } from '../../maintenance/calendar.ts';
import { foldName } from '../../maintenance/machine.ts';
import { partReplacedBy } from '../../maintenance/codes.ts';
import type { Part, Task } from '../../maintenance/codes.ts';
import type { EntryFields, Interval, LocalDate } from '../../maintenance/entry/entry.ts';
import type { FittedPart, MachineRecord, TaskDone } from '../../maintenance/record/record.ts';
import type { WorkshopMachine } from '../../workshop.ts';
import { sameContent } from './facts.ts';

interface StatedTask {
  on: LocalDate;
  hours?: number;
}
interface StatedPart {
  fitted?: string;
  on?: LocalDate;
  hours?: number;
}
type ByCode<Code extends string, Value> = Readonly<Partial<Record<Code, Value>>>;

/** What is known of a machine (or the room) already. */
export interface Known {
  record: MachineRecord | undefined;
  /** What the file that was applied last stated of it. */
  before?: { lastDone: ByCode<Task, StatedTask>; parts?: ByCode<Part, StatedPart> };
}

const entriesOf = <Code extends string, Value>(block: ByCode<Code, Value>): [Code, Value][] =>
  Object.entries(block) as [Code, Value][];

export const statedTasks = (
  machine: string,
  lastDone: ByCode<Task, StatedTask>,
  { record, before }: Known,
): EntryFields[] =>
  entriesOf(lastDone)
    .filter(([task, stated]) => {
      const changed = before && !sameContent(before.lastDone[task] ?? {}, stated);
      const part = partReplacedBy(task);
      return part
        ? isNewsOfPart(stated, record?.parts[part], changed)
        : isNewsOfTask(stated, record?.tasks[task], changed);
    })
    .map(([task, stated]) => ({ kind: 'stated', machine, task, ...stated }));

/**
 * Later news stands. Within one day a statement is news when the file did not say so before: the record's own
 * hours are no measure, because a reading or a new counter moves them.
 */
function isNewsOfTask(
  stated: StatedTask,
  known: TaskDone | undefined,
  changed: boolean | undefined,
): boolean {
  if (!known) return true;
  const day = dayOfDate(stated.on);
  if (known.day !== day) return known.day < day;
  return known.why === 'stated' && changed === true;
}

/** @param first the day on which a new machine started: whatever is in it has been in it since then */
export function statedParts(
  name: string,
  machine: WorkshopMachine,
  first: LocalDate,
  { record, before }: Known,
): EntryFields[] {
  const fresh = machine.new ? { on: first, hours: 0 } : {};
  return entriesOf<Part, StatedPart>(machine.parts)
    .filter(([part, said]) =>
      isNewsOfPart(
        { ...fresh, ...said },
        record?.parts[part],
        before?.parts && !sameContent(before.parts[part] ?? {}, said),
      ),
    )
    .map(([part, said]) => ({
      kind: 'stated',
      machine: name,
      part,
      ...(said.on === undefined ? fresh : {}),
      ...said,
    }));
}

/** @param changed the file says something else of the part than before; undefined when nobody knows */
function isNewsOfPart(
  stated: StatedPart,
  known: FittedPart | undefined,
  changed: boolean | undefined,
): boolean {
  if (!known) return true;
  if (stated.on === undefined) return !known.ageKnown && !sameText(known, stated);
  const day = dayOfDate(stated.on);
  if (known.why === 'swapped') return known.day < day;
  if (!known.ageKnown) return changed === true;
  return known.day === day ? (changed ?? !sameText(known, stated)) : known.day < day;
}

const sameText = (known: FittedPart, stated: StatedPart): boolean =>
  stated.fitted === undefined || foldName(known.text ?? '') === foldName(stated.fitted);

/** Dates that were put back in the file: the record keeps the later one, and the file's writer should know. */
export function putBack(
  name: string,
  lastDone: ByCode<Task, StatedTask>,
  { record, before }: Known,
): string[] {
  if (!before) return [];
  return entriesOf(lastDone).flatMap(([task, { on }]) => {
    const known = record?.tasks[task];
    const was = before.lastDone[task]?.on;
    if (known?.why !== 'stated' || was === undefined || was <= on || known.day <= dayOfDate(on)) return [];
    return [
      `${name}: ${task} is on record as of ${dateOfDay(known.day)}; the earlier ${on} in the file changes nothing. Take that entry back first.`,
    ];
  });
}

type OwnInterval = Interval & { source: 'manual' | 'workshop' };

export const intervalFacts = (
  machine: string,
  intervals: ByCode<Task, OwnInterval>,
  record: MachineRecord | undefined,
): EntryFields[] =>
  entriesOf(intervals).flatMap(([task, { source, ...interval }]): EntryFields[] => {
    const own = record?.intervals[task];
    const same = own?.source === source && sameContent(own.interval, interval);
    return same ? [] : [{ kind: 'intervalSet', machine, task, interval, source }];
  });

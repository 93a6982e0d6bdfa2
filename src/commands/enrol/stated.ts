/** What the file states of the past, where the record does not know better; and the machine's own intervals. */
import { dayOfDate } from '../../maintenance/calendar.ts';
import { foldName } from '../../maintenance/machine.ts';
import type { Part, Task } from '../../maintenance/codes.ts';
import type { EntryFields, Interval, LocalDate } from '../../maintenance/entry/entry.ts';
import type { FittedPart, MachineRecord, TaskDone } from '../../maintenance/record/record.ts';
import type { WorkshopMachine } from '../../workshop.ts';
import { sameContent } from './facts.ts';

interface StatedTask {
  on: LocalDate;
  hours?: number;
}
type ByCode<Code extends string, Value> = Readonly<Partial<Record<Code, Value>>>;

const entriesOf = <Code extends string, Value>(block: ByCode<Code, Value>): [Code, Value][] =>
  Object.entries(block) as [Code, Value][];

export const statedTasks = (
  machine: string,
  lastDone: ByCode<Task, StatedTask>,
  record: MachineRecord | undefined,
): EntryFields[] =>
  entriesOf(lastDone)
    .filter(([task, stated]) => !knownTask(record?.tasks[task], stated))
    .map(([task, stated]) => ({ kind: 'stated', machine, task, ...stated }));

/** Later news stands. On the same day only another figure of hours is news, and only against a statement. */
function knownTask(known: TaskDone | undefined, stated: StatedTask): boolean {
  if (!known) return false;
  const day = dayOfDate(stated.on);
  if (known.why !== 'stated' || known.day !== day) return known.day >= day;
  return stated.hours === undefined || (!known.hoursUnknown && known.totals.hours === stated.hours);
}

interface StatedPart {
  fitted?: string;
  on?: LocalDate;
  hours?: number;
}

/** @param first the day on which a new machine started: whatever is in it has been in it since then */
export function statedParts(
  name: string,
  machine: WorkshopMachine,
  record: MachineRecord | undefined,
  first: LocalDate,
): EntryFields[] {
  const fresh = machine.new ? { on: first, hours: 0 } : {};
  return entriesOf<Part, StatedPart>(machine.parts)
    .map(([part, said]): [Part, StatedPart] => [part, said.on === undefined ? { ...fresh, ...said } : said])
    .filter(([part, stated]) => !knownPart(record?.parts[part], stated))
    .map(([part, stated]) => ({ kind: 'stated', machine: name, part, ...stated }));
}

function knownPart(known: FittedPart | undefined, stated: StatedPart): boolean {
  if (!known) return false;
  if (stated.on === undefined) return known.ageKnown || sameText(known, stated);
  const day = dayOfDate(stated.on);
  if (known.why === 'swapped') return known.day >= day;
  if (!known.ageKnown || known.day < day) return false;
  return known.day > day || sameText(known, stated);
}

const sameText = (known: FittedPart, stated: StatedPart): boolean =>
  stated.fitted === undefined || foldName(known.text ?? '') === foldName(stated.fitted);

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

/** From where a task counts: done, fitted, stated, or started new. */
import { RUN_IN_PARTS } from '../care/bundles.ts';
import type { Rule } from '../care/rule.ts';
import { partReplacedBy } from '../codes.ts';
import type { MachineRecord, TaskDone, Totals } from '../record/record.ts';
import type { DueContext } from './context.ts';

export const NO_TOTALS: Totals = { hours: 0, runDays: 0, hoursOf: {}, gramsOf: {}, unweighedHoursOf: {} };

const runInParts: ReadonlySet<string> = new Set(RUN_IN_PARTS);

const later = (a: TaskDone | undefined, b: TaskDone | undefined): TaskDone | undefined =>
  a && b ? (b.at > a.at ? b : a) : (a ?? b);

/** A part whose age is known; the look at it starts anew with it. */
function fittedOf(rule: Rule, record: MachineRecord): TaskDone | undefined {
  const fitted = rule.part && record.parts[rule.part];
  if (!fitted?.ageKnown) return undefined;
  const { text: _, ageKnown: __, ...mark } = fitted;
  return mark;
}

/** A part that may have been changed since ("a belt", which one nobody said): its age is not known any more. */
function ageInDoubt(rule: Rule, record: MachineRecord, known: TaskDone | undefined): boolean {
  const part = partReplacedBy(rule.task);
  const fitted = part && record.parts[part];
  return fitted !== undefined && !fitted.ageKnown && known !== undefined && fitted.at > known.at;
}

/** A new machine counts from the day on which it came into use, at counter 0. */
function startOf(record: MachineRecord, context: DueContext): TaskDone | undefined {
  if (!record.startedNew) return undefined;
  return {
    at: context.calendar.noon(record.inUseSince),
    day: record.inUseSince,
    precision: 'day',
    entry: record.enrolled?.entry ?? '',
    by: record.enrolled?.by ?? '',
    // marks move with a new counter, so the figure of the start is that of its own mark
    totals: record.enrolled?.totals ?? NO_TOTALS,
    why: 'started',
  };
}

/**
 * The latest of what is on record. "All fine" makes no part young: a part whose age is known keeps it, and
 * only tasks without such a part take the baseline. The room's entry counts for what is one line for the room.
 */
export function sinceOf(
  rule: Rule,
  record: MachineRecord,
  context: DueContext,
  room?: MachineRecord,
): TaskDone | undefined {
  const known = [
    record.tasks[rule.task],
    fittedOf(rule, record),
    runInParts.has(rule.task) ? record.tasks['run-in'] : undefined,
    rule.oneLine ? room?.tasks[rule.task] : undefined,
  ].reduce(later, undefined);
  if (ageInDoubt(rule, record, known)) return undefined;
  const keepsItsAge = partReplacedBy(rule.task) !== undefined && known !== undefined;
  return (keepsItsAge ? known : later(known, record.baseline)) ?? startOf(record, context);
}

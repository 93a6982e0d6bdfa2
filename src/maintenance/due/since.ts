/** From where a task counts: done, fitted, stated, or started new. */
import { RUN_IN_PARTS } from '../care/bundles.ts';
import type { Rule } from '../care/rule.ts';
import type { Part } from '../codes.ts';
import { NOTHING_USED } from '../record/blank.ts';
import type { MachineRecord, TaskDone } from '../record/record.ts';
import { tidy } from '../record/tidy.ts';
import type { DueContext } from './context.ts';

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
function ageInDoubt(part: Part, record: MachineRecord, known: TaskDone): boolean {
  const fitted = record.parts[part];
  return fitted !== undefined && !fitted.ageKnown && fitted.at > known.at;
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
    totals: record.enrolled?.totals ?? NOTHING_USED,
    why: 'started',
  };
}

const NOON = 12 * 60;

/**
 * What was done for the whole room, with this machine's totals at that time: what it ran on later days is off.
 * On the day itself prints count as after a deed of the morning, as before one of the afternoon.
 */
function inRoom(
  done: TaskDone | undefined,
  record: MachineRecord,
  { calendar }: DueContext,
): TaskDone | undefined {
  if (!done) return undefined;
  const first = calendar.minuteOf(done.at) > NOON ? done.day + 1 : done.day;
  const { hours, lastDay } = record.runByDay;
  const since = hours.slice(Math.max(0, hours.length - Math.max(0, lastDay - first + 1)));
  const totals = {
    ...record.totals,
    hours: tidy(record.totals.hours - since.reduce((sum, h) => sum + h, 0)),
    runDays: record.totals.runDays - since.filter((h) => h > 0).length,
  };
  return { ...done, totals };
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
  let known = later(record.tasks[rule.task], fittedOf(rule, record));
  if (runInParts.has(rule.task)) known = later(known, record.tasks['run-in']);
  if (rule.oneLine && room) known = later(known, inRoom(room.tasks[rule.task], record, context));
  if (rule.spare && known) return ageInDoubt(rule.spare, record, known) ? undefined : known;
  return later(known, record.baseline) ?? startOf(record, context);
}

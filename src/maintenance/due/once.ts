/** A single look some time after an event: 50 h after a new belt, 20 h after a machine was new. */
import type { Once, Rule, RuleFacts } from '../care/rule.ts';
import type { Day } from '../calendar.ts';
import type { Mark, MachineRecord, TaskDone } from '../record/record.ts';
import { lastOf } from './events.ts';
import { graceOf } from './measure.ts';
import type { TriggerUse } from './row.ts';

/** Done before three quarters of the delay it was too early: the belt has still to settle. */
const EARLY = 0.75;

export interface OnceUse extends TriggerUse {
  mark: Mark;
}

/** A new machine's delay counts from the day on which it came into use, whenever it was enrolled. */
function eventMark(once: Once, record: MachineRecord, today: Day, facts: RuleFacts): Mark | undefined {
  const mark = lastOf(once.after, { record, facts, since: undefined, today });
  if (!mark || !('started' in once.after)) return mark;
  return { ...mark, day: record.inUseSince };
}

function useOf(
  once: Once,
  record: MachineRecord,
  done: TaskDone | undefined,
  today: Day,
  facts: RuleFacts,
): OnceUse[] {
  const mark = eventMark(once, record, today, facts);
  const interval = once.hours ?? once.days;
  if (!mark || interval === undefined) return [];
  const inHours = once.hours !== undefined;
  const passed = (hours: number, day: Day): number => (inHours ? hours - mark.totals.hours : day - mark.day);
  if (done && done.why !== 'started' && settles(done, mark, interval * EARLY, passed)) return [];
  const used = Math.max(0, passed(record.totals.hours, today));
  const unit = inHours ? 'h' : 'days';
  return [
    { trigger: 'once', used, interval, share: used / interval, unit, grace: graceOf(interval, unit), mark },
  ];
}

/** Where the hours of a deed are unknown, having been done after the event is enough. */
const settles = (
  done: TaskDone,
  event: Mark,
  enough: number,
  passed: (hours: number, day: Day) => number,
): boolean => (done.hoursUnknown ? done.at > event.at : passed(done.totals.hours, done.day) >= enough);

/**
 * The single looks of a task that are still to come or owed. The nearest of each event comes first: a run-in at
 * 50 h is not asked for while the one at 20 h is owed.
 */
export function onceUses(
  rule: Rule,
  record: MachineRecord,
  since: TaskDone | undefined,
  today: Day,
  facts: RuleFacts,
): readonly OnceUse[] {
  if (rule.once.length === 0) return [];
  const uses = rule.once
    .filter((once) => !once.inRunIn)
    .flatMap((once) => useOf(once, record, since, today, facts));
  return uses
    .toSorted((a, b) => a.interval - a.used - (b.interval - b.used))
    .filter((use, place, all) => all.findIndex((other) => other.mark.entry === use.mark.entry) === place);
}

/** Where one task stands: from when it counts, what each trigger has used, what raised it. */
import { classOf, graver } from '../care/rule.ts';
import type { ConsequenceClass, Rule, Term } from '../care/rule.ts';
import type { TaskDone } from '../record/record.ts';
import { lastOf } from './events.ts';
import type { MachineScene } from './machine.ts';
import { measurable, measure, termsNow } from './measure.ts';
import { onceUses } from './once.ts';
import type { OnceUse } from './once.ts';
import { raisedOf } from './raised.ts';
import type { Raised, TriggerUse } from './row.ts';
import { sinceOf } from './since.ts';

/** Sums of logged hours are not exact: 299.9999999999 h of 300 are due. */
export const HAIR = 1e-9;

interface Measured {
  term: Term;
  use: TriggerUse;
}

export interface Standing {
  since: TaskDone | undefined;
  terms: readonly Term[];
  faster: boolean;
  measured: readonly Measured[];
  onces: readonly OnceUse[];
  raised: Raised | undefined;
  /** All triggers, raised last. */
  uses: readonly TriggerUse[];
  class: ConsequenceClass;
}

/** An event makes a task due at once and whole. */
const RAISED_USE: TriggerUse = { trigger: 'raised', used: 1, interval: 1, share: 1, unit: 'times', grace: 0 };

/** A task that no calendar asks for, on a machine to which nothing ever happened that could raise it. */
export function isQuiet(rule: Rule, { record, ever }: MachineScene): boolean {
  if (typeof rule.every === 'function' || rule.every.length > 0 || rule.once.length > 0) return false;
  if (record.intervals[rule.task] || record.tasks[rule.task]?.finding === 'bad') return false;
  return !rule.raisedBy.some(({ when }) => lastOf(when, ever));
}

/** Undefined where nothing asks for the task: no interval, nothing pending. */
export function standingOf(rule: Rule, scene: MachineScene): Standing | undefined {
  const { record, context, today, room, facts } = scene;
  const since = sinceOf(rule, record, context, room);
  const { terms, faster } = termsNow(rule, scene, since);
  const onces = onceUses(rule, record, since, today, facts);
  const raised = raisedOf(rule, { record, facts, since, today });
  if (terms.length === 0 && onces.length === 0 && !raised) return undefined;
  const measured: Measured[] = [];
  const uses: TriggerUse[] = [];
  if (since)
    for (const term of measurable(terms, since)) {
      const use = measure(term, since, record, today);
      measured.push({ term, use });
      uses.push(use);
    }
  for (const once of onces) uses.push(once);
  if (raised) uses.push(RAISED_USE);
  const own = classOf(rule, record.build);
  return {
    since,
    terms,
    faster,
    measured,
    onces,
    raised,
    uses,
    class: raised?.class ? graver(own, raised.class) : own,
  };
}

/** Loops and no closures: these run for twenty tasks on each of a thousand machines. */
export function isReached({ uses }: Standing): boolean {
  for (const { share } of uses) if (share >= 1 - HAIR) return true;
  return false;
}

/** The trigger with the largest share; an interval before the event that came on top of it. */
export function topUse(uses: readonly TriggerUse[]): TriggerUse | undefined {
  let top: TriggerUse | undefined;
  for (const use of uses) if (!top || use.share > top.share) top = use;
  return top;
}

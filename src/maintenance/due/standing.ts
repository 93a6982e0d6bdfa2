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

export interface Standing {
  since: TaskDone | undefined;
  terms: readonly Term[];
  faster: boolean;
  measured: readonly { term: Term; use: TriggerUse }[];
  onces: readonly OnceUse[];
  raised: Raised | undefined;
  /** All triggers, raised last. */
  uses: readonly TriggerUse[];
  class: ConsequenceClass;
}

/** An event makes a task due at once and whole. */
const RAISED_USE: TriggerUse = { trigger: 'raised', used: 1, interval: 1, share: 1, unit: 'times', grace: 0 };

/** A task that no calendar asks for, on a machine to which nothing ever happened that could raise it. */
function isQuiet(rule: Rule, { record, ever }: MachineScene): boolean {
  if (typeof rule.every === 'function' || rule.every.length > 0 || rule.once.length > 0) return false;
  if (record.intervals[rule.task] || record.tasks[rule.task]?.finding === 'bad') return false;
  return !rule.raisedBy.some(({ when }) => lastOf(when, ever));
}

/** Undefined where nothing asks for the task: no interval, nothing pending. */
export function standingOf(rule: Rule, scene: MachineScene): Standing | undefined {
  const { record, context, today, room, facts } = scene;
  if (isQuiet(rule, scene)) return undefined;
  const since = sinceOf(rule, record, context, room);
  const { terms, faster } = termsNow(rule, scene, since);
  const onces = onceUses(rule, record, since, today, facts);
  const raised = raisedOf(rule, { record, facts, since, today });
  if (terms.length === 0 && onces.length === 0 && !raised) return undefined;
  const measured = since
    ? measurable(terms, since).map((term) => ({ term, use: measure(term, since, record, today) }))
    : [];
  const own = classOf(rule, record.build);
  return {
    since,
    terms,
    faster,
    measured,
    onces,
    raised,
    uses: [...measured.map(({ use }) => use), ...onces, ...(raised ? [RAISED_USE] : [])],
    class: raised?.class ? graver(own, raised.class) : own,
  };
}

export const isReached = ({ uses }: Standing): boolean => uses.some(({ share }) => share >= 1 - HAIR);

/** The trigger with the largest share; an interval before the event that came on top of it. */
export const topUse = (uses: readonly TriggerUse[]): TriggerUse | undefined =>
  uses.reduce<TriggerUse | undefined>((top, use) => (!top || use.share > top.share ? use : top), undefined);

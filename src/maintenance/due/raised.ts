/** What raises a task out of its turn: a symptom, a deed, a part fitted, a look that found something bad. */
import { BUNDLES } from '../care/bundles.ts';
import type { BundleName } from '../care/bundles.ts';
import { graver } from '../care/rule.ts';
import type { ConsequenceClass, Event, Raise, Rule } from '../care/rule.ts';
import type { Mark, MachineRecord } from '../record/record.ts';
import { lastOf } from './events.ts';
import type { EventScene } from './events.ts';
import { factsOf } from './measure.ts';
import type { Raised } from './row.ts';

function bundleOf(event: Event, rule: Rule): BundleName | undefined {
  const name =
    'symptom' in event && event.symptom === 'crash'
      ? 'crash'
      : 'backAfterDays' in event
        ? 'standing'
        : undefined;
  return name && BUNDLES[name].includes(rule.task) ? name : undefined;
}

/** A bad look without a remedy of its own stays open until it is done again or something was mended. */
function leftOpen(rule: Rule, record: MachineRecord): { event: Event; mark: Mark } | undefined {
  const done = record.tasks[rule.task];
  if (done?.finding !== 'bad' || rule.remedies.length > 0) return undefined;
  const mended = rule.mendedBy.some((part) => {
    const fitted = record.parts[part];
    return fitted?.why === 'swapped' && fitted.at >= done.at;
  });
  return mended ? undefined : { event: { done: rule.task, finding: 'bad' }, mark: done };
}

const asRaised = (
  event: Event,
  mark: Mark,
  rule: Rule,
  scene: EventScene,
  own?: ConsequenceClass,
): Raised => {
  const bundle = bundleOf(event, rule);
  return {
    event,
    mark,
    last: mark,
    daysAgo: scene.today - mark.day,
    ...(own && { class: own }),
    ...(bundle && { bundle }),
  };
};

function pendingOf(raise: Raise, rule: Rule, scene: EventScene): Raised[] {
  if (raise.only && !raise.only(factsOf(scene.record))) return [];
  const mark = lastOf(raise.when, scene);
  return mark ? [asRaised(raise.when, mark, rule, scene, raise.class)] : [];
}

/** The event that raised it and still stands: the first of several, with the gravest class among them. */
export function raisedOf(rule: Rule, scene: EventScene): Raised | undefined {
  const open = leftOpen(rule, scene.record);
  const pending = [
    ...rule.raisedBy.flatMap((raise) => pendingOf(raise, rule, scene)),
    ...(open ? [asRaised(open.event, open.mark, rule, scene)] : []),
  ];
  if (pending.length === 0) return undefined;
  const first = pending.reduce((a, b) => (b.mark.at < a.mark.at ? b : a));
  const last = pending.reduce((a, b) => (b.mark.at > a.mark.at ? b : a)).mark;
  const classes = pending.flatMap((raised) => (raised.class ? [raised.class] : []));
  return { ...first, last, ...(classes.length > 0 && { class: classes.reduce(graver) }) };
}

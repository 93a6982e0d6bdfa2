/** What raises a task out of its turn: a symptom, a deed, a part fitted, a look that found something bad. */
import { BUNDLES } from '../care/bundles.ts';
import type { BundleName } from '../care/bundles.ts';
import { graver } from '../care/rule.ts';
import type { ConsequenceClass, Event, Rule } from '../care/rule.ts';
import type { Mark, MachineRecord } from '../record/record.ts';
import { lastOf } from './events.ts';
import type { EventScene } from './events.ts';
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

/** The event that raised it and still stands: the first of several, with the gravest class among them. */
export function raisedOf(rule: Rule, scene: EventScene): Raised | undefined {
  let first: Raised | undefined;
  for (const { when, only, class: own } of rule.raisedBy) {
    const mark = lastOf(when, scene);
    if (mark && (!only || only(scene.facts))) first = joined(first, when, mark, rule, scene, own);
  }
  const open = leftOpen(rule, scene.record);
  return open ? joined(first, open.event, open.mark, rule, scene) : first;
}

/** Two events that stand: told by the earlier one. */
function joined(
  known: Raised | undefined,
  event: Event,
  mark: Mark,
  rule: Rule,
  scene: EventScene,
  own?: ConsequenceClass,
): Raised {
  if (!known) return asRaised(event, mark, rule, scene, own);
  const told = mark.at < known.mark.at ? asRaised(event, mark, rule, scene) : known;
  const grave = known.class && own ? graver(known.class, own) : (known.class ?? own);
  const last = mark.at > known.last.at ? mark : known.last;
  return { ...told, last, ...(grave && { class: grave }) };
}

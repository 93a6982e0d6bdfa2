/**
 * What a symptom may come from, as looks: what it raises, and what else is likely by a technician's table of causes
 * (judgement and common practice, no source; only causes of which the symptom is the usual sign).
 */
import type { Symptom, Task } from '../codes.ts';
import type { Build } from '../machine.ts';
import { RULES, rulesFor } from './index.ts';
import { classOf, rankOf } from './rule.ts';
import type { Rule } from './rule.ts';

/** Likely, and no task of their own falls due by it: what is quick and frequent first. */
const ALSO: Readonly<Partial<Record<Symptom, readonly Task[]>>> = {
  'under-extrusion': [
    'clear-jam', 'clean-nozzle', 'check-filament-path', 'check-liner', 'tighten-pulleys', 'check-feeder-gear', 'calibrate-feeder',
  ],
  'feeder-clicking': ['clear-jam', 'clean-nozzle', 'check-filament-path', 'check-fans', 'dust-off', 'check-wiring'],
  'ground-filament': ['clear-jam', 'check-filament-path', 'check-feeder-gear'],
  'no-extrusion': ['check-filament-path', 'check-fans', 'check-liner'],
  'worn-nozzle': ['check-nozzle'],
  'nozzle-leak': ['check-nozzle'],
  stringing: ['dry-filament'],
  'rough-surface': ['dry-filament'],
  'error-shutdown': ['check-heater'],
  'no-heat': ['check-heater'],
  'layer-shift': ['clear-debris', 'check-fans', 'dust-off', 'check-wiring'],
  'poor-adhesion': ['level-bed'],
  grinding: ['replace-bearing'],
  rattle: ['replace-bearing'],
  'screen-frozen': ['check-notices', 'check-wiring'],
}; // prettier-ignore

const raisedBy = (rule: Rule, symptom: Symptom): boolean =>
  rule.raisedBy.some(({ when }) => 'symptom' in when && when.symptom === symptom);

/**
 * The looks on a build, or on any. Safety looks that the symptom raises come first, whatever is likelier; then what else
 * it raises, the longest neglected first (`share` of its interval used): there the cause is the likelier.
 */
export function looksFor(
  symptom: Symptom,
  build: Build | undefined,
  share: (task: Task) => number,
): readonly Rule[] {
  const rules = build ? rulesFor(build).map(({ rule }) => rule) : RULES;
  const raised = rules.filter((rule) => raisedBy(rule, symptom));
  const isSafety = (rule: Rule): boolean => rankOf(classOf(rule, build ?? {})) === 0;
  const first = raised.filter(isSafety);
  const then = raised.filter((rule) => !isSafety(rule)).toSorted((a, b) => share(b.task) - share(a.task));
  const also = (ALSO[symptom] ?? []).flatMap((task) =>
    rules.filter((rule) => rule.task === task && !raised.includes(rule)),
  );
  return [...first, ...then, ...also];
}

/** The default care rules, in the order in which a person would walk round a machine. */
import type { Task } from '../codes.ts';
import type { Build } from '../machine.ts';
import { BED } from './bed.ts';
import { ON_CONDITION } from './byCondition.ts';
import { ELECTRICS } from './electrics.ts';
import { FEED } from './feed.ts';
import { HOT_END } from './hotEnd.ts';
import { MOTION } from './motion.ts';
import { ROOM_RULES } from './room.ts';
import type { Rule } from './rule.ts';
import { UPKEEP } from './upkeep.ts';
import { Z } from './z.ts';

export const RULES: readonly Rule[] = [
  ...ELECTRICS,
  ...UPKEEP,
  ...FEED,
  ...HOT_END,
  ...MOTION,
  ...Z,
  ...BED,
  ...ON_CONDITION,
  ...ROOM_RULES,
];

const byTask: ReadonlyMap<Task, Rule> = new Map(RULES.map((rule) => [rule.task, rule]));

/** Every task code has a rule; a test holds the two lists against each other. */
export function ruleOf(task: Task): Rule {
  const found = byTask.get(task);
  if (!found) throw new Error(`no care rule for ${task}`);
  return found;
}

export interface PlannedRule {
  rule: Rule;
  /** What an unstated feature was treated as. */
  assumed?: string;
}

/** Builds are plain data that nobody changes, so what applies to one is worked out once. */
const kept = new WeakMap<Build, readonly PlannedRule[]>();

/** The rules of a machine of this build, in list order. Room tasks are not among them. */
export function rulesFor(build: Build): readonly PlannedRule[] {
  const known = kept.get(build);
  if (known) return known;
  const planned = RULES.filter((rule) => rule.place === 'machine').flatMap((rule): PlannedRule[] => {
    const applies = rule.applies(build);
    if (applies === 'no') return [];
    return [applies === 'yes' ? { rule } : { rule, assumed: applies.assumed }];
  });
  kept.set(build, planned);
  return planned;
}

export const roomRules = (): readonly PlannedRule[] => ROOM_RULES.map((rule) => ({ rule }));

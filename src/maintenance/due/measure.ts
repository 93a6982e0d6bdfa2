/** How far the repeating triggers of a rule have come. */
import { doseBetween, gramsBetween, usualRate } from '../care/dose.ts';
import { termsOf } from '../care/rule.ts';
import type { Rule, RuleFacts, Term } from '../care/rule.ts';
import type { Day } from '../calendar.ts';
import type { Material } from '../codes.ts';
import type { Interval } from '../entry/entry.ts';
import type { Mark, MachineRecord, TaskDone, Totals } from '../record/record.ts';
import type { TriggerUse, Unit } from './row.ts';

/** `watch` halves the next interval. */
const WATCHED = 0.5;
const GRACE = 0.1;
const DAYS_OF_GRACE = 1;

export const factsOf = (record: MachineRecord): RuleFacts => ({
  build: record.build,
  nozzle: record.nozzle,
  tubeTrims: record.tubeTrims ?? 0,
});

export const graceOf = (interval: number, unit: Unit): number =>
  unit === 'days' || unit === 'runDays' ? Math.max(DAYS_OF_GRACE, interval * GRACE) : interval * GRACE;

/** What somebody set for this machine stands for the rule's own hours, days and run-days; wear still counts. */
function ownTerms(own: Interval, usual: readonly Term[]): readonly Term[] {
  const set: Term[] = [
    ...(own.hours === undefined ? [] : [{ trigger: 'hours', interval: own.hours } as const]),
    ...(own.days === undefined ? [] : [{ trigger: 'days', interval: own.days } as const]),
    ...(own.runDays === undefined ? [] : [{ trigger: 'runDays', interval: own.runDays } as const]),
  ];
  const wear = usual
    .filter((term) => term.trigger === 'dose')
    .map((term) => (own.dose === undefined || 'gramsOf' in term ? term : { ...term, interval: own.dose }));
  return [...set, ...wear];
}

export interface Terms {
  terms: readonly Term[];
  faster: boolean;
}

/** The terms that hold now: the machine's own, else the rule's, with its faster ones while their filament runs. */
export function termsNow(
  rule: Rule,
  { record, facts }: { record: MachineRecord; facts: RuleFacts },
  since: TaskDone | undefined,
): Terms {
  const usual = termsOf(rule, facts);
  const own = record.intervals[rule.task];
  if (own) return { terms: ownTerms(own.interval, usual), faster: false };
  const { faster } = rule;
  if (
    !faster ||
    !since ||
    (faster.only && !faster.only(record.build)) ||
    !ranSince(faster.while, record, since)
  )
    return { terms: usual, faster: false };
  return { terms: [...usual, ...faster.every], faster: true };
}

const grew = (
  materials: readonly Material[],
  before: Readonly<Partial<Record<Material, number>>>,
  now: Readonly<Partial<Record<Material, number>>>,
): boolean => materials.some((material) => (now[material] ?? 0) > (before[material] ?? 0));

/** Did one of them run since, or is it mounted now? */
export function ranSince(
  materials: readonly Material[],
  { loaded, totals }: MachineRecord,
  since: Mark,
): boolean {
  if (loaded?.material && materials.includes(loaded.material)) return true;
  return (
    grew(materials, since.totals.hoursOf, totals.hoursOf) ||
    grew(materials, since.totals.gramsOf, totals.gramsOf)
  );
}

const UNITS: Readonly<Record<Term['trigger'], Unit>> = {
  hours: 'h',
  days: 'days',
  runDays: 'runDays',
  dose: 'dose',
};

const hoursIn = (materials: readonly Material[], { hoursOf }: Totals): number =>
  materials.reduce((sum, material) => sum + (hoursOf[material] ?? 0), 0);

function usedOf(term: Term, since: TaskDone, record: MachineRecord, today: Day): number {
  const { totals } = record;
  const from = since.totals;
  switch (term.trigger) {
    case 'days':
      return today - since.day;
    case 'hours':
      return term.of ? hoursIn(term.of, totals) - hoursIn(term.of, from) : totals.hours - from.hours;
    case 'runDays':
      return totals.runDays - from.runDays - (term.fromNextDay && ranOn(record, today, since) ? 1 : 0);
    case 'dose':
      return 'item' in term
        ? doseBetween(term.item, record.nozzle, from, totals)
        : term.gramsOf.reduce((sum, m) => sum + gramsBetween(from, totals, m, usualRate(record.nozzle)), 0);
    default:
      return term satisfies never;
  }
}

/** Is today among the run-days since? */
function ranOn(record: MachineRecord, today: Day, since: TaskDone): boolean {
  const { lastUsage, totals } = record;
  return lastUsage?.day === today && totals.runDays > since.totals.runDays;
}

/** One repeating trigger's standing. A `watch` at the last look halves its interval. */
export function measure(term: Term, since: TaskDone, record: MachineRecord, today: Day): TriggerUse {
  const halved = since.finding === 'watch' && !('item' in term);
  const interval = halved ? term.interval * WATCHED : term.interval;
  const used = Math.max(0, usedOf(term, since, record, today));
  const unit = 'gramsOf' in term ? 'g' : UNITS[term.trigger];
  return {
    trigger: term.trigger,
    used,
    interval,
    share: used / interval,
    unit,
    grace: graceOf(interval, unit),
  };
}

/**
 * The terms that can be measured: where the hours of a stated date are unknown, days count alone; a rule that
 * knows no days counts what is on record since, which is the least it can be.
 */
export function measurable(terms: readonly Term[], since: TaskDone): readonly Term[] {
  if (!since.hoursUnknown) return terms;
  const sure = terms.filter((term) => term.trigger === 'days');
  return sure.length > 0 ? sure : terms;
}

/** Running totals of a machine at the start of every day of the story, so that care can be timed by its use. */
import { doseBetween, gramsBetween, usualRate } from '../../src/index.ts';
import type { Day, Material, Nozzle, Term, Totals } from '../../src/index.ts';
import type { Days } from './days.ts';
import type { Run } from './runs.ts';

export interface Ledger {
  /** Totals at 00:00 of the day, hours from the start of the story. */
  at(day: Day): Totals;
  /** Share of the term that was used from the start of one day to the start of another. */
  share(term: Term, nozzle: Nozzle, from: Day, to: Day): number;
  materials: ReadonlySet<Material>;
}

const NOTHING: Totals = { hours: 0, runDays: 0, hoursOf: {}, gramsOf: {}, unweighedHoursOf: {} };
type Sums = Readonly<Partial<Record<Material, number>>>;
const plus = (sums: Sums, material: Material, amount: number): Sums => ({
  ...sums,
  [material]: (sums[material] ?? 0) + amount,
});

function addRun(totals: Totals, { hours, grams, material }: Run): Totals {
  return {
    ...totals,
    // runs are told in tenths; sums of tenths are kept as such
    hours: Math.round((totals.hours + hours) * 10) / 10,
    hoursOf: plus(totals.hoursOf, material, hours),
    gramsOf: plus(totals.gramsOf, material, grams),
  };
}

export function ledgerOf(runs: readonly Run[], days: Days): Ledger {
  const starts: Totals[] = [];
  let totals = NOTHING;
  let next = 0;
  for (let day = days.first; day <= days.today; day += 1) {
    starts.push(totals);
    const ran = next;
    for (let run = runs[next]; run?.day === day; run = runs[next]) {
      totals = addRun(totals, run);
      next += 1;
    }
    if (next > ran) totals = { ...totals, runDays: totals.runDays + 1 };
  }
  const at = (day: Day): Totals => starts[day - days.first] ?? NOTHING;
  return {
    at,
    share: (term, nozzle, from, to) => used(term, nozzle, from, to, at) / term.interval,
    materials: new Set(runs.map((run) => run.material)),
  };
}

function used(term: Term, nozzle: Nozzle, from: Day, to: Day, at: (day: Day) => Totals): number {
  if (term.trigger === 'days') return to - from;
  const [before, after] = [at(from), at(to)];
  if (term.trigger === 'runDays') return after.runDays - before.runDays;
  if (term.trigger === 'hours') {
    if (!term.of) return after.hours - before.hours;
    return term.of.reduce((sum, of) => sum + (after.hoursOf[of] ?? 0) - (before.hoursOf[of] ?? 0), 0);
  }
  if ('item' in term) return doseBetween(term.item, nozzle, before, after);
  const rate = usualRate(nozzle);
  return term.gramsOf.reduce((sum, material) => sum + gramsBetween(before, after, material, rate), 0);
}

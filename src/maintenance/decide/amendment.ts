/** From what was said to what an amendment sets, and to which entries that fits. */
import { dateOfDay, isDate } from '../calendar.ts';
import type { Amendment } from '../entry/entry.ts';
import { fits } from '../record/amendable.ts';
import type { Fact } from '../record/standing.ts';
import type { DecideContext } from './context.ts';
import type { AmendDeed } from './deed.ts';
import { refused, type Refused } from './decision.ts';
import { BORDERS, impossible } from './figures.ts';
import { momentOn } from './moment.ts';

export interface Change {
  set: Amendment;
  /** A bare number, not fitted to a field yet. */
  value?: number;
  /** Only machine or day change: then all entries of the message move together. */
  whole: boolean;
}

export function changesOf(deed: AmendDeed, context: DecideContext): Change | Refused {
  const { kind: _kind, target: _target, about, on, until, days, value, machine, ...plain } = deed;
  const { calendar, saidAt } = context;
  const facts = { act: 'amend' };
  if (on !== undefined && !isDate(on)) return refused('invalid-number', { ...facts, field: 'on' });
  const wrong = impossible('days', days, BORDERS.days, facts);
  if (wrong) return wrong;
  const later = until ?? (days === undefined ? undefined : dateOfDay(calendar.dayOf(saidAt) + days));
  const when = on === undefined ? {} : momentOn(on, saidAt, calendar, about === true);
  const specific = { ...plain, ...(later === undefined ? {} : { until: later }) };
  return {
    set: { ...specific, ...when, ...(machine === undefined ? {} : { machine }) },
    ...(value === undefined ? {} : { value }),
    whole: Object.keys(specific).length === 0 && value === undefined,
  };
}

/** Entries that can take every changed field; of those, the ones that have said such a thing before. */
export function fitting(facts: readonly Fact[], { set, value }: Change): readonly Fact[] {
  const able = facts.filter((fact) => Object.entries(set).every(([field, to]) => fits(fact.kind, field, to)));
  if (value !== undefined) return able.filter((fact) => figuresOf(fact).length > 0);
  const fields = Object.keys(set).filter(
    (field) => field !== 'machine' && field !== 'at' && field !== 'precision',
  );
  const said = able.filter((fact) => fields.every((field) => field in fact));
  return said.length > 0 ? said : able;
}

const FIGURES = ['hours', 'grams', 'metres', 'change', 'count'] as const;
type Figure = (typeof FIGURES)[number];
const figuresOf = (fact: Fact): readonly Figure[] =>
  FIGURES.filter((field) => field in fact && fits(fact.kind, field, 0));

/** A bare number goes into the one figure that the entry has; taking two instead of one stays a taking. */
export function figureFor(fact: Fact, value: number): Amendment | undefined {
  const [only, ...more] = figuresOf(fact);
  if (!only || more.length > 0) return undefined;
  const taken = fact.kind === 'stockMoved' && fact.change < 0;
  return { [only]: taken ? -Math.abs(value) : value };
}

/**
 * The last entry is put right: only the fields that change. Which entry is meant follows from what was said;
 * where two could be, that is asked. What comes out must be as possible as if it had been said at once.
 */
import type { Amendment, Draft, Entry } from '../entry/entry.ts';
import { amend, standing, type Fact } from '../record/standing.ts';
import { changesOf, figureFor, fitting, type Change } from './amendment.ts';
import type { DecideContext, Shops } from './context.ts';
import type { AmendDeed } from './deed.ts';
import { asked, refused, written, type Asked, type Decision, type Refused } from './decision.ts';
import { heldBy } from './hold.ts';
import { holdOf, stillHolds } from './lifting.ts';
import { notYours } from './own.ts';
import { doubtAmended } from './recheck.ts';
import { canonicalName } from './scene.ts';

export function decideAmend(deed: AmendDeed, shops: Shops, context: DecideContext): Decision {
  const facts = within(deed, context);
  const named =
    deed.machine === undefined ? deed : { ...deed, machine: canonicalName(deed.machine, shops.latest) };
  const chosen = choose(named, facts, context);
  if ('outcome' in chosen) return chosen;
  const foreign = notYours(
    chosen.map(({ fact }) => fact),
    context,
  );
  if (foreign) return foreign;
  for (const { fact, set } of chosen) {
    const held = holdOf(fact, shops.latest);
    if (held && !stillHolds(fact, amend(fact, set))) return heldBy(held.machine, held.hold);
    const doubt = doubtAmended(fact, amend(fact, set), shops, context);
    if (doubt) return doubt;
  }
  const at = Math.min(context.saidAt, context.now);
  const drafts = chosen.map(({ fact, set }): Draft => ({
    kind: 'amended',
    target: fact.id,
    set,
    at,
    precision: 'instant',
  }));
  return written(drafts, deed.about ? ['about-that-day'] : []);
}

/** What the last batch says now, and what its own amendments were about. */
function within(deed: AmendDeed, context: DecideContext): readonly Fact[] {
  const { lastBatch, corrected = [] } = context;
  const ids = new Set(lastBatch.map((entry) => (entry.kind === 'amended' ? entry.target : entry.id)));
  const facts = standing(unique([...corrected, ...lastBatch]));
  return facts.filter((fact) => (deed.target === undefined ? ids.has(fact.id) : fact.id === deed.target));
}

const unique = (entries: readonly Entry[]): readonly Entry[] => [
  ...new Map(entries.map((entry) => [entry.id, entry])).values(),
];

interface Chosen {
  fact: Fact;
  set: Amendment;
}

function choose(
  deed: AmendDeed,
  facts: readonly Fact[],
  context: DecideContext,
): readonly Chosen[] | Refused | Asked {
  const { pool, moves } = bySelector(deed, facts);
  const change = changesOf(moves ? deed : withoutMachine(deed), context);
  if ('outcome' in change) return change;
  if (pool.length === 0 || isEmpty(change)) return refused('nothing-to-undo', { act: 'amend' });
  const fit = fitting(pool, change);
  if (fit.length === 0)
    return refused('nothing-to-undo', { act: 'amend', field: Object.keys(change.set)[0] ?? 'value' });
  if (fit.length > 1 && !(change.whole && (onOneMachine(fit) || isDayAlone(change)))) return askWhich(fit);
  const [only] = fit;
  if (change.value === undefined || !only) return fit.map((fact) => ({ fact, set: change.set }));
  const figure = figureFor(only, change.value);
  return figure
    ? [{ fact: only, set: { ...change.set, ...figure } }]
    : asked('value', { entries: [only.id] });
}

/** "Birch was 5 h", said after alder and birch, means the one on birch; otherwise the machine is the change. */
function bySelector(deed: AmendDeed, facts: readonly Fact[]): { pool: readonly Fact[]; moves: boolean } {
  const there = facts.filter((fact) => 'machine' in fact && fact.machine === deed.machine);
  const selects = deed.machine !== undefined && there.length > 0 && there.length < facts.length;
  return selects ? { pool: there, moves: false } : { pool: facts, moves: true };
}

function withoutMachine({ machine: _selector, ...rest }: AmendDeed): AmendDeed {
  return rest;
}

const isEmpty = ({ set, value }: Change): boolean => Object.keys(set).length === 0 && value === undefined;
const machineOf = (fact: Fact): string | undefined => ('machine' in fact ? fact.machine : undefined);
/** A day is said of the whole message; a machine of what stands on one. */
const isDayAlone = ({ set }: Change): boolean => set.at !== undefined && set.machine === undefined;
const onOneMachine = (facts: readonly Fact[]): boolean => new Set(facts.map(machineOf)).size === 1;

const askWhich = (facts: readonly Fact[]): Asked =>
  asked(
    'entry',
    { act: 'amend', entries: facts.map((fact) => fact.id) },
    facts.map((fact) => ({ value: fact.id, label: labelOf(fact), fact })),
  );

/** Enough to tell two entries of one message apart. */
function labelOf(fact: Fact): string {
  const shown = [
    'machine',
    'task',
    'part',
    'symptom',
    'hours',
    'grams',
    'metres',
    'change',
    'count',
  ] as const;
  const values = new Map<string, unknown>(Object.entries(fact));
  return (
    shown.flatMap((field) => (values.has(field) ? [String(values.get(field))] : [])).join(' ') || fact.kind
  );
}

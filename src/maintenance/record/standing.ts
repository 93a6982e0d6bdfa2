/**
 * What the entries come to once they have been put right: each as its fields, then its amendments, then not
 * at all if it was taken back. Total: targets may be missing, repeated, or point at one another.
 */
import type { Amendment, Entry, EntryOf } from '../entry/entry.ts';
import { fits } from './amendable.ts';
import { bySaid } from './order.ts';

export type Correction = EntryOf<'amended'> | EntryOf<'takenBack'>;
/** An entry that states something itself, instead of correcting another. */
export type Fact = Exclude<Entry, Correction>;

export const isCorrection = (entry: Entry): entry is Correction =>
  entry.kind === 'amended' || entry.kind === 'takenBack';

/** Ids of all entries that are taken back, corrections among them. */
export function takenBack(entries: readonly Entry[]): ReadonlySet<string> {
  const takeBacks = entries.filter((entry) => entry.kind === 'takenBack');
  const doubts = new Map(takeBacks.map((entry) => [entry.id, 0]));
  for (const { target } of takeBacks) {
    const known = doubts.get(target);
    if (known !== undefined) doubts.set(target, known + 1);
  }
  return settle(takeBacks, doubts);
}

/**
 * `doubts`: how many unsettled take-backs target a take-back. One that nobody doubts any more is settled: it
 * counts unless it was itself taken back. Those that take one another back in a ring stay unsettled and take
 * nothing back: each of them targets only the next, so no fact depends on it.
 */
function settle(
  takeBacks: readonly EntryOf<'takenBack'>[],
  doubts: Map<string, number>,
): ReadonlySet<string> {
  const byId = new Map(takeBacks.map((entry) => [entry.id, entry]));
  const gone = new Set<string>();
  const ready = takeBacks.filter((entry) => doubts.get(entry.id) === 0);
  for (let next = ready.pop(); next; next = ready.pop()) {
    if (!gone.has(next.id)) gone.add(next.target);
    const target = byId.get(next.target);
    if (!target) continue;
    const left = (doubts.get(target.id) ?? 0) - 1;
    doubts.set(target.id, left);
    if (left === 0) ready.push(target);
  }
  return gone;
}

/** The facts that stand, with their amendments applied; in the order given. */
export function standing(entries: readonly Entry[]): readonly Fact[] {
  const corrections = entries.filter(isCorrection);
  // nothing was put right, as on most machines: then nothing is copied
  if (corrections.length === 0) return entries as readonly Fact[];
  const gone = takenBack(corrections);
  const amendments = amendmentsByTarget(corrections, gone);
  const facts: Fact[] = [];
  for (const entry of entries) {
    if (isCorrection(entry) || gone.has(entry.id)) continue;
    const changes = amendments.get(entry.id);
    facts.push(changes ? changes.reduce((fact, change) => amend(fact, change.set), entry) : entry);
  }
  return facts;
}

function amendmentsByTarget(
  corrections: readonly Correction[],
  gone: ReadonlySet<string>,
): ReadonlyMap<string, readonly EntryOf<'amended'>[]> {
  const byTarget = new Map<string, EntryOf<'amended'>[]>();
  for (const entry of corrections) {
    if (entry.kind !== 'amended' || gone.has(entry.id)) continue;
    const of = byTarget.get(entry.target);
    if (of) of.push(entry);
    else byTarget.set(entry.target, [entry]);
  }
  for (const changes of byTarget.values()) changes.sort(bySaid);
  return byTarget;
}

/** A field that this kind of entry does not have is left out: an entry never changes its kind. */
export function amend<F extends Fact>(fact: F, set: Amendment): F {
  const fitting = Object.entries(set).filter(([field, value]) => fits(fact.kind, field, value));
  return fitting.length === 0 ? fact : { ...fact, ...Object.fromEntries(fitting) };
}

/**
 * Corrections that would lift a safety hold. A hold is lifted with a reason and a name: by what was found, or as a
 * false alarm; taking back the word that set it is neither.
 */
import { isSafetySymptom, needsFinding } from '../codes.ts';
import type { Entry } from '../entry/entry.ts';
import type { Hold, ShopRecord } from '../record/record.ts';
import type { Fact } from '../record/standing.ts';

/** The hold that goes when this fact goes, or says something else: undefined where none does. */
export function holdOf(fact: Fact, shop: ShopRecord): { machine: string; hold: Hold } | undefined {
  if (fact.kind !== 'seen' || !isSafetySymptom(fact.symptom)) return undefined;
  const hold = shop.machines.get(fact.machine)?.hold;
  return hold?.told.includes(fact.id) ? { machine: fact.machine, hold } : undefined;
}

/** Does the fact still hold that machine once it is put right, and as firmly? */
export const stillHolds = (before: Fact, after: Fact): boolean =>
  before.kind === 'seen' &&
  after.kind === 'seen' &&
  after.machine === before.machine &&
  after.at <= before.at &&
  isSafetySymptom(after.symptom) &&
  (needsFinding(after.symptom) || !needsFinding(before.symptom));

/** What an entry of a batch is about: itself, or what it puts right. */
export const aboutIn = (entry: Entry, facts: readonly Fact[]): Fact | undefined => {
  const id = entry.kind === 'amended' ? entry.target : entry.id;
  return facts.find((fact) => fact.id === id);
};

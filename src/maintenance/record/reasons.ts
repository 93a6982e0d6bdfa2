/** All that a machine is held for: what lifts the hold has to do for each of them. */
import { needsFinding, type Symptom } from '../codes.ts';
import type { Hold } from './record.ts';

export const reasonsOf = ({ symptom, also }: Pick<Hold, 'symptom' | 'also'>): readonly Symptom[] => [
  symptom,
  ...also,
];

/** Is one of them an electrical danger, of which nobody says bare that it was a false alarm? */
export const asksFinding = (hold: Pick<Hold, 'symptom' | 'also'>): boolean =>
  reasonsOf(hold).some(needsFinding);

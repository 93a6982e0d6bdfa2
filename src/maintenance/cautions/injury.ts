/**
 * First aid before everything: somebody was hurt. Nothing else is said or written until the person
 * comes back to it. General first-aid teaching; the workshop's first-aider and local rules come first.
 */
export const INJURY_KINDS = ['burn', 'cut', 'eye', 'shock', 'fumes'] as const;
export type InjuryKind = (typeof INJURY_KINDS)[number];

export const FIRST_AID: Readonly<Record<InjuryKind, string>> = {
  burn: 'Burn: cool running water for 20 minutes, rings and watch off, no ice, no cream.',
  cut: 'Cut: press a clean dressing on it and keep it up; what is stuck in it stays in.',
  eye: 'Eye: rinse with clean water, do not rub; get it looked at.',
  shock: 'Shock: power off before anybody touches the person; then call the emergency number.',
  fumes: 'Fumes: out into fresh air; trouble breathing means the emergency number.',
};

const FIRST = 'First aid first; the emergency number if it is serious.';
const LAST = 'Tell your first-aider.';

/** The lines for an injury; where nobody said what it is, no kind of first aid is guessed. */
export function injuryLines(kind?: InjuryKind): readonly string[] {
  return kind === undefined ? [FIRST, LAST] : [FIRST, FIRST_AID[kind], LAST];
}

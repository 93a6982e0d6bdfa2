/** Figures that cannot be: not a number, none at all, or beyond anything a workshop has. */
import type { Facts, Refused } from './decision.ts';
import { refused } from './decision.ts';

export interface Border {
  least: number;
  most: number;
  whole?: true;
}

/** Wide on purpose: what is merely unlikely is asked about elsewhere. Common practice, no source. */
export const BORDERS = {
  hours: { least: 0.01, most: 100_000 },
  counter: { least: 0, most: 1_000_000 },
  grams: { least: 0.01, most: 100_000 },
  metres: { least: 0.001, most: 50_000 },
  count: { least: 0, most: 100_000, whole: true },
  pieces: { least: 1, most: 1_000, whole: true },
  days: { least: 1, most: 3_650, whole: true },
} as const satisfies Record<string, Border>;

/** Undefined when the figure is absent or possible. */
export function impossible(
  field: string,
  given: number | undefined,
  border: Border,
  facts: Facts,
): Refused | undefined {
  if (given === undefined) return undefined;
  const whole = !border.whole || Number.isInteger(given);
  if (Number.isFinite(given) && given >= border.least && given <= border.most && whole) return undefined;
  return refused('invalid-number', {
    ...facts,
    field,
    given,
    limit: given > border.most ? border.most : border.least,
  });
}

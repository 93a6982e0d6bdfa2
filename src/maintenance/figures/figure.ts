/** The shape of a bench figure's answer: worked out and shown, or refused with the reason. Nothing is thrown. */

export interface Worked<T> {
  ok: true;
  value: T;
  /** The arithmetic as a person would write it on the bench. */
  working: string;
  source: string;
  /** What to keep in mind about this result. */
  notes: readonly string[];
}
export interface Refused {
  ok: false;
  /** One plain sentence: what is wrong with which input, and what it can be. */
  reason: string;
}
export type Figure<T> = Worked<T> | Refused;

export const refuse = (reason: string): Refused => ({ ok: false, reason });

/** What an input is called, its unit, and the range (both ends inclusive) in which the formula holds. */
export interface Range {
  name: string;
  unit: string;
  min: number;
  max: number;
}

/** A sentence if the value is not a number within its range; undefined if it is. */
export function outside(value: number, { name, unit, min, max }: Range): string | undefined {
  if (!Number.isFinite(value)) return `The ${name} is not a number.`;
  if (value >= min && value <= max) return undefined;
  return `A ${name} of ${shown(value)} ${unit} is outside ${shown(min)} to ${shown(max)} ${unit}.`;
}

/** The first sentence against any of the inputs. */
export function firstOutside(
  ...inputs: readonly (readonly [value: number, range: Range])[]
): string | undefined {
  for (const [value, range] of inputs) {
    const reason = outside(value, range);
    if (reason !== undefined) return reason;
  }
  return undefined;
}

/** A number for a working: four significant figures, from a thousand up one decimal; no trailing zeros. */
export const shown = (value: number): string =>
  String(Number(Math.abs(value) < 1000 ? value.toPrecision(4) : value.toFixed(1)));

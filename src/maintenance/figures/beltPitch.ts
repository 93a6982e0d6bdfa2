/**
 * The pitch that a plucked span has at a wanted belt tension: the inverse of the tension formula.
 *
 * Equation: f = sqrt(T / (4 m L²)). T: tension, N. m: mass of the belt per length, kg/m. L: free span, m.
 * Ranges: tensionN 1 to 200, massKgPerM 0.002 to 0.1, spanMm 30 to 2000. Outside: refused, with the reason.
 * Source: as `beltTension.ts`, solved for f.
 * Worked: T = 15 N, m = 0.0084 kg/m, L = 0.15 m: sqrt(15 / 0.000756) = 140.86 Hz.
 */
import { MASS, SPAN, TENSION_SOURCE, spanNotes } from './beltTension.ts';
import { firstOutside, refuse, shown } from './figure.ts';
import type { Figure } from './figure.ts';

/** Usual target for a 6 mm wide belt of 2 mm pitch, N. Common practice, no source; a stated figure goes first. */
export const USUAL_TENSION_N: Readonly<{ from: number; to: number }> = { from: 10, to: 30 };

export interface WantedTension {
  tensionN: number;
  massKgPerM: number;
  spanMm: number;
}

/** Pitch of the plucked span at the wanted tension, Hz. */
export function pitchForTension({ tensionN, massKgPerM, spanMm }: WantedTension): Figure<number> {
  const reason = firstOutside(
    [tensionN, { name: 'tension', unit: 'N', min: 1, max: 200 }],
    [massKgPerM, MASS],
    [spanMm, SPAN],
  );
  if (reason !== undefined) return refuse(reason);
  const spanM = spanMm / 1000;
  const value = Math.sqrt(tensionN / (4 * massKgPerM * spanM ** 2));
  return {
    ok: true,
    value,
    working: `√(${shown(tensionN)} N / (4 x ${shown(massKgPerM)} kg/m x (${shown(spanM)} m)²)) = ${shown(value)} Hz`,
    source: TENSION_SOURCE,
    notes: spanNotes(spanMm),
  };
}

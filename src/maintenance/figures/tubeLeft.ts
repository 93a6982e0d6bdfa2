/**
 * What is left of a guide tube after its trims, and how many more it allows.
 *
 * Equation: left = fitted - sum of the cuts; trims left = floor((left - needed) / usual cut).
 * Parameters: fittedMm 50 to 3000; neededMm 30 to 3000: the free length that the travel needs; each cut 0.5 to 100 mm.
 * Outside, or a tube needed longer than it was fitted, or cut to nothing: refused, with the reason.
 * Source: arithmetic; a trim takes 2 to 5 mm (common practice).
 * Worked: 420 mm fitted, 395 needed, cuts of 5, 4 and 5 mm: 406 mm left, two more trims of 5 mm.
 */
import { firstOutside, refuse, shown } from './figure.ts';
import type { Figure } from './figure.ts';

/** The longer end of a usual trim, mm, so that the count of trims left is never too hopeful. */
export const USUAL_TRIM_MM = 5;

export interface TubeHistory {
  fittedMm: number;
  neededMm: number;
  cutsMm: readonly number[];
}
export interface TubeLeft {
  leftMm: number;
  /** Trims of 5 mm that the travel still allows; 0 means that only a new tube remains. */
  trimsLeft: number;
}

function unfit({ fittedMm, neededMm, cutsMm }: TubeHistory): string | undefined {
  const reason = firstOutside(
    [fittedMm, { name: 'fitted length', unit: 'mm', min: 50, max: 3000 }],
    [neededMm, { name: 'needed length', unit: 'mm', min: 30, max: 3000 }],
    ...cutsMm.map((cut) => [cut, { name: 'cut', unit: 'mm', min: 0.5, max: 100 }] as const),
  );
  if (reason !== undefined) return reason;
  return neededMm > fittedMm
    ? `The travel needs ${shown(neededMm)} mm, the tube was fitted with ${shown(fittedMm)} mm.`
    : undefined;
}

/** Length left and trims left. */
export function tubeLeftAfterTrims(tube: TubeHistory): Figure<TubeLeft> {
  const reason = unfit(tube);
  if (reason !== undefined) return refuse(reason);
  const taken = tube.cutsMm.reduce((sum, cut) => sum + cut, 0);
  const leftMm = tube.fittedMm - taken;
  if (leftMm <= 0)
    return refuse(`Cuts of ${shown(taken)} mm in all are more than the tube’s ${shown(tube.fittedMm)} mm.`);
  const trimsLeft = Math.max(0, Math.floor((leftMm - tube.neededMm) / USUAL_TRIM_MM));
  return {
    ok: true,
    value: { leftMm, trimsLeft },
    working: `${shown(tube.fittedMm)} - ${shown(taken)} = ${shown(leftMm)} mm; needed ${shown(tube.neededMm)} mm`,
    source: 'arithmetic; a trim taken as 5 mm (common practice)',
    notes: trimsLeft === 0 ? ['No trim left: the next bad end means a new tube.'] : [],
  };
}

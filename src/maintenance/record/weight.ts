/** Grams of a length of filament, in m; a filled grade by its usual density, which the spool may contradict. */
import type { Material } from '../codes.ts';
import { FILAMENT_DENSITY } from '../figures/filamentDensity.ts';
import { filamentArea } from '../figures/filamentLength.ts';

/** Most desktop machines; the build says otherwise where it is 2.85. */
export const USUAL_DIAMETER_MM = 1.75;

/** Total, unlike the bench figure: a fold refuses nothing. */
export const weigh = (metres: number, material: Material, diameterMm = USUAL_DIAMETER_MM): number =>
  metres * filamentArea(diameterMm) * FILAMENT_DENSITY[material].gPerCm3;

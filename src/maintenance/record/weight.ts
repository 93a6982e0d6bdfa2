/**
 * Grams of a length of filament: m = pi d^2 / 4 x length x density.
 * `metres` in m, `diameterMm` 1.75 or 2.85, density in g/cm3, result in g.
 * Densities: PLA 1.24 from a resin maker's data sheet (ASTM D792), PETG 1.27 inside the range 1.25 to 1.29 of
 * such sheets; the others common practice, no source. Filled grades vary: a filled material takes its base's
 * density, at most a tenth too light for fibre, which the wear limits do not notice.
 * Worked number: 10 m of PLA 1.75 mm weigh 29.83 g.
 */
import type { Material } from '../codes.ts';

export const DENSITY: Readonly<Record<Material, number>> = {
  pla: 1.24,
  petg: 1.27,
  abs: 1.04,
  asa: 1.07,
  tpu: 1.21,
  nylon: 1.13,
  pc: 1.2,
  'pla-cf': 1.24,
  'petg-cf': 1.27,
  'nylon-cf': 1.13,
  'nylon-gf': 1.13,
  'pla-glow': 1.24,
  'pla-wood': 1.24,
  'pla-metal': 1.24,
};

/** Most desktop machines; the build says otherwise where it is 2.85. */
export const USUAL_DIAMETER_MM = 1.75;

export const weigh = (metres: number, material: Material, diameterMm = USUAL_DIAMETER_MM): number =>
  ((Math.PI * diameterMm ** 2) / 4) * metres * DENSITY[material];

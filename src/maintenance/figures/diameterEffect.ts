/**
 * How much more or less plastic flows when the filament is thicker or thinner than the profile says.
 *
 * Equation: share = (d + error)² / d² - 1.
 * Parameters: diameterMm 1 to 4; errorMm -0.5 to 0.5. Outside: refused, with the reason.
 * Source: ratio of the cross-sections. Makers' usual tolerance is 0.02 to 0.05 mm (common practice).
 * Worked: 1.75 mm and 0.05 mm too thick: (1.80 / 1.75)² - 1 = +5.80 %.
 */
import { firstOutside, refuse, shown } from './figure.ts';
import type { Figure } from './figure.ts';

/** Change of flow as a share: 0.058 is 5.8 % too much. */
export function flowErrorOfDiameter(diameterMm: number, errorMm: number): Figure<number> {
  const reason = firstOutside(
    [diameterMm, { name: 'filament diameter', unit: 'mm', min: 1, max: 4 }],
    [errorMm, { name: 'diameter error', unit: 'mm', min: -0.5, max: 0.5 }],
  );
  if (reason !== undefined) return refuse(reason);
  const value = (diameterMm + errorMm) ** 2 / diameterMm ** 2 - 1;
  return {
    ok: true,
    value,
    working: `(${shown(diameterMm + errorMm)} / ${shown(diameterMm)})² - 1 = ${shown(value * 100)} %`,
    source: 'ratio of the cross-sections',
    notes: ['Measure at five places, each twice across.'],
  };
}

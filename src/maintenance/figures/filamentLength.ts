/**
 * Length of filament from its mass, and mass from length.
 *
 * Equation: mass = π d² / 4 x length x density.
 * Parameters: diameterMm 1 to 4 (usually 1.75 or 2.85); gPerCm3 0.8 to 8; grams 0 to 25,000; metres 0 to 20,000.
 * Outside: refused, with the reason.
 * Source: volume of a cylinder; densities see `filamentDensity.ts`.
 * Worked: 1 kg of PLA (1.24) at 1.75 mm: 1000 / (2.4053 mm² x 1.24) = 335.3 m.
 */
import type { Material } from '../codes.ts';
import { firstOutside, refuse, shown } from './figure.ts';
import type { Figure } from './figure.ts';
import { FILAMENT_DENSITY } from './filamentDensity.ts';

export interface FilamentKind {
  material: Material;
  diameterMm: number;
  /** As printed on the spool; without it the material's default. */
  gPerCm3?: number;
}

const SOURCE = 'cylinder: π d² / 4 x length x density';

/** Cross-section of a round filament, mm². */
export const filamentArea = (diameterMm: number): number => (Math.PI * diameterMm ** 2) / 4;

const densityOf = ({ material, gPerCm3 }: FilamentKind): number =>
  gPerCm3 ?? FILAMENT_DENSITY[material].gPerCm3;

function kindUnfit(kind: FilamentKind): string | undefined {
  return firstOutside(
    [kind.diameterMm, { name: 'filament diameter', unit: 'mm', min: 1, max: 4 }],
    [densityOf(kind), { name: 'density', unit: 'g/cm³', min: 0.8, max: 8 }],
  );
}

function densityNotes({ material, gPerCm3 }: FilamentKind): readonly string[] {
  if (gPerCm3 !== undefined) return [];
  const { gPerCm3: usual, known } = FILAMENT_DENSITY[material];
  if (known === 'guess')
    return [`${usual} g/cm³ is a guess for ${material}: filled grades vary, see the spool.`];
  return [`Taken as ${usual} g/cm³ (${known === 'sheet' ? 'data sheet' : 'common practice'}).`];
}

/** Metres of a mass in grams. */
export function metresOfGrams(grams: number, kind: FilamentKind): Figure<number> {
  const reason = kindUnfit(kind) ?? firstOutside([grams, { name: 'mass', unit: 'g', min: 0, max: 25_000 }]);
  if (reason !== undefined) return refuse(reason);
  const area = filamentArea(kind.diameterMm);
  const value = grams / (area * densityOf(kind));
  return {
    ok: true,
    value,
    working: `${shown(grams)} g / (${shown(area)} mm² x ${shown(densityOf(kind))} g/cm³) = ${shown(value)} m`,
    source: SOURCE,
    notes: densityNotes(kind),
  };
}

/** Grams of a length in metres. */
export function gramsOfMetres(metres: number, kind: FilamentKind): Figure<number> {
  const reason =
    kindUnfit(kind) ?? firstOutside([metres, { name: 'length', unit: 'm', min: 0, max: 20_000 }]);
  if (reason !== undefined) return refuse(reason);
  const area = filamentArea(kind.diameterMm);
  const value = metres * area * densityOf(kind);
  return {
    ok: true,
    value,
    working: `${shown(metres)} m x ${shown(area)} mm² x ${shown(densityOf(kind))} g/cm³ = ${shown(value)} g`,
    source: SOURCE,
    notes: densityNotes(kind),
  };
}

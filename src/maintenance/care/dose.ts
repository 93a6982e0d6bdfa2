/**
 * Dose: how much of a part's wear life the filament that went through it has used up.
 *   dose = sum over materials of grams x harshness / (resistance of the item's material x limit of the item)
 * Grams in g, dose as a share (1 = worn). Plain filament counts too, but hardly.
 *
 * Source of the figures: common practice, no single source; all of them are settings. The order brass < plated
 * < hardened < carbide, gem and "heavy wear of a 0.4 mm brass nozzle after 250 g of carbon filled" are guidance
 * from secondary sources (reference R-O1); nobody has published wear per kilogram.
 * Worked: 1 kg of carbon filled nylon on a 0.4 mm brass nozzle: 1000 x 1 / (1 x 280) = 3.6 nozzles.
 */
import { MATERIALS } from '../codes.ts';
import type { Material } from '../codes.ts';
import type { Nozzle, NozzleMaterial } from '../machine.ts';
import type { Totals } from '../record/record.ts';
import { HARSHNESS_OF } from './materials.ts';
import type { Harshness } from './materials.ts';
import type { DoseItem } from './rule.ts';

export interface DoseSettings {
  /** Wear per gram, as a share of that of carbon filled filament. */
  harshness: Readonly<Record<Harshness, number>>;
  /** How many times as much as brass a nozzle of this material bears. */
  resistance: Readonly<Record<NozzleMaterial, number>>;
  /** Grams of strong filament at which the item counts as worn; a nozzle's: brass, with a bore of `boreMm`. */
  wornAtGrams: Readonly<Record<DoseItem, number>>;
  /** The bore to which the nozzle's limit and the usual rate belong, mm. */
  boreMm: number;
  /** What a machine with that bore usually extrudes, g/h, where nobody weighed. */
  usualGramsAnHour: number;
}

export const DOSE_SETTINGS: DoseSettings = {
  harshness: { plain: 0.001, slight: 0.02, medium: 0.3, strong: 1 },
  resistance: { brass: 1, plated: 2, hardened: 15, carbide: 80, gem: 80 },
  wornAtGrams: { nozzle: 280, 'feeder-gear': 10_000, 'guide-tube': 15_000, liner: 8_000 },
  boreMm: 0.4,
  usualGramsAnHour: 12,
};

/** What the nozzle is taken as where its material or bore is not stated. */
export const boreOf = (nozzle: Nozzle): number => nozzle.boreMm ?? DOSE_SETTINGS.boreMm;
const materialOf = (nozzle: Nozzle): NozzleMaterial => nozzle.material ?? 'brass';

/** A line's cross-section goes with the square of the bore, and so does what runs through in an hour. */
export const usualRate = (nozzle: Nozzle, settings: DoseSettings = DOSE_SETTINGS): number =>
  settings.usualGramsAnHour * (boreOf(nozzle) / settings.boreMm) ** 2;

/**
 * Grams of strong filament that wear the item out. A nozzle is worn when its line is 25 % wider than its bore:
 * a wider bore has that much more to lose, so its limit grows with the bore.
 */
export function wornAt(item: DoseItem, nozzle: Nozzle, settings: DoseSettings = DOSE_SETTINGS): number {
  const limit = settings.wornAtGrams[item];
  if (item !== 'nozzle') return limit;
  return limit * settings.resistance[materialOf(nozzle)] * (boreOf(nozzle) / settings.boreMm);
}

/** Share of the item's life that so many grams of one material use up: what the bot says at `load`. */
export const doseOf = (
  item: DoseItem,
  nozzle: Nozzle,
  material: Material,
  grams: number,
  settings: DoseSettings = DOSE_SETTINGS,
): number => (grams * settings.harshness[HARSHNESS_OF[material]]) / wornAt(item, nozzle, settings);

/** Grams of one material between two totals; hours that nobody weighed count at the usual rate. */
export function gramsBetween(from: Totals, to: Totals, material: Material, rate: number): number {
  const weighed = (to.gramsOf[material] ?? 0) - (from.gramsOf[material] ?? 0);
  const unweighed = (to.unweighedHoursOf[material] ?? 0) - (from.unweighedHoursOf[material] ?? 0);
  return weighed + unweighed * rate;
}

/** Share of the item's life used between two totals. */
export function doseBetween(
  item: DoseItem,
  nozzle: Nozzle,
  from: Totals,
  to: Totals,
  settings: DoseSettings = DOSE_SETTINGS,
): number {
  const rate = usualRate(nozzle, settings);
  const limit = wornAt(item, nozzle, settings);
  let wear = 0;
  for (const material of MATERIALS) {
    const grams = gramsBetween(from, to, material, rate);
    if (grams > 0) wear += grams * settings.harshness[HARSHNESS_OF[material]];
  }
  return wear / limit;
}

import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DOSE_SETTINGS, doseBetween, doseOf, usualRate, wornAt } from '../../../src/maintenance/care/dose.ts';
import {
  ABRASIVE, CARBON_OR_GLASS, FILLED_WOOD_OR_SOFT, FUMING, HOT_FOR_PTFE, THIRSTY,
} from '../../../src/maintenance/care/materials.ts'; // prettier-ignore
import { MATERIALS } from '../../../src/maintenance/codes.ts';
import type { Nozzle } from '../../../src/maintenance/machine.ts';
import type { Totals } from '../../../src/maintenance/record/record.ts';

const BRASS: Nozzle = { material: 'brass', boreMm: 0.4 };
const NEW: Totals = { hours: 0, runDays: 0, hoursOf: {}, gramsOf: {}, unweighedHoursOf: {} };

describe('the dose of a nozzle', () => {
  it('is grams times harshness against the limit: 70 g of carbon filled are a quarter of a brass 0.4', () => {
    expect(doseOf('nozzle', BRASS, 'nylon-cf', 70)).toBeCloseTo(0.25, 12);
  });
  it('counts soft metal less than carbon, wood less again, plain hardly', () => {
    const [carbon, metal, wood, plain] = (['pla-cf', 'pla-metal', 'pla-wood', 'pla'] as const).map((m) =>
      doseOf('nozzle', BRASS, m, 1000),
    );
    expect([carbon, metal, wood, plain].every((dose) => dose !== undefined && dose > 0)).toBe(true);
    expect(carbon).toBeGreaterThan(metal ?? 0);
    expect(metal).toBeGreaterThan(wood ?? 0);
    expect(wood).toBeGreaterThan(plain ?? 0);
  });
  it('has a limit that grows with the bore: 0.8 bears twice what 0.4 does', () => {
    expect(wornAt('nozzle', { ...BRASS, boreMm: 0.8 })).toBeCloseTo(2 * wornAt('nozzle', BRASS), 9);
  });
  it('takes an unstated nozzle as brass 0.4', () => {
    expect(wornAt('nozzle', {})).toBe(wornAt('nozzle', BRASS));
  });
  it('leaves gear, tube and liner alone with the nozzle’s material', () => {
    for (const item of ['feeder-gear', 'guide-tube', 'liner'] as const)
      expect(wornAt(item, { material: 'hardened', boreMm: 0.6 })).toBe(DOSE_SETTINGS.wornAtGrams[item]);
  });
});

describe('hours that nobody weighed', () => {
  it('count at the usual rate, which goes with the square of the bore', () => {
    expect(usualRate(BRASS)).toBe(12);
    expect(usualRate({ boreMm: 0.8 })).toBeCloseTo(48, 9);
  });
  it('add to what was weighed', () => {
    const now: Totals = { ...NEW, gramsOf: { 'pla-cf': 100 }, unweighedHoursOf: { 'pla-cf': 10 } };
    expect(doseBetween('nozzle', BRASS, NEW, now)).toBeCloseTo((100 + 120) / 280, 12);
  });
  it('do not count before the nozzle was fitted', () => {
    const fitted: Totals = { ...NEW, gramsOf: { 'pla-cf': 900 } };
    const now: Totals = { ...NEW, gramsOf: { 'pla-cf': 928 } };
    expect(doseBetween('nozzle', BRASS, fitted, now)).toBeCloseTo(0.1, 12);
  });
});

describe('groups of filaments', () => {
  it.each([
    ['abrasive', ABRASIVE, 'pla-cf petg-cf nylon-cf nylon-gf pla-glow pla-metal'],
    ['carbon or glass', CARBON_OR_GLASS, 'pla-cf petg-cf nylon-cf nylon-gf'],
    [
      'filled, wood or soft',
      FILLED_WOOD_OR_SOFT,
      'tpu pla-cf petg-cf nylon-cf nylon-gf pla-glow pla-wood pla-metal',
    ],
    ['for the carbon filter', FUMING, 'abs asa nylon pc nylon-cf nylon-gf'],
    ['hot for PTFE', HOT_FOR_PTFE, 'petg abs asa nylon pc petg-cf nylon-cf nylon-gf'],
    ['thirsty', THIRSTY, 'petg tpu nylon pc petg-cf nylon-cf nylon-gf'],
  ])('%s', (_, group, named) => expect([...group].toSorted()).toEqual(named.split(' ').toSorted()));
});

it('more filament never lowers a dose', () => {
  const sums = fc.dictionary(fc.constantFrom(...MATERIALS), fc.double({ min: 0, max: 5000, noNaN: true }));
  fc.assert(
    fc.property(sums, sums, (before, more) => {
      const now = { ...before };
      for (const [material, grams] of Object.entries(more)) now[material] = (now[material] ?? 0) + grams;
      const dose = doseBetween('nozzle', BRASS, NEW, { ...NEW, gramsOf: before });
      expect(doseBetween('nozzle', BRASS, NEW, { ...NEW, gramsOf: now })).toBeGreaterThanOrEqual(
        dose - 1e-12,
      );
    }),
  );
});

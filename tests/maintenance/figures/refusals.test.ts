/** Inputs just outside a formula's range: each is refused with a sentence, none is thrown or worked out. */
import { describe, expect, it } from 'vitest';
import { beltAxisSteps, screwAxisSteps } from '../../../src/maintenance/figures/axisSteps.ts';
import { fitBedPlane } from '../../../src/maintenance/figures/bedPlane.ts';
import { bedScrewTurns } from '../../../src/maintenance/figures/bedScrews.ts';
import { pitchForTension } from '../../../src/maintenance/figures/beltPitch.ts';
import { beltMass, tensionFromPitch } from '../../../src/maintenance/figures/beltTension.ts';
import { flowErrorOfDiameter } from '../../../src/maintenance/figures/diameterEffect.ts';
import { correctedFeederSteps } from '../../../src/maintenance/figures/feederSteps.ts';
import type { Figure } from '../../../src/maintenance/figures/figure.ts';
import { gramsOfMetres, metresOfGrams } from '../../../src/maintenance/figures/filamentLength.ts';
import { isThread } from '../../../src/maintenance/figures/screwPitch.ts';
import { tubeLeftAfterTrims } from '../../../src/maintenance/figures/tubeLeft.ts';
import { volumetricFlow } from '../../../src/maintenance/figures/volumetricFlow.ts';

const span = { massKgPerM: 0.0084, spanMm: 150, frequencyHz: 80 };
const motor = { fullSteps: 200, microsteps: 16 };
const triangle = [{ x: 0, y: 0, z: 0 }, { x: 100, y: 0, z: 0.1 }, { x: 0, y: 100, z: 0.2 }]; // prettier-ignore
const pla = { material: 'pla', diameterMm: 1.75 } as const;

const refused: readonly (readonly [what: string, figure: Figure<unknown>, says: RegExp])[] = [
  [
    'a span given in metres',
    tensionFromPitch({ ...span, spanMm: 0.15 }),
    /span of 0\.15 mm is outside 30 to 2000 mm/u,
  ],
  ['a belt mass given in g/m', tensionFromPitch({ ...span, massKgPerM: 8.4 }), /belt mass/u],
  ['a pitch below hearing', tensionFromPitch({ ...span, frequencyHz: 4.9 }), /frequency/u],
  ['a pitch that is no number', tensionFromPitch({ ...span, frequencyHz: Number.NaN }), /not a number/u],
  ['no tension at all', pitchForTension({ tensionN: 0, massKgPerM: 0.0084, spanMm: 150 }), /tension of 0 N/u],
  ['a belt 2 mm wide', beltMass(2), /belt width/u],
  ['two heights', fitBedPlane(triangle.slice(0, 2)), /at least three/u],
  ['the same place three times', fitBedPlane(triangle.map(({ z }) => ({ x: 5, y: 5, z }))), /one line/u],
  ['a height of 21 mm', fitBedPlane([...triangle, { x: 50, y: 50, z: 21 }]), /height of 21 mm/u],
  ['one screw', bedScrewTurns(triangle, [{ x: 0, y: 0 }], 0, 'M3'), /two screws/u],
  ['a reference that is no screw', bedScrewTurns(triangle, triangle, 3, 'M3'), /no screw 4: 3 were given/u],
  [
    'a feed that is half off',
    correctedFeederSteps({ stepsPerMm: 93, commandedMm: 100, fedMm: 49 }),
    /fault in the feed/u,
  ],
  [
    'a feed of nothing',
    correctedFeederSteps({ stepsPerMm: 93, commandedMm: 100, fedMm: 0 }),
    /fed length of 0 mm/u,
  ],
  ['half a tooth', beltAxisSteps(motor, 2, 20.5), /Teeth must be a whole number, not 20\.5/u],
  ['no microsteps', beltAxisSteps({ ...motor, microsteps: 0 }, 2, 20), /driver setting/u],
  ['a lead of 0', screwAxisSteps(motor, 0), /lead of 0 mm a turn/u],
  ['filament of 0.4 mm', metresOfGrams(100, { ...pla, diameterMm: 0.4 }), /filament diameter of 0\.4 mm/u],
  ['less than nothing', metresOfGrams(-1, pla), /mass of -1 g/u],
  ['a density in kg/m³', gramsOfMetres(10, { ...pla, gPerCm3: 1240 }), /density of 1240 g\/cm³/u],
  ['an infinite length', gramsOfMetres(Number.POSITIVE_INFINITY, pla), /not a number/u],
  ['a diameter 0.6 mm off', flowErrorOfDiameter(1.75, 0.6), /diameter error/u],
  [
    'a layer above its width',
    volumetricFlow({ widthMm: 0.4, heightMm: 0.5, speedMmS: 50 }),
    /higher than its line/u,
  ],
  ['a standing head', volumetricFlow({ widthMm: 0.4, heightMm: 0.2, speedMmS: 0 }), /speed of 0 mm\/s/u],
  [
    'a tube shorter than the travel',
    tubeLeftAfterTrims({ fittedMm: 300, neededMm: 310, cutsMm: [] }),
    /needs 310 mm/u,
  ],
  [
    'cuts longer than the tube',
    tubeLeftAfterTrims({ fittedMm: 100, neededMm: 50, cutsMm: [60, 60] }),
    /120 mm in all/u,
  ],
];

describe('a figure out of range', () => {
  it.each(refused)('%s is refused with its reason', (_what, figure, says) => {
    if (figure.ok) throw new Error(`worked out: ${figure.working}`);
    expect(figure.reason).toMatch(says);
    expect(figure.reason).toMatch(/\.$/u);
  });

  it('knows M3 as a thread, and neither M7 nor a name every object has', () => {
    expect(isThread('M3')).toBe(true);
    expect(isThread('M7')).toBe(false);
    expect(isThread('toString')).toBe(false);
  });
});

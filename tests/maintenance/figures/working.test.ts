import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitBedPlane, heightAt } from '../../../src/maintenance/figures/bedPlane.ts';
import { bedScrewTurns } from '../../../src/maintenance/figures/bedScrews.ts';
import { pitchForTension, USUAL_TENSION_N } from '../../../src/maintenance/figures/beltPitch.ts';
import { beltMass, tensionFromPitch } from '../../../src/maintenance/figures/beltTension.ts';
import { correctedFeederSteps } from '../../../src/maintenance/figures/feederSteps.ts';
import type { Figure, Worked } from '../../../src/maintenance/figures/figure.ts';
import { shown } from '../../../src/maintenance/figures/figure.ts';
import { gramsOfMetres, metresOfGrams } from '../../../src/maintenance/figures/filamentLength.ts';
import { tubeLeftAfterTrims } from '../../../src/maintenance/figures/tubeLeft.ts';
import { volumetricFlow } from '../../../src/maintenance/figures/volumetricFlow.ts';
import { MATERIALS } from '../../../src/maintenance/codes.ts';

const worked = <T>(figure: Figure<T>): Worked<T> => {
  if (!figure.ok) throw new Error(figure.reason);
  return figure;
};
const real = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

describe('belt tension', () => {
  it('shows its arithmetic, its source and that a belt is stiffer than a string', () => {
    const figure = worked(tensionFromPitch({ massKgPerM: 0.0084, spanMm: 150, frequencyHz: 80 }));
    expect(figure.working).toBe('4 x 0.0084 kg/m x (0.15 m)² x (80 Hz)² = 4.838 N');
    expect(figure.source).toContain('manual');
    expect(figure.notes.join()).toContain('lower');
  });

  it('asks for a longer span where the span is short', () => {
    const figure = worked(tensionFromPitch({ massKgPerM: 0.0084, spanMm: 80, frequencyHz: 150 }));
    expect(figure.notes.join()).toContain('longer span');
  });

  it('and pitch undo each other', () => {
    fc.assert(
      fc.property(real(1, 150), real(0.003, 0.05), real(50, 1000), (tensionN, massKgPerM, spanMm) => {
        const pitch = worked(pitchForTension({ tensionN, massKgPerM, spanMm })).value;
        fc.pre(pitch >= 5 && pitch <= 1000);
        const back = worked(tensionFromPitch({ massKgPerM, spanMm, frequencyHz: pitch })).value;
        expect(Math.abs(back / tensionN - 1)).toBeLessThan(1e-9);
      }),
    );
  });

  it('has a usual target far below the 80 to 120 N that circulate', () => {
    expect(USUAL_TENSION_N.to).toBeLessThan(50);
    expect(worked(beltMass(6)).source).toContain('weigh one metre');
  });
});

describe('the bed’s plane', () => {
  it('finds again any plane that the heights were made from', () => {
    const grid = [0, 80, 200].flatMap((x) => [0, 110, 190].map((y) => ({ x, y })));
    fc.assert(
      fc.property(real(-0.005, 0.005), real(-0.005, 0.005), real(-1, 1), (a, b, c) => {
        const made = { a, b, c, rms: 0 };
        const { value } = worked(fitBedPlane(grid.map(({ x, y }) => ({ x, y, z: heightAt(made, x, y) }))));
        for (const { x, y } of grid)
          expect(Math.abs(heightAt(value, x, y) - heightAt(made, x, y))).toBeLessThan(1e-9);
        expect(value.rms).toBeLessThan(1e-9);
      }),
    );
  });

  it('does not move its reference screw, whichever it is, and says when the bed is bent', () => {
    const bent = [
      { x: 0, y: 0, z: 0.3 }, { x: 200, y: 0, z: -0.3 }, { x: 0, y: 200, z: -0.3 }, { x: 200, y: 200, z: 0.3 },
    ]; // prettier-ignore
    const figure = worked(bedScrewTurns(bent, bent, 2, 'M4'));
    expect(figure.value.turns[2]?.turns).toBe(0);
    expect(figure.notes.join(' ')).toContain('not flat');
    expect(figure.notes.join(' ')).toContain('depends on the machine');
  });
});

describe('filament', () => {
  it('in metres and grams undo each other for every material', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...MATERIALS),
        fc.constantFrom(1.75, 2.85),
        real(1, 5000),
        (material, diameterMm, g) => {
          const metres = worked(metresOfGrams(g, { material, diameterMm })).value;
          expect(
            Math.abs(worked(gramsOfMetres(metres, { material, diameterMm })).value / g - 1),
          ).toBeLessThan(1e-9);
        },
      ),
    );
  });

  it('says what density it took, calls a filled grade’s a guess, and is silent where the spool says it', () => {
    expect(worked(metresOfGrams(1000, { material: 'pla', diameterMm: 1.75 })).notes).toEqual([
      'Taken as 1.24 g/cm³ (data sheet).',
    ]);
    expect(worked(metresOfGrams(1000, { material: 'nylon-cf', diameterMm: 1.75 })).notes.join()).toContain(
      'guess',
    );
    expect(
      worked(metresOfGrams(1000, { material: 'nylon-cf', diameterMm: 1.75, gPerCm3: 1.2 })).notes,
    ).toEqual([]);
  });

  it('flows less through a rounded section than through a rectangle, and names the section', () => {
    const line = { widthMm: 0.45, heightMm: 0.2, speedMmS: 50 };
    expect(worked(volumetricFlow(line, 'rounded')).value).toBeLessThan(worked(volumetricFlow(line)).value);
    expect(worked(volumetricFlow(line)).working).toBe('rectangle section 0.09 mm² x 50 mm/s = 4.5 mm³/s');
  });
});

describe('feeder steps', () => {
  it('far off send you to look for a fault, near ones do not', () => {
    const far = worked(correctedFeederSteps({ stepsPerMm: 93, commandedMm: 100, fedMm: 85 }));
    expect(far.notes.join()).toContain('15 % off');
    const near = worked(correctedFeederSteps({ stepsPerMm: 93, commandedMm: 100, fedMm: 96.3 }));
    expect(near.notes.join()).toContain('three times');
    expect(near.working).toBe('93 x 100 / 96.3 = 96.57 steps per mm');
  });
});

describe('a guide tube', () => {
  it('of 420 mm after 14 mm of cuts has 406 mm and two trims left', () => {
    const { value } = worked(tubeLeftAfterTrims({ fittedMm: 420, neededMm: 395, cutsMm: [5, 4, 5] }));
    expect(value).toEqual({ leftMm: 406, trimsLeft: 2 });
  });

  it('with less spare than one trim is at its end, and never below none', () => {
    const short = worked(tubeLeftAfterTrims({ fittedMm: 400, neededMm: 396, cutsMm: [] }));
    expect(short.value.trimsLeft).toBe(0);
    expect(short.notes.join()).toContain('new tube');
    expect(worked(tubeLeftAfterTrims({ fittedMm: 400, neededMm: 396, cutsMm: [10] })).value.trimsLeft).toBe(
      0,
    );
  });
});

describe('a number in a working', () => {
  it('has no more figures than a bench can use', () => {
    expect([4.83839999, 0.1, 335.2836, 1050.25, 24].map(shown)).toEqual([
      '4.838',
      '0.1',
      '335.3',
      '1050.3',
      '24',
    ]);
  });
});

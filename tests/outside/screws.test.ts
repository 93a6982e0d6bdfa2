/**
 * Bed figures against values from outside: ISO 261 / ISO 262 coarse pitches as printed in public thread tables;
 * planes computed with numpy's lstsq and R's lm (0.139074, -0.000851852, -0.000462963).
 */
import { describe, expect, it } from 'vitest';
import { fitBedPlane } from '../../src/maintenance/figures/bedPlane.ts';
import type { BedPoint } from '../../src/maintenance/figures/bedPlane.ts';
import { bedScrewTurns } from '../../src/maintenance/figures/bedScrews.ts';
import type { BedScrews } from '../../src/maintenance/figures/bedScrews.ts';
import type { Figure } from '../../src/maintenance/figures/figure.ts';
import { COARSE_PITCH_MM } from '../../src/maintenance/figures/screwPitch.ts';

const valueOf = <T>(figure: Figure<T>): T => {
  if (!figure.ok) throw new Error(figure.reason);
  return figure.value;
};
const points = (...rows: readonly (readonly [number, number, number])[]): readonly BedPoint[] =>
  rows.map(([x, y, z]) => ({ x, y, z }));
const near = (found: readonly number[], expected: readonly number[], absolute: number): void => {
  expect(found).toHaveLength(expected.length);
  for (const [index, value] of expected.entries()) {
    expect(
      Math.abs((found[index] ?? Number.NaN) - value),
      `${found[index]} against ${value}`,
    ).toBeLessThanOrEqual(absolute);
  }
};

const nine = points(
  [20, 20, 0.1], [110, 20, 0.02], [200, 20, -0.03],
  [20, 110, 0.08], [110, 110, 0.01], [200, 110, -0.07],
  [20, 200, 0.03], [110, 200, -0.04], [200, 200, -0.15],
); // prettier-ignore
const corners = [{ x: 10, y: 10 }, { x: 210, y: 10 }, { x: 210, y: 210 }, { x: 10, y: 210 }]; // prettier-ignore

describe('Z-O1: ISO coarse pitch', () => {
  it('is that of the published table', () => {
    expect(COARSE_PITCH_MM).toEqual({
      'M1.6': 0.35, M2: 0.4, 'M2.5': 0.45, M3: 0.5, M4: 0.7, M5: 0.8, M6: 1.0, M8: 1.25, M10: 1.5, M12: 1.75,
    }); // prettier-ignore
  });
});

describe('Z-O2: the plane of nine heights', () => {
  it('has the slopes, the height and the remainder that numpy and R give', () => {
    const { a, b, c, rms } = valueOf(fitBedPlane(nine));
    near([a, b, c], [-0.0008518518518518283, -0.00046296296296298705, 0.13907407407407418], 1e-9);
    near([rms], [0.013899995559107555], 1e-9);
  });

  it('gives each of four M4 screws its turns against the first', () => {
    const { turns } = valueOf<BedScrews>(bedScrewTurns(nine, corners, 0, 'M4'));
    near(
      turns.map((turn) => turn.deltaMm),
      [0, -0.17037037037036565, -0.26296296296296306, -0.0925925925925974],
      1e-9,
    );
    near(
      turns.map((turn) => turn.turns),
      [0, -0.24338624338623666, -0.3756613756613758, -0.13227513227513915],
      1e-9,
    );
    near(
      turns.map((turn) => turn.degrees),
      [0, -87.61904761904519, -135.2380952380953, -47.61904761905009],
      1e-6,
    );
    near(
      turns.map((turn) => turn.clockMinutes),
      [0, -14.6031746031742, -22.53968253968255, -7.936507936508349],
      1e-6,
    );
  });

  it('on M3 screws needs more turns for the same heights', () => {
    const { turns } = valueOf<BedScrews>(bedScrewTurns(nine, corners, 0, 'M3'));
    near(
      turns.map((turn) => turn.turns),
      [0, -0.3407407407407313, -0.5259259259259261, -0.1851851851851948],
      1e-9,
    );
  });
});

describe('Z-O3 and Z-O4: three points', () => {
  const three = points([50, 50, 0.08], [250, 50, -0.06], [150, 250, 0.02]);

  it('lie exactly on their plane', () => {
    const { a, b, c, rms } = valueOf(fitBedPlane(three));
    near([a, b, c, rms], [-0.0007, 5e-5, 0.1125, 0], 1e-10);
  });

  it('under M3 screws give 0, -0.28 and -0.12 turns', () => {
    const { turns } = valueOf<BedScrews>(bedScrewTurns(three, three, 0, 'M3'));
    near(
      turns.map((turn) => turn.turns),
      [0, -0.28, -0.12],
      1e-10,
    );
  });

  it('on one line give no plane', () => {
    const figure = fitBedPlane(points([0, 0, 0.1], [50, 50, 0.2], [100, 100, 0.3]));
    expect(figure).toEqual({
      ok: false,
      reason: 'The points lie on one line: measure one well off to the side.',
    });
  });
});

/**
 * Belt figures against values from outside.
 * Source: a belt maker's sonic tension meter manual, T = 4 S² M W f² 1e-9 (S mm, M g/m per mm, W mm), and the
 * string formula T = 4 m L² f² in SI units; the values were computed from these with double precision.
 */
import { describe, expect, it } from 'vitest';
import { beltAxisSteps, screwAxisSteps } from '../../src/maintenance/figures/axisSteps.ts';
import { pitchForTension } from '../../src/maintenance/figures/beltPitch.ts';
import { beltMass, tensionFromPitch } from '../../src/maintenance/figures/beltTension.ts';
import type { Figure } from '../../src/maintenance/figures/figure.ts';

const valueOf = <T>(figure: Figure<T>): T => {
  if (!figure.ok) throw new Error(figure.reason);
  return figure.value;
};
const close = (found: number, expected: number, relative: number): void => {
  expect(Math.abs(found / expected - 1), `${found} against ${expected}`).toBeLessThanOrEqual(relative);
};

describe('L-O1 to L-O3: belt tension', () => {
  it.each([
    [0.0084, 100, 110, 4.0656],
    [0.0084, 150, 80, 4.8384],
    [0.0084, 250, 50, 5.25],
  ])('of %d kg/m over %d mm at %d Hz is %d N', (massKgPerM, spanMm, frequencyHz, tensionN) => {
    close(valueOf(tensionFromPitch({ massKgPerM, spanMm, frequencyHz })), tensionN, 1e-12);
  });

  it('is the same in the manual’s own units: 4 x 150² x 1.4 x 6 x 80² x 1e-9', () => {
    const manual = 4 * 150 ** 2 * 1.4 * 6 * 80 ** 2 * 1e-9;
    const massKgPerM = valueOf(beltMass(6, 1.4));
    close(massKgPerM, 0.0084, 1e-12);
    close(valueOf(tensionFromPitch({ massKgPerM, spanMm: 150, frequencyHz: 80 })), manual, 1e-12);
  });

  it('of 15 N on 150 mm of 8.4 g/m belt sounds at 140.859 Hz', () => {
    const pitch = valueOf(pitchForTension({ tensionN: 15, massKgPerM: 0.0084, spanMm: 150 }));
    close(pitch, 140.85904245475277, 1e-12);
  });
});

describe('E-O2: steps per mm (arithmetic: steps a turn over travel a turn)', () => {
  it.each([
    [200, 2, 16, 100],
    [200, 2, 20, 80],
    [400, 2, 20, 160],
  ])('of a %d step motor, %d mm belt, %d teeth at 16 microsteps is %d', (fullSteps, pitch, teeth, steps) => {
    expect(valueOf(beltAxisSteps({ fullSteps, microsteps: 16 }, pitch, teeth))).toBe(steps);
  });

  it('of a screw with 8 mm lead is 400 and with 2 mm lead 1600', () => {
    const motor = { fullSteps: 200, microsteps: 16 };
    expect(valueOf(screwAxisSteps(motor, 8))).toBe(400);
    expect(valueOf(screwAxisSteps(motor, 2))).toBe(1600);
  });
});

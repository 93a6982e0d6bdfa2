/**
 * Filament figures against values from outside. Densities: PLA 1.24 from a resin maker's data sheet (ASTM D792),
 * PETG within 1.25 to 1.29 of data sheets, the others common practice. Lengths: π d²/4 x length x density,
 * computed with double precision. Flow: geometry.
 */
import { describe, expect, it } from 'vitest';
import { flowErrorOfDiameter } from '../../src/maintenance/figures/diameterEffect.ts';
import { FILAMENT_DENSITY } from '../../src/maintenance/figures/filamentDensity.ts';
import { filamentArea, gramsOfMetres, metresOfGrams } from '../../src/maintenance/figures/filamentLength.ts';
import type { Figure } from '../../src/maintenance/figures/figure.ts';
import { volumetricFlow } from '../../src/maintenance/figures/volumetricFlow.ts';

const valueOf = (figure: Figure<number>): number => {
  if (!figure.ok) throw new Error(figure.reason);
  return figure.value;
};
const close = (found: number, expected: number, relative = 1e-10): void => {
  expect(Math.abs(found / expected - 1), `${found} against ${expected}`).toBeLessThanOrEqual(relative);
};

describe('F-O1: density', () => {
  it('is that of the data sheets, or within their range', () => {
    expect(FILAMENT_DENSITY.pla.gPerCm3).toBe(1.24);
    expect(FILAMENT_DENSITY.abs.gPerCm3).toBe(1.04);
    expect(FILAMENT_DENSITY.asa.gPerCm3).toBe(1.07);
    expect(FILAMENT_DENSITY.tpu.gPerCm3).toBe(1.21);
    const within: readonly (readonly [number, number, number])[] = [
      [FILAMENT_DENSITY.petg.gPerCm3, 1.25, 1.29],
      [FILAMENT_DENSITY.nylon.gPerCm3, 1.01, 1.14],
      [FILAMENT_DENSITY.pc.gPerCm3, 1.19, 1.2],
      [FILAMENT_DENSITY['nylon-cf'].gPerCm3, 1.08, 1.25],
    ];
    for (const [found, from, to] of within) {
      expect(found).toBeGreaterThanOrEqual(from);
      expect(found).toBeLessThanOrEqual(to);
    }
  });
});

describe('F-O2: length and mass', () => {
  it.each([
    ['pla', 1.75, 335.2836194167644],
    ['petg', 1.75, 327.3635339187306],
    ['abs', 1.75, 399.76123853537297],
    ['pla', 2.85, 126.415030404905],
  ] as const)('1 kg of %s at %d mm is %d m', (material, diameterMm, metres) => {
    close(valueOf(metresOfGrams(1000, { material, diameterMm })), metres);
  });

  it('10 m of PLA and 1 m of PETG at 1.75 mm weigh 29.83 g and 3.055 g', () => {
    close(valueOf(gramsOfMetres(10, { material: 'pla', diameterMm: 1.75 })), 29.825495255018097);
    close(valueOf(gramsOfMetres(1, { material: 'petg', diameterMm: 1.75 })), 3.05470798176395);
  });

  it('the cross-sections are 2.4053 and 6.3794 mm²', () => {
    close(filamentArea(1.75), 2.405281875404685);
    close(filamentArea(2.85), 6.379396582195774);
  });
});

describe('F-O3: a filament off its diameter', () => {
  it.each([
    [1.75, 0.02, 0.02298775510204054],
    [1.75, -0.02, -0.022726530612244944],
    [1.75, 0.05, 0.05795918367346964],
    [1.75, -0.05, -0.05632653061224491],
    [2.85, 0.05, 0.035395506309633396],
    [2.85, -0.05, -0.03477993228685761],
  ])('of %d mm by %d mm changes the flow by %d', (diameterMm, errorMm, share) => {
    expect(Math.abs(valueOf(flowErrorOfDiameter(diameterMm, errorMm)) - share)).toBeLessThanOrEqual(1e-10);
  });
});

describe('F-O4: volumetric flow', () => {
  const line = { widthMm: 0.45, heightMm: 0.2, speedMmS: 50 };

  it('of a 0.45 x 0.2 mm line at 50 mm/s is 4.5 mm³/s as a rectangle and 4.0708 rounded', () => {
    close(valueOf(volumetricFlow(line)), 4.5);
    close(valueOf(volumetricFlow(line, 'rounded')), 4.070796326794897);
  });

  it('asks 1.871 mm/s of 1.75 mm filament', () => {
    close(valueOf(volumetricFlow(line)) / filamentArea(1.75), 1.8708825963455458);
  });
});

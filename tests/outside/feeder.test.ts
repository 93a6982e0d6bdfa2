/** Feeder steps against a worked value: new = old x commanded / fed (common practice; computed with double precision). */
import { describe, expect, it } from 'vitest';
import { correctedFeederSteps } from '../../src/maintenance/figures/feederSteps.ts';

describe('E-O1: feeder steps', () => {
  it('of 93 with 96.3 mm fed for 100 mm become 96.5732', () => {
    const figure = correctedFeederSteps({ stepsPerMm: 93, commandedMm: 100, fedMm: 96.3 });
    if (!figure.ok) throw new Error(figure.reason);
    expect(Math.abs(figure.value / 96.57320872274144 - 1)).toBeLessThanOrEqual(1e-12);
  });
});

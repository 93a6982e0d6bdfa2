/**
 * How good the dates are, by usage regime: on made-up machines whose future is known, and on which nothing was chosen.
 * The band is p10 to p90. 180 h ahead is told, not judged. `npm run test:calibration` takes 1,000 machines a regime,
 * the ordinary run 250.
 */
import { describe, expect, it } from 'vitest';
import { judge, type Judged } from './judge.ts';
import { REGIMES } from './regimes.ts';

const MACHINES = Number(process.env['FETTLE_MACHINES'] ?? 250);
/** The constants of the forecast were chosen on machines below this number, some of them looked at above 20,000. */
const FRESH = 40_000;
/** No worse than the peer; a mean of fewer machines is off by some hundredths, the peer's own score by about as much. */
const EQUAL = MACHINES >= 1000 ? 1 : 1.1;
/** Least and most share of true days in the band; of few machines the share is off by some hundredths. */
const BARS: Readonly<Record<string, readonly [number, number]>> = {
  steady: [0.75, 1],
  'weekday-only': [0.7, MACHINES >= 1000 ? 0.9 : 0.93],
  bursty: [0.7, 0.9],
  'idle weeks': [0.7, 0.9],
  'ramping up': [0.6, 1],
};

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
const report = (name: string, hours: number, j: Judged): string =>
  `${name}, ${hours} h ahead: ${percent(j.inside)} in the band (${percent(j.early)} earlier, ${percent(j.late)} later), median off by ${j.off.toFixed(1)} days, interval score ${j.score.toFixed(2)} against ${j.peerScore.toFixed(2)} (${(j.score / j.peerScore).toFixed(3)}) of a weekday bootstrap, which holds ${percent(j.peerInside)}`;

describe.each(Object.entries(REGIMES))('%s', (name, regime) => {
  it.each([20, 60, 180])('%i h ahead', { timeout: 120_000 }, (hours) => {
    const judged = judge(regime, hours, FRESH, FRESH + MACHINES);
    console.log(report(name, hours, judged));
    expect(judged.machines).toBeGreaterThan(0.9 * MACHINES);
    if (hours > 60) return;
    const bar = BARS[name];
    if (bar) {
      expect(judged.inside).toBeGreaterThanOrEqual(bar[0]);
      expect(judged.inside).toBeLessThanOrEqual(bar[1]);
    }
    expect(judged.score / judged.peerScore).toBeLessThanOrEqual(EQUAL);
  });
});

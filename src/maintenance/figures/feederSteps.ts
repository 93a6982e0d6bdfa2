/**
 * Corrected steps per mm of the feeder from a test feed.
 *
 * Equation: new = old x commanded / fed.
 * Parameters: stepsPerMm 10 to 10,000; commandedMm 20 to 500; fedMm 20 to 500 and within 0.5 to 1.5 times commanded.
 * Outside: refused, with the reason; a feed that is half off is a fault, not a matter of steps.
 * Source: common practice, no source (the travel is proportional to the steps).
 * Worked: old 93, commanded 100 mm, fed 96.3 mm: 93 x 100 / 96.3 = 96.573.
 */
import { firstOutside, refuse, shown } from './figure.ts';
import type { Figure } from './figure.ts';

export interface FeedTest {
  stepsPerMm: number;
  commandedMm: number;
  fedMm: number;
}

/** A larger correction than this is more likely a fault than a wrong setting: common practice, no source. */
const FAULT_SHARE = 0.1;

function notesFor(share: number): readonly string[] {
  return share <= FAULT_SHARE
    ? ['Measure three times; rule out a part-blocked nozzle and a slipping gear first.']
    : [
        `${shown(share * 100)} % off is much: look for a blockage, a slipping gear or drag before you change the steps.`,
      ];
}

/** The corrected steps per mm. */
export function correctedFeederSteps({ stepsPerMm, commandedMm, fedMm }: FeedTest): Figure<number> {
  const length = { unit: 'mm', min: 20, max: 500 };
  const reason = firstOutside(
    [stepsPerMm, { name: 'setting', unit: 'steps per mm', min: 10, max: 10_000 }],
    [commandedMm, { name: 'commanded length', ...length }],
    [fedMm, { name: 'fed length', ...length }],
  );
  if (reason !== undefined) return refuse(reason);
  const ratio = fedMm / commandedMm;
  if (ratio < 0.5 || ratio > 1.5) {
    return refuse(
      `${shown(fedMm)} mm fed for ${shown(commandedMm)} mm asked is a fault in the feed, not in the steps.`,
    );
  }
  const value = (stepsPerMm * commandedMm) / fedMm;
  return {
    ok: true,
    value,
    working: `${shown(stepsPerMm)} x ${shown(commandedMm)} / ${shown(fedMm)} = ${shown(value)} steps per mm`,
    source: 'common practice, no source',
    notes: notesFor(Math.abs(ratio - 1)),
  };
}

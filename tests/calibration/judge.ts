/** How good the dates are: how often the true day lies in the band, and the interval score of band and peer. */
import { dayOfDate } from '../../src/maintenance/calendar.ts';
import { HORIZON_DAYS } from '../../src/maintenance/due/paths.ts';
import { pathsOf } from '../../src/maintenance/due/weeks.ts';
import { BUILDS } from '../support/builds.ts';
import { contextOn, recordOf } from '../support/machines.ts';
import { type Band, weekdayBootstrap } from './bootstrap.ts';
import { randomFrom, type Regime, TODAY } from './regimes.ts';

/** Gneiting and Raftery, "Strictly Proper Scoring Rules", JASA 102 (2007), eq. 43: central band of 1 - ALPHA. */
const ALPHA = 0.2;
export const intervalScore = ({ p10, p90 }: Band, actual: number): number =>
  p90 - p10 + (2 / ALPHA) * (Math.max(0, p10 - actual) + Math.max(0, actual - p90));

const LIFE = 900;
const everyDay = [0, 1, 2, 3, 4, 5, 6];
/** 2025-12-17, a Wednesday: day 0 of every machine's life is twelve weeks before the forecast. */
const NOW = '2026-03-11';

export interface Judged {
  machines: number;
  inside: number;
  early: number;
  late: number;
  /** Mean days between the median and the true day. */
  off: number;
  score: number;
  peerScore: number;
  peerInside: number;
}

function lifeOf(regime: Regime, seed: number): number[] {
  const random = randomFrom(seed);
  const hoursOn = regime(random);
  const today = dayOfDate(NOW);
  return Array.from({ length: LIFE }, (_, day) => Math.min(24, hoursOn(day, (today - TODAY + day + 3) % 7)));
}

function bandOf(life: readonly number[], needed: number): Band | undefined {
  const start = dayOfDate(NOW) - TODAY;
  const ran = (day: number): number => (day - start < TODAY ? (life[day - start] ?? 0) : 0);
  const record = recordOf('alder', BUILDS.alder, { ran, from: '2025-12-17' });
  const reach = pathsOf(record, contextOn(NOW, { workingDays: everyDay }))?.reach(needed, 'hours');
  if (!reach) return undefined;
  const told = (day: number): number => Math.min(HORIZON_DAYS, day);
  return { p10: told(reach.p10), p50: told(reach.p50), p90: told(reach.p90) };
}

/** Days ahead on which so many more hours were really reached. */
function actualDay(life: readonly number[], needed: number): number {
  let [sum, ahead] = [0, 0];
  while (TODAY + ahead < LIFE && (sum += life[TODAY + ahead] ?? 0) < needed) ahead += 1;
  return ahead;
}

/** Machines `from` up to `to`, each with a life of its own; those with too little usage for a forecast do not count. */
export function judge(regime: Regime, needed: number, from: number, to: number): Judged {
  const sums = { machines: 0, inside: 0, early: 0, late: 0, off: 0, score: 0, peerScore: 0, peerInside: 0 };
  for (let n = from; n < to; n += 1) {
    const life = lifeOf(regime, n * 7919 + 13);
    const band = bandOf(life, needed);
    if (!band) continue;
    const actual = actualDay(life, needed);
    const peer = weekdayBootstrap(life.slice(0, TODAY), needed, randomFrom(n * 104_729 + 7));
    sums.machines += 1;
    if (actual < band.p10) sums.early += 1;
    else if (actual > band.p90) sums.late += 1;
    else sums.inside += 1;
    if (actual >= peer.p10 && actual <= peer.p90) sums.peerInside += 1;
    sums.off += Math.abs(actual - band.p50);
    sums.score += intervalScore(band, actual);
    sums.peerScore += intervalScore(peer, actual);
  }
  const share = (sum: number): number => sum / Math.max(1, sums.machines);
  return {
    machines: sums.machines,
    inside: share(sums.inside), early: share(sums.early), late: share(sums.late), off: share(sums.off),
    score: share(sums.score), peerScore: share(sums.peerScore), peerInside: share(sums.peerInside),
  }; // prettier-ignore
}

/**
 * How good the dates are, on made-up machines whose future is known: how often the day on which 20 or 60 more
 * hours were reached lies between p10 and p90, and how far the median is off. Each regime by itself, because a
 * good mean over all of them can hide a bad one.
 */
import { describe, expect, it } from 'vitest';
import { pathsOf } from '../../../src/maintenance/due/weeks.ts';
import { BUILDS } from '../../support/builds.ts';
import { contextOn, recordOf, today } from '../../support/machines.ts';

/** A small generator of its own, so that the figures are the same in each run. */
function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) | 0;
    return (state >>> 0) / 4_294_967_296;
  };
}
type Random = () => number;
/** A machine's hours by day, drawn in order. */
type Regime = (random: Random) => (day: number, weekday: number) => number;

const SUNDAY = 6;
const onWorkdays =
  (hours: (day: number) => number) =>
  (day: number, weekday: number): number =>
    weekday === SUNDAY ? 0 : hours(day);

const regimes: Readonly<Record<string, Regime>> = {
  'two shifts, six days': (random) => onWorkdays(() => 4 + 8 * random()),
  'now and then': (random) => onWorkdays(() => (random() < 0.5 ? 0 : 2 + 6 * random())),
  'long prints': (random) => onWorkdays(() => (random() < 0.6 ? 0 : 10 + 10 * random())),
  'busy and quiet weeks': (random) => {
    let [week, level] = [-1, 1];
    return onWorkdays((day) => {
      const now = Math.floor((day + 3) / 7);
      if (now !== week) [week, level] = [now, random() < 0.3 ? 1 : 6];
      return level * (0.5 + random());
    });
  },
  rising: (random) => onWorkdays((day) => Math.max(1, 5 + (day - today) * 0.03) * (0.5 + random())),
  falling: (random) => onWorkdays((day) => Math.max(1, 5 - (day - today) * 0.03) * (0.5 + random())),
};

interface Judged {
  told: number;
  inside: number;
  early: number;
  late: number;
  off: number;
}

function judge(regime: Regime, hours: number, machines: number): Judged {
  const judged: Judged = { told: 0, inside: 0, early: 0, late: 0, off: 0 };
  for (let n = 0; n < machines; n += 1) {
    const random = randomFrom(n * 7919 + 13);
    const hoursOn = regime(random);
    const days = Array.from({ length: 250 }, (_, ahead) => {
      const day = today - 70 + ahead;
      return Math.min(20, hoursOn(day, (day + 3) % 7));
    });
    const ran = (day: number) => days[day - (today - 70)] ?? 0;
    const record = recordOf('alder', BUILDS.alder, { ran, from: '2025-12-31' });
    const reach = pathsOf(record, contextOn())?.reach(hours, 'hours');
    if (!reach) continue; // too few days of usage for a forecast
    judged.told += 1;
    let [sum, actual] = [0, 0];
    while ((sum += ran(today + actual)) < hours && actual < 170) actual += 1;
    if (actual < reach.p10) judged.early += 1;
    else if (actual > reach.p90) judged.late += 1;
    else judged.inside += 1;
    judged.off += Math.abs(actual - reach.p50);
  }
  return { ...judged, off: judged.off / judged.told };
}

describe.each(Object.entries(regimes))('%s', (name, regime) => {
  it.each([20, 60])('%i h ahead: most days lie in the band, the median is near', (hours) => {
    const machines = 150;
    const { told, inside, early, late, off } = judge(regime, hours, machines);
    const share = (n: number) => `${((100 * n) / told).toFixed(0)} %`;
    console.log(
      `${name}, ${hours} h ahead: ${share(inside)} in the band, ${share(early)} earlier, ${share(late)} later, median off by ${off.toFixed(1)} days`,
    );
    expect(told).toBeGreaterThan(machines / 2);
    // eight weeks tell the level of a steady machine; a trend is only half believed
    expect(inside / told).toBeGreaterThan(name.endsWith('ing') ? 0.5 : 0.62);
    expect(off).toBeLessThan(3 + hours / 10);
  });
});

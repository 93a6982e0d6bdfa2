/**
 * A guarded trend: the past weeks of a machine that runs more and more (or less and less) are brought to the
 * level of now, as far as the trend stands out from the noise, and go on so for four weeks.
 *   weekly totals y over weeks back k: least squares y = a - b k; kept: b x max(0, 1 - 6 / t^2), t = b / SE(b)
 *   factor of week k = level now / level then, between 0.4 and 2.5; a day never above 24 h
 *   growth of a week j ahead = (level now + 0.7 b (min(j, 4) + 1/2)) / level now, between 1/2 and 2
 * `hours`: seven days a week, the youngest week first; fewer than four weeks carry no trend. The shrinkage is
 * of the James-Stein kind, the damping of Gardner and McKenzie's (Management Science 31, 1985); the constants were
 * chosen on made-up machines (`npm run test:calibration` judges them on others).
 */
const WEEKS_NEEDED = 4;
const GUARD = 6;
const FACTOR = { least: 0.4, most: 2.5 };
const GROWTH = { least: 0.5, most: 2 };
const CARRIED_ON = 0.7;
const WEEKS_CARRIED_ON = 4;
const HOURS_A_DAY = 24;
/** `now` lies half a week after the middle of the youngest week. */
const NOW = -0.5;

interface Line {
  mean: number;
  middle: number;
  /** Hours a week that each week back is lower. */
  slope: number;
}

function lineThrough(totals: readonly number[]): Line {
  const n = totals.length;
  const middle = (n - 1) / 2;
  const mean = totals.reduce((sum, y) => sum + y, 0) / n;
  let [across, along] = [0, 0];
  totals.forEach((y, k) => {
    across += (k - middle) ** 2;
    along += (k - middle) * (y - mean);
  });
  const slope = along / across;
  const misses = totals.reduce((sum, y, k) => sum + (y - mean - slope * (k - middle)) ** 2, 0);
  const error = Math.sqrt(misses / (n - 2) / across);
  const stands = error === 0 ? (slope === 0 ? 0 : 1) : Math.max(0, 1 - GUARD / (slope / error) ** 2);
  return { mean, middle, slope: slope * stands };
}

export interface Trend {
  /** The past weeks at the level of now. */
  hours: Float64Array;
  /** What a week so far ahead (0 is the coming one) comes to, against the level of now. */
  growth: (week: number) => number;
}

const between = (value: number, { least, most }: { least: number; most: number }): number =>
  Math.min(most, Math.max(least, value));

export function atLevelOfNow(hours: Float64Array): Trend {
  const weeks = hours.length / 7;
  const level = { hours, growth: () => 1 };
  if (weeks < WEEKS_NEEDED) return level;
  const totals = Array.from({ length: weeks }, (_, k) =>
    hours.subarray(k * 7, k * 7 + 7).reduce((sum, h) => sum + h, 0),
  );
  const { mean, middle, slope } = lineThrough(totals);
  if (slope === 0) return level;
  const at = (k: number): number => mean + slope * (k - middle);
  const now = Math.max(0, at(NOW));
  const factorOf = (k: number): number => (at(k) > 0 ? between(now / at(k), FACTOR) : 1);
  const brought = hours.map((h, day) => Math.min(HOURS_A_DAY, h * factorOf(Math.floor(day / 7))));
  // no day may grow beyond its 24 hours
  const most = Math.min(GROWTH.most, HOURS_A_DAY / Math.max(...brought));
  const byWeek = Array.from({ length: WEEKS_CARRIED_ON + 1 }, (_, week) =>
    now > 0 ? between((now - CARRIED_ON * slope * (week + 0.5)) / now, { least: GROWTH.least, most }) : 1,
  );
  const growth = (week: number): number => byWeek[Math.min(week, WEEKS_CARRIED_ON)] ?? 1;
  return { hours: brought, growth };
}

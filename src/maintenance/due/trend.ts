/**
 * A guarded trend: the past weeks of a machine that runs more and more (or less and less) are brought to the
 * level of now, as far as the trend stands out from the noise. Nothing is carried on into the future.
 *   weekly totals y over weeks back k: least squares y = a - b k; kept: b x max(0, 1 - 2 / t^2), t = b / SE(b)
 *   factor of week k = level now / level then, between 1/2 and 2; a day never above 24 h
 * `hours`: seven days a week, the youngest week first; fewer than four weeks carry no trend. The shrinkage is
 * of the James-Stein kind; common practice, no single source.
 */
const WEEKS_NEEDED = 4;
const FACTOR = { least: 0.5, most: 2 };
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
  const stands = error === 0 ? (slope === 0 ? 0 : 1) : Math.max(0, 1 - 2 / (slope / error) ** 2);
  return { mean, middle, slope: slope * stands };
}

export function atLevelOfNow(hours: Float64Array): Float64Array {
  const weeks = hours.length / 7;
  if (weeks < WEEKS_NEEDED) return hours;
  const totals = Array.from({ length: weeks }, (_, k) =>
    hours.subarray(k * 7, k * 7 + 7).reduce((sum, h) => sum + h, 0),
  );
  const { mean, middle, slope } = lineThrough(totals);
  if (slope === 0) return hours;
  const level = (k: number): number => mean + slope * (k - middle);
  const factorOf = (k: number): number =>
    level(k) > 0 ? Math.min(FACTOR.most, Math.max(FACTOR.least, level(NOW) / level(k))) : 1;
  return hours.map((h, day) => Math.min(HOURS_A_DAY, h * factorOf(Math.floor(day / 7))));
}

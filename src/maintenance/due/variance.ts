/** Sample variance: sum of (x - mean)^2 / (n - 1); of fewer than two values NaN. */
export function variance(xs: readonly number[]): number {
  const mean = xs.reduce((sum, x) => sum + x, 0) / xs.length;
  return xs.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (xs.length - 1);
}

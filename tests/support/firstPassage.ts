/**
 * First passage of a level by a walk with drift: the inverse Gaussian distribution.
 *   mu = limit / drift, lambda = limit^2 / sd^2
 *   F(t) = Phi(sqrt(lambda/t) (t/mu - 1)) + exp(2 lambda/mu) Phi(-sqrt(lambda/t) (t/mu + 1))
 * `limit`: what is left, hours; `drift`, `sd`: mean and standard deviation a day, hours; t: days, above 0.
 * A reference for the forecast, not the forecast: it knows neither weekdays nor closed days.
 */
const SQRT_2 = Math.SQRT2;

/** Scaled complementary error function exp(x^2) erfc(x) for x >= 0: series below 2, continued fraction above. */
function erfcx(x: number): number {
  if (x < 2) {
    let [term, sum] = [x, x];
    for (let n = 1; n < 80; n += 1) {
      term *= (-x * x) / n;
      sum += term / (2 * n + 1);
    }
    return Math.exp(x * x) * (1 - (2 / Math.sqrt(Math.PI)) * sum);
  }
  let fraction = 0;
  for (let n = 120; n >= 1; n -= 1) fraction = n / 2 / (x + fraction);
  return 1 / Math.sqrt(Math.PI) / (x + fraction);
}

/** exp(a) Phi(-z) for z >= 0, without overflow. */
const scaledTail = (a: number, z: number): number => 0.5 * Math.exp(a - (z * z) / 2) * erfcx(z / SQRT_2);
const phi = (z: number): number => (z >= 0 ? 1 - scaledTail(0, z) : scaledTail(0, -z));

export interface Passage {
  mu: number;
  lambda: number;
}
export const passage = (limit: number, drift: number, sd: number): Passage => ({
  mu: limit / drift,
  lambda: limit ** 2 / sd ** 2,
});

export function passedBy({ mu, lambda }: Passage, days: number): number {
  const root = Math.sqrt(lambda / days);
  return phi(root * (days / mu - 1)) + scaledTail((2 * lambda) / mu, root * (days / mu + 1));
}

export function passageQuantile(of: Passage, chance: number): number {
  let [low, high] = [0, of.mu];
  while (passedBy(of, high) < chance) high *= 2;
  for (let step = 0; step < 200 && high - low > 1e-13 * high; step += 1) {
    const middle = (low + high) / 2;
    if (passedBy(of, middle) < chance) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

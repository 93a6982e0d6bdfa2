/** Usage regimes on made-up machines whose future is known. Each machine draws its own level and habits. */
export type Random = () => number;
/** Hours of a machine by day of its life, drawn in order; weekday 0 is Monday. */
export type Regime = (random: Random) => (day: number, weekday: number) => number;

/** A small generator of its own (Numerical Recipes' LCG), so that the figures are the same in each run. */
export function randomFrom(seed: number): Random {
  let state = seed;
  for (let warm = 0; warm < 5; warm += 1) state = (Math.imul(state, 1_664_525) + 1_013_904_223) | 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) | 0;
    return (state >>> 0) / 4_294_967_296;
  };
}

const SATURDAY = 5;
const between = (random: Random, low: number, high: number): number => low + (high - low) * random();
/** Right-skewed, mean 1: what print lengths look like. */
const skewed = (random: Random): number => -Math.log(1 - random());

/** The day of a machine's life on which the forecast is made. */
export const TODAY = 84;

export const REGIMES: Readonly<Record<string, Regime>> = {
  /** Much the same every day of the week. */
  steady: (random) => {
    const level = between(random, 3, 12);
    return () => level * between(random, 0.8, 1.2);
  },
  /** Office days only, prints of varied length. */
  'weekday-only': (random) => {
    const level = between(random, 3, 10);
    return (_, weekday) => (weekday >= SATURDAY ? 0 : level * between(random, 0.4, 1.6));
  },
  /** Nothing for days, then a long print. */
  bursty: (random) => {
    const often = between(random, 0.2, 0.5);
    const length = between(random, 5, 12);
    return () => (random() < often ? Math.min(22, length * (0.3 + 0.7 * skewed(random))) : 0);
  },
  /** Some whole weeks without a print. */
  'idle weeks': (random) => {
    const level = between(random, 3, 9);
    const idle = between(random, 0.2, 0.4);
    let [week, runs] = [-1, true];
    return (day, weekday) => {
      const now = Math.floor(day / 7);
      if (now !== week) [week, runs] = [now, random() >= idle];
      return runs && weekday < SATURDAY ? level * between(random, 0.5, 1.5) : 0;
    };
  },
  /** From little to a multiple of it over the half year. */
  'ramping up': (random) => {
    const level = between(random, 1, 3);
    const growth = between(random, 0.02, 0.06);
    return (day) => Math.min(22, level * (1 + growth * day) * between(random, 0.5, 1.5));
  },
  'ramping down': (random) => {
    const level = between(random, 8, 14);
    const loss = between(random, 0.003, 0.006);
    return (day) => level * Math.max(0.15, 1 - loss * day) * between(random, 0.5, 1.5);
  },
  /** Another level since two to eleven weeks ago. */
  'new level': (random) => {
    const [level, factor] = [between(random, 3, 8), between(random, 0.5, 2)];
    const since = TODAY - 7 * Math.floor(between(random, 2, 12));
    return (day) => level * (day < since ? 1 : factor) * between(random, 0.5, 1.5);
  },
};

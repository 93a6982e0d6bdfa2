/**
 * The peer: a plain bootstrap by weekday. Each coming day repeats the hours of the same weekday in one of the last
 * eight weeks, drawn evenly and by itself; nothing is known of streaks, trends or young machines.
 */
import type { Random } from './regimes.ts';

const WEEKS = 8;
const PATHS = 500;
const FARTHEST = 730;

export interface Band {
  p10: number;
  p50: number;
  p90: number;
}

/** `past`: hours by day, the last one yesterday. Gives days ahead (0 is today). */
export function weekdayBootstrap(past: readonly number[], needed: number, random: Random): Band {
  const sameWeekday = (ahead: number): number[] =>
    Array.from({ length: WEEKS }, (_, k) => past[past.length - 7 * (k + 1) + (ahead % 7)] ?? 0);
  const weekdays = Array.from({ length: 7 }, (_, ahead) => sameWeekday(ahead));
  const days = Array.from({ length: PATHS }, () => {
    let [sum, ahead] = [0, 0];
    while (ahead < FARTHEST) {
      sum += weekdays[ahead % 7]?.[Math.floor(random() * WEEKS)] ?? 0;
      if (sum >= needed) break;
      ahead += 1;
    }
    return ahead;
  }).sort((a, b) => a - b);
  const at = (chance: number): number => days[Math.ceil(chance * PATHS) - 1] ?? FARTHEST;
  return { p10: at(0.1), p50: at(0.5), p90: at(0.9) };
}

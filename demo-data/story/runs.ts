/** Who printed what, day by day: working days, two shifts, totals that come out to the tenth of an hour. */
import type { Day, Material } from '../../src/index.ts';
import { chanceFor, pick } from '../random.ts';
import type { Chance } from '../random.ts';
import { CEDAR_DOWN_DAYS } from './cast.ts';
import type { Character } from './cast.ts';
import type { Days } from './days.ts';

export interface Run {
  day: Day;
  /** Minutes since midnight at which it ended. */
  end: number;
  hours: number;
  grams: number;
  material: Material;
  /** A spool was mounted before it. */
  spool?: { grams: number };
}

/** The shop is in from 6 to 22; what is done before 9 is care, prints end later. */
const FIRST_END = { earliest: 9 * 60 + 30, latest: 13 * 60 + 40 };
const SECOND_END = { earliest: 17 * 60, latest: 21 * 60 + 40 };
/** Longer than one shift's print, and the day's hours are two runs. */
const ONE_RUN_TENTHS = 65;

const between = (chance: Chance, { earliest, latest }: { earliest: number; latest: number }): number =>
  Math.round(earliest + chance() * (latest - earliest));

export function runsOf(character: Character, days: Days): Run[] {
  const chance = chanceFor(`runs ${character.machine}`);
  const parts = character.stretches.flatMap(({ daysAgo, hours }, index) => {
    const next = character.stretches[index + 1];
    const last = next ? days.today - next.daysAgo - 1 : lastRunDay(character, days);
    return stretch(character, days, days.today - daysAgo, last, hours, chance);
  });
  return withSpools(parts, character, chance);
}

const lastRunDay = ({ machine }: Character, days: Days): Day =>
  machine === 'cedar' ? days.openDay(CEDAR_DOWN_DAYS) - 1 : days.today - 1;

type Bare = Omit<Run, 'material'>;

/** Days that print, each with its share of the hours, rounded so that the sum is exact. */
function stretch(who: Character, days: Days, from: Day, to: Day, hours: number, chance: Chance): Bare[] {
  const shares: { day: Day; weight: number }[] = [];
  for (let day = from; day <= to; day += 1)
    if (days.isOpen(day) && chance() < who.busy) shares.push({ day, weight: 0.6 + 0.8 * chance() });
  const whole = shares.reduce((sum, share) => sum + share.weight, 0);
  let passed = 0;
  let told = 0;
  return shares.flatMap(({ day, weight }) => {
    passed += weight;
    const tenths = Math.round((hours * 10 * passed) / whole) - told;
    told += tenths;
    return dayRuns(day, tenths, who.gramsAnHour, chance);
  });
}

function dayRuns(day: Day, tenths: number, gramsAnHour: number, chance: Chance): Bare[] {
  const run = (ends: { earliest: number; latest: number }, some: number): Bare => {
    const grams = Math.round((some / 10) * gramsAnHour * (0.85 + 0.3 * chance()));
    return { day, end: between(chance, ends), hours: some / 10, grams };
  };
  if (tenths <= 0) return [];
  if (tenths <= ONE_RUN_TENTHS) return [run(SECOND_END, tenths)];
  const morning = Math.min(35, Math.round(tenths * 0.35));
  return [run(FIRST_END, morning), run(SECOND_END, tenths - morning)];
}

/** A spool is mounted when the one before would not do. */
function withSpools(runs: readonly Bare[], { materials, spoolGrams }: Character, chance: Chance): Run[] {
  let left = 0;
  let material = pick(chance, materials);
  return runs.map((run) => {
    const mounts = left < run.grams;
    if (mounts) {
      material = pick(chance, materials);
      left = spoolGrams;
    }
    left -= run.grams;
    return { ...run, material, ...(mounts ? { spool: { grams: spoolGrams } } : {}) };
  });
}

/** What each machine of the demo is used for, and how hard. */
import type { Material } from '../../src/index.ts';

/** Ten months. */
export const STORY_DAYS = 303;
export const ROWAN_DAYS = 21;
/** Cedar stands still since the last working day that is at least so long ago. */
export const CEDAR_DOWN_DAYS = 2;

export interface Character {
  machine: string;
  /** Share of the working days on which it prints. */
  busy: number;
  materials: readonly (readonly [Material, number])[];
  gramsAnHour: number;
  spoolGrams: number;
  /** Hours printed from so many days ago until the next stretch, or until now. */
  stretches: readonly { daysAgo: number; hours: number }[];
}

export const CAST: readonly Character[] = [
  {
    machine: 'alder',
    busy: 0.86,
    materials: [['pla', 1]],
    gramsAnHour: 13,
    spoolGrams: 1000,
    stretches: [
      { daysAgo: STORY_DAYS, hours: 688 }, // 3,080 -> 3,768 h
      { daysAgo: 99, hours: 332 }, // its rods were oiled then: -> 4,100 h
    ],
  },
  {
    machine: 'birch',
    busy: 0.74,
    materials: [['pla', 3], ['petg', 1]],
    gramsAnHour: 12,
    spoolGrams: 1000,
    stretches: [
      { daysAgo: STORY_DAYS, hours: 339.5 },
      { daysAgo: 166, hours: 412 }, // its nozzle is as old as that: -> 2,311.5 h
    ],
  },
  {
    machine: 'cedar',
    busy: 0.8,
    materials: [['nylon-cf', 4], ['petg', 1]],
    gramsAnHour: 20,
    spoolGrams: 750,
    stretches: [{ daysAgo: STORY_DAYS, hours: 800 }],
  },
  {
    machine: 'elm',
    busy: 0.88,
    materials: [['abs', 2], ['asa', 1]],
    gramsAnHour: 14,
    spoolGrams: 1000,
    stretches: [{ daysAgo: STORY_DAYS, hours: 1180 }],
  },
  {
    machine: 'hazel',
    busy: 0.72,
    materials: [['pla', 2], ['petg', 1]],
    gramsAnHour: 12,
    spoolGrams: 1000,
    stretches: [{ daysAgo: STORY_DAYS, hours: 760 }],
  },
  {
    machine: 'juniper',
    busy: 0.8,
    materials: [['pla', 1]],
    gramsAnHour: 46,
    spoolGrams: 2500,
    stretches: [{ daysAgo: STORY_DAYS, hours: 1320 }],
  },
  {
    machine: 'maple',
    busy: 0.93,
    materials: [['pla', 4], ['petg', 1]],
    gramsAnHour: 11,
    spoolGrams: 1000,
    stretches: [{ daysAgo: STORY_DAYS, hours: 840 }],
  },
  {
    machine: 'rowan',
    busy: 0.95,
    materials: [['pla', 1]],
    gramsAnHour: 14,
    spoolGrams: 1000,
    stretches: [{ daysAgo: ROWAN_DAYS, hours: 84 }],
  },
]; // prettier-ignore

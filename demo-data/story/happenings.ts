/** What went wrong in ten months, and what was done about it. Days are days ago; the machine's care follows. */
import { foldName } from '../../src/index.ts';
import type { Day, EntryFields, Part, Reason, Symptom, WorkshopMachine } from '../../src/index.ts';
import type { Days } from './days.ts';
import { afterSwap, afterSymptom } from './followUps.ts';
import type { Telling } from './telling.ts';

interface Trouble {
  machine: string;
  daysAgo: number;
  minute: number;
  seenBy: string;
  symptom: Symptom;
  part?: Part;
  mendedBy: string;
  /** Minutes until it was mended; a day has 1440. */
  after: number;
  swapped?: { part: Part; reason?: Reason; fitted?: string; count?: number };
}

const HALF_PAST_TEN = 10 * 60 + 30;
const TROUBLES: readonly Trouble[] = [
  { machine: 'birch', daysAgo: 262, minute: 611, seenBy: 'odd', symptom: 'no-extrusion', mendedBy: 'odd', after: 35 },
  { machine: 'maple', daysAgo: 248, minute: 640, seenBy: 'priya', symptom: 'squeak', mendedBy: 'ines', after: 25 },
  { machine: 'birch', daysAgo: 231, minute: 934, seenBy: 'priya', symptom: 'no-extrusion', mendedBy: 'ines', after: 40 },
  { machine: 'juniper', daysAgo: 214, minute: 655, seenBy: 'odd', symptom: 'stringing', mendedBy: 'odd', after: 50 },
  { machine: 'hazel', daysAgo: 190, minute: 702, seenBy: 'odd', symptom: 'belt-slack', mendedBy: 'tomasz', after: 70, swapped: { part: 'x-belt', reason: 'broken', fitted: '6 mm' } },
  { machine: 'elm', daysAgo: 152, minute: 618, seenBy: 'priya', symptom: 'no-extrusion', mendedBy: 'priya', after: 45 },
  { machine: 'alder', daysAgo: 140, minute: 905, seenBy: 'ines', symptom: 'layer-shift', mendedBy: 'ines', after: 55 },
  { machine: 'birch', daysAgo: 121, minute: 848, seenBy: 'odd', symptom: 'no-extrusion', mendedBy: 'odd', after: 30 },
  { machine: 'hazel', daysAgo: 96, minute: 677, seenBy: 'tomasz', symptom: 'flat-spot', mendedBy: 'tomasz', after: 60, swapped: { part: 'wheel', reason: 'worn', count: 4 } },
  { machine: 'birch', daysAgo: 88, minute: 613, seenBy: 'priya', symptom: 'no-extrusion', mendedBy: 'ines', after: 38 },
  { machine: 'hazel', daysAgo: 61, minute: 735, seenBy: 'priya', symptom: 'no-extrusion', mendedBy: 'priya', after: 42 },
  { machine: 'cedar', daysAgo: 47, minute: 690, seenBy: 'odd', symptom: 'feeder-clicking', mendedBy: 'odd', after: 25 },
  { machine: 'maple', daysAgo: 33, minute: 641, seenBy: 'ines', symptom: 'poor-adhesion', mendedBy: 'ines', after: 20 },
  { machine: 'birch', daysAgo: 19, minute: 914, seenBy: 'odd', symptom: 'feeder-clicking', mendedBy: 'tomasz', after: 30 },
]; // prettier-ignore

type Find = (machine: string) => WorkshopMachine;

export const troubles = (find: Find, days: Days): Telling[] =>
  TROUBLES.flatMap((trouble) => {
    const { machine, symptom, part } = trouble;
    const seenAt = days.at(days.openDay(trouble.daysAgo), trouble.minute);
    const seen: EntryFields = { kind: 'seen', machine, symptom, ...(part ? { part } : {}) };
    const mended = {
      at: seenAt + trouble.after * 60_000,
      by: trouble.mendedBy,
      facts: mending(find(machine), trouble),
    };
    return [{ at: seenAt, by: trouble.seenBy, facts: [seen] }, mended];
  });

function mending(machine: WorkshopMachine, { symptom, swapped }: Trouble): EntryFields[] {
  const name = foldName(machine.name);
  const swap: EntryFields[] = swapped ? [{ kind: 'swapped', machine: name, ...swapped }] : [];
  return [
    ...swap,
    ...afterSymptom(machine, symptom),
    ...(swapped ? afterSwap(machine, swapped.part) : []),
    { kind: 'cleared', machine: name, symptom },
  ];
}

/** Birch's nozzle: opened, fitted, closed; its life so far is told in the examples. */
export function birchNozzle(birch: WorkshopMachine, days: Days, day: Day): Telling[] {
  const swap: EntryFields = { kind: 'swapped', machine: 'birch', part: 'nozzle', reason: 'worn' };
  return [
    { at: days.at(day, 7 * 60 + 5), by: 'ines', facts: [{ kind: 'opened', machine: 'birch' }] },
    { at: days.at(day, 7 * 60 + 35), by: 'ines', facts: [swap, ...afterSwap(birch, 'nozzle')] },
    { at: days.at(day, 7 * 60 + 40), by: 'ines', facts: [{ kind: 'closed', machine: 'birch' }] },
  ];
}

/** Elm's hot-end fan stopped; it stood until the new one came. */
export function elmFan(elm: WorkshopMachine, days: Days): Telling[] {
  const stopped = days.openDay(110);
  const back = days.openDay(107);
  const fan: EntryFields = { kind: 'swapped', machine: 'elm', part: 'hot-end-fan', reason: 'broken' };
  return [
    {
      at: days.at(stopped, 21 * 60 + 50),
      by: 'odd',
      facts: [
        { kind: 'seen', machine: 'elm', symptom: 'fan-stopped', part: 'hot-end-fan' },
        { kind: 'down', machine: 'elm' },
      ],
    },
    {
      at: days.at(back, 7 * 60),
      by: 'tomasz',
      facts: [
        {
          kind: 'found',
          machine: 'elm',
          text: 'strand of filament wound round the fan shaft',
          part: 'hot-end-fan',
        },
        fan,
        ...afterSwap(elm, 'hot-end-fan'),
        ...afterSymptom(elm, 'fan-stopped'),
        { kind: 'cleared', machine: 'elm', symptom: 'fan-stopped' },
        { kind: 'up', machine: 'elm' },
      ],
    },
  ];
}

/** A burning smell near Juniper that was the toaster; the wiring was looked at all the same. */
export function juniperFalseAlarm(juniper: WorkshopMachine, days: Days): Telling[] {
  const day = days.openDay(38);
  const at = (minute: number): number => days.at(day, 21 * 60 + minute);
  return [
    { at: at(42), by: 'priya', facts: [{ kind: 'seen', machine: 'juniper', symptom: 'burning-smell' }] },
    {
      at: at(58),
      by: 'ines',
      facts: [
        ...afterSymptom(juniper, 'burning-smell'),
        { kind: 'released', machine: 'juniper', falseAlarm: true, found: 'it was the toaster next door' },
      ],
    },
  ];
}

/** Cedar has been cold since; nobody has looked yet. */
export const cedarDown = (days: Days, day: Day): Telling[] => [
  {
    at: days.at(day, HALF_PAST_TEN),
    by: 'odd',
    facts: [
      { kind: 'seen', machine: 'cedar', symptom: 'no-heat' },
      { kind: 'down', machine: 'cedar' },
    ],
  },
];

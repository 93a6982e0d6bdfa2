/** Care as it was told: one message for all that was done on a machine that morning. */
import { foldName, partReplacedBy } from '../../src/index.ts';
import type { Day, EntryFields, Part, WorkshopMachine } from '../../src/index.ts';
import { chanceFor, pick } from '../random.ts';
import type { Chance } from '../random.ts';
import type { CareDay } from './care.ts';
import type { Days } from './days.ts';
import { afterSwap } from './followUps.ts';
import type { Telling } from './telling.ts';

const KEEPERS = [['ines', 4], ['tomasz', 3], ['priya', 2], ['odd', 1]] as const; // prettier-ignore
/** Before the first print of the day ends. */
const MORNING = { from: 7 * 60, minutes: 100 };

export function serving(machine: WorkshopMachine, care: readonly CareDay[], days: Days): Telling[] {
  const chance = chanceFor(`serving ${machine.name}`);
  const byDay = new Map<Day, CareDay[]>();
  for (const turn of care) byDay.set(turn.day, [...(byDay.get(turn.day) ?? []), turn]);
  return [...byDay].map(([day, done]) => ({
    at: days.at(day, MORNING.from + Math.round(chance() * MORNING.minutes)),
    by: pick(chance, KEEPERS),
    facts: done.flatMap((turn) => factsOf(machine, turn, chance)),
  }));
}

function factsOf(machine: WorkshopMachine, { task, used }: CareDay, chance: Chance): EntryFields[] {
  const name = foldName(machine.name);
  const part = partReplacedBy(task);
  if (part) return swapFacts(machine, part, used, chance);
  const isLook = task.startsWith('check-');
  return [
    { kind: 'done', machine: name, task, ...(isLook && chance() < 0.6 ? { finding: 'fine' as const } : {}) },
  ];
}

/** Share of its interval from which a part was said to be worn. */
const WORN_FROM = 0.9;

/** A part that went to its limit was worn; one that went before was planned; some nobody gives a reason for. */
function swapFacts(machine: WorkshopMachine, part: Part, used: number, chance: Chance): EntryFields[] {
  const reason = used >= WORN_FROM ? ('worn' as const) : ('planned' as const);
  const fitted = machine.parts[part]?.fitted;
  const swapped: EntryFields = {
    kind: 'swapped',
    machine: foldName(machine.name),
    part,
    ...(fitted !== undefined && chance() < 0.5 ? { fitted } : {}),
    ...(chance() < 0.8 ? { reason } : {}),
  };
  return [swapped, ...afterSwap(machine, part)];
}

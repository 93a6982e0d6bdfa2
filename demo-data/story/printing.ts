/** Prints and spools as they were logged, and the counters as they were read. */
import { foldName } from '../../src/index.ts';
import type { EntryFields, Material, WorkshopMachine } from '../../src/index.ts';
import { chanceFor, pick } from '../random.ts';
import type { Chance } from '../random.ts';
import type { Days } from './days.ts';
import { afterLoad, afterSpool } from './followUps.ts';
import type { Ledger } from './ledger.ts';
import type { Run } from './runs.ts';
import type { Telling } from './telling.ts';

const LOGGERS = [['priya', 3], ['odd', 3], ['ines', 1], ['tomasz', 1]] as const; // prettier-ignore
/** Minutes after the end of a print at which somebody says so. */
const SAID_AFTER = { least: 2, most: 16 };
/** Minutes before the start of its print at which a spool is mounted. */
const MOUNTED_BEFORE = 6;

export const runName = (machine: string, run: Run): string => `${machine} ${run.day} ${run.end}`;

export function printing(machine: WorkshopMachine, runs: readonly Run[], days: Days): Telling[] {
  const name = foldName(machine.name);
  const chance = chanceFor(`printing ${name}`);
  const spoolFacts = spoolsOf(machine);
  return runs.flatMap((run, index) => {
    const at = days.at(run.day, run.end);
    const by = pick(chance, LOGGERS);
    const saidAt = at + Math.round(SAID_AFTER.least + chance() * SAID_AFTER.most) * 60_000;
    const usage: Telling = {
      at,
      saidAt,
      by,
      name: runName(name, run),
      facts: [usageFact(name, run, chance)],
    };
    if (!run.spool) return [usage];
    const mountedAt = at - (run.hours * 60 + MOUNTED_BEFORE) * 60_000;
    return [{ at: mountedAt, by, facts: spoolFacts(run, runs[index - 1]) }, usage];
  });
}

/** Three in four are told with weight and material; else the loaded spool says what it was. */
function usageFact(machine: string, { hours, grams, material }: Run, chance: Chance): EntryFields {
  const usage = { kind: 'usage', machine, hours } as const;
  if (chance() < 0.75) return { ...usage, grams, material };
  return chance() < 0.5 ? { ...usage, grams } : usage;
}

/** A spool goes on: it is dried where it must be, and the feeder cleaned of the one before. */
function spoolsOf(machine: WorkshopMachine) {
  const name = foldName(machine.name);
  const afterLoading = remembered((material: Material) => afterLoad(machine, material));
  const afterRunning = remembered((material: Material) => afterSpool(machine, material));
  return ({ material, spool }: Run, before: Run | undefined): EntryFields[] => [
    { kind: 'loaded', machine: name, material, ...spool },
    ...afterLoading(material),
    ...(before ? afterRunning(before.material) : []),
  ];
}

function remembered<Key, Value>(work: (key: Key) => Value): (key: Key) => Value {
  const known = new Map<Key, Value>();
  return (key) => {
    const held = known.get(key);
    if (held !== undefined) return held;
    const value = work(key);
    known.set(key, value);
    return value;
  };
}

/** Hours that a machine ran and nobody logged, at some reading or other. */
const UNLOGGED: Readonly<Record<string, number>> = { elm: 3, juniper: 4.5 };

/** Once a month, on the first open day. */
export function readings(machine: WorkshopMachine, ledger: Ledger, days: Days, from: number): Telling[] {
  const name = foldName(machine.name);
  const start = machine.startHours ?? 0;
  const tellings: Telling[] = [];
  let unlogged = 0;
  for (let ago = days.today - from - 28; ago > 3; ago -= 30) {
    const day = days.openDay(ago);
    if (tellings.length === 3) unlogged += UNLOGGED[name] ?? 0;
    const hours = Math.round((start + ledger.at(day).hours + unlogged) * 10) / 10;
    tellings.push({
      at: days.at(day, 8 * 60 + 50),
      by: 'tomasz',
      facts: [{ kind: 'meter', machine: name, hours }],
    });
  }
  return tellings;
}

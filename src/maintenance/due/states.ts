/** Machines in a state of their own: held, out of use, open. */
import type { Symptom, Task } from '../codes.ts';
import type { Instant } from '../entry/entry.ts';
import type { MachineRecord } from '../record/record.ts';
import { isOwed } from './condensed.ts';
import type { DueRow } from './row.ts';

export interface HeldLine {
  machine: string;
  symptom: Symptom;
  also: readonly Symptom[];
  since: Instant;
  by: string;
  entry: string;
}
export interface OutOfUseLine {
  machine: string;
  since: Instant;
  by: string;
  /** What is owed before it starts again. */
  before: readonly Task[];
  /** What was seen on it and not cleared, oldest first. */
  because: readonly Symptom[];
}
export interface OpenLine {
  machine: string;
  since: Instant;
  by: string;
}
export interface States {
  held: readonly HeldLine[];
  outOfUse: readonly OutOfUseLine[];
  open: readonly OpenLine[];
}

const openSymptoms = (record: MachineRecord): Symptom[] =>
  Object.entries(record.symptoms)
    .flatMap(([symptom, known]) => (known.open ? [{ symptom: symptom as Symptom, at: known.open.at }] : []))
    .toSorted((a, b) => a.at - b.at)
    .map(({ symptom }) => symptom);

/** By machine, of those that stand. */
function owedBeforeStart(rows: readonly DueRow[]): ReadonlyMap<string, readonly Task[]> {
  const owed = new Map<string, Task[]>();
  for (const row of rows) {
    if (!row.idle || !(isOwed(row) || (row.state === 'no-record' && row.class === 'safety'))) continue;
    const tasks = owed.get(row.machine);
    if (tasks) tasks.push(row.task);
    else owed.set(row.machine, [row.task]);
  }
  return owed;
}

/** Retired machines are in none. `rows`: what is due on all machines. */
export function statesOf(machines: readonly MachineRecord[], rows: readonly DueRow[]): States {
  const mine = machines.filter(({ retired }) => !retired);
  const owed = owedBeforeStart(rows);
  return {
    held: mine.flatMap(({ name, hold }): HeldLine[] =>
      hold
        ? [
            {
              machine: name,
              symptom: hold.symptom,
              also: hold.also,
              since: hold.since.at,
              by: hold.since.by,
              entry: hold.since.entry,
            },
          ]
        : [],
    ),
    outOfUse: mine.flatMap((record): OutOfUseLine[] => {
      if (!record.down) return [];
      return [
        {
          machine: record.name,
          since: record.down.at,
          by: record.down.by,
          before: owed.get(record.name) ?? [],
          because: openSymptoms(record),
        },
      ];
    }),
    open: mine.flatMap(({ name, opened }): OpenLine[] =>
      opened ? [{ machine: name, since: opened.at, by: opened.by }] : [],
    ),
  };
}

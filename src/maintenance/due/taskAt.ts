/** Where something is needed or met: the tasks of a round, gathered by it. */
import type { Task } from '../codes.ts';
import type { Build } from '../machine.ts';
import type { ShopRecord } from '../record/record.ts';
import type { DueRow } from './row.ts';

export interface TaskAt {
  machine: string;
  task: Task;
}

/** What is one line for the room is done alike on every build. */
export const buildOf = (shop: ShopRecord, { machine }: DueRow): Build =>
  (shop.machines.get(machine) ?? shop.room).build;

/** Tasks by what they have in common, each thing once, in the order of the round. */
export function gather<T>(
  rows: readonly DueRow[],
  thingsOf: (row: DueRow) => Iterable<T>,
): Map<T, readonly TaskAt[]> {
  const found = new Map<T, TaskAt[]>();
  for (const row of rows)
    for (const thing of thingsOf(row)) {
      const here = { machine: row.machine, task: row.task };
      const tasks = found.get(thing);
      if (tasks) tasks.push(here);
      else found.set(thing, [here]);
    }
  return found;
}

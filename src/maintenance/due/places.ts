/** The tasks of a round with what each needs and what can hurt in it, worked out once a build. */
import { cautionsFor } from '../cautions/forBuild.ts';
import type { Caution } from '../cautions/keys.ts';
import type { Consumable, Task } from '../codes.ts';
import { kitFor } from '../how/kit.ts';
import { SUPPLIES, isHexKey, shortName } from '../how/tools.ts';
import type { Tool } from '../how/tools.ts';
import { keptPerBuild } from '../keptPerBuild.ts';
import type { Build } from '../machine.ts';
import type { ShopRecord } from '../record/record.ts';
import type { DueRow } from './row.ts';

export interface TaskAt {
  machine: string;
  task: Task;
}

/** Each thing once: two kinds of grease are one code on the shelf. */
export interface Needs {
  items: readonly Consumable[];
  /** What is used up and no shelf counts. */
  others: readonly string[];
  hexKeys: readonly Tool[];
  /** Other tools, by their short names. */
  tools: readonly string[];
  cautions: readonly Caution[];
}

export interface Place {
  row: DueRow;
  at: TaskAt;
  needs: Needs;
}

function needsOn(task: Task, build: Build): Needs {
  const { tools, supplies } = kitFor(task, build);
  const used = supplies.map((supply) => SUPPLIES[supply]);
  return {
    items: [...new Set(used.flatMap(({ item }) => item ?? []))],
    others: used.flatMap(({ item, text }) => (item ? [] : [text])),
    hexKeys: tools.filter(isHexKey),
    tools: tools.filter((tool) => !isHexKey(tool)).map(shortName),
    cautions: cautionsFor(task, build),
  };
}
const needsOf = keptPerBuild(needsOn);

/** What is one line for the room is done alike on every build. */
export const placesOf = (rows: readonly DueRow[], shop: ShopRecord): readonly Place[] =>
  rows.map((row) => {
    const { machine, task } = row;
    const { build } = shop.machines.get(machine) ?? shop.room;
    return { row, at: { machine, task }, needs: needsOf(task, build) };
  });

/** Tasks by what they have in common, each thing once, in the order of the round. */
export function gather<T>(
  places: readonly Place[],
  thingsOf: (place: Place) => readonly T[],
): Map<T, readonly TaskAt[]> {
  const found = new Map<T, TaskAt[]>();
  for (const place of places)
    for (const thing of thingsOf(place)) {
      const tasks = found.get(thing);
      if (tasks) tasks.push(place.at);
      else found.set(thing, [place.at]);
    }
  return found;
}

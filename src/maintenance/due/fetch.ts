/** What to fetch before a round: tools, consumables and spares, and what the shelf lacks. */
import { CAUTION_KEYS } from '../cautions/keys.ts';
import type { CautionKey } from '../cautions/keys.ts';
import type { Consumable, Part, StockItem, Task } from '../codes.ts';
import type { ShelfItem, ShopRecord } from '../record/record.ts';
import { describeNozzle } from '../record/nozzle.ts';
import { findToTake } from '../record/shelf.ts';
import type { DueRow } from './row.ts';

export interface TaskAt {
  machine: string;
  task: Task;
}
export type FetchItem =
  | { kind: 'tool'; tool: string; for: readonly TaskAt[] }
  /** `have` is absent where the shelf does not keep it. */
  | { kind: 'consumable'; item: Consumable; have?: number; for: readonly TaskAt[] }
  | { kind: 'part'; item: Part; fitted?: string; need: number; have?: number; for: readonly TaskAt[] };

/** What is short: `out` when the shelf has less than the round needs, `last` when the round takes the last. */
export interface Shortage {
  item: StockItem;
  fitted?: string;
  need: number;
  have: number;
  short: 'out' | 'last';
  deliveryDays?: number;
}
export interface CautionAt {
  key: CautionKey;
  for: readonly TaskAt[];
}

const at = ({ machine, task }: DueRow): TaskAt => ({ machine, task });

/** Rows by what they need, each thing once, in the order of the round. */
function gather<T>(rows: readonly DueRow[], needs: (row: DueRow) => readonly T[]): Map<T, readonly TaskAt[]> {
  const found = new Map<T, TaskAt[]>();
  for (const row of rows)
    for (const need of needs(row)) {
      const tasks = found.get(need);
      if (tasks) tasks.push(at(row));
      else found.set(need, [at(row)]);
    }
  return found;
}

/** What went in last time goes in again: the words of the last swap, or of the machine's sheet. */
export function wantedSpare(
  shop: ShopRecord,
  { machine, rule }: DueRow,
): { item: Part; fitted?: string } | undefined {
  const record = shop.machines.get(machine);
  if (rule.spare === undefined || !record) return undefined;
  const said = record.parts[rule.spare]?.text;
  const fitted = said ?? (rule.spare === 'nozzle' ? describeNozzle(record.nozzle) : undefined);
  return { item: rule.spare, ...(fitted !== undefined && { fitted }) };
}

export function onShelf(
  shelf: readonly ShelfItem[],
  item: StockItem,
  fitted?: string,
): ShelfItem | undefined {
  return shelf[findToTake(shelf, item, fitted)];
}

const keyOf = ({ item, fitted }: { item: Part; fitted?: string }): string => `${item}\n${fitted ?? ''}`;

function spares(rows: readonly DueRow[], shop: ShopRecord): FetchItem[] {
  const wanted = new Map<string, { item: Part; fitted?: string; for: TaskAt[] }>();
  for (const row of rows) {
    const spare = wantedSpare(shop, row);
    if (!spare) continue;
    const known = wanted.get(keyOf(spare)) ?? { ...spare, for: [] };
    wanted.set(keyOf(spare), { ...known, for: [...known.for, at(row)] });
  }
  return [...wanted.values()].map((spare) => {
    const held = onShelf(shop.shelf, spare.item, spare.fitted);
    return { kind: 'part', need: spare.for.length, ...spare, ...(held && { have: held.count }) };
  });
}

export function fetchFor(rows: readonly DueRow[], shop: ShopRecord): FetchItem[] {
  const tools = gather(rows, ({ rule }) => rule.tools);
  const consumables = gather(rows, ({ rule }) => rule.consumables);
  return [
    ...[...tools].map(([tool, tasks]): FetchItem => ({ kind: 'tool', tool, for: tasks })),
    ...[...consumables].map(([item, tasks]): FetchItem => {
      const held = onShelf(shop.shelf, item);
      return { kind: 'consumable', item, ...(held && { have: held.count }), for: tasks };
    }),
    ...spares(rows, shop),
  ];
}

/** Only of what the shelf keeps: of the rest nobody knows. */
export function shortages(items: readonly FetchItem[], shelf: readonly ShelfItem[]): Shortage[] {
  return items.flatMap((item): Shortage[] => {
    if (item.kind === 'tool' || item.have === undefined) return [];
    const need = item.kind === 'part' ? item.need : 1;
    const fitted = item.kind === 'part' ? item.fitted : undefined;
    if (item.have > need || (item.have === need && item.kind === 'consumable')) return [];
    const deliveryDays = onShelf(shelf, item.item, fitted)?.deliveryDays;
    return [
      {
        item: item.item,
        ...(fitted !== undefined && { fitted }),
        need,
        have: item.have,
        short: item.have < need ? 'out' : 'last',
        ...(deliveryDays !== undefined && { deliveryDays }),
      },
    ];
  });
}

/** Cautions of a round: each hazard once, with the tasks in which it is met. */
export function cautionsFor(rows: readonly DueRow[]): CautionAt[] {
  const met = gather(rows, ({ rule }) => rule.cautions);
  return CAUTION_KEYS.flatMap((key) => {
    const tasks = met.get(key);
    return tasks ? [{ key, for: tasks }] : [];
  });
}

/** What to fetch before a round: spares, what gets used up, tools; and what the shelf lacks of it. */
import type { Consumable, Part, StockItem } from '../codes.ts';
import { hexKeys, isGuard } from '../how/tools.ts';
import { describeNozzle } from '../record/nozzle.ts';
import type { ShelfItem, ShopRecord } from '../record/record.ts';
import { findToTake } from '../record/shelf.ts';
import { gather } from './places.ts';
import type { Place, TaskAt } from './places.ts';
import type { DueRow } from './row.ts';

export type FetchItem =
  | { kind: 'part'; item: Part; fitted?: string; need: number; have?: number; for: readonly TaskAt[] }
  /** `have` is absent where the shelf does not keep it. */
  | { kind: 'consumable'; item: Consumable; have?: number; for: readonly TaskAt[] }
  | { kind: 'tool'; tool: string; for: readonly TaskAt[] };

/** What is short: `out` when the shelf has less than the round needs, `last` when the round takes the last. */
export interface Shortage {
  item: StockItem;
  fitted?: string;
  need: number;
  have: number;
  short: 'out' | 'last';
  deliveryDays?: number;
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

const NOTHING: readonly string[] = [];

function spares(places: readonly Place[], shop: ShopRecord): FetchItem[] {
  const wanted = new Map<string, { item: Part; fitted?: string }>();
  const keyOf = ({ row }: Place): readonly string[] => {
    const spare = wantedSpare(shop, row);
    if (!spare) return NOTHING;
    const key = `${spare.item}\n${spare.fitted ?? ''}`;
    wanted.set(key, spare);
    return [key];
  };
  return [...gather(places, keyOf)].flatMap(([key, tasks]): FetchItem[] => {
    const spare = wanted.get(key);
    if (!spare) return [];
    const held = onShelf(shop.shelf, spare.item, spare.fitted);
    return [{ kind: 'part', ...spare, need: tasks.length, ...(held && { have: held.count }), for: tasks }];
  });
}

const asTool = ([tool, tasks]: readonly [string, readonly TaskAt[]]): FetchItem => ({
  kind: 'tool',
  tool,
  for: tasks,
});

function consumables(places: readonly Place[], { shelf }: ShopRecord): FetchItem[] {
  return [...gather(places, ({ needs }) => needs.items)].map(([item, tasks]): FetchItem => {
    const held = onShelf(shelf, item);
    return { kind: 'consumable', item, ...(held && { have: held.count }), for: tasks };
  });
}

/** All sizes of hex keys are one thing to fetch. */
function hexKeyCase(places: readonly Place[]): FetchItem[] {
  const tasks = places.filter(({ needs }) => needs.hexKeys.length > 0);
  if (tasks.length === 0) return [];
  const sizes = new Set(tasks.flatMap(({ needs }) => needs.hexKeys));
  return [{ kind: 'tool', tool: hexKeys(sizes), for: tasks.map(({ at }) => at) }];
}

/** Spares, what the shelf counts, what it does not, tools: what can be missing and what guards comes first. */
export function fetchFor(places: readonly Place[], shop: ShopRecord): FetchItem[] {
  const tools = [...gather(places, ({ needs }) => needs.tools)];
  return [
    ...spares(places, shop),
    ...consumables(places, shop),
    ...[...gather(places, ({ needs }) => needs.others)].map(asTool),
    ...tools.filter(([name]) => isGuard(name)).map(asTool),
    ...hexKeyCase(places),
    ...tools.filter(([name]) => !isGuard(name)).map(asTool),
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

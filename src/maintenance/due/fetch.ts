/** What to fetch before a round: spares, what gets used up, tools; and what the shelf lacks of it. */
import type { Consumable, Part, StockItem } from '../codes.ts';
import { kitFor } from '../how/kit.ts';
import { SUPPLIES, hexKeys, isHexKey, shortName } from '../how/tools.ts';
import type { Tool } from '../how/tools.ts';
import { describeNozzle } from '../record/nozzle.ts';
import type { ShelfItem, ShopRecord } from '../record/record.ts';
import { findToTake } from '../record/shelf.ts';
import type { DueRow } from './row.ts';
import { buildOf, gather } from './taskAt.ts';
import type { TaskAt } from './taskAt.ts';

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

function spares(rows: readonly DueRow[], shop: ShopRecord): FetchItem[] {
  const wanted = new Map<string, { item: Part; fitted?: string }>();
  const keyOf = (row: DueRow): string[] => {
    const spare = wantedSpare(shop, row);
    if (!spare) return [];
    const key = `${spare.item}\n${spare.fitted ?? ''}`;
    wanted.set(key, spare);
    return [key];
  };
  return [...gather(rows, keyOf)].flatMap(([key, tasks]): FetchItem[] => {
    const spare = wanted.get(key);
    const held = spare && onShelf(shop.shelf, spare.item, spare.fitted);
    if (!spare) return [];
    return [{ kind: 'part', ...spare, need: tasks.length, ...(held && { have: held.count }), for: tasks }];
  });
}

/** Two kinds of grease are one code on the shelf; what no shelf counts is fetched by its name, like a tool. */
function supplies(rows: readonly DueRow[], shop: ShopRecord): FetchItem[] {
  const needs = (row: DueRow) => kitFor(row.task, buildOf(shop, row)).supplies.map((of) => SUPPLIES[of]);
  const counted = gather(rows, (row) => new Set(needs(row).flatMap(({ item }) => item ?? [])));
  const others = gather(rows, (row) => needs(row).flatMap(({ item, text }) => (item ? [] : [text])));
  return [
    ...[...counted].map(([item, tasks]): FetchItem => {
      const held = onShelf(shop.shelf, item);
      return { kind: 'consumable', item, ...(held && { have: held.count }), for: tasks };
    }),
    ...[...others].map(([tool, tasks]): FetchItem => ({ kind: 'tool', tool, for: tasks })),
  ];
}

/** All sizes of hex keys are one thing to fetch. */
function tools(rows: readonly DueRow[], shop: ShopRecord): FetchItem[] {
  const keys = new Set<Tool>();
  const nameOf = (tool: Tool): string => (isHexKey(tool) ? HEX_KEYS : shortName(tool));
  const names = (row: DueRow): Iterable<string> => {
    const needed = kitFor(row.task, buildOf(shop, row)).tools;
    for (const tool of needed) if (isHexKey(tool)) keys.add(tool);
    return new Set(needed.map(nameOf));
  };
  const found = gather(rows, names);
  return [...found].map(([name, tasks]) => ({
    kind: 'tool',
    tool: name === HEX_KEYS ? hexKeys(keys) : name,
    for: tasks,
  }));
}
const HEX_KEYS = 'hex keys';

export const fetchFor = (rows: readonly DueRow[], shop: ShopRecord): FetchItem[] => [
  ...spares(rows, shop),
  ...supplies(rows, shop),
  ...tools(rows, shop),
];

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

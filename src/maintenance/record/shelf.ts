/**
 * The shelf: what was counted, what came and went, and what swaps took. A count that is said wins over all
 * before it. It never goes below zero: a part that was taken although none was known to be there is a conflict.
 */
import type { StockItem } from '../codes.ts';
import type { EntryOf } from '../entry/entry.ts';
import { addConflict } from './conflict.ts';
import { byOrder } from './order.ts';
import type { Conflict, Draw, Position, ShelfItem } from './record.ts';
import { bagOf, bagWithin, sameBag } from './words.ts';

export type StockFact = EntryOf<'stockMoved'> | EntryOf<'stockCounted'>;

interface Shelf {
  shelf: readonly ShelfItem[];
  conflicts: readonly Conflict[];
}
type Step = { position: Position } & ({ fact: StockFact } | { draw: Draw });

/**
 * A count said in the message that tells of a swap is what was left after it ("fitted the last one"), in
 * whichever order the two were told.
 */
function byShelfOrder(a: Step, b: Step): number {
  const together = a.position.at - b.position.at || a.position.saidAt - b.position.saidAt;
  return together || Number(isCount(a)) - Number(isCount(b)) || byOrder(a.position, b.position);
}
const isCount = (step: Step): boolean => 'fact' in step && step.fact.kind === 'stockCounted';

export function foldShelf(facts: readonly StockFact[], draws: readonly Draw[]): Shelf {
  const steps: Step[] = [
    ...facts.map((fact) => ({ position: fact, fact })),
    ...draws.map((draw) => ({ position: draw.position, draw })),
  ];
  steps.sort(byShelfOrder);
  return steps.reduce(stepShelf, { shelf: [], conflicts: [] });
}

function stepShelf(shelf: Shelf, step: Step): Shelf {
  if ('draw' in step) return drawn(shelf, step.draw);
  return step.fact.kind === 'stockCounted' ? counted(shelf, step.fact) : moved(shelf, step.fact);
}

function counted({ shelf, conflicts }: Shelf, fact: EntryOf<'stockCounted'>): Shelf {
  const { part, count, fitted, deliveryDays, price } = fact;
  const stated = {
    count,
    ...(deliveryDays === undefined ? {} : { deliveryDays }),
    ...(price === undefined ? {} : { price }),
  };
  const index = findItem(shelf, part, fitted);
  const words = fitted === undefined ? {} : { fitted };
  if (index < 0) return { shelf: [...shelf, { part, ...words, ...stated }], conflicts };
  return { shelf: replaced(shelf, index, stated), conflicts };
}

function moved(before: Shelf, fact: EntryOf<'stockMoved'>): Shelf {
  const { part, change, fitted } = fact;
  if (change < 0) return taken(before, { part, fitted, count: -change, entry: fact, untracked: 'conflict' });
  const { shelf, conflicts } = before;
  const index = findItem(shelf, part, fitted);
  const words = fitted === undefined ? {} : { fitted };
  if (index < 0) return { shelf: [...shelf, { part, ...words, count: change }], conflicts };
  return { shelf: replaced(shelf, index, { count: (shelf[index]?.count ?? 0) + change }), conflicts };
}

/** A part that the shelf does not keep came from elsewhere: nothing to draw, nothing wrong. */
const drawn = (before: Shelf, draw: Draw): Shelf =>
  taken(before, {
    part: draw.part,
    fitted: draw.want,
    count: draw.count,
    entry: draw.position,
    untracked: 'fine',
  });

interface Taking {
  part: StockItem;
  fitted: string | undefined;
  count: number;
  entry: { id: string; at: number };
  untracked: 'fine' | 'conflict';
}

function taken({ shelf, conflicts }: Shelf, taking: Taking): Shelf {
  const index = findToTake(shelf, taking.part, taking.fitted);
  const had = shelf[index]?.count ?? 0;
  const left = index < 0 ? shelf : replaced(shelf, index, { count: Math.max(0, had - taking.count) });
  if (taking.count <= had || (index < 0 && taking.untracked === 'fine')) return { shelf: left, conflicts };
  const figures = { expected: had, logged: taking.count };
  const conflict: Conflict = { entry: taking.entry.id, at: taking.entry.at, what: 'shelf-empty', figures };
  return { shelf: left, conflicts: addConflict(conflicts, conflict) };
}

const replaced = (
  shelf: readonly ShelfItem[],
  index: number,
  change: Partial<ShelfItem>,
): readonly ShelfItem[] => shelf.map((item, i) => (i === index ? { ...item, ...change } : item));

/**
 * The item that these words mean; -1 when none does or several could. The same words in any order; else the
 * only one that says more or less of the same ("hardened 0.6" for "hardened steel 0.6").
 */
export function findItem(shelf: readonly ShelfItem[], part: StockItem, fitted: string | undefined): number {
  const wanted = bagOf(fitted ?? '');
  const of = shelf.map((item, index) => ({ index, part: item.part, bag: bagOf(item.fitted ?? '') }));
  const candidates = of.filter((item) => item.part === part);
  const same = candidates.find((item) => sameBag(item.bag, wanted));
  if (same) return same.index;
  const near =
    wanted.length === 0
      ? candidates
      : candidates.filter(({ bag }) => bag.length > 0 && (bagWithin(wanted, bag) || bagWithin(bag, wanted)));
  return near.length === 1 ? (near[0]?.index ?? -1) : -1;
}

/** Taking also accepts the item that is kept without further words ("nozzle: 7"). */
export function findToTake(shelf: readonly ShelfItem[], part: StockItem, fitted: string | undefined): number {
  const index = findItem(shelf, part, fitted);
  if (index >= 0) return index;
  return shelf.findIndex((item) => item.part === part && bagOf(item.fitted ?? '').length === 0);
}

/** What belongs to the workshop and no machine: the shelf, its notes, the last hand-over. */
import { keepLast } from './mark.ts';
import type { Draw, ShopRecord } from './record.ts';
import { foldShelf, type StockFact } from './shelf.ts';
import type { FloorFact } from './timeline.ts';

export type Floor = Omit<ShopRecord, 'machines' | 'room'>;

/** `facts` in order; `draws` in any. */
export function foldFloor(facts: readonly FloorFact[], draws: readonly Draw[]): Floor {
  const stock: StockFact[] = [];
  let notes: Floor['notes'] = [];
  let handedOver: Floor['handedOver'];
  let tookOver: Floor['tookOver'];
  for (const fact of facts) {
    const { at, by } = fact;
    if (fact.kind === 'noted') notes = keepLast(notes, { text: fact.text, at, by });
    else if (fact.kind === 'handedOver')
      handedOver = { at, by, ...(fact.to === undefined ? {} : { to: fact.to }) };
    else if (fact.kind === 'tookOver')
      tookOver = { at, by, ...(fact.from === undefined ? {} : { from: fact.from }) };
    else stock.push(fact);
  }
  return {
    ...foldShelf(stock, draws),
    notes,
    ...(handedOver ? { handedOver } : {}),
    ...(tookOver ? { tookOver } : {}),
  };
}

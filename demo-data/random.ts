/** Chance that comes out the same every time: the demo of one day is one demo. */
export type Chance = () => number;

/** mulberry32, a small public-domain generator by Tommy Ettinger: 32 bits of state, numbers in [0, 1). */
function mulberry32(seed: number): Chance {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** A stream of its own for each purpose, so that a change to one leaves the others as they were (FNV-1a). */
export function chanceFor(purpose: string): Chance {
  let hash = 0x811c9dc5;
  for (let index = 0; index < purpose.length; index += 1)
    hash = Math.imul(hash ^ purpose.charCodeAt(index), 0x01000193);
  return mulberry32(hash >>> 0);
}

/** One of several, each as often as its weight says. */
export function pick<Item>(chance: Chance, weighted: readonly (readonly [Item, number])[]): Item {
  const total = weighted.reduce((sum, [, weight]) => sum + weight, 0);
  let left = chance() * total;
  for (const [item, weight] of weighted) {
    left -= weight;
    if (left < 0) return item;
  }
  const last = weighted.at(-1);
  if (!last) throw new Error('nothing to pick from');
  return last[0];
}

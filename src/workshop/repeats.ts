/** What the cross-checks of a workshop file find, and the commonest of them: the same thing twice. */
import type { Path } from './document.ts';

export interface Clash {
  path: Path;
  text: string;
}

/** The second of two equal things, where `key` says what makes them equal. */
export function repeats<Item>(
  items: readonly Item[],
  key: (item: Item) => string,
  say: (item: Item, index: number) => Clash,
): Clash[] {
  const seen = new Set<string>();
  return items.flatMap((item, index) => {
    const equal = key(item);
    if (seen.has(equal)) return [say(item, index)];
    seen.add(equal);
    return [];
  });
}

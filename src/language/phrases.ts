/**
 * Phrases of a table of their own, looked for across items whatever the main layer made of their words:
 * a second reading of the same row that uses nothing up.
 */
import type { Item } from './item.ts';
import { tokensOf } from './lexicon.ts';

/** A phrase of class `code` over the items from `from` up to, not including, `to`. */
export interface Phrase<C extends string> {
  readonly code: C;
  readonly from: number;
  readonly to: number;
}
interface Node<C> {
  readonly next: Map<string, Node<C>>;
  readonly codes: C[];
}

const empty = <C>(): Node<C> => ({ next: new Map(), codes: [] });

function plant<C extends string>(table: Readonly<Record<C, string>>): Node<C> {
  const root = empty<C>();
  for (const code of Object.keys(table) as C[])
    for (const phrase of table[code].split(',')) {
      let node = root;
      for (const word of tokensOf(phrase.trim())) {
        const next = node.next.get(word) ?? empty<C>();
        node.next.set(word, next);
        node = next;
      }
      if (node !== root && !node.codes.includes(code)) node.codes.push(code);
    }
  return root;
}

/** Reads the longest phrases of each class that start at a word; the table is planted at the first use. */
export function phraseReader<C extends string>(
  table: Readonly<Record<C, string>>,
): (items: readonly Item[]) => readonly Phrase<C>[] {
  let root: Node<C> | undefined;
  return (items) => {
    root ??= plant(table);
    const words = items.flatMap((item, at) => item.text.split(' ').map((word) => ({ word, at })));
    return words.flatMap((_, start) => phrasesAt(root ?? empty<C>(), words, start));
  };
}

function phrasesAt<C extends string>(
  root: Node<C>,
  words: readonly { word: string; at: number }[],
  start: number,
): Phrase<C>[] {
  const longest = new Map<C, number>();
  let node: Node<C> | undefined = root;
  for (let i = start; i < words.length; i += 1) {
    node = node.next.get(words[i]?.word ?? '');
    if (!node) break;
    for (const code of node.codes) longest.set(code, i);
  }
  const from = words[start]?.at ?? 0;
  return [...longest].map(([code, last]) => ({ code, from, to: (words[last]?.at ?? 0) + 1 }));
}

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

/** The single words of a row of items, and the item that each stands in. */
interface Words {
  readonly text: readonly string[];
  readonly at: readonly number[];
}
/** A dozen tables are read over the same row, which never changes. */
const known = new WeakMap<readonly Item[], Words>();
function wordsOf(items: readonly Item[]): Words {
  const before = known.get(items);
  if (before) return before;
  const text: string[] = [];
  const at: number[] = [];
  for (let i = 0; i < items.length; i += 1) {
    const said = items[i]?.text ?? '';
    if (!said.includes(' ')) {
      text.push(said);
      at.push(i);
    } else
      for (const word of said.split(' ')) {
        text.push(word);
        at.push(i);
      }
  }
  const words = { text, at };
  known.set(items, words);
  return words;
}

/** Reads the longest phrases of each class that start at a word; the table is planted at the first use. */
export function phraseReader<C extends string>(
  table: Readonly<Record<C, string>>,
): (items: readonly Item[]) => readonly Phrase<C>[] {
  let root: Node<C> | undefined;
  return (items) => {
    root ??= plant(table);
    const words = wordsOf(items);
    const found: Phrase<C>[] = [];
    for (let start = 0; start < words.text.length; start += 1) {
      // Nearly every word opens no phrase: that look-up is all that it costs.
      const first = root.next.get(words.text[start] ?? '');
      if (first) addPhrases(first, words, start, found);
    }
    return found;
  };
}

function addPhrases<C extends string>(first: Node<C>, words: Words, start: number, found: Phrase<C>[]): void {
  const begins = found.length;
  let node: Node<C> | undefined = first;
  for (let i = start; node; i += 1) {
    for (const code of node.codes) {
      const phrase = { code, from: words.at[start] ?? 0, to: (words.at[i] ?? 0) + 1 };
      const shorter = found.findIndex((one, nth) => nth >= begins && one.code === code);
      if (shorter < 0) found.push(phrase);
      else found[shorter] = phrase;
    }
    if (i + 1 >= words.text.length) return;
    node = node.next.get(words.text[i + 1] ?? '');
  }
}

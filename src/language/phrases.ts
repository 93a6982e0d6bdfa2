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

/** A row of items as single words, with the item that each stands in and, by table, the places where a phrase may open. */
interface Row {
  readonly items: readonly Item[];
  readonly text: readonly string[];
  readonly at: readonly number[];
  readonly openings: ReadonlyMap<number, readonly number[]>;
}

/**
 * Every table by its place here, and which of them have a phrase that opens with a word. A row is looked through
 * once for all the tables, so that a table none of whose first words occurs in it costs nothing.
 */
const tables: Readonly<Record<string, string>>[] = [];
let openers: Map<string, number[]> | undefined;
function openersOf(): ReadonlyMap<string, readonly number[]> {
  if (openers) return openers;
  openers = new Map();
  for (const [nth, table] of tables.entries())
    for (const row of Object.values(table))
      for (const phrase of row.split(',')) {
        const [word] = tokensOf(phrase.trim());
        if (word === undefined) continue;
        const those = openers.get(word);
        if (those === undefined) openers.set(word, [nth]);
        else if (!those.includes(nth)) those.push(nth);
      }
  return openers;
}

function layOut(items: readonly Item[]): Row {
  const byWord = openersOf();
  const text: string[] = [];
  const at: number[] = [];
  const openings = new Map<number, number[]>();
  const put = (word: string, i: number): void => {
    for (const table of byWord.get(word) ?? []) {
      const those = openings.get(table);
      if (those === undefined) openings.set(table, [text.length]);
      else those.push(text.length);
    }
    text.push(word);
    at.push(i);
  };
  for (let i = 0; i < items.length; i += 1) {
    const said = items[i]?.text ?? '';
    if (!said.includes(' ')) put(said, i);
    else for (const word of said.split(' ')) put(word, i);
  }
  return { items, text, at, openings };
}

/** The rows looked at last: several tables are read over one, which never changes. */
const LAST_ROWS = 8;
const rows: Row[] = [];
let oldest = 0;
function rowOf(items: readonly Item[]): Row {
  for (const row of rows) if (row.items === items) return row;
  const row = layOut(items);
  rows[oldest] = row;
  oldest = (oldest + 1) % LAST_ROWS;
  return row;
}

/** Reads the longest phrases of each class that start at a word; the table is planted at the first use. */
export function phraseReader<C extends string>(
  table: Readonly<Record<C, string>>,
): (items: readonly Item[]) => readonly Phrase<C>[] {
  const nth = tables.push(table) - 1;
  openers = undefined;
  rows.length = 0;
  let root: Node<C> | undefined;
  return (items) => {
    const row = rowOf(items);
    const starts = row.openings.get(nth);
    if (starts === undefined) return [];
    root ??= plant(table);
    const found: Phrase<C>[] = [];
    for (const start of starts) {
      const first = root.next.get(row.text[start] ?? '');
      if (first) addPhrases(first, row, start, found);
    }
    return found;
  };
}

function addPhrases<C extends string>(first: Node<C>, words: Row, start: number, found: Phrase<C>[]): void {
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

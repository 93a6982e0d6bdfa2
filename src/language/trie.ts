/** Longest match over words. Built once, then only read. */
import { asSense, type Sense } from './item.ts';

export interface TrieNode {
  readonly next: Map<string, TrieNode>;
  readonly senses: Sense[];
}

export const emptyNode = (): TrieNode => ({ next: new Map(), senses: [] });

/** By what it says, not by how much: a figure, or how sure it is, makes no other sense. */
interface Named {
  readonly tag: string;
  readonly code?: unknown;
  readonly form?: unknown;
  readonly n?: unknown;
}
const alike = (a: Named, b: Named): boolean =>
  a.tag === b.tag && a.code === b.code && a.form === b.form && a.n === b.n;

export function insert(root: TrieNode, words: readonly string[], meaning: Sense): void {
  let node = root;
  for (const word of words) {
    let next = node.next.get(word);
    if (!next) {
      next = emptyNode();
      node.next.set(word, next);
    }
    node = next;
  }
  const own = asSense(meaning);
  if (node !== root && !node.senses.some((known) => alike(known, own))) node.senses.push(own);
}

export interface Match {
  /** How many words were read. */
  readonly length: number;
  readonly senses: readonly Sense[];
}

/** The longest entry that starts at `at`. */
export function longest(root: TrieNode, words: readonly { text: string }[], at: number): Match | undefined {
  return longestFrom(root.next.get(words[at]?.text ?? ''), words, at);
}
/** The same, from the node of the first word on. */
export function longestFrom(
  first: TrieNode | undefined,
  words: readonly { text: string }[],
  at: number,
): Match | undefined {
  if (first === undefined || at >= words.length) return undefined;
  let node: TrieNode | undefined = first;
  let length = 0;
  let senses: readonly Sense[] = [];
  for (let i = at; node; i += 1) {
    if (node.senses.length > 0) [length, senses] = [i - at + 1, node.senses];
    node = i + 1 < words.length ? node.next.get(words[i + 1]?.text ?? '') : undefined;
  }
  return length === 0 ? undefined : { length, senses };
}

/** Every entry that starts at `at`, whose first word's node is given: short and long, each with how many words it takes. */
export function matchesFrom(first: TrieNode, words: readonly { text: string }[], at: number): Match[] {
  let node: TrieNode | undefined = first;
  const found: Match[] = [];
  for (let i = at; node; i += 1) {
    if (node.senses.length > 0) found.push({ length: i - at + 1, senses: node.senses });
    node = i + 1 < words.length ? node.next.get(words[i + 1]?.text ?? '') : undefined;
  }
  return found;
}

/** The senses of those entries. */
export const everyMatch = (first: TrieNode, words: readonly { text: string }[], at: number): Sense[] =>
  matchesFrom(first, words, at).flatMap(({ senses }) => senses);

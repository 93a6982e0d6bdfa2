/** Longest match over words. Built once, then only read. */
import type { Sense } from './item.ts';

export interface TrieNode {
  readonly next: Map<string, TrieNode>;
  readonly senses: Sense[];
}

export const emptyNode = (): TrieNode => ({ next: new Map(), senses: [] });

const alike = (a: Sense, b: Sense): boolean =>
  a.tag === b.tag &&
  ('code' in a ? 'code' in b && a.code === b.code : true) &&
  ('form' in a ? 'form' in b && a.form === b.form : true) &&
  ('n' in a ? 'n' in b && a.n === b.n : true);

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
  if (node !== root && !node.senses.some((known) => alike(known, meaning))) node.senses.push(meaning);
}

export interface Match {
  /** How many words were read. */
  readonly length: number;
  readonly senses: readonly Sense[];
}

/** The longest entry that starts at `at`. */
export function longest(root: TrieNode, words: readonly { text: string }[], at: number): Match | undefined {
  let node: TrieNode | undefined = root;
  let best: Match | undefined;
  for (let i = at; i < words.length; i += 1) {
    node = node.next.get(words[i]?.text ?? '');
    if (!node) break;
    if (node.senses.length > 0) best = { length: i - at + 1, senses: node.senses };
  }
  return best;
}

/** Every entry that starts at `at`, short and long, each with how many words it takes. */
export function matchesAt(root: TrieNode, words: readonly { text: string }[], at: number): Match[] {
  let node: TrieNode | undefined = root;
  const found: Match[] = [];
  for (let i = at; i < words.length; i += 1) {
    node = node.next.get(words[i]?.text ?? '');
    if (!node) break;
    if (node.senses.length > 0) found.push({ length: i - at + 1, senses: node.senses });
  }
  return found;
}

/** The senses of every entry that starts at `at`, short and long. */
export function everyMatch(root: TrieNode, words: readonly { text: string }[], at: number): Sense[] {
  const found: Sense[] = [];
  let node: TrieNode | undefined = root;
  for (let i = at; i < words.length; i += 1) {
    node = node.next.get(words[i]?.text ?? '');
    if (!node) break;
    found.push(...node.senses);
  }
  return found;
}

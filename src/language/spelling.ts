/**
 * Stage 2b. Misspelt workshop words: optimal string alignment (Damerau) distance 1 from four letters, 2 from
 * eight. Never a word of a table or of common English, never from one machine's name to another. Candidates
 * are found by deleting letters on both sides, so a look-up costs the word's length, not the lexicon's.
 */
import type { Token } from './tokens.ts';

const LONGEST = 24;

export function distance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1];
      let best = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + (same ? 0 : 1));
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) best = Math.min(best, (beforeLast[j - 2] ?? 0) + 1);
      row.push(best);
    }
    beforeLast = last;
    last = row;
  }
  return last[b.length] ?? 0;
}

const reach = (word: string): number => (word.length < 4 ? 0 : word.length < 8 ? 1 : 2);

/** The word with up to `depth` letters left out; letters go from left to right, so that each choice is made once. */
function deletions(word: string, depth: number, from = 0, into: Set<string> = new Set()): Set<string> {
  into.add(word);
  if (depth > 0)
    for (let i = from; i < word.length; i += 1)
      deletions(word.slice(0, i) + word.slice(i + 1), depth - 1, i, into);
  return into;
}

/** Words that may be meant, by what is left of each when letters are left out. */
export interface SpellingIndex {
  /** 0: an entry of its own; 1: a word that only stands inside a longer entry. */
  readonly targets: ReadonlyMap<string, number>;
  /** A lone word is held bare: most cuts have one, and an array each would double the memory. */
  readonly byCut: ReadonlyMap<string, string | readonly string[]>;
}

export function indexSpelling(targets: ReadonlyMap<string, number>): SpellingIndex {
  const byCut = new Map<string, string | string[]>();
  for (const target of targets.keys()) {
    if (target.length < 4 || target.length > LONGEST || !/^\p{L}+$/u.test(target)) continue;
    for (const cut of deletions(target, reach(target))) {
      const known = byCut.get(cut);
      if (known === undefined) byCut.set(cut, target);
      else if (typeof known === 'string') byCut.set(cut, [known, target]);
      else known.push(target);
    }
  }
  return { targets, byCut };
}

export type Spelling = { readonly meant: string; readonly rivals: readonly string[] } | undefined;
/** The word meant; undefined when the word stands as it is. `rivals`: others that are as near. */
export type Speller = (word: string) => Spelling;

function candidates(word: string, indexes: readonly SpellingIndex[]): Map<string, number> {
  const found = new Map<string, number>();
  for (const cut of deletions(word, reach(word)))
    for (const { byCut } of indexes) {
      const targets = byCut.get(cut);
      if (targets === undefined) continue;
      for (const target of typeof targets === 'string' ? [targets] : targets) {
        if (found.has(target)) continue;
        const far = distance(word, target);
        if (far <= Math.min(reach(word), reach(target))) found.set(target, far);
      }
    }
  return found;
}

/** `indexes`: that of the language, shared by every workshop, and that of one workshop's names. */
export function createSpeller(indexes: readonly SpellingIndex[], plain: (word: string) => boolean): Speller {
  const weightOf = (target: string): number =>
    Math.min(...indexes.map(({ targets }) => targets.get(target) ?? 1));
  return (spoken) => {
    const word = unstretched(spoken);
    if (word !== spoken && plain(word)) return { meant: word, rivals: [] };
    if (dropsG(word) && !plain(word) && plain(`${word}g`)) return { meant: `${word}g`, rivals: [] };
    if (word.length < 4 || word.length > LONGEST || plain(word) || !/^\p{L}+$/u.test(word)) return undefined;
    const found = candidates(word, indexes);
    if (found.size === 0) return undefined;
    // The first letter is the one that people get right; a nearer first letter wins among equals.
    const rank = (target: string): number =>
      (undoubled(target) === undoubled(word) ? -0.4 : 0) +
      (target.at(-1) === word.at(-1) ? 0 : 0.1) +
      (found.get(target) ?? 9) +
      (target[0] === word[0] ? 0 : 0.5) +
      weightOf(target) * 0.6 +
      (target.length === word.length && letters(target) === letters(word) ? -0.3 : 0);
    const [meant, ...rest] = [...found.keys()].sort((a, b) => rank(a) - rank(b) || a.localeCompare(b));
    if (meant === undefined || (meant[0] !== word[0] && word.length < 6 && !swappedStart(word, meant)))
      return undefined;
    return { meant, rivals: rest.filter((other) => rank(other) === rank(meant)) };
  };
}

/** "runnin", "takin": as it is spoken. */
const dropsG = (word: string): boolean => word.length > 4 && word.endsWith('in');
/** "whyyy", "sooo": a letter held for its sound. */
const unstretched = (word: string): string =>
  mayStretch(word) ? word.replace(/(\p{L})\1{2,}/gu, '$1') : word;
/** Three alike in a row, or letters beyond ASCII, which the pattern must look at. */
function mayStretch(word: string): boolean {
  for (let i = 0; i < word.length; i += 1) {
    const code = word.charCodeAt(i);
    if (code > 0x7f || (code === word.charCodeAt(i + 1) && code === word.charCodeAt(i + 2))) return true;
  }
  return false;
}

/** The same letters in another order: fingers that were too fast. */
const letters = (word: string): string => Array.from(word).sort().join('');

/** Letters doubled or not is the commonest slip. */
const undoubled = (word: string): string => word.replace(/(.)\1/gu, '$1');
const swappedStart = (word: string, meant: string): boolean => word[0] === meant[1] && word[1] === meant[0];

export interface Corrected extends Token {
  readonly said?: string;
}

/** `isKnown`: stands in a table; nearly every word does, and none of these is looked at further. */
export function correct(
  tokens: readonly Token[],
  speller: Speller,
  isKnown: (word: string) => boolean,
): Corrected[] {
  const memo = new Map<string, string | undefined>();
  return tokens.map((token) => {
    if (token.kind !== 'word' || (isKnown(token.text) && !mayStretch(token.text))) return token;
    if (!memo.has(token.text)) memo.set(token.text, speller(token.text)?.meant);
    const meant = memo.get(token.text);
    return meant === undefined ? token : { ...token, text: meant, said: token.text };
  });
}

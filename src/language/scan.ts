/** Stages 1 to 5 in a row: from what was sent to a row of items. */
import type { TrailStep } from './act.ts';
import { settleAttributes, withBareTroubles } from './attributes.ts';
import { isCommonWord, isPlainEnglish } from './english/words/common.ts';
import { isTree } from './english/words/trees.ts';
import { asSense, type Item, makeItem, type Sense, withSenses } from './item.ts';
import { type Heads, lexicon } from './lexicon.ts';
import { nameBook, readNumbers, settleNames, type NameBook } from './names.ts';
import { normalise } from './normalise.ts';
import { withPossessives } from './possessives.ts';
import {
  correct,
  createSpeller,
  type Corrected,
  indexSpelling,
  type Speller,
  type SpellingIndex,
} from './spelling.ts';
import { tokenise } from './tokens.ts';
import { everyMatch, longest, longestFrom, matchesFrom, type Match } from './trie.ts';
import { readDates } from './dates.ts';
import { joinNumbers, withMentions, withoutSounds } from './spoken.ts';
import { readValues } from './values.ts';
import type { KnownNames, LocalDate } from './act.ts';

export interface Scanner {
  readonly book: NameBook;
  scan(text: string, today: LocalDate): Scan;
}
export interface Scan {
  readonly items: readonly Item[];
  /** The same, with the words of orders marked: only orders are read from them. */
  readonly orderItems: readonly Item[];
  readonly corrections: readonly { said: string; meant: string }[];
  readonly trail: readonly TrailStep[];
}

const OWN_TAGS = new Set([
  'part',
  'thing',
  'verb',
  'complaint',
  'symptom',
  'material',
  'calendar',
  'unit',
  'spec',
]);
/** Whole entries of one word are meant before words that only stand inside a longer entry. */
function ownTargets(): Map<string, number> {
  const found = new Map<string, number>();
  const { content, words } = lexicon();
  for (const word of content) if (word.length >= 4 && !isCommonWord(word)) found.set(word, 1);
  for (const [word, node] of words.next) if (node.senses.some((s) => OWN_TAGS.has(s.tag))) found.set(word, 0);
  return found;
}

/** Of the language alone, so the same for every workshop: built when the first reader is made, then kept. */
let ownIndex: SpellingIndex | undefined;

export function createScanner(names: KnownNames): Scanner {
  const book = nameBook(names, (word) => isCommonWord(word) && !isTree(word));
  ownIndex ??= indexSpelling(ownTargets());
  const namesIndex = indexSpelling(new Map([...book.words].map((word) => [word, 0])));
  const { known } = lexicon();
  const plain = (word: string): boolean =>
    known.has(word) ||
    isUndone(word) ||
    book.words.has(word) ||
    book.people.has(word) ||
    isPlainEnglish(word);
  const speller = createSpeller([ownIndex, namesIndex], plain);
  return { book, scan: (text, today) => scan(text, today, book, speller) };
}

const isKnown = (word: string): boolean => lexicon().known.has(word);

function scan(text: string, today: LocalDate, book: NameBook, speller: Speller): Scan {
  const tokens = withPossessives(correct(tokenise(normalise(text)), speller, isKnown), book);
  const heads = headsOf(tokens);
  const items = settleAttributes(
    readDates(
      readValues(
        settleNames(
          readNumbers(
            joinNumbers(withMentions(withoutSounds(withBareTroubles(lookUp(tokens, heads, book))))),
            book,
          ),
          book,
        ),
      ),
      today,
    ),
  );
  const corrections: { said: string; meant: string }[] = [];
  const trail: TrailStep[] = [];
  for (const { said, text: meant, from, to } of tokens) {
    if (said === undefined) continue;
    corrections.push({ said, meant });
    trail.push({ rule: `spelling: ${said} -> ${meant}`, span: [from, to] });
  }
  return { items, orderItems: withOrders(items, tokens, heads), corrections, trail };
}

const headsOf = (tokens: readonly Corrected[]): (Heads | undefined)[] => {
  const { heads } = lexicon();
  return tokens.map((token) => heads.get(token.text));
};

/** Words of orders read across whatever else the words were taken for. */
function withOrders(
  items: readonly Item[],
  tokens: readonly Corrected[],
  heads: readonly (Heads | undefined)[],
): readonly Item[] {
  const marks: { from: number; sense: Sense }[] = [];
  for (let at = 0; at < tokens.length; at += 1) {
    const [head, token] = [heads[at]?.orders, tokens[at]];
    if (head === undefined || token === undefined) continue;
    for (const { length, senses } of matchesFrom(head, tokens, at))
      for (const s of senses)
        if (s.tag === 'order')
          marks.push({
            from: token.from,
            sense: asSense({ tag: 'order', code: s.code, until: tokens[at + length - 1]?.to ?? token.to }),
          });
  }
  if (marks.length === 0) return items;
  return items.map((item) => {
    const own = marks.filter(({ from }) => item.from <= from && from < item.to).map(({ sense }) => sense);
    return own.length === 0 ? item : withSenses(item, ...item.senses, ...own);
  });
}

const NOT = asSense({ tag: 'fn', code: 'not' });
const NONE: readonly Sense[] = [];
function lookUp(tokens: readonly Corrected[], heads: readonly (Heads | undefined)[], book: NameBook): Item[] {
  const items: Item[] = [];
  const starts: number[] = [];
  for (let at = 0; at < tokens.length;) {
    const name = longest(book.trie, tokens, at);
    const word = unlessLonger(tokens, at, longestFrom(heads[at]?.words, tokens, at));
    const length = Math.max(1, name?.length ?? 0, word?.length ?? 0);
    const named = name?.length === length ? name.senses : NONE;
    const worded = word?.length === length ? word.senses : NONE;
    const both = named.length === 0 ? worded : worded.length === 0 ? named : [...named, ...worded];
    const senses = both.length === 0 && isUndone(tokens[at]?.text ?? '') ? [NOT] : both;
    starts.push(at);
    items.push(itemOf(tokens, at, length, senses));
    at += length;
  }
  overlay(
    items,
    starts,
    tokens,
    heads,
    'ordinary',
    (s) => s.tag === 'before-person' || s.tag === 'before-stuff',
  );
  addCues(items, starts, tokens, heads);
  overlay(items, starts, tokens, heads, 'reasons', () => false);
  return items;
}

/** "the first" gives way to "first layer": small words never break a name of the trade that starts within them. */
function unlessLonger(tokens: readonly Corrected[], at: number, word: Match | undefined): Match | undefined {
  if (word && word.length > 1 && endsInCount(tokens, at + word.length))
    return longest(lexicon().words, tokens.slice(at, at + word.length - 1), 0);
  if (!word || word.length < 2 || word.senses.some((s) => s.tag !== 'fn')) return word;
  const last = at + word.length - 1;
  const rival = longest(lexicon().words, tokens, last);
  return rival && rival.length > 1 && rival.senses.some((s) => s.tag === 'part' || s.tag === 'thing')
    ? longest(lexicon().words, tokens.slice(at, last), 0)
    : word;
}

/** "in two weeks": the number counts what follows, and nothing is in two. */
function endsInCount(tokens: readonly Corrected[], end: number): boolean {
  const has = (at: number, tag: Sense['tag']): boolean =>
    lexicon()
      .words.next.get(tokens[at]?.text ?? '')
      ?.senses.some((s) => s.tag === tag) ?? false;
  return (
    has(end - 1, 'number') &&
    /^(?:hours?|hrs?|days?|weeks?|months?|minutes?|mins?)$/u.test(tokens[end]?.text ?? '') &&
    tokens[end - 2]?.text === 'in'
  );
}

/** "ungreased", "unoiled": a deed that was not done. */
function isUndone(word: string): boolean {
  if (!word.startsWith('un') || !/^un[a-z]+ed$/u.test(word)) return false;
  const senses = lexicon().words.next.get(word.slice(2))?.senses ?? [];
  return senses.some((s) => s.tag === 'verb' && s.form === 'past');
}

function itemOf(tokens: readonly Corrected[], at: number, length: number, senses: readonly Sense[]): Item {
  const first = tokens[at];
  if (first && length === 1) return makeItem(first.text, first.from, first.to, senses, first.gap, first.said);
  const span = tokens.slice(at, at + length);
  const said = span.find((token) => token.said !== undefined)?.said;
  return makeItem(
    span.map((token) => token.text).join(' '),
    first?.from ?? 0,
    span.at(-1)?.to ?? 0,
    senses,
    first?.gap ?? true,
    said,
  );
}

/** A cue holds within a longer one too: "how many" in "how many hours". */
function addCues(
  items: Item[],
  starts: readonly number[],
  tokens: readonly Corrected[],
  heads: readonly (Heads | undefined)[],
): void {
  let itemAt: Int32Array | undefined;
  for (let at = 0; at < tokens.length; at += 1) {
    const head = heads[at]?.cues;
    if (head === undefined) continue;
    const found = everyMatch(head, tokens, at);
    itemAt ??= itemsByToken(starts, tokens.length);
    const i = itemAt[at] ?? 0;
    const item = items[i];
    if (item && found.length > 0) items[i] = withSenses(item, ...item.senses, ...found);
  }
}
function itemsByToken(starts: readonly number[], length: number): Int32Array {
  const itemAt = new Int32Array(length);
  starts.forEach((start, i) => itemAt.fill(i, start, starts[i + 1] ?? length));
  return itemAt;
}

/** Adds the overlay's senses to the item where the phrase begins, or ends. */
function overlay(
  items: Item[],
  starts: readonly number[],
  tokens: readonly Corrected[],
  heads: readonly (Heads | undefined)[],
  layer: keyof Heads,
  atEnd: (s: Sense) => boolean,
): void {
  let itemAt: Int32Array | undefined;
  for (let at = 0; at < tokens.length; at += 1) {
    const hit = longestFrom(heads[at]?.[layer], tokens, at);
    if (!hit) continue;
    itemAt ??= itemsByToken(starts, tokens.length);
    for (const meaning of hit.senses) {
      const i = itemAt[atEnd(meaning) ? at + hit.length - 1 : at] ?? 0;
      const item = items[i];
      // A word inside a longer one marks no timber or person: "too close to the bed" holds no close.
      if (item && (atEnd(meaning) || starts[i] === at)) items[i] = withSenses(item, ...item.senses, meaning);
    }
  }
}

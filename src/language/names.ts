/**
 * Machines' names. They come from the workshop alone, and most of them are words of their own: a tree, a month,
 * a fastener. Here each is settled: the machine, or the ordinary word. Capitals prove nothing in a chat.
 */
import { foldName } from '../maintenance/machine.ts';
import type { KnownNames } from './act.ts';
import {
  asSense,
  hasTag,
  isFn,
  type Item,
  joinedItem,
  reworded,
  sense,
  type Sense,
  withSenses,
} from './item.ts';
import { lexicon, tokensOf } from './lexicon.ts';
import { opensWithDigit } from './tokens.ts';
import { emptyNode, insert, longest, type TrieNode } from './trie.ts';

export interface NameBook {
  readonly trie: TrieNode;
  /** Names that are also ordinary words of the lexicon, or very common English. */
  readonly shared: ReadonlySet<string>;
  /** Numbers that stand for a machine: "2" for "#2". */
  readonly numbers: ReadonlyMap<string, string>;
  readonly machines: readonly string[];
  readonly people: ReadonlySet<string>;
  readonly words: ReadonlySet<string>;
}

export function nameBook(names: KnownNames, common: (word: string) => boolean): NameBook {
  const trie = emptyNode();
  const shared = new Set<string>();
  const numbers = new Map<string, string>();
  const words = new Set<string>();
  const people = new Set(names.people.map(foldName));
  for (const { name, aliases } of names.machines) {
    const code = foldName(name);
    for (const called of [name, ...aliases]) {
      const tokens = tokensOf(foldName(called));
      insert(trie, tokens, { tag: 'machine', code });
      tokens.forEach((token) => words.add(token));
      const known = longest(lexicon().words, tokens.map((text) => ({ text })), 0); // prettier-ignore
      if (known?.length === tokens.length || (tokens.length === 1 && common(tokens[0] ?? '')))
        shared.add(tokens.join(' '));
      const number = /^#\s*(\d+)$/u.exec(foldName(called))?.[1];
      if (number !== undefined) numbers.set(number, code);
    }
  }
  insert(trie, ['room'], { tag: 'machine', code: 'room' });
  shared.add('room');
  for (const person of people) insert(trie, tokensOf(person), { tag: 'person', code: person });
  return { trie, shared, numbers, machines: names.machines.map(({ name }) => foldName(name)), people, words };
}

const STRANGER = asSense({ tag: 'stranger' });
const OWNS = [asSense({ tag: 'fn', code: 'possessive' }), asSense({ tag: 'fn', code: 'be' })];
const ARTICLE = asSense({ tag: 'fn', code: 'article' });
const machineSense = (code: string): Sense => asSense({ tag: 'machine', code });

const digits = (item: Item | undefined): string | undefined =>
  item && opensWithDigit(item.text) && /^\d{1,3}$/u.test(item.text)
    ? item.text
    : NUMERALS.get(item?.text ?? '');
const NUMERALS: ReadonlyMap<string, string> = new Map(
  Object.entries({
    one: '1',
    two: '2',
    three: '3',
    four: '4',
    five: '5',
    six: '6',
    seven: '7',
    eight: '8',
    nine: '9',
    ten: '10',
    eleven: '11',
    twelve: '12',
  }),
);

/** "#2", "no 2", "printer two", "number 2", "on 2", and lists "3 and 4", "#1 to #4". */
export function readNumbers(items: readonly Item[], book: NameBook): Item[] {
  const out: Item[] = [];
  for (let at = 0; at < items.length;) {
    const item = items[at];
    if (!item) break;
    const owner = ownerAt(items, at, book);
    if (owner) {
      out.push(...owner);
      at += 2;
      continue;
    }
    const lead = leadOf(items, at, book);
    const number = lead === undefined ? undefined : digits(items[at + lead]);
    if (lead === undefined || number === undefined || unitFollows(items, at + lead)) {
      out.push(item);
      at += 1;
      continue;
    }
    const code = book.numbers.get(String(Number(number)));
    out.push(joinedItem(items, at, at + lead + 1, [code === undefined ? STRANGER : machineSense(code)]));
    at += lead + 1;
  }
  return out;
}

/** "gave 8s plate a wipe", "2s back in business": a number that owns a part, or is. */
function ownerAt(items: readonly Item[], at: number, book: NameBook): Item[] | undefined {
  const [item, s, next] = [items[at], items[at + 1], items[at + 2]];
  if (!item || s?.text !== 's' || s.gap || !/^\d{1,2}$/u.test(item.text)) return undefined;
  const code = book.numbers.get(String(Number(item.text)));
  const owns = hasTag(next, 'part', 'thing') || (at === 0 && hasTag(next, 'state', 'complaint', 'symptom'));
  return code !== undefined && owns
    ? [withSenses(item, machineSense(code)), reworded(s, "'s", OWNS)]
    : undefined;
}

const MOST_PRINTERS = 99;
/** How many items stand before the figure; undefined where no machine's number is meant. */
function leadOf(items: readonly Item[], at: number, book: NameBook): number | undefined {
  const item = items[at];
  if (item?.text === '#')
    return digits(items[at + 1]) !== undefined && !(items[at + 1]?.gap ?? true) ? 1 : undefined;
  // "wheel number 3 on maple's carriage": of the wheels
  if (
    /^(?:number|no|nr)$/u.test(item?.text ?? '') &&
    hasTag(items[at - 1], 'part') &&
    items.slice(at + 2, at + 6).some((one) => hasTag(one, 'machine'))
  )
    return undefined;
  if (isFn(item, 'number-sign') && digits(items[at + 1]) !== undefined) {
    // "15h no 5": not 5
    if (item?.text === 'no' && hasTag(items[at - 1], 'unit') && /^\d/u.test(items[at - 2]?.text ?? ''))
      return undefined;
    if (item?.text === 'no' && !/^\d/u.test(items[at + 1]?.text ?? '')) return undefined;
    // "wait no 350": no printer has such a number
    if (item?.text === 'no' && Number(items[at + 1]?.text) > MOST_PRINTERS) return undefined;
    const dotted = items[at + 1]?.text === '.';
    return dotted ? 2 : 1;
  }
  if (
    item &&
    isFn(item, 'number-sign') &&
    items[at + 1]?.text === '.' &&
    digits(items[at + 2]) !== undefined &&
    /(?:^|\s)(?:no|nr|nos)$/u.test(item.text)
  )
    return 2;
  const number = digits(item);
  if (number === undefined || !opensWithDigit(item?.text ?? '') || !book.numbers.has(String(Number(number))))
    return undefined;
  // "greased the screw on 3, same on 8", "…, ditto 8"
  if (isFn(items[at - 1], 'too') && /(?:^ditto|^likewise| on| for| to| with)$/u.test(items[at - 1]?.text ?? '') && endsThere(items[at + 1])) return 0; // prettier-ignore
  if (
    (at === 0 || /^(?:on|in|for|to|and|or|,|&|n|plus)$/u.test(items[at - 1]?.text ?? '')) &&
    nearMachine(items, at, book)
  )
    return 0;
  return undefined;
}

const endsThere = (item: Item | undefined): boolean => item === undefined || hasTag(item, 'joint') || /^[.,;!\n)&+]$/u.test(item.text); // prettier-ignore
/** A bare figure is a machine only right after "on", or in a list that began with one. */
function nearMachine(items: readonly Item[], at: number, book: NameBook): boolean {
  const before = items[at - 1]?.text ?? '';
  const follows = items[at + 1];
  // "5 h on alder, 2 of which were wasted"
  if (follows?.text === 'of') return false;
  const noun = follows !== undefined && ((hasTag(follows, 'unit', 'part', 'thing', 'value', 'spec') || follows.senses.some((s) => s.tag === 'calendar' && s.code === 'month')) || /^[a-z]/u.test(follows.text) && !hasTag(follows, 'fn', 'joint', 'verb', 'state', 'complaint', 'symptom', 'finding')); // prettier-ignore
  if (noun || /^[.,:/]$/u.test(follows?.text ?? '') && /^\d/u.test(items[at + 2]?.text ?? '') && !(items[at + 2]?.gap ?? true))
    return false; // prettier-ignore
  const list =
    at === 0 &&
    /^(?:and|,|&|n|plus)$/u.test(items[1]?.text ?? '') &&
    book.numbers.has(items[2]?.text ?? '') &&
    hasTag(items[3], 'verb', 'state', 'complaint', 'symptom', 'fn');
  if (list) return true;
  // "6 got a brass nozzle", "3 jammed again"
  if (at === 0)
    return (
      (/^(?:got|needs|wants)$/u.test(follows?.text ?? '') &&
        !/^(?:left|to|more|of|\d.*)$/u.test(items[2]?.text ?? '')) ||
      (hasTag(follows, 'complaint') && !hasTag(items[2], 'part', 'thing') && items.length <= 5)
    );
  if (before === 'on' || (before === 'in' && hasTag(items[at - 2], 'verb'))) return true;
  if (!/^(?:and|or|to|,|&|n|plus)$/u.test(before)) return false;
  // "3 h on alder and 4 on birch": a figure of that machine
  const place = items[at + 2];
  if (
    isFn(follows, 'on', 'in', 'for') &&
    (hasTag(place, 'machine') || place?.text === '#' || digits(place) !== undefined)
  )
    return false;
  // "did belts on alder. and birch. and 3"
  if (
    before === 'and' &&
    items[at - 2]?.text === '.' &&
    hasTag(items[at - 3], 'machine') &&
    endsThere(follows)
  )
    return true;
  if (before === 'or' && items[at - 2]?.text === '...' && /^\d{1,2}$/u.test(items[at - 3]?.text ?? ''))
    return true;
  let i = at - 2;
  while (i >= 0 && at - i < 24 && /^\d{1,2}$|^(?:and|or|to|,|&|n|plus)$/u.test(items[i]?.text ?? '')) i -= 1;
  return (
    hasTag(items[at - 2], 'machine') ||
    (book.numbers.has(items[at - 2]?.text ?? '') && (i < 0 || isFn(items[i], 'on')))
  );
}

function unitFollows(items: readonly Item[], at: number): boolean {
  const next = items[at + 1];
  if (!next) return false;
  if (sense(next, 'unit') && !next.gap) return true;
  return (
    hasTag(next, 'unit') &&
    !/^(?:in|off|x|a|s|each|c|pc|m|f|l|n|set|bar)$/u.test(next.text) &&
    !hasTag(items[at], 'machine') &&
    /^\d/u.test(items[at]?.text ?? '') &&
    items[at - 1]?.text !== '#'
  );
}

/** Settles every item that may be a machine. */
export function settleNames(items: readonly Item[], book: NameBook): Item[] {
  const wood = woodSentences(items);
  return items.map((item, at) => {
    if (!hasTag(item, 'machine', 'person')) return item;
    const machine = sense(item, 'machine');
    const person = sense(item, 'person');
    const others = item.senses.filter((s) => s.tag !== 'machine' && s.tag !== 'person');
    if (person && !machine)
      return personStands(items, at, others.length > 0 || !book.people.has(item.text))
        ? withSenses(item, person)
        : withSenses(item, ...others);
    if (!machine || item.text.startsWith('#') || hasTag(item, 'choice')) return item;
    if (machine.code === 'room' || wood[at] === true || isOrdinary(items, at, book.shared.has(item.text)))
      return ordinary(item, others);
    return withSenses(item, machineSense(machine.code));
  });
}
/** Printers' own words; beside them a tree's name is a printer, whatever is carved there too. */
const isPrinting = (item: Item): boolean =>
  item.senses.some(
    (s) =>
      (s.tag === 'part' && s.weak !== true) ||
      s.tag === 'material' ||
      (s.tag === 'verb' && s.code === 'print') ||
      (s.tag === 'thing' &&
        ['hot-end', 'first-layer', 'feeder', 'print', 'machine', 'firmware', 'mesh'].includes(s.code)),
  ) || hasTag(item, 'value');

const NO_WOOD: readonly boolean[] = [];
/** For each item: does its sentence speak of work with wood, and not of printing? */
function woodSentences(items: readonly Item[]): readonly boolean[] {
  if (!items.some((item) => hasTag(item, 'woodwork'))) return NO_WOOD;
  const out = items.map(() => false);
  let from = 0;
  for (let at = 0; at <= items.length; at += 1) {
    if (at < items.length && !/^(?:[.!?;\n]|\.\.\.)$/u.test(items[at]?.text ?? '')) continue;
    const sentence = items.slice(from, at);
    if (sentence.some((item) => hasTag(item, 'woodwork')) && !sentence.some(isPrinting))
      out.fill(true, from, at);
    from = at + 1;
  }
  return out;
}

const ordinary = (item: Item, others: readonly Sense[]): Item =>
  others.length > 0 ? withSenses(item, ...others) : withSenses(item, ARTICLE);

/** "Odd noticed an odd noise": at the start, or after "by", "ask", "and", with no article before. */
function personStands(items: readonly Item[], at: number, shared: boolean): boolean {
  if (!shared) return true;
  const before = items[at - 1];
  const next = items[at + 1];
  const opens =
    at === 0 ||
    /^[.,:;!?\n]$/u.test(before?.text ?? '') ||
    isFn(before, 'by', 'who') ||
    hasTag(before, 'before-person', 'joint');
  const verb =
    next !== undefined &&
    (next.senses.some(
      (s) => s.tag === 'verb' && (s.form === 'past' || s.form === 'both' || s.form === 's'),
    ) ||
      isFn(next, 'have', 'be', 'will', 'possessive', 'do') ||
      hasTag(next, 'human'));
  const didAsk = isFn(before, 'do') || isFn(before, 'have', 'by');
  return (opens && verb) || didAsk;
}

/** "Cedar is leaving fine hairs", "leaves blobs everywhere": what a printer leaves behind is on its prints. */
const leavesBehind = (items: readonly Item[], at: number): boolean =>
  /\bleav(?:es|ing)\b/u.test(`${items[at + 1]?.text ?? ''} ${items[at + 2]?.text ?? ''}`) &&
  items.slice(at + 2, at + 7).some((item) => hasTag(item, 'symptom', 'complaint'));

/** "elm drive gear", "cedar z nut": a part's name of two words is no street and no fruit. */
const isTradeName = (item: Item | undefined): boolean => hasTag(item, 'part', 'thing') && (item?.text.includes(' ') ?? false); // prettier-ignore

const isOutside = (item: Item | undefined): boolean =>
  hasTag(item, 'foreign') && !hasTag(item, 'part', 'verb', 'symptom', 'complaint', 'state', 'finding');

function isOrdinary(items: readonly Item[], at: number, shared: boolean): boolean {
  const next = items[at + 1];
  const before = items[at - 1];
  // "maple syrup", but "does maple jam": after an auxiliary the name is what does it.
  const handles =
    isFn(before, 'do', 'will', 'would') ||
    (/^(?:can|could)$/u.test(before?.text ?? '') && hasTag(next, 'verb'));
  if (hasTag(next, 'timber') && !isTradeName(next) && !handles) return !isFn(next, 'possessive');
  // "rowan's car", "hazel's laptop": what is owned is of another trade, so the owner is a person.
  if (isFn(next, 'possessive') && isOutside(items[at + 2])) return true;
  const counts = /^[\d#]/u.test(items[at + 2]?.text ?? '');
  // "the belt on cedar is coming apart": of a part, and no person comes
  const ofPart =
    isFn(before, 'on', 'in', 'of', 'from') && hasTag(items[at - 2], 'part', 'thing', 'complaint', 'symptom');
  if (
    // "a printer like hazel called Willow": no person called
    (hasTag(next, 'human') &&
      !counts &&
      !ofPart &&
      !isFn(before, 'like', 'as') &&
      !leavesBehind(items, at)) ||
    hasTag(before, 'before-person', 'before-stuff')
  )
    return true;
  if (isFn(before, 'article') && before?.text !== 'the' && !hasTag(next, 'part')) return true;
  if (hasTag(items[at - 2], 'before-stuff') && isFn(before, 'article')) return true;
  return shared && !namePlace(items, at);
}

/** Where a name that is also an ordinary word may be read as a machine. */
function namePlace(items: readonly Item[], at: number): boolean {
  const item = items[at];
  const before = items[at - 1];
  const next = items[at + 1];
  if (
    isFn(
      before,
      'article',
      'my',
      'any',
      'some',
      'each',
      'another',
      'new',
      'old',
      'no',
      'i',
      'we',
      'you',
      'it',
      'someone',
    ) &&
    !hasTag(next, 'part')
  )
    return false;
  if (hasTag(before, 'number', 'complaint') || /^\d/u.test(before?.text ?? '') || hasTag(before, 'value'))
    return false;
  if (isFn(next, 'possessive') || next?.text === ':') return true;
  const placed = /^(?:on|in|for|at|from|with|off|of|to)$/u.test(before?.text ?? '');
  if (placed) return !/^(?:\d|19|20)/u.test(next?.text ?? '') || sense(next, 'unit') !== undefined;
  if (
    item?.text === 'may' &&
    (next?.senses.some((s) => s.tag === 'verb' && s.form === 'base') || isFn(next, 'be', 'have', 'not'))
  )
    return false;
  const opens = at === 0 || /^(?:[.,:;!?\n]|-|and|but|then|so|\uFFF9)$/u.test(before?.text ?? '');
  if (!opens)
    return (
      isFn(before, 'be', 'too', 'same', 'except', 'both') ||
      (hasTag(before, 'verb') &&
        (at === items.length - 1 || isFn(next, 'for') || /^[.,\d]/u.test(next?.text ?? '')))
    );
  return next === undefined || hasTag(next, 'verb', 'state', 'symptom', 'complaint', 'part', 'value', 'number', 'joint') || isFn(next, 'be', 'have', 'will') || /^(?:\d|[.,:])/u.test(next.text); // prettier-ignore
}

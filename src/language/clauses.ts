/**
 * Stage 6. The message cut where a new thing is said, and joined again (`joining.ts`) where a stretch only lends to its
 * neighbour: "alder, birch and cedar: belts tensioned" is one clause.
 */
import { hasTag, isFn, type Item, sense } from './item.ts';
import { isAmount, join, LONGEST_CLAUSE, type Piece, withoutAsides } from './joining.ts';
import type { Joint } from './senses.ts';

export interface Clause {
  readonly items: readonly Item[];
  readonly joint: Joint;
  readonly sentence: number;
  /** Its sentence ends in a question mark. */
  readonly asked: boolean;
}

const MARKS: Readonly<Record<string, Joint>> = {
  '.': 'sentence', '!': 'sentence', '?': 'question', ';': 'sentence', '\n': 'sentence', '...': 'sentence', ',': 'comma', ':': 'colon', '(': 'bracket', ')': 'bracket',
  '\u2022': 'sentence', '-': 'dash', '/': 'and', '=': 'colon', '|': 'sentence', '>': 'dash', '\u2192': 'dash', '[': 'bracket', ']': 'bracket',
}; // prettier-ignore

/** `opens`: nothing stands in the stretch yet; "which grease …" then asks and joins nothing. */
function jointOf(items: readonly Item[], at: number, opens: boolean): Joint | undefined {
  const item = items[at];
  if (!item) return undefined;
  const mark = Object.hasOwn(MARKS, item.text) ? MARKS[item.text] : undefined;
  if (mark === 'dash' && !item.gap) return undefined;
  // "packed w/ dust"
  if (item.text === '/' && items[at - 1]?.text === 'w' && !item.gap) return undefined;
  if (item.text === '.' && isAbbreviation(items, at)) return undefined;
  // "on 1.3.: 2366 h": the mark belongs to the date
  if (item.text === '.' && !item.gap && hasTag(items[at - 1], 'date') && items[at + 1]?.text === ':')
    return undefined;
  if (mark !== undefined) return mark;
  // "any nozzles left or did Odd nick them all"
  if (
    !opens &&
    item.text === 'or' &&
    /^(?:did|is|are|was|were|has|have|do|does)$/u.test(items[at + 1]?.text ?? '') &&
    items[at + 2] !== undefined
  )
    return 'because';
  if (item.text === 'until' && endedIt(items, at)) return 'next';
  const word = sense(item, 'joint');
  if (word && (word.code === 'because' || word.code === 'so') && opens) return undefined;
  // "what makes it so loud": how much, and nothing follows from it
  if (item.text === 'so' && hasTag(items[at + 1], 'complaint') && endsThere(items[at + 2])) return undefined;
  // "between nozzle and plate"
  if (word?.code === 'and' && isBetween(items, at)) return undefined;
  return word && !hasTag(item, 'machine', 'value', 'date', 'complaint') ? word.code : undefined;
}

const endsThere = (item: Item | undefined): boolean =>
  item === undefined ||
  Object.hasOwn(MARKS, item.text) ||
  isFn(item, 'with', 'on', 'in', 'at', 'now', 'again', 'just');
/** The "and" of "between … and …", a few words behind it. */
const isBetween = (items: readonly Item[], at: number): boolean =>
  items.slice(Math.max(0, at - 4), at).some((item) => item.text === 'between');

/** "was grinding until the idler got swapped": the trouble is told as past, so what ended it was done. */
const endedIt = (items: readonly Item[], until: number): boolean =>
  items
    .slice(Math.max(0, until - 6), until)
    .some(
      (one, i, row) =>
        hasTag(one, 'complaint', 'symptom') && /^(?:was|were|kept|had)$/u.test(row[i - 1]?.text ?? ''),
    ) &&
  items
    .slice(until + 1, until + 8)
    .some(
      (one, i, row) =>
        /^(?:got|was|were|i|we)$/u.test(row[i - 1]?.text ?? '') &&
        one.senses.some((s) => s.tag === 'verb' && s.form === 'past'),
    );

/** "12 pcs., 3 btl.": shortened words of a list. */
const SHORTENED = /^(?:pcs?|approx|incl|ca|btls?|nrs?|resp|ea|fil|corr)$/u;
/** The marks of "i.e.", "e.g.", "a.m.": single letters set close. */
function isAbbreviation(items: readonly Item[], at: number): boolean {
  if (SHORTENED.test(items[at - 1]?.text ?? '') && items[at]?.gap === false && items[at + 1] !== undefined)
    return true;
  const letter = (i: number): boolean => /^\p{L}$/u.test(items[i]?.text ?? '');
  const close = (i: number): boolean => items[i]?.gap === false;
  const opens = letter(at - 1) && close(at) && letter(at + 1) && close(at + 1);
  const ends = letter(at - 1) && close(at) && items[at - 2]?.text === '.' && close(at - 1) && letter(at - 3);
  return opens || ends;
}

/** "in which manner …": what stands before asks with it. */
const isPreposition = (item: Item): boolean =>
  isFn(item, 'in', 'for', 'at', 'on', 'by', 'from', 'since', 'with', 'to') && !hasTag(item, 'machine');

function cut(items: readonly Item[]): { pieces: Piece[]; asked: Set<number> } {
  const pieces: Piece[] = [];
  const asked = new Set<number>();
  let sentence = 0;
  let current: Piece = { items: [], joint: 'start', sentence };
  items.forEach((item, at) => {
    const joint =
      jointOf(items, at, current.items.every(isPreposition)) ??
      (current.items.length >= LONGEST_CLAUSE ? 'comma' : undefined);
    if (joint !== undefined && (inList(items, at) || joinsDanger(items, at))) return;
    if (
      current.items.length === 0 &&
      /^\d{1,2}$/u.test(item.text) &&
      !hasTag(item, 'machine') &&
      /^[).]$/u.test(items[at + 1]?.text ?? '')
    )
      return;
    if (joint === undefined) {
      if (opensEntry(current.items, items, at)) {
        pieces.push(current);
        current = { items: [], joint: 'comma', sentence };
      }
      current.items.push(item);
      return;
    }
    if (current.items.length > 0) pieces.push(current);
    if (joint === 'question') asked.add(sentence);
    if (joint === 'sentence' || joint === 'question') sentence += 1;
    const kept = current.items.length > 0 || STRONG[joint] > STRONG[current.joint] ? joint : current.joint;
    current = { items: [], joint: kept, sentence };
  });
  if (current.items.length > 0) pieces.push(current);
  return { pieces, asked };
}
/** "elm three hours cedar two and maple one": a figure and then the next name, a mark or the end. */
const isLoneFigure = (items: readonly Item[], at: number): boolean =>
  sense(items[at], 'value')?.code === 'bare' &&
  (items[at + 1] === undefined ||
    hasTag(items[at + 1], 'machine', 'joint') ||
    Object.hasOwn(MARKS, items[at + 1]?.text ?? ''));
/** "alder 12h birch 3h elm 7h", "12h alder 3h birch": a log without commas; each name has its own figure. */
function opensEntry(current: readonly Item[], items: readonly Item[], at: number): boolean {
  const [item, last] = [items[at], current.at(-1)];
  if (!last || !item) return false;
  // "got cedar's head apart dont anyone press go"
  if (
    /^(?:don't|do not)$/u.test(item.text) &&
    /^(?:anyone|anybody|you|u|hit|press|touch|start|turn|switch|power)$/u.test(items[at + 1]?.text ?? '') &&
    current.some((one) => hasTag(one, 'machine')) &&
    current.length >= 3
  )
    return true;
  // "I'll swap the wheels once this print is off"
  if (
    /^(?:once|as soon as)$/u.test(item.text) &&
    current.length >= 3 &&
    (isFn(items[at + 1], 'article', 'this', 'it', 'my', 'they', 'i', 'we') ||
      hasTag(items[at + 1], 'machine'))
  )
    return true;
  // "blobs all over cedar's prints why is that"
  if (
    isFn(item, 'why') &&
    current.length >= 2 &&
    current.some((one) => hasTag(one, 'complaint', 'symptom')) &&
    (items[at + 1] === undefined || isFn(items[at + 1], 'be') || isFn(items[at + 1], 'this')) &&
    !current.some(
      (one) =>
        isFn(one, 'not', 'unsure', 'what', 'who', 'how', 'when') ||
        /\b(?:know|idea|wonder|tell|see|ask)\w*$/u.test(one.text),
    )
  )
    return true;
  // "heard birch made a funny noise yesterday is that sorted": asked in the same breath
  if (asksAfterwards(current, items, at)) return true;
  // "new motor on elm the old one had died": what was told of the old part is its own clause.
  if (/^(?:the )?(?:old|last|previous|original) one$/u.test(item.text) && isFn(items[at + 1], 'be', 'have'))
    return current.some((one) => hasTag(one, 'part')) && !isFn(last, 'for', 'with', 'of', 'from');
  const named = current.some((one) => hasTag(one, 'machine'));
  if (hasTag(item, 'machine'))
    return (
      named &&
      (isAmount(items[at + 1]) || isLoneFigure(items, at + 1)) &&
      current.some(isAmount) &&
      (isAmount(last) || hasTag(last, 'material'))
    );
  return (
    isAmount(item) && hasTag(last, 'machine') && hasTag(items[at + 1], 'machine') && isAmount(current[0])
  );
}
const asksAfterwards = (current: readonly Item[], items: readonly Item[], at: number): boolean =>
  /^(?:is|are|was|were|did|does|has|have)$/u.test(items[at]?.text ?? '') &&
  /^(?:that|it|this|they|anyone|anybody|someone|somebody)$/u.test(items[at + 1]?.text ?? '') &&
  items[at + 2] !== undefined &&
  current.length >= 3 &&
  current.some((one) => hasTag(one, 'machine', 'part')) &&
  current.some(
    (one) =>
      hasTag(one, 'complaint', 'symptom', 'date') ||
      one.senses.some((s) => s.tag === 'verb' && s.form === 'past'),
  ) &&
  !current.some((one) =>
    isFn(one, 'what', 'who', 'when', 'why', 'how', 'which', 'if', 'where', 'than', 'as'),
  ) &&
  !hasTag(current.at(-1), 'machine') &&
  !isFn(current.at(-1), 'article', 'this', 'it', 'not');
const DANGER: ReadonlySet<string> = new Set(['hot', 'brown', 'melted', 'bare']);
/** "the psu is humming and hot": the second is said of the same thing, and is the one that matters. */
const joinsDanger = (items: readonly Item[], at: number): boolean =>
  isAnd(items[at]) &&
  hasTag(items[at - 1], 'complaint') &&
  items[at + 1] !== undefined &&
  items[at + 1]?.senses.some((s) => s.tag === 'complaint' && DANGER.has(s.code)) === true &&
  (items[at + 2] === undefined || jointOf(items, at + 2, false) !== undefined);
const isAnd = (item: Item | undefined): boolean => /^(?:and|&|n)$/u.test(item?.text ?? '');

/** "on 1, 2 and 4": names in one list are one place, whatever stands after them. */
function inList(items: readonly Item[], at: number): boolean {
  if (!/^(?:and|&|,|\+|n|plus)$/u.test(items[at]?.text ?? '') || !hasTag(items[at - 1], 'machine'))
    return false;
  if (
    !hasTag(items[at + 1], 'machine') &&
    !(hasTag(items[at + 1], 'joint') && hasTag(items[at + 2], 'machine'))
  )
    return false;
  let i = at - 1;
  while (
    i >= 0 &&
    at - i < 40 &&
    (hasTag(items[i], 'machine') || /^(?:and|&|,)$/u.test(items[i]?.text ?? ''))
  )
    i -= 1;
  return (
    (isFn(items[i], 'on', 'in', 'for', 'at', 'of', 'from', 'both', 'except', 'through') &&
      items[i]?.text !== 'to') ||
    /^(?:did|does|do|has|have)$/u.test(items[i]?.text ?? '') ||
    listedNumbers(items, i, at) ||
    /\b(?:through|inside)$/u.test(items[i]?.text ?? '') ||
    // "the power cut caught juniper and maple in the middle of a print"
    /^(?:loaded|reloaded|caught|hit|affected|took out|knocked out|interrupted|killed|stopped)$/u.test(
      items[i]?.text ?? '',
    )
  );
}
/** "mains leads #1, #2: …": numbers behind the part that they all have, up to a colon. */
function listedNumbers(items: readonly Item[], before: number, at: number): boolean {
  if (!hasTag(items[before], 'part', 'thing')) return false;
  let end = before + 1;
  while (
    hasTag(items[end], 'machine')
      ? (items[end]?.text.startsWith('#') ?? false)
      : /^(?:,|and|&)$/u.test(items[end]?.text ?? '')
  )
    end += 1;
  return end > at && items[end]?.text === ':';
}
/** When joints follow each other ("... , and then"), the one that says more is kept. */
const STRONG: Readonly<Record<Joint, number>> = {
  start: 0, comma: 1, bracket: 1, dash: 2, colon: 2, and: 3, next: 4, so: 4, but: 4, because: 4, sentence: 5, question: 5,
}; // prettier-ignore

export function readClauses(items: readonly Item[]): Clause[] {
  const { pieces, asked } = cut(withoutAsides(items));
  return join(pieces).map((piece) => ({ ...piece, asked: asked.has(piece.sentence) }));
}

/**
 * Stage 6. The message cut where a new thing is said, and joined again where a stretch only lends its
 * machine, part or figure to its neighbour: "alder, birch and cedar: belts tensioned" is one clause.
 */
import { headingIn, LONGEST_HEADING } from './headings.ts';
import { asSense, hasTag, isFn, type Item, sense, withSenses } from './item.ts';
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

/** A stretch of more items than this is no clause that anybody wrote; the cut keeps every later stage linear. */
const LONGEST_CLAUSE = 60;

/** "in which manner …": what stands before asks with it. */
const isPreposition = (item: Item): boolean =>
  isFn(item, 'in', 'for', 'at', 'on', 'by', 'from', 'since', 'with', 'to') && !hasTag(item, 'machine');

interface Piece {
  items: Item[];
  joint: Joint;
  sentence: number;
}

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
const isAmount = (item: Item | undefined): boolean =>
  ['hours', 'grams', 'metres'].includes(sense(item, 'value')?.code ?? '');
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

/** "alder (#2)": a second name in brackets says the same machine again, or disagrees. */
function against(before: Item | undefined, items: readonly Item[]): readonly Item[] {
  const name = sense(before, 'machine')?.code;
  return items.map((item) => {
    const other = sense(item, 'machine')?.code;
    return name === undefined || other === undefined || other === name
      ? item
      : withSenses(item, ...item.senses, asSense({ tag: 'choice', options: [name, other] }));
  });
}

/** Does the stretch say something of its own? */
export function hasPredicate(items: readonly Item[]): boolean {
  return items.some((item) => {
    if (item.text === "'s") return false;
    if (hasTag(item, 'symptom', 'state', 'complaint', 'finding', 'choice')) return true;
    if (isFn(item, 'be', 'did-it', 'will', 'should', 'have', 'new', 'sorry', 'anymore', 'let-me', 'cant', 'not', 'had-to', 'please', 'if', 'would', 'what', 'who', 'when', 'why', 'how', 'same', 'nothing', 'unsure', 'do', 'thanks')) return !hasTag(item, 'part'); // prettier-ignore
    const verbs = item.senses.filter((s) => s.tag === 'verb');
    const noun = hasTag(item, 'part', 'thing');
    return (
      verbs.some((v) => v.form !== 'base' && !(v.form === 's' && noun)) ||
      (verbs.length > 0 && !hasTag(item, 'part', 'thing', 'fn'))
    );
  });
}

interface Shape {
  predicate: boolean;
  machine: boolean;
  part: boolean;
  value: boolean;
  only: boolean;
}
const FILLER = new Set(['article', 'on', 'in', 'of', 'for', 'at', 'to', 'from', 'the', 'both', 'all', 'except', 'its', 'this', 'with', 'my', 'again', 'possessive', 'printer', 'each', 'off', 'too', 'latter', 'former', 'other', 'they', 'it', 'number-sign', 'only', 'these', 'also', 'range', 'now', 'just']); // prettier-ignore

function shape(items: readonly Item[]): Shape {
  const machine = items.some(
    (item) => hasTag(item, 'machine', 'stranger') || isFn(item, 'latter', 'former', 'both'),
  );
  const part = items.some((item) => hasTag(item, 'part', 'thing') && !isFn(item, 'printer', 'number-sign'));
  const value = items.some(
    (item) => sense(item, 'value') !== undefined && sense(item, 'value')?.code !== 'other',
  );
  const filler = (item: Item): boolean =>
    hasTag(item, 'machine', 'stranger') ||
    item.senses.some((s) => s.tag === 'fn' && FILLER.has(s.code)) ||
    item.text === 'thing';
  return {
    predicate: hasPredicate(items),
    machine,
    part,
    value,
    only: machine && !part && !value && items.every((item) => filler(item) || hasTag(item, 'date')),
  };
}

const joinable = (joint: Joint): boolean => joint !== 'sentence' && joint !== 'question';

/** Lends stretches without a predicate to the neighbour that has one. */
function join(pieces: readonly Piece[]): Piece[] {
  const out: Piece[] = [];
  let waiting: Piece | undefined;
  pieces.forEach((piece, at) => {
    const own = shape(piece.items);
    const last = out.at(-1);
    if (last && !waiting && (isPutOffHead(last, piece) || isPutOffTail(last, piece))) {
      last.items.push(...piece.items);
      return;
    }
    const near =
      last !== undefined &&
      last.items.length < LONGEST_CLAUSE &&
      last.sentence === piece.sentence &&
      joinable(piece.joint) &&
      !waiting;
    const next = pieces[at + 1];
    const nextNear =
      next !== undefined &&
      joinable(next.joint) &&
      (next.sentence === piece.sentence || next.joint === 'dash');
    if (waiting && waiting.items.length >= LONGEST_CLAUSE) {
      out.push(waiting);
      waiting = undefined;
    }
    if (waiting && (waiting.sentence === piece.sentence || waiting.joint === 'dash')) {
      const held: Piece = {
        items: [
          ...waiting.items,
          ...(piece.joint === 'bracket' ? against(waiting.items.at(-1), piece.items) : piece.items),
        ],
        joint: waiting.joint,
        sentence: piece.sentence,
      };
      waiting = undefined;
      const figureOnly = own.value && !own.part && !own.machine && lacksSubject(next, piece.sentence);
      if (!own.predicate && (!own.value || figureOnly) && !(own.part && own.machine) && nextNear)
        waiting = held;
      else out.push(held);
      return;
    }
    if (nextNear && isHeading(piece, next)) {
      out.push({ ...piece, items: [...piece.items] });
      return;
    }
    if (own.only && !isDitto(piece.items) && nextNear && headsList(piece, next, last)) {
      waiting = { ...piece, items: [...piece.items] };
      return;
    }
    const heads =
      nextNear &&
      (next.joint === 'colon' || next.joint === 'dash') &&
      next.sentence === piece.sentence &&
      (piece.joint === 'comma' ||
        // "Alder: 12.5 h / Birch: 3 h"
        (piece.joint === 'and' && next.joint === 'colon' && last?.items.some(isAmount) === true));
    if (own.only && !isDitto(piece.items) && near && piece.joint !== 'colon' && !heads) {
      last.items.push(...(piece.joint === 'bracket' ? against(last.items.at(-1), piece.items) : piece.items));
      return;
    }
    // "alder: counter 4131 h, birch: 2322 h": a name before a colon heads what follows
    if (own.only && !isDitto(piece.items) && nextNear && (!near || heads)) {
      waiting = { ...piece, items: [...piece.items] };
      return;
    }
    if (!own.predicate && own.part && !own.machine && !own.value && near && lendsParts(last, piece.joint)) {
      last.items.push(...piece.items);
      return;
    }
    if (
      !own.predicate &&
      own.part &&
      !own.value &&
      nextNear &&
      (!near || own.machine) &&
      nextLacksNoun(next, own)
    ) {
      waiting = { ...piece, items: [...piece.items] };
      return;
    }
    if (
      !own.predicate &&
      own.part &&
      own.value &&
      !own.machine &&
      joinable(next?.joint ?? 'sentence') &&
      next?.sentence === piece.sentence &&
      STOCKED(next.items) &&
      !near
    ) {
      waiting = { ...piece, items: [...piece.items] };
      return;
    }
    if (!own.predicate && own.value && !own.machine && !own.part && near && takesFigure(last, piece)) {
      last.items.push(...piece.items);
      return;
    }
    // "mon: elm 4h, tue: elm 6h": a day before a colon heads what follows
    const heading =
      next?.joint === 'colon' &&
      next.sentence === piece.sentence &&
      piece.items.every((item) => hasTag(item, 'date') || isFn(item, 'on'));
    if (
      !heading &&
      joinsBracket(piece, own, near, last?.items.every((item) => isFn(item, 'no', 'sorry')) ?? false)
    ) {
      last?.items.push(...piece.items);
      return;
    }
    out.push({ ...piece, items: [...piece.items] });
  });
  if (waiting) out.push(waiting);
  return out;
}

const isHeading = (piece: Piece, next: Piece): boolean =>
  piece.items.length <= LONGEST_HEADING &&
  (next.joint === 'colon' || next.joint === 'dash') &&
  headingIn(piece.items.map((item) => item.text).join(' '), next.joint, true) !== undefined;
/** "power cut at two, elm and juniper both lost their prints": the name opens a list that the next stretch goes on with. */
function headsList(piece: Piece, next: Piece, last: Piece | undefined): boolean {
  return (
    piece.joint === 'comma' &&
    next.joint === 'and' &&
    piece.items.length === 1 &&
    hasTag(next.items[0], 'machine') &&
    hasPredicate(next.items) &&
    last !== undefined &&
    !shape(last.items).machine &&
    hasPredicate(last.items) &&
    last.items.some((item) => hasTag(item, 'symptom', 'complaint', 'state'))
  );
}

/** "Deferral: Hazel, bed levelling, to Friday": all that such a heading heads is one thing. */
const isPutOffHead = (last: Piece, piece: Piece): boolean =>
  last.sentence === piece.sentence &&
  joinable(piece.joint) &&
  last.items.length < LONGEST_CLAUSE &&
  /^(?:deferral|deferred|postponement|postponed|put off|snoozed|delayed|rescheduled)$/u.test(
    last.items[0]?.text ?? '',
  ) &&
  (last.items.length === 1 ? piece.joint === 'colon' || piece.joint === 'dash' : !isTold(piece.items));
/** "Birch's new build plate: pushed back one week": what is put off, and that it is. */
const isPutOffTail = (last: Piece, piece: Piece): boolean =>
  piece.joint === 'colon' &&
  last.sentence === piece.sentence &&
  last.items.length <= 6 &&
  last.items.some((item) => hasTag(item, 'part', 'thing')) &&
  !isTold(last.items.filter((item) => item.text !== "'s")) &&
  piece.items[0]?.senses.some((s) => s.tag === 'verb' && s.code === 'put-off' && s.form === 'past') ===
    true &&
  piece.items.some((item) => hasTag(item, 'value', 'date'));
/** Told as done or as being so: a thing of its own. */
const isTold = (items: readonly Item[]): boolean =>
  items.some(
    (item) =>
      isFn(item, 'be', 'have', 'i', 'we') || item.senses.some((s) => s.tag === 'verb' && s.form === 'past'),
  );
/** "…, 500 g net, mounted on cedar": the deed comes last, and what it was done to stands before. */
const lacksSubject = (next: Piece | undefined, sentence: number): boolean => {
  if (next?.sentence !== sentence || next.joint !== 'comma') return false;
  const shaped = shape(next.items);
  return !shaped.part && (next.items[0]?.senses.some((s) => s.tag === 'verb' && s.form === 'past') ?? false);
};

/** "two cans of air and 5 cloths arrived": the list waits for its verb. */
const STOCKED = (items: readonly Item[]): boolean =>
  items.some((item) =>
    item.senses.some(
      (s) =>
        s.tag === 'verb' &&
        ['arrive', 'put', 'use', 'take', 'get', 'bin', 'buy'].includes(s.code) &&
        s.form !== 'base',
    ),
  ) ||
  (shape(items).part && shape(items).value);
const isDitto = (items: readonly Item[]): boolean => items.some((item) => isFn(item, 'too', 'same'));
/** A list of parts goes on after "and" or a comma, where the clause before has a deed. */
function lendsParts(last: Piece, joint: Joint): boolean {
  if (joint === 'because' || joint === 'but' || joint === 'so') return false;
  return (
    last.items.some((item) => hasTag(item, 'verb', 'cue') || isFn(item, 'new', 'let-me', 'will')) &&
    last.items.some((item) => hasTag(item, 'part', 'thing', 'spec', 'material', 'machine'))
  );
}
/** "elm nozzle and sock swapped": the next part opens its stretch, and whatever is said comes after it. */
function goesOnListing(next: Piece): boolean {
  if (next.joint !== 'and' && next.joint !== 'comma') return false;
  const first = next.items.findIndex(
    (item) => !isFn(item, 'article', 'its', 'both', 'old') && !hasTag(item, 'spec'),
  );
  const head = next.items[first];
  return (
    hasTag(head, 'part', 'thing') &&
    !hasTag(head, 'symptom', 'complaint', 'state', 'date') &&
    !(hasTag(head, 'verb') && !hasTag(head, 'part'))
  );
}
/** The next stretch has a predicate of its own but nothing that it could be said of. */
function nextLacksNoun(next: Piece | undefined, own: Shape): boolean {
  if (!next) return false;
  const shaped = shape(next.items);
  if (own.machine)
    return (
      !next.items.some((item) => hasTag(item, 'machine', 'stranger')) &&
      ((shaped.predicate &&
        !shaped.machine &&
        (next.joint === 'colon' ||
          next.joint === 'dash' ||
          (next.joint === 'comma' && !shaped.part && !shaped.value))) ||
        (!shaped.value && shaped.part && goesOnListing(next)))
    );
  return (
    (next.joint === 'and' && (!shaped.predicate || shaped.part)) ||
    next.joint === 'colon' ||
    next.joint === 'dash' ||
    (next.joint === 'comma' && !shaped.machine)
  );
}
/** "0.4 nozzles: 7": a size, and no figure that is told. */
const isBore = (item: Item): boolean => /^0[.,]\d{1,2}$/u.test(item.text);
function takesFigure(last: Piece, piece: Piece): boolean {
  const figure = sense(
    piece.items.find((item) => sense(item, 'value')),
    'value',
  );
  const had = last.items.some((item) => sense(item, 'value')?.code === figure?.code && !isBore(item));
  if (had || last.items.some((item) => isFn(item, 'did-it'))) return false;
  const ran = last.items.some((item) =>
    item.senses.some(
      (s) => s.tag === 'verb' && (s.code === 'run' || s.code === 'print') && s.form !== 'base',
    ),
  );
  if (figure?.code === 'hours' && ran) return true;
  // "tensioning of hazel's belts put off, another 40 h"
  if (
    last.items.some((item) =>
      item.senses.some(
        (s) =>
          s.tag === 'verb' &&
          s.code === 'put-off' &&
          (s.form !== 'base' || item === last.items[0]) &&
          !hasTag(item, 'part', 'thing'),
      ),
    ) &&
    isFn(piece.items[0], 'another', 'more', 'by', 'for', 'until')
  )
    return true;
  const opens =
    last.items.some((item) => hasTag(item, 'material') || isThingLike(item)) || shape(last.items).only;
  return (
    figure !== undefined &&
    (figure.code === 'grams' || figure.code === 'metres'
      ? opens
      : figure.code === 'hours'
        ? opens && !hasPredicate(last.items)
        : piece.joint !== 'and' || figure.code === 'days')
  );
}
const isThingLike = (item: Item): boolean =>
  item.senses.some(
    (s) => s.tag === 'thing' && (s.code === 'spool' || s.code === 'print' || s.code === 'counter'),
  );
/** "petg throughout", "all abs": of every run of the row, not of the last alone. */
const isOfRow = (items: readonly Item[]): boolean =>
  items.some((item) => hasTag(item, 'material')) &&
  items.some((item) => isFn(item, 'all', 'both', 'each', 'throughout', 'only'));
/** "(maple)", "(yesterday)", "(planned)". */
function joinsBracket(piece: Piece, own: Shape, near: boolean, onlyNo: boolean): boolean {
  if (
    !near ||
    own.predicate ||
    (own.part && (piece.joint !== 'bracket' || own.machine)) ||
    own.value ||
    onlyNo ||
    isOfRow(piece.items)
  )
    return false;
  const said = piece.items.filter(
    (item) => item.senses.length > 0 && !item.senses.every((s) => s.tag === 'fn'),
  );
  return (
    said.length > 0 &&
    said.every((item) => hasTag(item, 'machine', 'date', 'material', 'spec', 'reason', 'part')) &&
    (piece.joint === 'bracket' || !own.machine)
  );
}

/** Longer brackets say something of their own. */
const LONGEST_ASIDE = 14;
/** "the nozzle (bore 0.46 mm, 15 % over) was replaced": a bracket of measures lends nothing and parts nothing. */
function withoutAsides(items: readonly Item[]): readonly Item[] {
  const dropped = new Set<number>();
  items.forEach((item, at) => {
    if (item.text !== '(' || at === 0) return;
    // looked for nearby only: a message of nothing but brackets is read in proportion to its length
    const near = items.slice(at + 1, at + 1 + LONGEST_ASIDE).findIndex((one) => one.text === ')');
    const end = at + 1 + near;
    const inner = items.slice(at + 1, end);
    if (near < 0 || end === items.length - 1 || !inner.some(isMeasure) || !inner.every(isIdle)) return;
    for (let i = at; i <= end; i += 1) dropped.add(i);
  });
  return dropped.size === 0 ? items : items.filter((_, i) => !dropped.has(i));
}
const isMeasure = (item: Item): boolean => sense(item, 'value')?.code === 'other';
const isIdle = (item: Item): boolean =>
  isMeasure(item) || item.senses.every((s) => s.tag === 'fn' || s.tag === 'spec' || s.tag === 'finding');

export function readClauses(items: readonly Item[]): Clause[] {
  const { pieces, asked } = cut(withoutAsides(items));
  return join(pieces).map((piece) => ({ ...piece, asked: asked.has(piece.sentence) }));
}

/** Pieces of a message joined again, where a stretch only lends its machine, part or figure to its neighbour. */
import { asSense, hasTag, isFn, type Item, sense, withSenses } from './item.ts';
import { headingIn, LONGEST_HEADING } from './headings.ts';
import type { Joint } from './senses.ts';

export interface Piece {
  items: Item[];
  joint: Joint;
  sentence: number;
}
/** A stretch of more items than this is no clause that anybody wrote; the cut keeps every later stage linear. */
export const LONGEST_CLAUSE = 60;
export const isAmount = (item: Item | undefined): boolean =>
  ['hours', 'grams', 'metres'].includes(sense(item, 'value')?.code ?? '');

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
export function join(pieces: readonly Piece[]): Piece[] {
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
export function withoutAsides(items: readonly Item[]): readonly Item[] {
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

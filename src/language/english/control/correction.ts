/**
 * Does a stretch do nothing but put an entry right? Its words must be closed: values, words that point at an entry,
 * words of correcting and small words between them. What holds a deed, a part's trouble or a stranger word tells of something.
 */
import type { LocalDate } from '../../act.ts';
import { hasTag, isFn, isThing, type Item, sense } from '../../item.ts';
import { symptomsIn } from '../frames/symptom.ts';
import { type Change, changeOf, sceneOf } from './amendment.ts';
import { cleftIn, relativeHead } from './relative.ts';
import { type Sided, sidesOf, isTold } from './sides.ts';
import {
  covered, isBreak, isField, isFigure, isMark, isPartLike, isPointingOne, isReason, LONGEST_CONTROL, phrasesOf, type ControlPhrase,
  type Span, spanOf, startsAt,
} from './span.ts'; // prettier-ignore

type Signal = 'marker' | 'ought' | 'hint' | 'change' | 'told' | 'points' | 'contrast' | 'again';

/** "was", "were", "should be": what joins an entry to what it was. */
const WAS =
  /^(?:was|were|wasn't|weren't|is|isn't|are|aren't|should|should be|should have been|has been|had been|'s)$/u;
const wasAt = (items: readonly Item[], at: number): boolean => WAS.test(items[at]?.text ?? '');
const PAST = /^(?:was|were|wasn't|weren't)$/u;

/** "it was …", "that last one was …", "the hours were …", and with nothing before it "was …". */
function pointsAt(span: Span): boolean {
  const { items } = span;
  return items.some((item, at) => {
    if (!PAST.test(item.text)) return false;
    const head = relativeHead(span);
    if ((head && at >= head.told && at - head.told <= 3) || figureBefore(span, at)) return true;
    let i = at - 1;
    while (
      i >= 0 &&
      (covered(span, i, 'adverb') || isFn(items[i], 'my', 'last')) &&
      !isBreak(items[i]) &&
      !covered(span, i, 'that', 'entry', 'field')
    )
      i -= 1;
    const opens = i < 0 || isBreak(items[i]);
    return opens ? at === 0 || isBreak(items[at - 1]) : covered(span, i, 'that', 'entry', 'field');
  });
}

/** "those 300 g were abs", "the 5 hours on maple were on rowan": a figure that was told, by its article. */
function figureBefore({ items }: Span, at: number): boolean {
  // "the 5 hours were well spent"
  if (items.slice(at).some(isReason)) return false;
  let figures = 0;
  for (let i = at - 1; i >= 0 && !isBreak(items[i]); i -= 1) {
    if (/^(?:hours|grams|metres)$/u.test(sense(items[i], 'value')?.code ?? '')) figures += 1;
    else if (isFn(items[i], 'article', 'this', 'these', 'my') && figures > 0)
      return i === 0 || isBreak(items[i - 1]);
    else if (!hasTag(items[i], 'machine', 'material') && !isFn(items[i], 'on', 'for', 'of')) return false;
  }
  return false;
}
/** Two values of one kind, one of them denied. */
function contrasts(sided: readonly Sided[]): boolean {
  const kinds = (side: Sided['side']): string[] =>
    sided.filter((one) => one.side === side).map(({ item }) => kindOf(item));
  const wrong = kinds('wrong');
  return kinds('right').some((kind) => wrong.includes(kind));
}
/** "not elm but rowan", "12 and not 21": of what an entry is of, where "monday, not today" only says when. */
function contrastsFigure(sided: readonly Sided[]): boolean {
  const wrong = sided.filter((one) => one.side === 'wrong').map(({ item }) => kindOf(item));
  return sided.some(
    ({ side, item }) => side === 'right' && kindOf(item) !== 'date' && wrong.includes(kindOf(item)),
  );
}
const kindOf = (item: Item): string =>
  isFigure(item) ? 'figure' : hasTag(item, 'machine') ? 'machine' : hasTag(item, 'date') ? 'date' : hasTag(item, 'material') ? 'material' : isPartLike(item) ? 'part' : isReason(item) ? 'reason' : 'spec'; // prettier-ignore

/** "change that to 6", "correct the hours to 7.5", "put it on hazel instead". */
function changes(span: Span): boolean {
  const first = span.items.findIndex(
    (item, at) =>
      !isMark(item) &&
      (startsAt(span, at, 'change') !== undefined || !covered(span, at, 'adverb', 'hint', 'marker')),
  );
  const verb = startsAt(span, first, 'change');
  if (!verb) return false;
  const rest = span.items.slice(verb.to);
  const pointed = phrasesOf(span, 'that', 'entry', 'field').some(
    (one) => one.from >= verb.from && one.from - verb.to <= 3,
  );
  const to =
    /\bto$/u.test(span.items[verb.from]?.text ?? '') ||
    rest.some((item) => /^(?:to|into|on|onto|from|as|under)$/u.test(item.text) || isMark(item));
  const instead =
    rest.some((item) => isFn(item, 'instead')) ||
    (verb.code === 'change' && /^belongs?$/u.test(span.items[verb.from]?.text ?? ''));
  return (
    pointed &&
    to &&
    (instead ||
      movesEntry(span, verb.from) ||
      fixesTo(span, verb.from) ||
      !/^(?:put|move|book|set|swap|switch|shift|turn|adjust|make|fix)/u.test(
        span.items[verb.from]?.text ?? '',
      ))
  );
}

/** "move that to hazel", "book it under birch": an entry, where nothing else is named. */
function movesEntry({ items }: Span, at: number): boolean {
  const words = items.slice(at).filter((item) => !isMark(item) && !isFn(item, 'please', 'thanks'));
  return (
    words.length === 4 &&
    /^(?:move|shift|book|switch|transfer|reassign)$/u.test(words[0]?.text ?? '') &&
    /^(?:that|it|this|that one|that last)$/u.test(words[1]?.text ?? '') &&
    /^(?:to|onto|under|on)$/u.test(words[2]?.text ?? '') &&
    hasTag(words[3], 'machine')
  );
}

/** "could you fix that to 7 h": a figure in a unit of entries, and nothing that is mended. */
const fixesTo = ({ items }: Span, at: number): boolean =>
  /^fix that$|^fix it$/u.test(
    `${items[at]?.text ?? ''}${/ /u.test(items[at]?.text ?? '') ? '' : ` ${items[at + 1]?.text ?? ''}`}`,
  ) && items.slice(at + 1).some((item, i) => item.text === 'to' && isFigure(items[at + 2 + i]));

/** "it should be 6", "should read petg", "last entry should say elm": of an entry; "cedar should be fine" is of a machine. */
const oughts = (span: Span): boolean =>
  // "should be here thursday" is of what was ordered
  !span.items.some((item) => isFn(item, 'here', 'there', 'ready')) &&
  phrasesOf(span, 'ought').some((one) => {
    let i = one.from - 1;
    let named = false;
    // "the figure for maple should have been 75": of an entry that is named by its machine
    while (
      i >= 0 &&
      !isBreak(span.items[i]) &&
      (covered(span, i, 'adverb') || hasTag(span.items[i], 'machine'))
    ) {
      named ||= hasTag(span.items[i], 'machine');
      i -= 1;
    }
    if (named) return covered(span, i, 'entry', 'field');
    return i < 0 || isBreak(span.items[i]) || covered(span, i, 'that', 'entry', 'field', 'marker', 'hint');
  });

/** "no, 3 h", "sorry, maple", "actually yesterday": a word of checking oneself and a value right behind it. */
function hints(span: Span): boolean {
  const { items } = span;
  const said = phrasesOf(span, 'hint').filter((one) => whole(items, one));
  const last = said.at(-1);
  if (!last || !said.some((one) => one.from <= 1)) return false;
  const next = items[last.to];
  const faint = /^(?:no|nope|nah|oh|well)\b/u.test(items[last.from]?.text ?? '');
  return !faint || isBreak(next) || isFigure(next);
}
/** "no plastic coming out" is one word of its own, whatever it begins with. */
const whole = (items: readonly Item[], { from, to }: ControlPhrase): boolean =>
  items.slice(from, to).every((item) => !hasTag(item, 'symptom', 'complaint', 'finding', 'state'));

/** "i did that yesterday", "it happened on Monday", "that was done by hand": only the day of a deed is told anew. */
const again = (span: Span, sided: readonly Sided[]): boolean =>
  phrasesOf(span, 'deed').length > 0 &&
  sided.every(({ item }) => hasTag(item, 'date')) &&
  (phrasesOf(span, 'that', 'deed').some((one) => one.from <= 2) || relativeHead(span) !== undefined);

/** "*450 g", "maple*": what chat writes for "I meant". */
const STARRED = 6;
const isStarred = ({ items }: Span): boolean =>
  items.length <= STARRED && (items[0]?.text === '*' || items.at(-1)?.text === '*');

function signalsOf(span: Span, sided: readonly Sided[]): ReadonlySet<Signal> {
  const strong = phrasesOf(span, 'marker').length > 0 || isStarred(span);
  const found: [Signal, boolean][] = [
    ['marker', strong],
    ['ought', oughts(span)],
    ['hint', hints(span)],
    ['change', changes(span)],
    ['told', isTold(span) && (pointsAt(span) || contrasts(sided))],
    ['points', pointsAt(span)],
    ['contrast', contrasts(sided)],
    ['again', again(span, sided)],
  ];
  return new Set(found.filter(([, holds]) => holds).map(([name]) => name));
}

/** Words that belong to no correction. */
function strangers(span: Span): Item[] {
  const namedUntil = relativeHead(span)?.to ?? 0;
  const cleft = cleftIn(span);
  return span.items.filter((item, at) => {
    if (isMark(item) || isField(span.items, at) || isPointingOne(span.items, at)) return false;
    if (at < namedUntil || (cleft && at >= cleft.from && at < cleft.to)) return false;
    // "…, and it is in use again": of the machine, not of the entry.
    if (hasTag(item, 'state') && item.text.includes(' ')) return true;
    if (hasTag(item, 'unit') || (sense(item, 'value') !== undefined && isFigure(item))) return false;
    if (
      item.text === 'read' ||
      wasAt(span.items, at) ||
      isFn(item, 'not', 'instead', 'wrong', 'sorry', 'only', 'until') ||
      item.text === "'s"
    )
      return false;
    return !covered(span, at) && !tellsOfMe(span, at);
  });
}
/** The "I" of "I wrote", "I meant", "I got it wrong". */
const tellsOfMe = (span: Span, at: number): boolean =>
  /^(?:i|we|i've|i have|have|had|'ve|'d|was|were|am|'m|do|did|been)$/u.test(span.items[at]?.text ?? '') &&
  isTold(span);

/** With a word that can only correct, a few words of colour may stand beside; never a deed, a trouble or a state. */
const COLOUR = 3;
function isClosed(span: Span, signals: ReadonlySet<Signal>): boolean {
  const odd = strangers(span);
  if (odd.length === 0) return true;
  const tells = (item: Item): boolean => hasTag(item, 'verb', 'symptom', 'complaint', 'state', 'foreign', 'human', 'timber', 'part', 'thing') || isFn(item, 'i', 'we', 'you', 'someone', 'if', 'will', 'would', 'should', 'please', 'who', 'what', 'when', 'why', 'how'); // prettier-ignore
  return signals.has('marker') && odd.length <= COLOUR && !odd.some(tells);
}

/** A value alone, after a word that says it is wrong: figures with machines are an entry of their own. */
function isTooFull(sided: readonly Sided[], signals: ReadonlySet<Signal>): boolean {
  const right = new Set(sided.filter((one) => one.side === 'right').map(({ item }) => kindOf(item)));
  const weak =
    !signals.has('marker') &&
    !signals.has('ought') &&
    !contrastsFigure(sided) &&
    !signals.has('change') &&
    !signals.has('told');
  return weak && right.has('figure') && (right.has('machine') || right.has('part'));
}

const CORRECTS: ReadonlySet<string> = new Set(['marker', 'ought', 'hint', 'change', 'told', 'deed']);
/** Something is there of which a signal could be made: a phrase, a star, a "was", a denial. */
export const mayCorrect = ({ items, phrases }: Span): boolean =>
  phrases.some(({ code }) => CORRECTS.has(code)) ||
  items.some((item) => isFn(item, 'not', 'wrong') || OPENS_SIGNAL.test(item.text));
const OPENS_SIGNAL = /^(?:was|were|wasn't|weren't|\*|n't|instead of|rather than|read)$/u;

/** What the stretch sets, if it is a correction and nothing else. */
export function correctionOf(items: readonly Item[], today: LocalDate): Change | undefined {
  if (items.length === 0 || items.length > LONGEST_CONTROL) return undefined;
  const span = spanOf(items);
  if (!mayCorrect(span) || asks(span) || intends(span)) return undefined;
  const sided = sidesOf(span);
  if (sided.length === 0) return troubleMeant(span);
  const signals = signalsOf(span, sided);
  if (signals.size === 0 || isTooFull(sided, signals) || !isClosed(span, signals)) return undefined;
  const alarm = span.items.some((item) => /alarm/u.test(item.text));
  if (alarm || phrasesOf(span, 'undo').length > 0) return undefined;
  const wrong = new Set(sided.filter((one) => one.side !== 'right').map((one) => one.item));
  const set = changeOf(
    sided,
    items.filter((item) => !wrong.has(item) && !isMark(item)),
    today,
  );
  // "alder's fans not today, tomorrow" puts a task off
  const putsOff =
    set.on !== undefined && set.on > today && items.some((item) => hasTag(item, 'part', 'thing'));
  if (putsOff && [...signals].every((one) => one === 'contrast')) return undefined;
  return Object.keys(set).length === 0 ? undefined : set;
}
/** "meant to grease the screw today": what was to be done, and no other word for what was. */
const intends = ({ items }: Span): boolean =>
  items.some(
    (item, at) =>
      /(?:^|\s)(?:meant|meaning) to$/u.test(item.text) &&
      items[at + 1]?.senses.some(
        (s) => s.tag === 'verb' && s.form === 'base' && s.code !== 'say' && s.code !== 'log',
      ) === true,
  );
/** "I said squeak but it was grinding", "that wasn't a rattle, more of a squeak": a trouble told before is called otherwise. */
function troubleMeant(span: Span): Change | undefined {
  const { items } = span;
  const sides = { wrong: 0, right: 0 };
  const right: Item[] = [];
  let side: 'wrong' | 'right' = 'right';
  items.forEach((item, at) => {
    if (isBreak(item)) side = 'right';
    else if (
      isFn(item, 'not') ||
      item.text === "n't" ||
      (startsAt(span, at, 'told') && isFn(items[at - 1], 'i', 'we'))
    )
      side = 'wrong';
    if (isTrouble(item)) sides[side] += 1;
    if (side === 'right' && !isBreak(item)) right.push(item);
  });
  const open = strangers(span).some((item) => !isTrouble(item) && !isFn(item, 'more', 'of'));
  if (
    sides.wrong !== 1 ||
    sides.right !== 1 ||
    open ||
    items.some((item) => isFn(item, 'anymore', 'now', 'still'))
  )
    return undefined;
  const symptom = symptomsIn(sceneOf(right))[0]?.symptom;
  return symptom === undefined ? undefined : { symptom };
}
const isTrouble = (item: Item): boolean => hasTag(item, 'symptom', 'complaint') || isThing(item, 'jam');

/** "can you change that to petg?" asks for it; "was it maple?" asks. */
const asks = (span: Span): boolean =>
  span.items.some((item) => item.text === '?') && !changes(span) && phrasesOf(span, 'marker').length === 0;

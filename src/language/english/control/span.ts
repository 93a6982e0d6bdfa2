/** The stretches of a message in which an entry can be put right: their items, marks kept, and the phrases over them. */
import { hasTag, isFn, type Item, sense } from '../../item.ts';
import { type Phrase, phraseReader } from '../../phrases.ts';
import { CONTROL_WORDS, type ControlCode } from '../words/control.ts';

export type ControlPhrase = Phrase<ControlCode>;
const read = phraseReader<ControlCode>(CONTROL_WORDS);

export interface Span {
  readonly items: readonly Item[];
  readonly phrases: readonly ControlPhrase[];
}
export const spanOf = (items: readonly Item[]): Span => ({
  items,
  phrases: read(items).filter(
    ({ from, to }) => (to - from > 1 || !isTrouble(items[from])) && !isCounting(items, from, to),
  ),
});
/** "the screws are undone", "homes in the wrong place": a trouble said in several words takes nothing back. */
const isTrouble = (item: Item | undefined): boolean =>
  hasTag(item, 'symptom') && item?.text.includes(' ') === true;
/** "I make it seven end stops": counts, and puts nothing right. */
const isCounting = (items: readonly Item[], from: number, to: number): boolean =>
  to - from <= 2 && items[from]?.text.startsWith('make') === true && isFn(items[from - 1], 'i', 'we');

/** Longer than any correction; what is longer tells of something. */
export const LONGEST_CONTROL = 32;

const MARK = /^(?:[.,!?;:\n()*"=>/|^\u2191-]|\.\.\.|\[|\]|\u2022|\u2192)+$/u;
/** A letter never opens one, which settles it for nearly every item. */
export const isMark = (item: Item | undefined): boolean =>
  item !== undefined && !opensWithLetter(item.text) && MARK.test(item.text);
function opensWithLetter(text: string): boolean {
  const code = text.charCodeAt(0);
  return code >= 0x61 && code <= 0x7a;
}
const STOPS: ReadonlySet<string> = new Set(['.', '!', '?', ';', '\n', '...', '\u2022']);
export const isStop = (item: Item | undefined): boolean => item !== undefined && STOPS.has(item.text);
/** What ends the reach of a "not": a mark, or a word that joins. */
export const isBreak = (item: Item | undefined): boolean =>
  item !== undefined && (BREAK_WORDS.has(item.text) || isMark(item));
const BREAK_WORDS: ReadonlySet<string> = new Set(['but', 'so', 'because']);

export const phrasesOf = (span: Span, ...codes: readonly ControlCode[]): readonly ControlPhrase[] =>
  span.phrases.filter((one) => codes.includes(one.code));
export const covered = (span: Span, at: number, ...codes: readonly ControlCode[]): boolean =>
  span.phrases.some(
    (one) => one.from <= at && at < one.to && (codes.length === 0 || codes.includes(one.code)),
  );
export const startsAt = (
  span: Span,
  at: number,
  ...codes: readonly ControlCode[]
): ControlPhrase | undefined =>
  span.phrases.filter((one) => one.from === at && codes.includes(one.code)).sort((a, b) => b.to - a.to)[0];

/** "the one", "that one": points, and counts nothing. */
export const isPointingOne = (items: readonly Item[], at: number): boolean =>
  /^(?:(?:the|that|this) )?ones?$/u.test(items[at]?.text ?? '') &&
  (items[at]?.text !== 'one' ||
    /^(?:the|that|this|wrong|last|other|previous|which)$/u.test(items[at - 1]?.text ?? ''));

const AMOUNTS: ReadonlySet<string> = new Set(['hours', 'grams', 'metres', 'bare', 'clock', 'days', 'count']);
/** Figures that an entry can have; a bore or a temperature is none. */
export const isFigure = (item: Item | undefined): boolean => AMOUNTS.has(sense(item, 'value')?.code ?? '');
/** A value that some field of an entry can take. */
export const isField = (items: readonly Item[], at: number): boolean => {
  const item = items[at];
  if (!item || isPointingOne(items, at)) return false;
  if (isFigure(item) || hasTag(item, 'machine', 'material', 'date', 'reason', 'spec')) return true;
  return isPartLike(item) || isReason(item);
};
const AXES: ReadonlySet<string> = new Set([
  'x-axis',
  'y-axis',
  'bed',
  'fan',
  'ball-screw',
  'mains-lead',
  'plug',
  'tube-end',
]);
export const isPartLike = (item: Item): boolean =>
  hasTag(item, 'part') || item.senses.some((s) => s.tag === 'thing' && AXES.has(s.code));
export const isReason = (item: Item): boolean =>
  hasTag(item, 'reason') ||
  item.senses.some((s) => s.tag === 'complaint' && (s.code === 'worn' || s.code === 'broken'));

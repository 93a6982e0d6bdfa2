/**
 * Which of the values in a correction is the right one. "Not X but Y", "I wrote X, it was Y", "X was wrong, it was Y",
 * "those X were Y": the wrong one, the one written before, and the one that only names the entry are told apart here.
 */
import { isFn, type Item } from '../../item.ts';
import { relativeHead } from './relative.ts';
import { covered, isBreak, isField, isFigure, isStop, type Span, startsAt } from './span.ts';

export type Side = 'right' | 'wrong' | 'subject';
export interface Sided {
  readonly item: Item;
  readonly at: number;
  readonly side: Side;
}

/** "instead of", "rather than" after what was written turn the tables: "I typed 21 instead of 12". */
const turns = (item: Item | undefined): boolean =>
  item?.text === 'instead of' || item?.text === 'rather than';
const denies = (item: Item | undefined): boolean =>
  (isFn(item, 'not') || item?.text === "n't") && !isFn(item, 'only');
const tells = (span: Span, at: number): boolean =>
  startsAt(span, at, 'told') !== undefined && tellerBefore(span, at) && !covered(span, at, 'marker');
/** "I wrote", "I just said", "we had put". */
function tellerBefore({ items }: Span, at: number): boolean {
  for (let i = at - 1; i >= Math.max(0, at - 3); i -= 1) {
    if (isFn(items[i], 'i', 'we') || /^i(?: |$)/u.test(items[i]?.text ?? '')) return true;
    if (
      !isFn(items[i], 'just', 'have', 'before', 'do') &&
      !/^(?:first|before|accidentally|wrongly)$/u.test(items[i]?.text ?? '')
    )
      return false;
  }
  return false;
}
export const isTold = (span: Span): boolean => span.items.some((_, at) => tells(span, at));

export function sidesOf(span: Span): Sided[] {
  const found: Sided[] = [];
  const { items } = span;
  const head = relativeHead(span);
  let side: Side = 'right';
  let told = false;
  let opened = 0;
  items.forEach((item, at) => {
    if (isBreak(item)) {
      side = 'right';
      told = false;
      opened = found.length;
    } else if (told && startsAt(span, at, 'ought') !== undefined) {
      side = 'right';
      told = false;
    } else if (head && at === head.told) {
      found.splice(opened, found.length, ...found.slice(opened).map(asSubject));
      side = 'right';
      told = false;
      if (isField(items, at)) found.push({ item, at, side });
      return;
    } else if (turns(item)) side = told ? 'right' : 'wrong';
    else if (denies(item)) side = 'wrong';
    else if (tells(span, at)) {
      side = 'wrong';
      told = true;
    } else if (isWrongly(span, at)) found.splice(opened, found.length, ...found.slice(opened).map(blamed));
    else if (isBe(item) && side === 'right')
      found.splice(opened, found.length, ...found.slice(opened).map(asSubject));
    // "for 640 g read 604 g"
    if (item.text === 'read' && isFn(items[opened === 0 ? 0 : at - 2], 'for'))
      found.splice(
        opened,
        found.length,
        ...found.slice(opened).map((one) => ({ ...one, side: 'wrong' as const })),
      );
    if (isFn(item, 'it') && side !== 'right' && !told && found.length > 0) side = 'right';
    if (isField(items, at)) found.push({ item, at, side });
  });
  return withoutSubjectOnly(found);
}
const isBe = (item: Item): boolean =>
  /^(?:was|were|is|are|should|should be|should have been|should've been|needs to be|ought to be|'s)$/u.test(
    item.text,
  );
const isWrongly = ({ items }: Span, at: number): boolean =>
  isFn(items[at], 'wrong') && isFn(items[at - 1], 'be') && !isStop(items[at]);
/** The figure is wrong; the machine beside it names the entry. */
const blamed = (one: Sided): Sided => ({ ...one, side: isFigure(one.item) ? 'wrong' : 'subject' });
const asSubject = (one: Sided): Sided => (one.side === 'right' ? { ...one, side: 'subject' } : one);
/** "rowan was the one I meant": with nothing after it, what stood first is the right one. */
function withoutSubjectOnly(found: readonly Sided[]): Sided[] {
  return found.some((one) => one.side === 'right')
    ? [...found]
    : found.map((one) => (one.side === 'subject' ? { ...one, side: 'right' } : one));
}

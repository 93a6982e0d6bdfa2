/** Clauses that say which entry is meant, or stress what it was of: "that belt job I put in was …", "it was hazel I oiled". */
import { isFn, type Item } from '../../item.ts';
import { covered, isBreak, isField, isMark, type Span, startsAt } from './span.ts';

/** "that belt job I put in", "the nozzle swap I logged": which entry, by what it is of. */
export interface RelativeHead {
  /** Where its noun ends and "I logged" begins. */
  readonly to: number;
  /** Behind the verb of telling. */
  readonly told: number;
}
const LONGEST_HEAD = 6;
export function relativeHead(span: Span): RelativeHead | undefined {
  const { items } = span;
  const first = items.findIndex((item, at) => !isMark(item) && !covered(span, at, 'hint', 'marker'));
  // "what I put for cedar was meant for birch"
  if (items[first]?.text === 'what' && isFn(items[first + 1], 'i', 'we')) {
    const told = startsAt(span, pastAdverbs(items, first + 2), 'told');
    return told ? { to: first + 1, told: told.to } : undefined;
  }
  if (!isFn(items[first], 'article', 'this', 'these', 'my')) return undefined;
  for (let at = first + 1; at <= first + LONGEST_HEAD && !isBreak(items[at]); at += 1) {
    if (!isFn(items[at], 'i', 'we')) continue;
    const verb = pastAdverbs(items, at + 1);
    const told = startsAt(span, verb, 'told');
    return told && at > first + 1 ? { to: at, told: told.to } : undefined;
  }
  return undefined;
}

/** "I have just logged". */
function pastAdverbs(items: readonly Item[], from: number): number {
  let at = from;
  while (at < from + 2 && isFn(items[at], 'just', 'have', 'do')) at += 1;
  return at;
}

/** "it was the thermistor I changed, not the heater": the deed that is told of again, behind what is stressed. */
export function cleftIn({ items }: Span): { readonly from: number; readonly to: number } | undefined {
  const was = items.findIndex(
    (item, at) => /^(?:was|were|'s)$/u.test(item.text) && isFn(items[at - 1], 'it', 'this'),
  );
  if (was < 0) return undefined;
  const from = items.findIndex(
    (item, at) => at > was + 1 && isFn(item, 'i', 'we') && isStressed(items, at, was),
  );
  if (from < 0) return undefined;
  let to = from + 1;
  while (to < items.length && to <= from + 4 && isDoing(items[to])) to += 1;
  return to > from + 1 ? { from, to } : undefined;
}
const isStressed = (items: readonly Item[], at: number, was: number): boolean =>
  items.slice(was + 1, at).some((_, i) => isField(items, was + 1 + i)) &&
  !items.slice(was + 1, at).some(isBreak);
const isDoing = (item: Item | undefined): boolean =>
  item !== undefined &&
  !isBreak(item) &&
  !isFn(item, 'not') &&
  (item.senses.some((s) => s.tag === 'verb' && s.form !== 'base') ||
    isFn(item, 'have', 'up', 'on', 'in', 'out', 'just'));

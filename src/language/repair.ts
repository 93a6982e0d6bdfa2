/**
 * Self-repair within a breath: "ran 5, no wait, 6 hours", "the x, sorry, y belt", "to Friday - Monday I mean". The value said
 * last takes the place of the one before it, so that every later stage reads the message as it was meant.
 */
import { isBreak, isField, isFigure, isMark, isPartLike } from './english/control/span.ts';
import { hasTag, isFn, type Item, sense, type Sense } from './item.ts';
import { phraseReader } from './phrases.ts';

const EDITS = phraseReader({
  edit: "nah, eh, ach, och, hmm, oh, aye no, call it, let's call it, nah wait, lol, haha, scrap that, forget that, nvm, never mind, lol no, no, no wait, excuse me, no excuse me, pardon, no pardon, beg your pardon, i beg your pardon, excuse, no sorry, nope, sorry, i am sorry, i 'm sorry, i am so sorry, so sorry, apologies, my apologies, excuse me please, i mean, i meant, make that, make it, scratch that, strike that, correction, rather, or rather, i tell a lie, tell a lie, i lie, wait, oops, whoops, uh, er, err, erm, um, hang on, hold on, actually, that should be, should be, my mistake, my bad, typo, it was, that was, well",
});
/** Said of much else: these alone repair nothing. */
const FAINT = /^(?:lol|haha|eh|ach|och|hmm|oh|well|it|it was|that was|was|actually|that|should|should be)$/u;

interface Cut {
  /** Marks and words of correcting oneself. */
  readonly from: number;
  /** The new value or values. */
  readonly anew: number;
  readonly end: number;
}

/** From a break on: words of correcting, then nothing but values up to the next break. */
function cutAt(items: readonly Item[], at: number, edits: Uint8Array): Cut | undefined {
  let i = at;
  let firm = false;
  while (i < items.length && (isMark(items[i]) || edits[i] === 1)) {
    if (edits[i] === 1 && !FAINT.test(items[i]?.text ?? '')) firm = true;
    i += 1;
  }
  if (!firm || i === at) return undefined;
  const bareNo = /^(?:no|nope)$/u.test(items[i - 1]?.text ?? '');
  if (bareNo && !isFigure(items[i])) return undefined;
  let end = i;
  while (end < items.length && isValueWord(items, end) && !isBreak(items[end])) end += 1;
  // "Monday I mean": the words may stand behind the value too.
  return end === i || (end < items.length && !isBreak(items[end])) ? undefined : { from: at, anew: i, end };
}
const isValueWord = (items: readonly Item[], at: number): boolean =>
  isField(items, at) || hasTag(items[at], 'unit') || isFn(items[at], 'article', 'on', 'for', 'to', 'of', 'at', 'until', 'with', 'its', 'possessive') || items[at]?.text === 'in'; // prettier-ignore

const kindOf = (item: Item): string => {
  const value = sense(item, 'value');
  if (hasTag(item, 'machine')) return 'machine';
  if (value && isFigure(item)) return /^(?:days|grams|metres)$/u.test(value.code) ? value.code : 'hours';
  if (hasTag(item, 'date')) return 'date';
  if (hasTag(item, 'material')) return 'material';
  return isPartLike(item) ? 'part' : 'other';
};
/** The figure said anew keeps the unit of the one that it replaces. */
function inPlaceOf(old: Item, anew: Item): Item {
  const [from, to] = [sense(old, 'value'), sense(anew, 'value')];
  if (!from || to?.code !== 'bare' || from.code === 'bare') return anew;
  const senses = anew.senses.map((s): Sense => (s.tag === 'value' ? { ...s, code: from.code } : s));
  return { ...anew, senses };
}
/** How far back the value that is repaired may stand. */
const REACH = 14;

/** "On Monday, no, sorry, on Tuesday, maple printed …": the day or the name stands first, what happened comes after. */
const opensWithField = (items: readonly Item[], end: number): boolean =>
  items.slice(0, end).every((item) => hasTag(item, 'date', 'machine') || isFn(item, 'on', 'in', 'article'));
/** A deed, a trouble or a machine stands before: there is something to repair. */
const tells = (items: readonly Item[]): boolean =>
  items.some((item) => hasTag(item, 'verb', 'machine', 'complaint', 'symptom')) &&
  items.some((item) => !isMark(item) && hasTag(item, 'machine', 'verb', 'part', 'thing'));

function apply(items: readonly Item[], cut: Cut, edits: Uint8Array): Item[] | undefined {
  const out = [...items];
  const moved = new Set<number>();
  for (let i = cut.anew; i < cut.end; i += 1) {
    const anew = items[i];
    if (!anew || !isField(items, i)) continue;
    const old = out.findLastIndex(
      (item, at) =>
        at < cut.from && cut.from - at <= REACH && isField(out, at) && kindOf(item) === kindOf(anew),
    );
    const before = out[old];
    if (!before) continue;
    out[old] = inPlaceOf(before, anew);
    moved.add(i);
  }
  if (moved.size === 0) return undefined;
  return out.filter(
    (_, i) => i < cut.from || i >= cut.end || (i >= cut.anew && !moved.has(i) && edits[i] !== 1),
  );
}

/** More repairs than this in one message are no repairs. */
const MOST = 6;
export function repaired(items: readonly Item[]): readonly Item[] {
  let current = renamed(items);
  for (let n = 0; n < MOST; n += 1) {
    const next = repairOnce(current);
    if (!next) return current;
    current = next;
  }
  return current;
}
function repairOnce(items: readonly Item[]): Item[] | undefined {
  const phrases = EDITS(items);
  if (phrases.length === 0) return undefined;
  const edits = new Uint8Array(items.length);
  for (const { from, to } of phrases) if (coversItems(items, from, to)) edits.fill(1, from, to);
  for (let at = 1; at < items.length; at += 1) {
    const opens = (isBreak(items[at]) || edits[at] === 1) && !isMark(items[at - 1]) && edits[at - 1] !== 1;
    const cut = opens ? (cutAt(items, at, edits) ?? cutBehind(items, at, edits)) : undefined;
    const tellsBefore =
      cut !== undefined &&
      (tells(items.slice(0, at)) || (opensWithField(items, at) && tells(items.slice(cut.end))));
    const done = cut && tellsBefore ? apply(items, cut, edits) : undefined;
    if (done) return done;
  }
  return undefined;
}
/** A name is put right in a message that somebody said, not in a long log. */
const LONGEST_NAMED = 400;
/** "Birch, no, excuse me, Cedar has printed …": the name said anew takes the place of the one right before. */
function renamed(items: readonly Item[]): readonly Item[] {
  if (items.length > LONGEST_NAMED || !items.some((item) => hasTag(item, 'machine'))) return items;
  const phrases = EDITS(items).filter(({ from, to }) => coversItems(items, from, to));
  if (phrases.length === 0) return items;
  const edits = new Set(
    phrases.flatMap(({ from, to }) => Array.from({ length: to - from }, (_, i) => from + i)),
  );
  for (let at = 1; at < items.length; at += 1) {
    if (!edits.has(at)) continue;
    let [from, to] = [at, at];
    while (/^(?:,|-|\.\.\.)$/u.test(items[from - 1]?.text ?? '')) from -= 1;
    while (edits.has(to) || /^(?:,|-|\.\.\.)$/u.test(items[to]?.text ?? '')) to += 1;
    const firm = items.slice(from, to).some((item, i) => edits.has(from + i) && !FAINT.test(item.text));
    const opens =
      from === 1 || isBreak(items[from - 2]) || isFn(items[from - 2], 'on', 'for', 'article', 'to', 'of');
    if (firm && opens && hasTag(items[from - 1], 'machine') && hasTag(items[to], 'machine'))
      return [...items.slice(0, from - 1), ...items.slice(to)];
  }
  return items;
}
/** "… on birch - maple I mean": the value, then the words. */
function cutBehind(items: readonly Item[], at: number, edits: Uint8Array): Cut | undefined {
  if (!isBreak(items[at])) return undefined;
  let anew = at;
  while (isMark(items[anew])) anew += 1;
  let end = anew;
  while (end < items.length && isValueWord(items, end)) end += 1;
  const behind = end;
  let last = end;
  while (last < items.length && edits[last] === 1) last += 1;
  const said = items.slice(behind, last).map((item) => item.text).join(' '); // prettier-ignore
  return end > anew &&
    /^(?:i mean|i meant|rather|sorry)/u.test(said) &&
    (last === items.length || isBreak(items[last]))
    ? { from: at, anew, end: last }
    : undefined;
}
/** A phrase that is only the head of a longer item repairs nothing: "no play". */
const coversItems = (items: readonly Item[], from: number, to: number): boolean =>
  items.slice(from, to).every((item) => item.text === 'scratch' || !hasTag(item, 'symptom', 'complaint', 'finding', 'state', 'date')) && items.slice(from, to).map((item) => item.text.split(' ').length).reduce((a, b) => a + b, 0) <= 4; // prettier-ignore

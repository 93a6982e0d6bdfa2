/** Where a message takes something back or puts it right: the whole of it, one of its sentences, or the tail of one. */
import type { AmendAct, LocalDate, UndoAct } from '../../act.ts';
import { hasTag, isFn, type Item } from '../../item.ts';
import { correctionOf, mayCorrect } from './correction.ts';
import { isBreak, isMark, isStop, LONGEST_CONTROL, spanOf } from './span.ts';
import { mayTakeBack, takenBack } from './undo.ts';

export interface Control {
  readonly act: AmendAct | UndoAct;
  /** UTF-16 offsets of the stretch. */
  readonly span: readonly [from: number, to: number];
}

/** More than this many sentences hold no correction that anybody would find again. */
const MOST_STRETCHES = 24;

function stretches(items: readonly Item[], ends: (item: Item) => boolean): Item[][] {
  const out: Item[][] = [[]];
  for (const item of items) {
    out.at(-1)?.push(item);
    if (ends(item)) out.push([]);
  }
  return out.filter((one) => one.some((item) => !isMark(item)));
}
const spanned = (items: readonly Item[]): Control['span'] => [items[0]?.from ?? 0, items.at(-1)?.to ?? 0];

/** `first`: nothing was told before this stretch in the same message. */
function controlIn(items: readonly Item[], today: LocalDate, first: boolean): Control | undefined {
  if (items.length > LONGEST_CONTROL) return undefined;
  const set = correctionOf(items, today);
  if (set) return { act: { kind: 'amend', ...set }, span: spanned(items) };
  const back = takenBack(items);
  return back && (first || !back.stated) ? { act: back.act, span: spanned(items) } : undefined;
}

export function readControl(items: readonly Item[], today: LocalDate): readonly Control[] {
  // A stretch has no word of correcting that the whole has not: most messages end here.
  const span = spanOf(items);
  return mayCorrect(span) || mayTakeBack(span) ? stretchesOf(items, today) : [];
}
function stretchesOf(items: readonly Item[], today: LocalDate): readonly Control[] {
  const whole = items.length <= LONGEST_CONTROL ? controlIn(items, today, true) : undefined;
  // "please strike the sock swap on rowan, that was the wrong machine": taken back, whatever the reason
  const opening = whole === undefined ? undefined : takenBack(stretches(items, isBreak)[0] ?? []);
  if (opening && !opening.stated && 'machine' in opening.act)
    return [{ act: opening.act, span: spanned(items) }];
  if (whole?.act.kind === 'amend') return [whole];
  const sentences = stretches(items, isStop).slice(0, MOST_STRETCHES);
  const found = sentences.flatMap((sentence, at): Control[] => {
    const own = controlIn(sentence, today, at === 0);
    if (own) return [own];
    const parts = stretches(sentence, isBreak).slice(0, MOST_STRETCHES);
    if (parts.length < 2) return [];
    return tails(parts, today, at === 0);
  });
  return found.length > 0 ? found : whole ? [whole] : [];
}

const isReasonOnly = ({ act }: Control): boolean =>
  act.kind === 'amend' && Object.keys(act).join() === 'kind,reason';
/** "swapped nozzle on birch, brass 0.4, was worn": what went in, and why; no word of correcting is there. */
const isStillTold = ({ act }: Control, before: readonly Item[], tail: readonly Item[]): boolean =>
  act.kind === 'amend' &&
  Object.keys(act).every((key) => /^(?:kind|reason|fitted|value)$/u.test(key)) &&
  before.some((item) => item.senses.some((s) => s.tag === 'verb' && s.form !== 'base')) &&
  !spanOf(tail).phrases.some(({ code }) => /^(?:marker|hint|ought|change|told)$/u.test(code));
/** "elm jammed, can you clear it": the jam, and no entry. */
const clearsTrouble = (before: readonly Item[], tail: readonly Item[]): boolean =>
  before.some((item) => hasTag(item, 'complaint', 'symptom')) &&
  tail.some((item) => /^(?:clear|remove|take out|get rid of|rip out)$/u.test(item.text));
/** The shortest row of parts at the end of a sentence, or its first part, that is a correction by itself. */
function tails(parts: readonly (readonly Item[])[], today: LocalDate, first: boolean): Control[] {
  const head = parts[0] ?? [];
  const opening = takenBack(head);
  if (opening && (first || !opening.stated)) return [{ act: opening.act, span: spanned(head) }];
  for (let from = 1; from < parts.length; from += 1) {
    const tail = parts.slice(from).flat();
    const found = controlIn(tail, today, false);
    // "…, both were worn" is of what was just told; it needs no correction.
    if (found && isStillTold(found, parts.slice(0, from).flat(), tail)) continue;
    if (!found || (tail.some((item) => isFn(item, 'both', 'they')) && isReasonOnly(found))) continue;
    if (!(found.act.kind === 'undo' && clearsTrouble(parts.slice(0, from).flat(), tail))) return [found];
  }
  return [];
}

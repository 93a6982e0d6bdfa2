/** What the speaker takes back: "undo", "delete what I just wrote", "that was a mistake", "undo the nozzle on alder". */
import type { UndoAct } from '../../act.ts';
import { hasTag, isFn, isThing, type Item, sensesOf } from '../../item.ts';
import { readMood } from '../../mood.ts';
import { makeScene, objects, type Scene } from '../../scene.ts';
import { partOf } from '../frames/parts-said.ts';
import { tasksNamed } from '../frames/tasks.ts';
import { isTold } from './sides.ts';
import {
  covered,
  isBreak,
  isFigure,
  isMark,
  LONGEST_CONTROL,
  phrasesOf,
  type Span,
  spanOf,
  startsAt,
} from './span.ts';

export interface TakenBack {
  readonly act: UndoAct;
  /** Said by a statement ("that never happened"), not by a wish: of this very message where that tells something. */
  readonly stated: boolean;
}

/** The first word that is no greeting, no regret and no courtesy. */
const headOf = (span: Span): number =>
  span.items.findIndex(
    (item, at) => !isMark(item) && (startsAt(span, at, 'undo', 'bin') !== undefined || !isCourtesy(span, at)),
  );
function isCourtesy(span: Span, at: number): boolean {
  const item = span.items[at];
  if (
    isFn(item, 'please', 'sorry', 'no', 'thanks', 'just', 'now', 'yes') ||
    item?.text === 'fettle' ||
    hasTag(item, 'joint')
  )
    return true;
  // "I take that back"
  if (/^(?:i|we|i take)$/u.test(item?.text ?? '') && phrasesOf(span, 'back').length > 0)
    return item?.text.endsWith('take') !== true;
  return covered(span, at, 'adverb', 'hint') && !covered(span, at, 'that', 'entry');
}

/** "what I wrote", "the hours I put in for maple". */
const relative = (span: Span): boolean =>
  isTold(span) ||
  phrasesOf(span, 'told').some((one) => one.from > 0 && isFn(span.items[one.from - 1], 'i', 'we'));
const isEntry = (span: Span): boolean =>
  phrasesOf(span, 'entry').length > 0 || relative(span) || span.items.some((item) => isThing(item, 'entry'));

/** What follows holds only words that are known here, and none of a deed under way. */
const known = (items: readonly Item[]): boolean =>
  items.every(
    (item) => isMark(item) || (item.senses.length > 0 && !isFn(item, 'you') && !hasTag(item, 'foreign')),
  );

/** "undo …", "please delete …": wished. */
function wishes(span: Span): boolean {
  const head = headOf(span);
  const firm = startsAt(span, head, 'undo');
  const rest = span.items.slice(firm?.to ?? head);
  if (firm) return isEntry(span) || phrasesOf(span, 'that').length > 0 || rest.every(isMark) || known(rest);
  const soft = startsAt(span, head, 'bin');
  if (!soft) return false;
  const after = span.items.slice(soft.to);
  const word = span.items[soft.from]?.text ?? '';
  if (/^(?:i )?(?:take|roll)$/u.test(word)) return goesBack(span, soft.to);
  if (ofAPrint(after)) return false;
  if (isEntry(span) && !partsOnly(after)) return true;
  if (/^(?:delete|remove|erase|strike|scratch)$/u.test(word) && isDeedNoun(after)) return true;
  const pointed = phrasesOf(span, 'that').some((one) => one.from >= soft.to && one.from - soft.to <= 1);
  const bare = after.every(
    (item, i) =>
      isMark(item) || covered(span, soft.to + i, 'that', 'adverb') || isFn(item, 'again', 'please', 'thanks'),
  );
  return (pointed && bare) || (bare && isRegret(span, head, word));
}
/** "remove the sock swap": what was told of, by its noun. */
const isDeedNoun = (after: readonly Item[]): boolean => {
  const words = after.filter((item) => !isMark(item) && !isFn(item, 'please', 'thanks'));
  const at = words.findIndex((item) =>
    /^(?:swap|change|replacement|cleaning|oiling|greasing|tensioning|levelling|leveling)$/u.test(item.text),
  );
  return (
    isFn(words[0], 'article', 'this', 'my') &&
    at > 0 &&
    words
      .slice(1)
      .every(
        (item, i) =>
          i + 1 === at ||
          hasTag(item, 'part', 'machine', 'spec', 'thing') ||
          isFn(item, 'on', 'for', 'of', 'possessive', 'article', 'in'),
      )
  );
};
/** "take that back", "roll it back". */
const goesBack = (span: Span, from: number): boolean =>
  phrasesOf(span, 'back').some((one) => one.from >= from && one.from - from <= 5) &&
  (phrasesOf(span, 'that', 'entry').length > 0 || relative(span));
/** "wrong, delete", "scratch", "false entry, please remove": nothing need follow after a word of regret. */
const isRegret = (span: Span, head: number, word: string): boolean =>
  /^(?:scratch|strike|delete)$/u.test(word) ||
  phrasesOf(span, 'false', 'marker').some((one) => one.from < head) ||
  span.items.slice(0, head).some((item) => isFn(item, 'wrong'));
/** "cancel the job and leave me a note": what is cancelled is a print, whatever else is spoken of. */
const ofAPrint = (items: readonly Item[]): boolean => {
  const at = items
    .slice(0, 4)
    .findIndex((item) => item.senses.some(({ tag }) => tag === 'thing' || tag === 'part'));
  // "that print entry" is an entry
  return isThing(items[at], 'print', 'job', 'spool') && !isThing(items[at + 1], 'entry');
};
/** "clear the last jam", "bin the last cloth": the last of things, not of entries. */
const partsOnly = (items: readonly Item[]): boolean =>
  items.some((item) => hasTag(item, 'part') || isThing(item, 'jam', 'print', 'job', 'spool')) &&
  !items.some((item) => isThing(item, 'entry'));

/** "that never happened", "my last entry was a mistake": told of an entry. */
function states(span: Span): boolean {
  const said = phrasesOf(span, 'false');
  return said.some((one) => {
    const subject = span.items.slice(0, one.from);
    const lone = subject.every(
      (item) =>
        isMark(item) ||
        isFn(item, 'sorry', 'no') ||
        covered(span, span.items.indexOf(item), 'marker', 'hint'),
    );
    const text = span.items
      .slice(one.from, one.to)
      .map((item) => item.text)
      .join(' ');
    if (tellsMore(span, one.to) || toldBefore(span, one.from)) return false;
    if (text === 'happened')
      return phrasesOf(span, 'that').some((that) => span.items[that.from]?.text.startsWith('none') === true);
    if (lone)
      return /^(?:wrong (?:ch|win|ro|th|gr)|false|didn't happen|never happened|was a test)/u.test(text);
    return (
      span.phrases.some(
        (that) =>
          (that.code === 'that' || that.code === 'entry') && that.to <= one.from && one.from - that.from <= 6,
      ) ||
      relative(span) ||
      namesDeed(span, one.from)
    );
  });
}
/** "the fire drill went off, so that never happened": of what was told just before, not of an entry. */
function toldBefore(span: Span, before: number): boolean {
  const from = span.items.findLastIndex((item, at) => at < before && isBreak(item));
  return span.items
    .slice(0, Math.max(0, from))
    .some(
      (item, at) =>
        !covered(span, at, 'told', 'false', 'marker') &&
        item.senses.some((s) => s.tag === 'verb' && s.form === 'past'),
    );
}
/** "it wasn't me who broke the plate": goes on about something else. */
const tellsMore = ({ items }: Span, from: number): boolean => {
  const end = items.findIndex((item, at) => at >= from && isBreak(item));
  return items
    .slice(from, end < 0 ? items.length : end)
    .some(
      (item) =>
        isFn(item, 'who', 'when', 'what', 'why', 'how') ||
        item.senses.some((s) => s.tag === 'verb' && s.form === 'past'),
    );
};

/** "the swap on cedar never happened": a deed by its noun. */
const namesDeed = (span: Span, before: number): boolean =>
  span.items
    .slice(0, before)
    .some((item) => item.senses.some((s) => s.tag === 'verb' && s.form === 'base')) &&
  isFn(span.items[0], 'article', 'my');

/** "I didn't actually swap it", "never changed that nozzle after all": a deed that was logged is denied. */
const denies = (span: Span): boolean =>
  span.items.some(
    (item, at) => isFn(item, 'not') && isFn(span.items[at - 1] ?? span.items[at], 'i', 'we', 'not'),
  ) &&
  span.items.some(
    (item, at) => isFn(item, 'not') && /^(?:actually|really do)/u.test(span.items[at + 1]?.text ?? ''),
  ) &&
  /^(?:i|we|sorry|no|oops|didn't|did)$/u.test(span.items[0]?.text ?? '') &&
  phrasesOf(span, 'that').length > 0;

/** Part or task by which only that of the entry is taken back. */
function fields(scene: Scene): Pick<UndoAct, 'part' | 'task'> {
  const part = objects(scene)
    .map((noun) => partOf(scene, noun))
    .find((one) => one !== undefined);
  const task = tasksNamed(
    scene,
    (verb) => verb.code !== 'did' && verb.code !== 'undo' && verb.code !== 'log',
  )[0]?.task;
  const swaps = scene.verbs.some((verb) => verb.code === 'swap');
  if (part !== undefined && (task === undefined || swaps)) return { part };
  return task === undefined ? {} : { task };
}

const TAKES_BACK: ReadonlySet<string> = new Set(['undo', 'bin', 'false']);
/** Some word of taking back, or a denial, is there: without one nothing is looked at more closely. */
export const mayTakeBack = (span: Span): boolean =>
  span.phrases.some(({ code }) => TAKES_BACK.has(code)) || span.items.some((item) => isFn(item, 'not'));

export function takenBack(items: readonly Item[]): TakenBack | undefined {
  if (items.length === 0 || items.length > LONGEST_CONTROL) return undefined;
  const span = spanOf(items);
  if (!mayTakeBack(span) || (phrasesOf(span, 'undo', 'bin', 'false').length === 0 && !denies(span)))
    return undefined;
  const clause = {
    items: items.filter((item) => !isMark(item)),
    joint: 'start',
    sentence: 0,
    asked: false,
  } as const;
  const mood = readMood(clause);
  if (
    mood.conditional ||
    (mood.reported && !relative(span)) ||
    (span.items.some(isFigure) && phrasesOf(span, 'marker').length > 0)
  )
    return undefined;
  const wished = wishes(span);
  if (!wished && !states(span) && !denies(span)) return undefined;
  const scene = makeScene(clause, mood, 0, false);
  const machine = sensesOf(items, 'machine')[0]?.code;
  return {
    act: { kind: 'undo', ...fields(scene), ...(machine === undefined ? {} : { machine }) },
    stated: !wished,
  };
}

/** One sentence of a message laid open for orders: what it names, and which facts hold of it. */
import type { Task } from '../../../maintenance/codes.ts';
import { hasTag, isFn, type Item, type SenseOf, sense, sensesOf } from '../../item.ts';
import { readMood } from '../../mood.ts';
import { makeScene, type Scene } from '../../scene.ts';
import type { AskCue, OrderCue } from '../../senses.ts';
import { taskPlanned } from '../frames/tasks.ts';

export type OrderFact =
  | OrderCue
  | `ask:${AskCue}`
  | `opens:${OrderCue}`
  | 'machine' | 'machine-twin' | 'person' | 'part' | 'thing' | 'task' | 'span' | 'date' | 'material' | 'trouble' | 'state-up'
  | 'question' | 'negated' | 'planned' | 'wished' | 'conditional' | 'requested' | 'reported' | 'hedged'
  | 'worked' | 'mended' | 'ran' | 'it' | 'nobody' | 'asked' | 'me' | 'all' | 'i' | 'who' | 'now' | 'by-whom' | 'tested' | 'have' | 'every' | 'goes' | 'curt' | 'colon'; // prettier-ignore

export interface Passage {
  readonly scene: Scene;
  readonly facts: ReadonlySet<OrderFact>;
  /** Machines named, without the one that another is likened to. */
  readonly machines: readonly string[];
  readonly twin?: string;
  readonly tasks: readonly Task[];
  /** The message as sent, and where this sentence stands in it. */
  readonly message: string;
  readonly span: readonly [from: number, to: number];
}

const ENDS = /^(?:[.!?;\n]|\.\.\.)$/u;

/** More items than this are no order that anybody wrote. */
const LONGEST = 40;

/** A sentence that may hold an order; it is laid open only where it is asked for. */
export interface Sentence {
  /** What few sentences have, seen at a glance: words of orders and of questions, "every", "by", a test. */
  readonly glance: ReadonlySet<OrderFact>;
  laidOpen(): Passage;
}

export function sentencesOf(
  items: readonly Item[],
  message: string,
  machines: readonly string[],
): Sentence[] {
  const found: Sentence[] = [];
  let from = 0;
  for (let at = 0; at <= items.length; at += 1) {
    const mark = items[at];
    if (mark && !ENDS.test(mark.text)) continue;
    const sentence = items.slice(from, at);
    from = at + 1;
    if (sentence.length === 0 || sentence.length > LONGEST) continue;
    let open: Passage | undefined;
    const asked = mark?.text === '?';
    found.push({
      glance: glanceAt(sentence),
      laidOpen: () => (open ??= passageOf(sentence, asked, message, machines)),
    });
  }
  return found;
}

function glanceAt(items: readonly Item[]): ReadonlySet<OrderFact> {
  const facts = new Set<OrderFact>();
  for (const item of items) {
    for (const s of item.senses) {
      if (s.tag === 'order') facts.add(s.code);
      else if (s.tag === 'cue') facts.add(`ask:${s.code}`);
      else if (s.tag === 'fn' && s.code === 'every') facts.add('every');
      else if (s.tag === 'verb' && s.code === 'test') facts.add('tested');
      else if (s.tag === 'state' && s.code === 'up') facts.add('state-up');
    }
    if (item.text === 'by') facts.add('by-whom');
  }
  return facts;
}

function passageOf(items: readonly Item[], asked: boolean, message: string, all: readonly string[]): Passage {
  const clause = { items, joint: 'sentence', sentence: 0, asked } as const;
  const scene = makeScene(clause, readMood(clause), 0, true);
  const twin = items.flatMap((item, at) => twinAt(items, item, at))[0];
  const named = [...new Set(sensesOf(items, 'machine').map(({ code }) => code))].filter((n) => n !== twin);
  const tasks = [...new Set(taskPlanned(scene).map(({ task }) => task))];
  const passage = { scene, tasks, message, span: scene.span, ...(twin === undefined ? {} : { twin }) };
  const everyone = named.length === 0 && items.some((item) => isFn(item, 'all')) ? all : named;
  return {
    ...passage,
    machines: everyone,
    facts: factsOf(scene, { machine: named.length > 0, twin: twin !== undefined, task: tasks.length > 0 }),
  };
}

/** "like hazel", "same as #5". */
function twinAt(items: readonly Item[], item: Item, at: number): string[] {
  if (!hasCue(item, 'twin')) return [];
  const next = items.slice(at + 1, at + 4).find((one) => hasTag(one, 'machine'));
  const code = sense(next, 'machine')?.code;
  return code === undefined ? [] : [code];
}

/** The first place of the cue, with the longest words that it may be said in there. */
export function cueIn(items: readonly Item[], code: OrderCue): SenseOf<'order'> | undefined {
  const first = items.find((item) => hasCue(item, code));
  const own = first ? sensesOf([first], 'order').filter((s) => s.code === code) : [];
  return own.toSorted((a, b) => b.until - a.until)[0];
}
const hasCue = (item: Item | undefined, code: OrderCue): boolean =>
  item?.senses.some((s) => s.tag === 'order' && s.code === code) ?? false;

/** Deeds that say that something was put right. */
const MENDS: ReadonlySet<string> = new Set(['swap', 'fit', 'install', 'fix', 'tighten', 'remove', 'plug', 'clean', 'put']); // prettier-ignore
/** Who did it: "by ElCo", "by me"; "by itself", "by 5", "by friday" name nobody. */
const isName = (item: Item | undefined): boolean =>
  item !== undefined && /^\p{L}{2,}$/u.test(item.text) && !isFn(item, 'it', 'its', 'article', 'now') && !hasTag(item, 'date', 'calendar', 'machine', 'part', 'thing', 'verb', 'value') && item.text !== 'itself'; // prettier-ignore
/** Deeds of telling and having are no work. */
const NO_WORK: ReadonlySet<string> = new Set(['say', 'get', 'give', 'log', 'need', 'have', 'keep', 'find', 'leave', 'read', 'run', 'print', 'start', 'stop', 'move', 'take', 'arrive', 'buy']); // prettier-ignore
/** Words after which a message's first content word comes. */
const OPENERS = /^(?:hey|hi|ok|okay|so|and|fettle|well|right|also|please|[,:-])$/u;

function factsOf(
  scene: Scene,
  { machine, twin, task }: { machine: boolean; twin: boolean; task: boolean },
): ReadonlySet<OrderFact> {
  const { items, mood, verbs, nouns, values } = scene;
  const facts = new Set<OrderFact>();
  for (const s of sensesOf(items, 'order')) facts.add(s.code);
  for (const s of sensesOf(items, 'cue')) facts.add(`ask:${s.code}`);
  const first = items.find((item) => !OPENERS.test(item.text));
  for (const s of first ? sensesOf([first], 'order') : []) facts.add(`opens:${s.code}`);
  const has = (...tags: Parameters<typeof hasTag>[1][]): boolean =>
    items.some((item) => hasTag(item, ...tags));
  const fn = (...codes: Parameters<typeof isFn>[1][]): boolean => items.some((item) => isFn(item, ...codes));
  const found: [OrderFact, boolean][] = [
    ['machine', machine],
    ['machine-twin', twin],
    ['person', has('person')],
    ['part', nouns.some((noun) => noun.part !== undefined && !noun.weak)],
    ['thing', nouns.some((noun) => noun.part === undefined && noun.code !== 'machine')],
    ['task', task],
    ['span', values.some((v) => v.code === 'hours' || v.code === 'days' || v.code === 'months')],
    ['date', has('date')],
    ['material', scene.materials.length > 0],
    ['trouble', has('symptom', 'complaint')],
    ['state-up', sensesOf(items, 'state').some((s) => s.code === 'up')],
    ['worked', verbs.some((v) => v.deed && v.form !== 'base' && !NO_WORK.has(v.code))],
    ['mended', verbs.some((v) => v.form !== 'base' && v.form !== 'ing' && MENDS.has(v.code))],
    ['ran', verbs.some((v) => v.deed && v.form === 'past' && (v.code === 'run' || v.code === 'print'))],
    ['it', fn('it', 'this')],
    ['all', fn('all')],
    ['i', fn('i')],
    ['who', fn('who')],
    ['now', items.some((item) => isFn(item, 'now') && !isFn(item, 'just'))],
    ['nobody', fn('nobody')],
    ['asked', scene.clause.asked],
    ['me', items.some((item) => item.text === 'me')],
    ['by-whom', items.some((item, at) => item.text === 'by' && isName(items[at + 1]))],
    ['tested', verbs.some((v) => v.deed && v.code === 'test')],
    ['have', fn('have')],
    ['every', fn('every')],
    ['goes', items.some((item) => /^(?:goes|leaves|leaving|going|will)$/u.test(item.text))],
    ['curt', items.length <= 3],
    ['colon', items.some((item) => item.text === ':' || item.text === '-')],
  ]; // prettier-ignore
  for (const [fact, holds] of found) if (holds) facts.add(fact);
  const moods = ['question', 'negated', 'planned', 'wished', 'conditional', 'requested', 'reported', 'hedged'] as const; // prettier-ignore
  for (const how of moods) if (mood[how]) facts.add(how);
  return facts;
}

/** The words as they were sent, from one offset to the end of the sentence. */
export const wordsFrom = ({ message, span }: Passage, from: number): string =>
  message.slice(from, span[1]).replace(/^[\s:,\u2013-]+|\s+$/gu, '');
export const wordsOf = (passage: Passage): string => wordsFrom(passage, passage.span[0]);

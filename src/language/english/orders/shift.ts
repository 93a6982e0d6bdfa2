import { isFn, type Item, sense } from '../../item.ts';
import { cueIn, type Passage, wordsFrom } from './passage.ts';
import type { OrderTopic } from './topic.ts';

const personIn = ({ scene }: Passage): string | undefined =>
  scene.items.flatMap((item) => sense(item, 'person')?.code ?? [])[0];

const UNSURE = ['question', 'negated', 'conditional', 'wished'] as const;

const HANDS = /^(?:i(?:'m| 'm| am)? )?hand(?:ing)? (?:over|off)(?: to)?$/u;

const worded = ({ scene }: Passage): Item[] => scene.items.filter(({ text }) => /[\p{L}\d]/u.test(text));

/** "handing over to Odd": a name that is also a plain word has its capital to tell it by. */
function namedTo(passage: Passage): string | undefined {
  const items = worded(passage);
  const at = items.findIndex((item, i) => isFn(item, 'to') && HANDS.test(items[i - 1]?.text ?? ''));
  const name = at < 0 ? undefined : items[at + 1];
  const said = name && passage.message.slice(name.from, name.to);
  return said !== undefined && /^\p{Lu}\p{Ll}+$/u.test(said) ? said.toLowerCase() : undefined;
}

/** "handing over: …", "over to you, Priya": with what is said after the colon as a note to the next shift. */
export const HAND_OVER: OrderTopic = {
  kind: 'handOver',
  why: 'a shift ends; what it leaves is a note, whatever work it names',
  rows: [
    // what stands behind the colon is for the next shift, in whatever mood: "don't start birch"
    { all: ['opens:handing-over', 'colon'], none: ['take-over'] },
    { all: ['opens:handing-over'], any: ['person', 'curt'], none: ['take-over', ...UNSURE] },
    // "I'm off, handing over": that it ends in handing over is seen to below
    { all: ['opens:handing-over', 'i'], none: ['take-over', 'part', 'task', 'machine', ...UNSURE] },
    { all: ['handing-over', 'person'], none: ['take-over', 'part', 'task', ...UNSURE] },
  ],
  covers: ['ask', 'unclear'],
  make(passage) {
    const cue = cueIn(passage.scene.items, 'handing-over');
    const to = personIn(passage) ?? namedTo(passage);
    const colon = passage.scene.items.find((item) => item.text === ':' || item.text === '-');
    const text = cue && colon ? passage.message.slice(colon.to).trim() : '';
    // a bare "handover" asks for the list, a bare "I'm off" says nothing of a shift
    if (to === undefined && text === '' && !HANDS.test(worded(passage).at(-1)?.text ?? '')) return undefined;
    return { kind: 'handOver', ...(to === undefined ? {} : { to }), ...(text === '' ? {} : { text }) };
  },
}; // prettier-ignore

export const TAKE_OVER: OrderTopic = {
  kind: 'takeOver',
  why: 'the answer to a hand-over',
  never: ['question', 'negated', 'conditional', 'wished', 'part', 'task', 'machine'],
  rows: [{ all: ['opens:take-over'] }, { all: ['take-over', 'person'] }],
  covers: ['ask', 'unclear', 'claim'],
  make(passage) {
    const from = passage.scene.items.some((item) => isFn(item, 'from')) ? personIn(passage) : undefined;
    return { kind: 'takeOver', ...(from === undefined ? {} : { from }) };
  },
};

export const NOTE: OrderTopic = {
  kind: 'note',
  why: 'kept as it is written, where nothing else was understood of it',
  never: ['question'],
  rows: [{ all: ['opens:note', 'machine'] }],
  make(passage) {
    const colon = passage.scene.items.find((item) => item.text === ':');
    const cue = cueIn(passage.scene.items, 'note');
    const from = colon?.to ?? cue?.until;
    const text = from === undefined ? '' : wordsFrom(passage, from);
    return text === '' ? undefined : { kind: 'note', machines: passage.machines, text };
  },
};

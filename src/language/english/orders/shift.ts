import { isFn, sense } from '../../item.ts';
import { cueIn, type Passage, wordsFrom } from './passage.ts';
import type { OrderTopic } from './topic.ts';

const personIn = ({ scene }: Passage): string | undefined =>
  scene.items.flatMap((item) => sense(item, 'person')?.code ?? [])[0];

const UNSURE = ['question', 'negated', 'conditional', 'wished'] as const;

/** "handing over: …", "over to you, Priya": with what is said after the colon as a note to the next shift. */
export const HAND_OVER: OrderTopic = {
  kind: 'handOver',
  why: 'a shift ends; what it leaves is a note, whatever work it names',
  rows: [
    // what stands behind the colon is for the next shift, in whatever mood: "don't start birch"
    { all: ['opens:handing-over', 'colon'], none: ['take-over'] },
    { all: ['opens:handing-over'], any: ['person', 'curt'], none: ['take-over', ...UNSURE] },
    { all: ['handing-over', 'person'], none: ['take-over', 'part', 'task', ...UNSURE] },
  ],
  covers: ['ask', 'unclear'],
  make(passage) {
    const cue = cueIn(passage.scene.items, 'handing-over');
    const to = personIn(passage);
    const colon = passage.scene.items.find((item) => item.text === ':' || item.text === '-');
    const text = cue && colon ? passage.message.slice(colon.to).trim() : '';
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

import { wordsOf } from './passage.ts';
import type { OrderTopic } from './topic.ts';

/** Said in so many words, or as what it was: the second means something only of a machine that is held. */
export const FALSE_ALARM: OrderTopic = {
  kind: 'falseAlarm',
  why: 'takes a hold back; before a repair that lifts one',
  never: ['asked', 'conditional', 'span', 'worked', 'me', 'every'],
  rows: [
    { all: ['false-alarm'] },
    {
      all: ['was-only'],
      none: ['question', 'state-up', 'came-back', 'part', 'task', 'material', 'mended', 'date'],
    },
    { all: ['could-be'], none: ['part', 'task', 'material', 'mended', 'trouble', 'date'] },
  ],
  drops: [],
  covers: ['gone', 'up', 'symptom', 'unclear'],
  make(passage) {
    const doubts = ['hedged', 'negated', 'wished', 'could-be'] as const;
    const said = passage.facts.has('false-alarm') && !doubts.some((one) => passage.facts.has(one));
    const certain = said || (passage.facts.has('was-only') && !passage.facts.has('could-be') && !passage.facts.has('hedged')); // prettier-ignore
    return { kind: 'falseAlarm', machines: passage.machines, certain, said, text: wordsOf(passage) };
  },
};

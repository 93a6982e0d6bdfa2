import { wordsOf } from './passage.ts';
import type { OrderTopic } from './topic.ts';

export const LIFT: OrderTopic = {
  kind: 'lift',
  why: 'back in use with what was found or mended; of a machine that is not held it is just that',
  never: ['question', 'conditional', 'wished', 'planned', 'reported'],
  rows: [
    { any: ['came-back', 'state-up'], with: ['mended', 'was-only', 'found-out'], all: ['machine'] },
    { any: ['came-back', 'state-up'], with: ['mended', 'was-only', 'found-out'], all: ['it'] },
    { all: ['lift-hold'], any: ['machine', 'it'], none: ['material'] },
  ],
  covers: ['up', 'symptom', 'gone', 'unclear'],
  make(passage) {
    return {
      kind: 'lift', machines: passage.machines, mended: passage.facts.has('mended'), text: wordsOf(passage),
    };
  },
}; // prettier-ignore

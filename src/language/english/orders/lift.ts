import { wordsOf } from './passage.ts';
import type { OrderTopic } from './topic.ts';

export const LIFT: OrderTopic = {
  kind: 'lift',
  why: 'back in use with what was found or mended; of a machine that is not held it is just that',
  never: ['question', 'conditional', 'wished', 'planned', 'reported'],
  rows: [
    { any: ['came-back', 'state-up'], with: ['mended', 'was-only', 'found-out'], all: ['machine'] },
    { any: ['came-back', 'state-up'], with: ['mended', 'was-only', 'found-out'], all: ['it'] },
    // on a machine that is held, trouble told together with its repair asks to lift the hold
    { all: ['machine', 'trouble', 'mended'], any: ['found-out', 'by-whom', 'tested'] },
    { all: ['machine', 'mended', 'by-whom', 'tested'] },
    { all: ['lift-hold'], any: ['machine', 'it'], none: ['material'] },
  ],
  covers: ['up', 'symptom', 'gone', 'unclear'],
  coversSwapOf: ['wiring', 'power-supply'],
  make(passage) {
    return {
      kind: 'lift', machines: passage.machines, mended: passage.facts.has('mended'), text: wordsOf(passage),
    };
  },
}; // prettier-ignore

import { dayIn } from './day.ts';
import type { OrderTopic } from './topic.ts';

/** "all fine on birch" alone says how it is; only with a day or a word of counting does it set where it counts from. */
export const BASELINE: OrderTopic = {
  kind: 'baseline',
  why: 'a statement about all tasks at once, before one of them is looked for',
  never: ['question', 'negated', 'wished', 'conditional', 'trouble', 'person', 'part'],
  rows: [
    { all: ['baseline'], any: ['machine', 'all', 'it', 'curt'] },
    { all: ['all-well', 'as-of'], any: ['machine', 'all', 'it', 'curt'] },
    { all: ['opens:start-now'], any: ['machine', 'curt'], none: ['span', 'thing'] },
  ],
  drops: ['unclear', 'gone', 'up', 'done'],
  make(passage, { today }) {
    const on = dayIn(passage, false);
    return { kind: 'baseline', machines: passage.machines, ...(on === undefined || on === today ? {} : { on }) };
  },
}; // prettier-ignore

import { sense } from '../../item.ts';
import type { OrderTopic } from './topic.ts';

export const BLAME: OrderTopic = {
  kind: 'blame',
  why: 'trouble asked for by person: a question that is answered by machine, or not at all',
  rows: [
    { all: ['blame'], none: ['negated'] },
    { all: ['person'], any: ['ask:how-many', 'ask:most', 'ask:more-often'], with: ['trouble', 'ask:trouble'] },
    { all: ['who'], any: ['ask:most', 'ask:how-many', 'ask:more-often'], with: ['trouble', 'ask:trouble'] },
  ],
  covers: ['ask'],
  make({ scene, machines, facts }) {
    const who = scene.items.flatMap((item) => sense(item, 'person')?.code ?? [])[0];
    return { kind: 'blame', machines, counts: !facts.has('blame'), ...(who === undefined ? {} : { who }) };
  },
}; // prettier-ignore

export const MAYBE_JOKE: OrderTopic = {
  kind: 'maybeJoke',
  why: 'words of alarm that are a joke as often: the hold stands, with a way out',
  never: ['question', 'negated', 'conditional'],
  rows: [{ all: ['on-fire', 'machine'] }],
  make: ({ machines }) => ({ kind: 'maybeJoke', machines }),
};

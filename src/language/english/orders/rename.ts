import { hasTag, isFn } from '../../item.ts';
import { nameAt, namedAfter } from './called.ts';
import type { Passage } from './passage.ts';
import type { OrderTopic } from './topic.ts';

/** "rename alder to ash", "rename alder ash": what stands after the machine and its "to". */
function afterMachine(passage: Passage): string | undefined {
  const { items } = passage.scene;
  const at = items.findIndex((item) => hasTag(item, 'machine'));
  const to = items.findIndex((item, i) => i > at && isFn(item, 'to'));
  const from = items[to > at ? to : at];
  return from && nameAt(passage, from.to);
}

export const RENAME: OrderTopic = {
  kind: 'rename',
  why: 'gives another name to a machine that is there',
  never: ['question', 'wished', 'conditional', 'negated', 'another', 'trouble', 'part'],
  rows: [
    { all: ['rename', 'machine'] },
    { all: ['called-now', 'machine'] },
  ],
  drops: ['unclear', 'symptom', 'down'],
  make(passage) {
    const [machine] = passage.machines;
    const name = passage.facts.has('rename') ? afterMachine(passage) : namedAfter(passage, 'called-now');
    return {
      kind: 'rename',
      ...(machine === undefined ? {} : { machine }),
      ...(name === undefined ? {} : { name }),
    };
  },
}; // prettier-ignore

import { valueOf } from '../../scene.ts';
import type { OrderTopic } from './topic.ts';

export const START: OrderTopic = {
  kind: 'start',
  why: 'a print begins: nothing to note, but the machine may be in bits or held',
  never: ['question', 'negated', 'conditional', 'reported', 'wished', 'requested', 'part', 'task', 'trouble', 'starts-work', 'worked', 'ran', 'baseline', 'start-now', 'another', 'nobody'],
  rows: [{ all: ['starting'], any: ['machine', 'it'], with: ['span', 'thing', 'opens:starting'] }],
  drops: ['usage'],
  make({ scene, machines }) {
    const hours = valueOf(scene, 'hours');
    return { kind: 'start', machines, ...(hours === undefined ? {} : { hours }) };
  },
}; // prettier-ignore

import { hasTag } from '../../item.ts';
import { valueOf } from '../../scene.ts';
import { namedAfter } from './called.ts';
import type { Passage } from './passage.ts';
import type { OrderTopic } from './topic.ts';

/** "hardened 0.6", "brass 0.4": the words that tell one nozzle from another. */
function nozzleIn({ scene }: Passage): string | undefined {
  const words = scene.items
    .filter((item) => hasTag(item, 'spec') || /^(?:0[.,]\d{1,2}|1[.,]\d)(?: mm)?$/u.test(item.text))
    .map((item) => item.text);
  return words.length === 0 ? undefined : words.join(' ');
}

export const ADD: OrderTopic = {
  kind: 'add',
  why: 'names a machine that is not there yet; its model is not what it is about',
  never: ['question', 'negated', 'wished', 'conditional', 'trouble', 'ask:order'],
  rows: [
    { all: ['another', 'twin', 'machine-twin'] },
    { all: ['another', 'call'] },
    { all: ['add', 'new-machine'], any: ['call', 'machine-twin'] },
    { all: ['new-machine', 'machine-twin', 'call'] },
    { all: ['new-machine', 'have', 'call'], none: ['machine'] },
    { all: ['opens:add', 'machine-twin'], none: ['part', 'task'] },
    { all: ['opens:add', 'new-machine'], none: ['part', 'task', 'machine', 'it'] },
  ],
  drops: ['unclear', 'done', 'swap', 'usage', 'meter', 'stock', 'up', 'symptom', 'load'],
  make(passage, { next }) {
    const told = next && !next.facts.has('question') ? [passage, next] : [passage];
    const first = <T>(of: (one: Passage) => T | undefined): T | undefined =>
      told.map(of).find((found) => found !== undefined);
    const name = first((one) => namedAfter(one, 'call', 'called-now')) ?? afterAdd(passage);
    const has = (fact: 'brand-new' | 'used'): boolean => told.some(({ facts }) => facts.has(fact));
    const condition = has('brand-new') ? 'new' : has('used') ? 'used' : undefined;
    const hours = first(({ scene }) => valueOf(scene, 'hours'));
    const nozzle = first(nozzleIn);
    return {
      kind: 'add',
      ...(passage.twin === undefined ? {} : { like: passage.twin }),
      ...(name === undefined ? {} : { name }),
      ...(condition === undefined ? {} : { condition }),
      ...(hours === undefined ? {} : { hours }),
      ...(nozzle === undefined ? {} : { nozzle }),
    };
  },
};

/** "enrol willow like hazel": the name stands right after the verb. */
const afterAdd = (passage: Passage): string | undefined =>
  passage.facts.has('opens:add') && !passage.facts.has('new-machine')
    ? namedAfter(passage, 'add')
    : undefined;

import type { OrderTopic } from './topic.ts';

const DAYS_A_MONTH = 30;

export const INTERVAL: OrderTopic = {
  kind: 'interval',
  why: 'names a task and a span, and is neither work done nor work put off',
  never: ['question', 'negated', 'conditional', 'trouble', 'i', 'ran', 'person'],
  rows: [
    { all: ['every', 'span', 'task'], none: ['worked'] },
    { all: ['set-interval', 'span', 'task'] },
  ],
  drops: ['unclear', 'done', 'swap', 'defer', 'claim', 'usage'],
  make({ scene, machines, tasks, facts }) {
    const spans = scene.values.filter((v) => v.value > 0);
    const hours = spans.find((v) => v.code === 'hours')?.value;
    const days = spans.find((v) => v.code === 'days')?.value;
    const months = spans.find((v) => v.code === 'months')?.value;
    const inDays = days ?? (months === undefined ? undefined : Math.round(months * DAYS_A_MONTH));
    return {
      kind: 'interval', machines, tasks,
      ...(hours === undefined ? {} : { hours }),
      ...(inDays === undefined ? {} : { days: inDays }),
      source: facts.has('manual') ? 'manual' : 'workshop',
    };
  },
}; // prettier-ignore

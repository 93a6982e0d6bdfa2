import type { OrderTopic } from './topic.ts';

export const QUIET: OrderTopic = {
  kind: 'quiet',
  why: 'no more reminders; with a day it would be a put-off',
  never: ['date', 'span', 'conditional'],
  rows: [{ all: ['stop-telling'], any: ['task', 'machine'] }],
  drops: ['unclear', 'symptom', 'done', 'gone'],
  make: ({ machines, tasks }) => ({ kind: 'quiet', machines, tasks }),
};

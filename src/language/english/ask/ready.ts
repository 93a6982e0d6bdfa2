import type { Topic } from './topic.ts';

export const READY: Topic = {
  topic: 'ready',
  why: 'a job of so many hours, or over night',
  never: ['how-many', 'how-long', 'how-often', 'due', 'symptom', 'total', 'when', 'interval', 'task', 'overdue', 'lubricant', 'past'],
  rows: [
  { all: ['fit'], any: ['span', 'long-job'], with: ['machine', 'it', 'which', 'any', 'who'] },
  ],
}; // prettier-ignore

import type { Topic } from './topic.ts';

export const DIAGNOSE: Topic = {
  topic: 'diagnose',
  why: 'a trouble and a wish for its cause',
  never: ['more-often', 'how-often', 'when', 'who', 'worse'],
  rows: [
  { all: ['symptom'], any: ['cause', 'idea', 'why'] },
  ],
}; // prettier-ignore

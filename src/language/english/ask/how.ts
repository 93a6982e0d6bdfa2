import type { Topic } from './topic.ts';

export const HOW: Topic = {
  topic: 'how',
  why: 'a way of doing',
  never: ['ago', 'how-long', 'how-often', 'old', 'worse', 'past'],
  rows: [
  { all: ['way'], any: ['part', 'task', 'swap'], none: ['to-do'] },
  { all: ['way', 'task'] },
  { all: ['by-what'], any: ['part', 'task'] },
  { all: ['way', 'swap'] },
  { all: ['lubricant'], any: ['part', 'task', 'machine'] },
  { all: ['how', 'task'], none: ['how-many', 'last'] },
  { all: ['how', 'part'], none: ['how-many', 'state', 'shelf', 'spare', 'last'] },
  ],
}; // prettier-ignore

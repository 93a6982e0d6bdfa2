import type { Topic } from './topic.ts';

export const DUE: Topic = {
  topic: 'due',
  why: 'what is to be done',
  never: ['part', 'symptom', 'cause'],
  rows: [
  { all: ['due'], none: ['task', 'who'] },
  { all: ['spare-time'] },
  { all: ['to-do'], none: ['how-many', 'who', 'past'] },
  { all: ['next'], any: ['what', 'which', 'machine', 'any'], none: ['task', 'past', 'who'] },
  ],
}; // prettier-ignore

import type { Topic } from './topic.ts';

export const DUE: Topic = {
  topic: 'due',
  why: 'what is to be done',
  never: ['part', 'symptom', 'cause'],
  rows: [
  { all: ['due'], none: ['task', 'who'] },
  { all: ['spare-time'] },
  { all: ['needs', 'any', 'machine', 'asked'], none: ['task', 'past', 'who'] },
  { all: ['what', 'needs'], any: ['machine', 'it', 'date'], none: ['task', 'part', 'past', 'who', 'way', 'shelf', 'fit'] },
  { all: ['needs', 'machine', 'tell', 'due'], none: ['task', 'who', 'past'] },
  { all: ['to-do'], none: ['how-many', 'who', 'past'] },
  { all: ['next'], any: ['what', 'which', 'machine', 'any'], none: ['task', 'past', 'who'] },
  ],
}; // prettier-ignore

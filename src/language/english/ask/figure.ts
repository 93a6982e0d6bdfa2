import type { Topic } from './topic.ts';

export const FIGURE: Topic = {
  topic: 'figure',
  why: 'a bench figure; before "how" and "life", whose words it shares',
  never: ['way', 'past', 'who', 'how-often', 'interval', 'lifetime', 'left', 'shelf', 'have', 'due', 'next', 'hours', 'symptom'],
  rows: [
  { all: ['how-tight'], any: ['part', 'task', 'spec'] },
  { all: ['spec'], any: ['what', 'which', 'how-many', 'how-tight', 'how'], with: ['part', 'task', 'thing'] },
  { all: ['spec', 'task', 'asked'], none: ['finding', 'fit', 'should', 'when', 'why', 'how-long', 'swap'] },
  { all: ['spec', 'part'], none: ['when', 'finding', 'should'] },
  ],
}; // prettier-ignore

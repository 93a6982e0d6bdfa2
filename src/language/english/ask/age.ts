import type { Topic } from './topic.ts';

export const AGE: Topic = {
  topic: 'age',
  why: 'one part and how long it has been in',
  never: ['until', 'due', 'next', 'last', 'who', 'ago', 'shelf', 'spare', 'left', 'way', 'cause'],
  rows: [
  { all: ['old'], any: ['part', 'machine'] },
  { all: ['total', 'part'], any: ['machine', 'it'], none: ['when', 'filament', 'runs', 'spent'] },
  { all: ['since-when', 'part'] },
  { all: ['how-long', 'part'], none: ['should', 'will', 'task'] },
  { all: ['how-many', 'hours', 'part'], any: ['in-place', 'machine'], none: ['should', 'will'] },
  { all: ['hours', 'part', 'machine'], none: ['when', 'should', 'will'] },
  { all: ['what-part'], any: ['in-place', 'machine'], none: ['should', 'swap', 'spec', 'task', 'past'] },
  { all: ['what-part', 'in-place', 'machine'], none: ['should', 'swap', 'spec', 'task'] },
  ],
}; // prettier-ignore

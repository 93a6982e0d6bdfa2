import type { Topic } from './topic.ts';

export const STOCK: Topic = {
  topic: 'stock',
  why: 'spares on the shelf',
  never: ['hours', 'until', 'next', 'due', 'overdue', 'way', 'symptom', 'long-job'],
  rows: [
  { all: ['shelf'], any: ['part', 'thing', 'material', 'have', 'how-many', 'what', 'order', 'run-out', 'left', 'any', 'spare'] },
  { all: ['shelf'], none: ['machine', 'task'] },
  { all: ['spare', 'part'], none: ['past'] },
  { all: ['spare'], any: ['have', 'what', 'which', 'run-out', 'how-many', 'left'], none: ['machine', 'past'] },
  { all: ['spare', 'run-out'] },
  { all: ['part'], any: ['left'], none: ['machine', 'spent', 'endures'] },
  { all: ['part', 'order'] },
  { all: ['part', 'run-out'] },
  { all: ['left', 'material'], any: ['filament', 'any', 'asked'], none: ['machine', 'spent'] },
  { all: ['part', 'left'], any: ['how-many', 'have', 'any'], none: ['machine'] },
  { all: ['part', 'have'], none: ['machine', 'past', 'task', 'who', 'when', 'should', 'endures', 'swap', 'finding'] },
  { all: ['part', 'how-many'], none: ['machine', 'past', 'task', 'who', 'spent', 'endures', 'should'] },
  { all: ['how-many', 'filament', 'have', 'material'], none: ['machine', 'spent', 'runs', 'past'] },
  { all: ['order'], any: ['what', 'any', 'should'], none: ['machine', 'task'] },
  { all: ['run-out'], any: ['what', 'which', 'any'], none: ['machine', 'task'] },
  ],
}; // prettier-ignore

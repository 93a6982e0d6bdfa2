import type { Topic } from './topic.ts';

export const LIFE: Topic = {
  topic: 'life',
  why: 'parts of a kind, or a task in general; one part in one machine is its age',
  never: ['who', 'old', 'shelf', 'left'],
  rows: [
  { all: ['when', 'habit'], any: ['lifetime', 'endures'], with: ['part'], none: ['machine', 'due', 'next', 'past'] },
  { all: ['how-often'], any: ['part', 'task'], none: ['when', 'past', 'symptom'] },
  { all: ['how-long'], any: ['lifetime', 'endures', 'expect', 'habit'], with: ['part', 'task'], none: ['when', 'past', 'until', 'due', 'in-place'] },
  { any: ['how-long', 'how-many'], with: ['endures', 'expect', 'lifetime'], all: ['part'], none: ['when', 'until', 'due', 'fit'] },
  { any: ['how-long', 'how-many'], with: ['endures', 'expect'], all: ['part'], none: ['when'] },
  { all: ['lifetime'], any: ['part', 'task'], none: ['when'] },
  { all: ['what', 'expect', 'part'], none: ['machine', 'span', 'fit', 'swap', 'task', 'when'] },
  { all: ['interval', 'span'], none: ['when'] },
  { all: ['interval'], any: ['part', 'task'], none: ['when'] },
  { all: ['right-for', 'span'], any: ['part', 'task'], none: ['when', 'machine'] },
  ],
}; // prettier-ignore

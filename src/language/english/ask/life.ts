import type { Topic } from './topic.ts';

export const LIFE: Topic = {
  topic: 'life',
  why: 'parts of a kind, or a task in general; one part in one machine is its age',
  never: ['who', 'when', 'old', 'shelf', 'left'],
  rows: [
  { all: ['how-often'], any: ['part', 'task'], none: ['past', 'symptom'] },
  { all: ['how-long'], any: ['lifetime', 'endures', 'expect', 'habit'], with: ['part', 'task'], none: ['past', 'until', 'due', 'in-place'] },
  { any: ['how-long', 'how-many'], with: ['endures', 'expect', 'lifetime'], all: ['part'], none: ['until', 'due', 'fit'] },
  { any: ['how-long', 'how-many'], with: ['endures', 'expect'], all: ['part'] },
  { all: ['lifetime'], any: ['part', 'task'] },
  { all: ['interval', 'span'] },
  { all: ['interval'], any: ['part', 'task'] },
  { all: ['right-for', 'span'], any: ['part', 'task'], none: ['machine'] },
  ],
}; // prettier-ignore

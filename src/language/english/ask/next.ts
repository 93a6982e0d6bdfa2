import type { Topic } from './topic.ts';

export const NEXT: Topic = {
  topic: 'next',
  why: 'one task and when it falls due',
  never: ['who', 'overdue', 'way', 'shelf'],
  rows: [
  { all: ['when'], any: ['part', 'task'], none: ['past', 'last', 'run-out'] },
  { all: ['should', 'swap', 'part', 'asked'], any: ['machine', 'it'], none: ['past', 'how-many', 'how-long', 'how-often', 'which', 'what', 'why', 'how'] },
  { all: ['needs', 'asked'], any: ['task', 'part'], with: ['machine', 'it'], none: ['past', 'how-many', 'how-long', 'how-often', 'which', 'what', 'why', 'how', 'who', 'spec', 'interval', 'habit'] },
  { all: ['when', 'next'], any: ['machine', 'it'], none: ['past'] },
  { any: ['next', 'due'], with: ['part', 'task'], none: ['last'] },
  { any: ['how-long', 'how-many', 'how-often'], all: ['until'], with: ['part', 'task'] },
  { any: ['how-long', 'how-many'], all: ['left'], with: ['part', 'task'] },
  { any: ['how-long', 'how-many'], all: ['should'], with: ['part', 'task'] },
  { any: ['how-long', 'how-many'], all: ['will'], with: ['part', 'task'] },
  { all: ['until'], any: ['how', 'how-long'], with: ['part', 'task'] },
  ],
}; // prettier-ignore

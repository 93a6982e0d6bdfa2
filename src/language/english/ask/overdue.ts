import type { Topic } from './topic.ts';

export const OVERDUE: Topic = {
  topic: 'overdue',
  why: 'late beats due',
  never: ['how-long', 'who', 'why'],
  rows: [
  { all: ['overdue'] },
  ],
}; // prettier-ignore

import type { Topic } from './topic.ts';

export const DIAGNOSE_UNNAMED: Topic = {
  topic: 'diagnose',
  why: 'what ails it, with no trouble named; so late that every other "what could" and "why" has gone',
  never: ['to-do', 'due'],
  rows: [
  { any: ['cause', 'why'], with: ['machine', 'it'], none: ['state'] },
  { any: ['cause', 'why'], all: ['machine'] },
  ],
}; // prettier-ignore

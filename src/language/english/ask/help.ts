import type { Topic } from './topic.ts';

export const HELP: Topic = {
  topic: 'help',
  why: 'the bot itself; only where no printer is spoken of',
  rows: [
  { all: ['way', 'entry-verb'], none: ['state'] },
  { all: ['bot'], any: ['what', 'which', 'how', 'who', 'help', 'way', 'entry-verb', 'i'], none: ['machine', 'symptom', 'task', 'due', 'overdue', 'to-do', 'handover', 'when', 'log', 'swap', 'spec'] },
  { all: ['bot', 'entry-verb'], any: ['what', 'how', 'way'], none: ['machine', 'due', 'overdue'] },
  { all: ['bot'], any: ['help', 'entry-verb'], none: ['machine', 'part', 'task', 'symptom'] },
  { all: ['bot', 'asked'], none: ['machine', 'part', 'task', 'symptom', 'due', 'overdue', 'to-do', 'when', 'log', 'swap', 'spec', 'cause', 'state', 'shelf', 'who'] },
  { all: ['help'], none: ['machine', 'part', 'task', 'symptom', 'cause', 'handover', 'swap', 'it'] },
  ],
}; // prettier-ignore

import type { Topic } from './topic.ts';

export const HANDOVER: Topic = {
  topic: 'handover',
  why: 'a shift is handed on, whatever else stands there',
  never: ['part', 'task', 'symptom'],
  rows: [
  { all: ['handover'], none: ['who', 'when'] },
  { all: ['rundown'], none: ['machine'] },
  { all: ['crew'], any: ['pass-on', 'overview', 'rundown'], none: ['machine', 'log', 'hours'] },
  ],
}; // prettier-ignore

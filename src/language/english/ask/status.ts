import type { Topic } from './topic.ts';

export const STATUS: Topic = {
  topic: 'status',
  why: "how it stands; last, for its words are everybody's",
  never: ['part', 'task', 'symptom', 'how-many', 'how-long', 'spec', 'material'],
  rows: [
  { any: ['state', 'overview', 'rundown'], all: ['machine'], none: ['when'] },
  { any: ['state', 'overview'], with: ['it', 'which', 'all', 'any', 'thing', 'we'], none: ['when', 'should', 'person'] },
  { all: ['machine', 'finding'], none: ['when'] },
  { all: ['machine', 'fixes', 'asked'], none: ['when', 'who', 'way', 'cause', 'why'] },
  { all: ['machine', 'how', 'stands'], none: ['when', 'why', 'way'] },
  { all: ['finding', 'which'], none: ['when'] },
  { all: ['out'], any: ['who', 'which', 'any', 'what'], none: ['when', 'why', 'cause', 'machine'] },
  { all: ['board'], none: ['who'] },
  { all: ['machine', 'who'], any: ['state', 'finding'] },
  ],
}; // prettier-ignore

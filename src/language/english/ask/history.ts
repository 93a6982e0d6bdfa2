import type { Topic } from './topic.ts';

export const HISTORY: Topic = {
  topic: 'history',
  why: 'what was done, and by whom',
  never: ['will', 'how-often'],
  rows: [
  { all: ['who'], any: ['part', 'task'], none: ['how-many', 'should'] },
  { all: ['who', 'machine', 'past'], none: ['how-many', 'state', 'should'] },
  { all: ['who', 'machine'], any: ['last', 'date', 'past'], none: ['how-many', 'should'] },
  { all: ['who', 'past', 'symptom'] },
  { all: ['when', 'past'], any: ['part', 'task', 'machine', 'symptom'] },
  { any: ['last', 'ago'], with: ['part', 'task', 'symptom'], none: ['how-many', 'should'] },
  { all: ['last', 'machine', 'past'], none: ['how-many', 'how-long', 'hours'] },
  { all: ['when', 'last'], any: ['part', 'task', 'machine', 'symptom'] },
  { all: ['log'], none: ['how-many', 'hours', 'how'] },
  { all: ['happened'], none: ['how-many', 'how-long', 'state'] },
  { all: ['happened'], any: ['machine', 'date'], none: ['how-many', 'how-long'] },
  { all: ['what', 'past'], any: ['person', 'i', 'we', 'date'], none: ['how-many', 'hours', 'total', 'down', 'filament', 'most'] },
  { all: ['past'], any: ['part', 'task'], none: ['how-many', 'how-long', 'total', 'spent', 'cause', 'why', 'fit'] },
  { all: ['past'], any: ['task', 'swap'], none: ['how-many', 'how-long', 'total', 'cause', 'why'] },
  ],
}; // prettier-ignore

import type { Topic } from './topic.ts';

export const TREND: Topic = {
  topic: 'trend',
  why: 'how often trouble came; before "life", which asks how often care is due',
  never: ['shelf', 'due', 'overdue', 'spare', 'way'],
  rows: [
  { all: ['more-often'], any: ['symptom', 'trouble', 'machine'], none: ['interval', 'part'] },
  { all: ['more-often', 'symptom'] },
  { all: ['worse'], any: ['symptom', 'trouble', 'machine', 'which', 'it', 'state'] },
  { all: ['how-often'], any: ['symptom', 'trouble'], none: ['should'] },
  { all: ['how-many'], any: ['symptom', 'trouble'], none: ['left', 'cause', 'hours', 'filament', 'spent'] },
  { any: ['how-long', 'how-many'], all: ['down', 'past'], none: ['part'] },
  { any: ['how-long', 'how-many'], all: ['off', 'past', 'machine'], none: ['part'] },
  { all: ['how-often', 'out'], none: ['should'] },
  { any: ['how-long', 'how-many'], all: ['out', 'past', 'machine'], none: ['part'] },
  { all: ['most', 'trouble'] },
  { all: ['most', 'symptom'], none: ['part'] },
  { all: ['downtime'] },
  ],
}; // prettier-ignore

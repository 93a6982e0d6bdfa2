import type { Topic } from './topic.ts';

export const USAGE: Topic = {
  topic: 'usage',
  why: 'hours run and filament used',
  never: ['due', 'to-do', 'left', 'shelf', 'order', 'until'],
  rows: [
  { all: ['how-many'], any: ['hours', 'filament', 'material', 'spent'], none: ['part', 'symptom', 'down'] },
  { all: ['how-many', 'spent'], any: ['filament', 'material', 'machine'] },
  { any: ['how-long', 'how-many'], all: ['runs'], none: ['part'] },
  { all: ['how-long'], any: ['machine', 'it'], with: ['hours', 'date', 'past'], none: ['part', 'down'] },
  { all: ['how-many', 'machine'], none: ['part', 'task', 'symptom', 'down'] },
  { all: ['total'], none: ['part', 'trouble', 'symptom'] },
  { all: ['total', 'filament'] },
  { all: ['runs', 'machine', 'past', 'asked'], none: ['part', 'symptom', 'task', 'finding', 'when', 'who', 'why', 'cause', 'trouble'] },
  { all: ['most', 'spent'], any: ['material', 'filament', 'machine'], none: ['trouble', 'symptom', 'task'] },
  { all: ['hours'], any: ['machine', 'date', 'total', 'all', 'what', 'it'], none: ['part', 'span', 'task'] },
  { all: ['most', 'runs'], none: ['trouble', 'symptom'] },
  { all: ['filament', 'machine'], any: ['date', 'how-many'] },
  { any: ['filament', 'material'], with: ['date', 'machine'], all: ['spent'], none: ['task', 'fit'] },
  ],
}; // prettier-ignore

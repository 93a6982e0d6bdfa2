/** The room's own things. Local rules come first. */
import type { RoomTask } from '../codes.ts';
import { always } from './builds.ts';
import { rule } from './rule.ts';
import type { Rule } from './rule.ts';
import { days } from './words.ts';

const inRoom = (task: RoomTask, every: number, minutes: number): Rule =>
  rule({
    task,
    place: 'room',
    applies: always,
    every: [days(every)],
    class: 'safety',
    minutes,
    opening: 'beside',
    source: 'local rules',
  });

/** Fifteen minutes in all. */
export const ROOM_RULES: readonly Rule[] = [
  inRoom('test-smoke-detector', 30, 3),
  inRoom('check-extinguisher', 30, 2),
  inRoom('check-solvents', 30, 2),
  inRoom('check-safety-kit', 30, 3),
  inRoom('check-dryer', 30, 2),
  inRoom('check-extraction', 90, 3),
];

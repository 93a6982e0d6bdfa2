/** The order of a list: consequence class, then lateness in units of its own interval, then effort. */
import { rankOf } from '../care/rule.ts';
import type { DueRow } from './row.ts';

const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

export const inListOrder = (a: DueRow, b: DueRow): number =>
  rankOf(a.class) - rankOf(b.class) ||
  b.lateness - a.lateness ||
  a.minutes - b.minutes ||
  compareText(a.machine, b.machine) ||
  compareText(a.task, b.task);

/** The list as it is read: one line for the room where a task says so, and the run-in instead of its parts. */
import { RUN_IN_PARTS } from '../care/bundles.ts';
import { ROOM } from '../codes.ts';
import { mayComeForward } from './round.ts';
import type { DueRow } from './row.ts';

const runInParts: ReadonlySet<string> = new Set(RUN_IN_PARTS);
/** Overdue or due. */
export const isOwed = ({ state }: DueRow): boolean => state === 'overdue' || state === 'due';
/** What is fine and stays so, and what waits, is in none of the lists. */
export const isOfInterest = (row: DueRow): boolean =>
  isOwed(row) || row.state === 'no-record' || mayComeForward(row);
const LATEST_FIRST: readonly DueRow['state'][] = ['overdue', 'due', 'coming-up'];
const rank = ({ state }: DueRow): number => LATEST_FIRST.indexOf(state);

/** Several machines, one line: under the room's name where there is more than one. */
function asOneLine(rows: readonly DueRow[]): DueRow[] {
  const [worst] = rows.toSorted((a, b) => rank(a) - rank(b) || b.lateness - a.lateness);
  if (!worst || rows.length === 1) return [...rows];
  return [{ ...worst, machine: ROOM, machines: rows.map(({ machine }) => machine).toSorted() }];
}

export function condensed(rows: readonly DueRow[]): DueRow[] {
  const inRunIn = new Set(
    rows.filter((row) => row.task === 'run-in' && isOwed(row)).map((row) => row.machine),
  );
  const shown = rows.filter((row) => !(inRunIn.has(row.machine) && runInParts.has(row.task) && !row.raised));
  const lines = new Map<string, DueRow[]>();
  for (const row of shown.filter(isOneLine)) {
    const together = lines.get(lineOf(row));
    if (together) together.push(row);
    else lines.set(lineOf(row), [row]);
  }
  return shown.flatMap((row) => {
    if (!isOneLine(row)) return [row];
    const together = lines.get(lineOf(row)) ?? [];
    return together[0] === row ? asOneLine(together) : [];
  });
}
const isOneLine = ({ rule, state }: DueRow): boolean => rule.oneLine === true && state !== 'no-record';
/** What is owed and what is coming up stand in different lists. */
const lineOf = (row: DueRow): string => `${row.task} ${isOwed(row) ? 'owed' : row.state}`;

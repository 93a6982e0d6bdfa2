/** What a view that is no message showed when it was drawn: it bears no marks, so its buttons know what they were about. */
import type { Instant } from '../maintenance/entry/entry.ts';
import type { Task } from '../maintenance/codes.ts';
import type { DueRow } from '../maintenance/due/row.ts';
import type { Press } from '../replies/reply.ts';
import type { Works } from './parts.ts';

/** A task as it stood: from when it counted, and whether something had made it due out of its turn. */
export interface SeenRow {
  machine: string;
  task: Task;
  since: Instant | null;
  raised: boolean;
}

const asSeen = ({ machine, task, since, raised }: DueRow): SeenRow => ({
  machine,
  task,
  since: since?.at ?? null,
  raised: raised !== undefined,
});

/** One task that is said to be done; with no task named, all that have no record. A question is about none. */
export function rowsOf(press: Press, rows: readonly DueRow[]): readonly SeenRow[] {
  if (press.does !== 'deeds') return [];
  return press.deeds.flatMap((deed) => {
    if (deed.kind !== 'done' && deed.kind !== 'state') return [];
    const task = deed.kind === 'done' ? deed.task : undefined;
    const about = rows.filter(
      (row) =>
        row.machine === deed.machine && (task === undefined ? row.state === 'no-record' : row.task === task),
    );
    return about.map(asSeen);
  });
}

/** All of it was done since, by whomever; what was taken back again stands as it was seen. */
export async function doneSince(
  { bot, clock }: Works,
  seen: readonly SeenRow[] | undefined,
): Promise<boolean> {
  if (seen === undefined || seen.length === 0) return false;
  const rows = await bot.due({ now: clock() });
  return seen.every((before) => {
    const row = rows.find(({ machine, task }) => machine === before.machine && task === before.task);
    if (!row) return true;
    const { since, raised } = asSeen(row);
    return since !== before.since || (before.raised && !raised);
  });
}

/** The digest as a post: its lists with buttons where the work is named, and what was done since the morning. */
import { rowButtons } from '../commands/ask/rows.ts';
import type { Digest } from '../maintenance/due/digest.ts';
import type { DueRow } from '../maintenance/due/row.ts';
import { bold, item, type Item, type Reply, type Section } from '../replies/reply.ts';
import { dueLine } from '../replies/wording/due.ts';
import { machineName, todo } from '../replies/wording/names.ts';
import type { Names } from '../replies/wording/view.ts';
import type { DigestNote, Mark } from './posts.ts';

/** More buttons than these are a wall; a platform may take fewer. */
const MOST_WITH_BUTTONS = 7;

const key = ({ machine, task }: { machine: string; task: string }): string => `${machine} ${task}`;

/** What is owed now. */
const owed = ({ overdue, due }: Digest): DueRow[] => [...overdue, ...due];

export const noteOf = (digest: Digest): DigestNote => ({
  date: digest.date,
  rows: owed(digest).map(({ machine, task }) => ({ machine, task })),
});

/** The digest as it is now: facts, wording, and what its machines are called. */
export interface DigestNow {
  digest: Digest;
  reply: Reply;
  names: Names;
}

/** `most`: items of a post that may carry buttons. */
export function digestPost(
  now: DigestNow,
  morning: DigestNote,
  most: number,
  marks: readonly Mark[] = [],
): Reply {
  const { reply } = now;
  const done = doneSince(now, morning, marks);
  return {
    ...reply,
    sections: [
      ...withButtons(now, Math.min(most, MOST_WITH_BUTTONS)),
      ...(done.length > 0 ? [{ heading: 'Done or put off since', items: done, run: true as const }] : []),
    ],
  };
}

function withButtons({ reply, digest, names }: DigestNow, most: number): Section[] {
  let left = most;
  return reply.sections.map((section) => {
    if (section.heading !== 'Overdue' && section.heading !== 'Due today') return section;
    const rows = section.heading === 'Overdue' ? digest.overdue : digest.due;
    const items = section.items.flatMap((one) => {
      const pressable = rowsIn(one, rows, names);
      if (pressable.length === 0 || pressable.length > left) return [one];
      left -= pressable.length;
      return pressable.length === 1 ? pressable.map((row) => ({ ...one, buttons: rowButtons(row) })) : pressable.map((row) => rowLine(row, names));
    });
    return { ...section, items };
  });
} // prettier-ignore

/** The work that a line names: a line begins with its machine. One that stands for several machines has no buttons. */
function rowsIn({ text: [first] }: Item, rows: readonly DueRow[], view: Names): DueRow[] {
  if (typeof first !== 'object') return [];
  return rows.filter((row) => row.machines === undefined && machineName(row.machine, view) === first.bold);
}

/** Several tasks of one machine: each with its own buttons. */
const rowLine = (row: DueRow, view: Names): Item => ({
  text: [bold(machineName(row.machine, view)), `: ${dueLine(row)}`],
  buttons: rowButtons(row),
});

/** What the morning named and is not owed any more. */
function doneSince({ digest, names }: DigestNow, morning: DigestNote, marks: readonly Mark[]): Item[] {
  const still = new Set(owed(digest).map(key));
  const done = morning.rows.filter((row) => !still.has(key(row)));
  return done.map((row) => {
    const mark = marks.find((one) => one.row === key(row));
    const who = mark ? ` (${mark.label}: ${mark.by}, ${mark.time})` : '';
    return item(`${machineName(row.machine, names)}: ${todo(row.task as DueRow['task'])}${who}`);
  });
}

/** The digest as a post: its lists with buttons where the work is named, and what was done since the morning. */
import { rowButtons } from '../commands/ask/rows.ts';
import type { Digest } from '../maintenance/due/digest.ts';
import type { DueRow } from '../maintenance/due/row.ts';
import { bold, item, type Item, type Reply, type Section } from '../replies/reply.ts';
import { dueLine } from '../replies/wording/due.ts';
import { machineName, todo } from '../replies/wording/names.ts';
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

/** `most`: items of a post that may carry buttons. */
export function digestPost(
  reply: Reply,
  digest: Digest,
  morning: DigestNote,
  most: number,
  marks: readonly Mark[] = [],
): Reply {
  const done = doneSince(digest, morning, marks);
  return {
    ...reply,
    sections: [
      ...withButtons(reply.sections, digest, Math.min(most, MOST_WITH_BUTTONS)),
      ...(done.length > 0 ? [{ heading: 'Done or put off since', items: done, run: true as const }] : []),
    ],
  };
}

function withButtons(sections: readonly Section[], digest: Digest, most: number): Section[] {
  let left = most;
  return sections.map((section) => {
    if (section.heading !== 'Overdue' && section.heading !== 'Due today') return section;
    const rows = section.heading === 'Overdue' ? digest.overdue : digest.due;
    const items = section.items.flatMap((one) => {
      const pressable = rowsIn(one, rows);
      if (pressable.length === 0 || pressable.length > left) return [one];
      left -= pressable.length;
      return pressable.length === 1 ? pressable.map((row) => ({ ...one, buttons: rowButtons(row) })) : pressable.map(rowLine);
    });
    return { ...section, items };
  });
} // prettier-ignore

/** The work that a line names: a line begins with its machine. One that stands for several machines has no buttons. */
function rowsIn({ text: [first] }: Item, rows: readonly DueRow[]): DueRow[] {
  if (typeof first !== 'object') return [];
  return rows.filter((row) => row.machines === undefined && machineName(row.machine) === first.bold);
}

/** Several tasks of one machine: each with its own buttons. */
const rowLine = (row: DueRow): Item => ({
  text: [bold(machineName(row.machine)), `: ${dueLine(row)}`],
  buttons: rowButtons(row),
});

/** What the morning named and is not owed any more. */
function doneSince(digest: Digest, morning: DigestNote, marks: readonly Mark[]): Item[] {
  const still = new Set(owed(digest).map(key));
  const done = morning.rows.filter((row) => !still.has(key(row)));
  return done.map((row) => {
    const mark = marks.find((one) => one.row === key(row));
    const who = mark ? ` (${mark.label}: ${mark.by}, ${mark.time})` : '';
    return item(`${machineName(row.machine)}: ${todo(row.task as DueRow['task'])}${who}`);
  });
}

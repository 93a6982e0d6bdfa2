/** What every answer to a question can look at. Nothing here writes. */
import type { AskAct } from '../../language/act.ts';
import { dateOfDay } from '../../maintenance/calendar.ts';
import { partReplacedBy, ROOM, type Task } from '../../maintenance/codes.ts';
import type { DueRow } from '../../maintenance/due/row.ts';
import type { Instant, LocalDate } from '../../maintenance/entry/entry.ts';
import type { MachineRecord, ShopRecord } from '../../maintenance/record/record.ts';
import type { Reply } from '../../replies/reply.ts';
import type { View } from '../../replies/wording/view.ts';
import type { JournalReader } from '../../store/journal.ts';
import type { Workshop } from '../../workshop.ts';

export interface AskScene extends View {
  act: AskAct;
  /** The whole message, for what the reading has no field for; empty behind a button. */
  said: string;
  record: ShopRecord;
  workshop: Workshop;
  now: Instant;
  journal: JournalReader;
  /** Due rows of one machine (or `room`), or of all. */
  rows: (machine?: string) => readonly DueRow[];
  /** The speaker's person id. */
  person: string;
  personsNamed: (name: string) => Promise<readonly string[]>;
}

export type Topic = (scene: AskScene) => Promise<Reply> | Reply;

export const todayOf = (scene: Pick<AskScene, 'today'>): LocalDate => dateOfDay(scene.today);

/** The machines a question is about: the one it names, or all that are not retired. */
export function machinesOf({ act, record }: AskScene): readonly MachineRecord[] {
  if (act.machine === 'room') return [record.room];
  if (act.machine !== undefined) {
    const machine = record.machines.get(act.machine);
    return machine ? [machine] : [];
  }
  return [...record.machines.values()].filter((m) => !m.retired);
}

/** A question that names a task or a part is about nothing else. */
export const notAsked = (act: AskAct, task: Task): boolean =>
  (act.task !== undefined && act.task !== task) ||
  (act.task === undefined && act.part !== undefined && partReplacedBy(task) !== act.part);

/** Scraps and notices are one line for the whole room: they would only clutter a machine's own list. */
export const isRoomLine = (row: DueRow): boolean => row.rule.oneLine === true && row.machine !== ROOM;

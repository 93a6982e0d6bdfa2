/** What a decision rests on besides the deed. No clock and no lookup: everything is handed in. */
import type { LocalCalendar } from '../calendar.ts';
import type { Task } from '../codes.ts';
import type { Entry, Instant, LocalDate } from '../entry/entry.ts';
import type { MachineRecord, ShopRecord } from '../record/record.ts';

export interface Shops {
  /** The record as of the moment of the deed (see `momentOf`), by all that is known now. */
  asOf: ShopRecord;
  latest: ShopRecord;
}

export interface DecideContext {
  now: Instant;
  /** The message's own time. */
  saidAt: Instant;
  /** Opaque person id of the speaker. */
  by: string;
  role: 'member' | 'keeper';
  calendar: LocalCalendar;
  /**
   * What the speaker's last writing message wrote, with what answers to its question wrote, as far as it
   * still stands. Raw entries.
   */
  lastBatch: readonly Entry[];
  /** The entries that amendments and take-backs in the last batch are about, with their own corrections. */
  corrected?: readonly Entry[];
  /** By id of a counter reading in the last batch: its machine as it stood then, without that reading. */
  without?: ReadonlyMap<string, MachineRecord>;
  /** Key of this message, to tell a repetition from two equal acts in one message. */
  message?: string;
  /** What anybody said in the last half hour and still stands, for telling repetitions. */
  recent?: readonly Entry[];
  /** The speaker was asked about the figure and stands by it. */
  confirmed?: boolean;
  /** The last date to which a safety task may be put off; undefined where the task may wait. */
  latestPutOff(task: Task, machine: MachineRecord): LocalDate | undefined;
  /** Do the care rules have this task for a machine of this build? */
  planned(task: Task, machine: MachineRecord): boolean;
}

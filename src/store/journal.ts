/**
 * The journal's port: facts, append-only. Everything here gives and takes *raw* entries: amendments and
 * take-backs are entries of their own, and what they come to is decided in the fold.
 */
import type { StockItem, Task } from '../maintenance/codes.ts';
import type { Entry, Instant } from '../maintenance/entry/entry.ts';

/** Place in the order of arrival: 1 for the first entry, 0 for "before all". Never reused, without gaps. */
export type Position = number;

export interface Batch {
  entries: readonly Entry[];
  /** Position of the last entry that this batch takes in. */
  upTo: Position;
}

/** `arrival`: as appended. `fold`: by (`at`, `saidAt`, `act`, `id`), ids by their UTF-8 bytes. */
export type JournalOrder = 'arrival' | 'fold';

/** Entries that hold (`at`) or were written (`writtenAt`) later than `asOf` stay out. */
export interface AsOf {
  asOf?: Instant;
}

/** All that are given must hold. An amendment counts under what it sets: its machine, task or part. */
export interface HistoryFilter extends AsOf {
  machine?: string;
  task?: Task;
  part?: StockItem;
  by?: string;
  /** Earliest `at`, inclusive. */
  from?: Instant;
  /** Latest `at`, exclusive. */
  to?: Instant;
  limit: number;
}

/** What was written by then, also what holds only later: a machine that leaves on Friday can still stay. */
export interface PersonFilter {
  writtenAsOf?: Instant;
  limit: number;
}

export interface JournalReader {
  /** Position of the last entry; 0 when there is none. */
  position(): Promise<Position>;
  /** In order of arrival, after `position`, in batches small enough to let others run in between. */
  since(position: Position): AsyncIterable<Batch>;
  /** The whole journal. In fold order a batch's `upTo` is the largest position in it. */
  all(order: JournalOrder): AsyncIterable<Batch>;
  /** What one message wrote, by act and arrival. */
  byMessage(key: string): Promise<readonly Entry[]>;
  /** What answers to that message's open question wrote (`because`), in order of arrival. */
  answersTo(key: string): Promise<readonly Entry[]>;
  /** Those of the ids that exist, in order of arrival. */
  byIds(ids: readonly string[]): Promise<readonly Entry[]>;
  /**
   * These entries with all that hangs together with them: what amends or takes them back, at any depth, and
   * what they themselves amend or take back. In order of arrival.
   */
  familyOf(ids: readonly string[]): Promise<readonly Entry[]>;
  /**
   * All that this machine's record can be folded from, in order of arrival: entries that name it, entries that an
   * amendment moved to it, and every amendment and take-back of those, at any depth.
   */
  ofMachine(machine: string): Promise<readonly Entry[]>;
  /** The same for entries that name no machine: the shelf, hand-overs, notes about nothing in particular. */
  ofNoMachine(): Promise<readonly Entry[]>;
  /** What one person wrote, the latest arrival first. */
  ofPerson(by: string, filter: PersonFilter): Promise<readonly Entry[]>;
  /** The latest first, in reverse fold order. */
  recent(filter: HistoryFilter): Promise<readonly Entry[]>;
}

/** `same`: this id is there with the same content. `different`: with other content; nothing was written. */
export type ImportOutcome = 'written' | 'same' | 'different';

export interface Journal extends JournalReader {
  /** In the order given. Throws StoreFault `duplicate` at an id that is there already. Gives the new position. */
  append(entries: readonly Entry[]): Promise<Position>;
  /** One entry from elsewhere, with its own id and stamps. */
  insertRaw(entry: Entry): Promise<ImportOutcome>;
}

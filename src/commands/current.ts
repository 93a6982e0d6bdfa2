/**
 * The record of this moment, kept in step with the journal. Each call folds in what came since, from whichever
 * process; entries that hold or were written later than `now` wait for their time.
 */
import type { LocalCalendar } from '../maintenance/calendar.ts';
import type { Entry, Instant } from '../maintenance/entry/entry.ts';
import { extendShop, type EntrySource } from '../maintenance/record/extend.ts';
import { foldShop } from '../maintenance/record/fold.ts';
import type { ShopRecord } from '../maintenance/record/record.ts';
import type { JournalReader, Position } from '../store/journal.ts';

export const holdsAt =
  (now: Instant) =>
  (entry: Entry): boolean =>
    entry.at <= now && entry.writtenAt <= now;

/** What is known at `now`, and up to which place in the journal. */
export interface Known {
  record: ShopRecord;
  position: Position;
  now: Instant;
  /** Accepted, but not of this time yet. */
  waiting: readonly Entry[];
}

export const nothingKnown = (calendar: LocalCalendar): Known => ({
  record: foldShop([], calendar),
  position: 0,
  now: -Infinity,
  waiting: [],
});

/** Brings what is known up to `now`; when time went back, starts again from `base`. */
export async function catchUp(
  known: Known,
  base: Known,
  journal: JournalReader,
  now: Instant,
  calendar: LocalCalendar,
): Promise<Known> {
  const start = now >= known.now ? known : base;
  const holds = holdsAt(now);
  let record = start.record;
  let position = start.position;
  const fold = async (entries: readonly Entry[]): Promise<void> => {
    if (entries.length > 0) record = await extendShop(record, entries, sourceAt(journal, now), calendar);
  };
  await fold(start.waiting.filter(holds));
  const waiting = start.waiting.filter((entry) => !holds(entry));
  for await (const batch of journal.since(position)) {
    await fold(batch.entries.filter(holds));
    waiting.push(...batch.entries.filter((entry) => !holds(entry)));
    position = batch.upTo;
  }
  return { record, position, now, waiting };
}

/** The journal as a source for folding, as of `now`. */
export const sourceAt = (journal: JournalReader, now: Instant): EntrySource => ({
  familyOf: async (ids) => (await journal.familyOf(ids)).filter(holdsAt(now)),
  ofMachine: async (machine) => (await journal.ofMachine(machine)).filter(holdsAt(now)),
  ofNoMachine: async () => (await journal.ofNoMachine()).filter(holdsAt(now)),
});

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

/** What is known, and up to which place in the journal. */
export interface Known {
  record: ShopRecord;
  position: Position;
  /** It holds from here on: when the last of what it takes in happened or was written, not when somebody asked. */
  now: Instant;
  /** Accepted, but not of this time yet. */
  waiting: readonly Entry[];
  /** When the latest of all entries was said. */
  lastSaid: Instant;
}

export const nothingKnown = (calendar: LocalCalendar): Known => ({
  record: foldShop([], calendar),
  position: 0,
  now: -Infinity,
  waiting: [],
  lastSaid: -Infinity,
});

/**
 * Brings what is known up to `now`. `starts`: where to begin, the best first; one that already knows of a later
 * time than `now` is passed over. The last should be `nothingKnown`.
 */
export async function catchUp(
  starts: readonly Known[],
  journal: JournalReader,
  now: Instant,
  calendar: LocalCalendar,
): Promise<Known> {
  const start = starts.find((known) => known.now <= now) ?? nothingKnown(calendar);
  return start.position === 0
    ? fromTheBeginning(journal, now, calendar)
    : onTop(start, journal, now, calendar);
}

/** The whole journal at once: one fold is far cheaper than many extensions. */
async function fromTheBeginning(
  journal: JournalReader,
  now: Instant,
  calendar: LocalCalendar,
): Promise<Known> {
  const all: Entry[] = [];
  let position = 0;
  for await (const { entries, upTo } of journal.since(0)) {
    for (const entry of entries) all.push(entry);
    position = upTo;
  }
  const holds = holdsAt(now);
  const held = all.filter(holds);
  return {
    record: foldShop(held, calendar),
    position,
    now: latest(held, -Infinity),
    waiting: all.filter((entry) => !holds(entry)),
    lastSaid: lastSaid(all, -Infinity),
  };
}

/** From when on all of these count. */
const latest = (entries: readonly Entry[], before: Instant): Instant =>
  entries.reduce((last, entry) => Math.max(last, entry.at, entry.writtenAt), before);

const lastSaid = (entries: readonly Entry[], before: Instant): Instant =>
  entries.reduce((last, entry) => Math.max(last, entry.saidAt), before);

async function onTop(
  start: Known,
  journal: JournalReader,
  now: Instant,
  calendar: LocalCalendar,
): Promise<Known> {
  const holds = holdsAt(now);
  const waiting = start.waiting.filter((entry) => !holds(entry));
  const added = start.waiting.filter(holds);
  let { position } = start;
  for await (const { entries, upTo } of journal.since(position)) {
    for (const entry of entries) (holds(entry) ? added : waiting).push(entry);
    position = upTo;
  }
  const record =
    added.length === 0
      ? start.record
      : await extendShop(start.record, added, sourceAt(journal, now), calendar);
  return {
    record,
    position,
    now: latest(added, start.now),
    waiting,
    lastSaid: lastSaid(added, start.lastSaid),
  };
}

/** The journal as a source for folding, as of `now`. */
export const sourceAt = (journal: JournalReader, now: Instant): EntrySource => ({
  familyOf: async (ids) => (await journal.familyOf(ids)).filter(holdsAt(now)),
  ofMachine: async (machine) => (await journal.ofMachine(machine)).filter(holdsAt(now)),
  ofNoMachine: async () => (await journal.ofNoMachine()).filter(holdsAt(now)),
});

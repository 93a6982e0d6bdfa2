/** What "that", "my last one" and undo speak of: the speaker's last writing message that still stands. */
import type { Entry, Instant } from '../maintenance/entry/entry.ts';
import { takenBack } from '../maintenance/record/standing.ts';
import type { JournalReader } from '../store/journal.ts';

/** The platform of what a workshop file says: mended in the file, never by a word in a chat. */
export const FILE = 'file';

/** Nobody undoes message by message further back than this. */
const LOOK_BACK = 200;

/**
 * Everything that still stands of the speaker's last writing message, with what answers to its questions
 * wrote. Take-backs do not count as writing: a second undo goes one message further back.
 */
export async function lastBatch(journal: JournalReader, by: string, now: Instant): Promise<readonly Entry[]> {
  for await (const batch of batchesOf(journal, by, now)) return batch;
  return [];
}

/** What still stands of each of the speaker's writing messages, the latest first. */
export async function* batchesOf(
  journal: JournalReader,
  by: string,
  now: Instant,
): AsyncGenerator<readonly Entry[]> {
  const own = await journal.ofPerson(by, { limit: LOOK_BACK, writtenAsOf: now });
  const tried = new Set<string>();
  for (const entry of own) {
    const origin = originOf(entry);
    if (entry.kind === 'takenBack' || entry.platform === FILE || tried.has(origin)) continue;
    tried.add(origin);
    const standing = await standingBatch(journal, origin, now);
    if (standing.length > 0) yield standing;
  }
}

/** The message that a batch goes by: what an answer wrote belongs to its question. */
export const originOf = (entry: Entry): string => entry.because ?? entry.message;

/** Did a message, or an answer to its questions, write anything, taken back since or not? */
export const everWrote = async (journal: JournalReader, message: string): Promise<boolean> =>
  (await journal.byMessage(message)).length > 0 || (await journal.answersTo(message)).length > 0;

/** What a message and the answers to its questions wrote and nobody took back by `now`. */
export async function standingBatch(
  journal: JournalReader,
  message: string,
  now: Instant,
): Promise<readonly Entry[]> {
  const batch = [...(await journal.byMessage(message)), ...(await journal.answersTo(message))];
  const writing = batch.filter((entry) => entry.kind !== 'takenBack' && entry.writtenAt <= now);
  const family = await journal.familyOf(writing.map((entry) => entry.id));
  const gone = takenBack(family.filter((entry) => entry.writtenAt <= now));
  return writing.filter((entry) => !gone.has(entry.id));
}

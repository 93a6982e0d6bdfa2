/** A message and what its author made of it since: each telling that was handled has a key of its own. */
import { everWrote, standingBatch } from '../commands/lastBatch.ts';
import type { Answer } from '../commands/message.ts';
import type { Instant } from '../maintenance/entry/entry.ts';
import type { Store, Transaction } from '../store/store.ts';

export interface Telling {
  key: string;
  /** '' when the words were deleted, or when only the answers to its questions were noted. */
  text: string;
  at?: Instant;
}

const base = (key: string): string => key.replace(/~\d+$/u, '');
const nth = (message: string, n: number): string => (n === 0 ? message : `${message}~${n}`);

export interface Tellings {
  /** The newest that something was noted of. */
  last?: Telling;
  /** Does any of that stand, of whichever telling? */
  stands: boolean;
  /** The key by which the coming one is handled. */
  next: string;
}

export const tellingsOf = (store: Store, message: string): Promise<Tellings> =>
  store.read(async ({ post, journal }) => {
    let last: Telling | undefined;
    let stands = false;
    for (let n = 0; ; n += 1) {
      const key = nth(base(message), n);
      const words = await post.words(key);
      const wrote = await everWrote(journal, key);
      if (words) last = { key, text: words.text, at: words.at };
      else if (wrote) last = { key, text: '' };
      else if ((await post.handled(key)) === undefined)
        return { ...(last ? { last } : {}), stands, next: key };
      stands ||= wrote && (await standingBatch(journal, key, Infinity)).length > 0;
    }
  });

/** Its words are those that it was read from, for the next change of the message. */
export async function saveTelling(
  { post }: Transaction,
  { message, entries }: Answer,
  { text, saidAt, message: before }: { text: string; saidAt: Instant; message: string },
): Promise<void> {
  const person = (await post.words(before))?.person;
  if (entries.length > 0 && person !== undefined) await post.saveWords({ message, person, text, at: saidAt });
}

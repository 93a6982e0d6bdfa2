/** What was received is handled lane by lane: answered, asked about, or left; then it is finished in the same commit. */
import { z } from 'zod';
import { isOutOfReach } from '../store/fault.ts';
import type { InboxRow } from '../store/traffic.ts';
import { answerReceived, isOpen } from './answer.ts';
import { PlatformFault } from './fault.ts';
import { backOff, wordOf, type Works } from './parts.ts';
import type { Received } from './platform.ts';
import { replyWith } from './respond.ts';
import { answerTogether, isWords, type Words } from './said.ts';

const AT_A_TIME = 50;
/** Messages of a lane that share a commit: so many are not answered before the last of them is read. */
const TOGETHER = 8;
/** Then whoever wrote it hears that it was not noted. */
const MOST_TRIES = 5;

const shape = z.looseObject({
  key: z.string(), platform: z.string(), place: z.looseObject({ channel: z.string() }), account: z.string(),
  what: z.looseObject({ kind: z.string() }),
}); // prettier-ignore
const isReceived = (json: unknown): json is Received => shape.safeParse(json).success;

/** Gives whether anything was ready. */
export async function handleWaiting(works: Works): Promise<boolean> {
  const now = works.clock();
  const rows = await works.store.read(({ traffic }) => traffic.waiting(AT_A_TIME));
  // what came by a platform that is not served just now waits for it
  const ready = rows.filter(({ notBefore, platform }) => notBefore <= now && works.platform(platform));
  let failed: { fault: unknown } | undefined;
  for (const row of ready) {
    try {
      if (!(await handleRun(works, row))) await handleRow(works, row);
    } catch (fault) {
      // whatever is wrong with one lane, the others are handled
      failed ??= { fault };
    }
  }
  if (failed) throw failed.fault;
  return ready.length > 0;
}

/** What waits behind it in its lane goes along with it. False: nothing was handled. */
async function handleRun(works: Works, { lane }: InboxRow): Promise<boolean> {
  const rows = await works.store.read(({ traffic }) => traffic.waitingIn(lane, TOGETHER));
  if (rows.length < 2) return false;
  try {
    const run = await plainRun(works, rows);
    if (run.length < 2) return false;
    await answerTogether(works, run);
    return true;
  } catch (fault) {
    works.log.warn('inbox.apart', { why: wordOf(fault), messages: rows.length });
    return false;
  }
}

/** Up to the first that needs more than an answer: it was tried before, has to wait, or may not be said there. */
async function plainRun(works: Works, rows: readonly InboxRow[]): Promise<Words[]> {
  const run: Words[] = [];
  for (const { received, notBefore, tries } of rows) {
    const plain = isReceived(received) && isWords(received) && tries === 0 && notBefore <= works.clock();
    if (!plain || !(await isOpen(works, received))) break;
    run.push(received);
  }
  return run;
}

async function handleRow(works: Works, row: InboxRow): Promise<void> {
  const { received } = row;
  if (!isReceived(received)) {
    works.log.error('inbox.unreadable', { platform: row.platform });
    return finish(works, row.key);
  }
  try {
    await answerReceived(works, received);
  } catch (fault) {
    works.log.error('inbox.failed', { platform: row.platform, kind: received.what.kind, why: wordOf(fault), tries: row.tries }); // prettier-ignore
    // a busy database, a full disk or a platform that does not answer is no fault of the message: it waits
    if (isPassing(fault) || row.tries + 1 < MOST_TRIES) return postpone(works, row);
    await giveUp(works, received);
  }
}

const isPassing = (fault: unknown): boolean => isOutOfReach(fault) || fault instanceof PlatformFault;

const finish = (works: Works, key: string): Promise<void> =>
  works.store.transact(async ({ traffic }) => void (await traffic.finish(key, works.clock())));

const postpone = (works: Works, { key, tries }: InboxRow): Promise<void> =>
  works.store.transact(({ traffic }) => traffic.postpone(key, works.clock() + backOff(tries)));

/** Nothing of it was written: that is said, not kept quiet. */
async function giveUp(works: Works, received: Received): Promise<void> {
  await works.store.transact((transaction) =>
    replyWith(works, transaction, received, {
      text: 'Not noted: something went wrong on my side. Please say it again; if it goes on, tell whoever runs me.',
      audience: 'asker',
    }),
  );
  works.postsChanged();
}

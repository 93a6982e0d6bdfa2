/** The pumps of a service, wired: what is received is handled, what is answered is sent, the digests are kept true. */
import type { Instant } from '../maintenance/entry/entry.ts';
import { COALESCE_MS, planDigests, refreshDigests, type Missed } from './digests.ts';
import { handleWaiting } from './inbox.ts';
import { wordOf, type ServiceParts, type Works } from './parts.ts';
import { openPump, type Pump } from './pump.ts';
import { newPace, sendWaiting, type Pace } from './sender.ts';

export interface Workings {
  works: Works;
  inbox: Pump;
  sender: Pump;
  digests: Pump;
  /** Each makes work for the next. */
  pumps: readonly Pump[];
  /** What the digests show may be out of date. */
  stale: () => void;
  /** Nothing is on its way any more, and nothing waits that may go now. */
  allSent(): Promise<void>;
  /** For whatever goes on when a piece of work failed. */
  failed: (what: string) => (fault: unknown) => void;
}

export function openWorkings(
  parts: ServiceParts,
  standing: Pick<Works, 'serving' | 'leaseLost' | 'up'>,
): Workings {
  const { log } = parts;
  const failed =
    (what: string) =>
    (fault: unknown): void =>
      log.error(what, { why: wordOf(fault) });
  const pace = newPace();
  const works: Works = {
    ...parts,
    ...standing,
    platform: (name) => standing.up().find((platform) => platform.name === name),
    postsChanged: () => sender.kick(),
    factsChanged({ platform: name, account }) {
      stale();
      void works.platform(name)?.refreshHome?.(account).catch(failed('home.fault'));
    },
  };
  const inbox = openPump(() => handleWaiting(works), failed('inbox.fault'));
  const sender = openPump(async () => {
    await sendWaiting(works, pace, failed('posts.fault'));
    return false;
  }, failed('posts.fault'));
  const { digests, stale } = digestPump(works, failed('digest.fault'));
  return {
    works,
    inbox,
    sender,
    digests,
    pumps: [inbox, digests, sender],
    stale,
    allSent: () => allSent(sender, pace),
    failed,
  };
}

async function allSent(sender: Pump, { busy }: Pace): Promise<void> {
  await sender.idle();
  while (busy.size > 0) {
    await Promise.all(busy.values());
    await sender.idle();
  }
}

/** Plans what is owed; brings what is shown up to date a little after it became out of date. */
function digestPump(works: Works, failed: (fault: unknown) => void): { digests: Pump; stale: () => void } {
  let staleAt: Instant | undefined;
  const missed: Missed = new Map();
  const digests = openPump(async () => {
    await planDigests(works, missed);
    if (staleAt === undefined || works.clock() - staleAt < COALESCE_MS) return false;
    const since = staleAt;
    staleAt = undefined;
    // one that did not come about is still owed
    await refreshDigests(works).catch((fault: unknown) => {
      staleAt ??= since;
      throw fault;
    });
    return false;
  }, failed);
  return { digests, stale: () => void (staleAt ??= works.clock()) };
}

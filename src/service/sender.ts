/** Which posts may go now: one run a channel, one change a post, and a channel that was told to slow down waits. */
import type { Instant } from '../maintenance/entry/entry.ts';
import type { PostRow } from '../store/traffic.ts';
import { editOne } from './editing.ts';
import type { Works } from './parts.ts';
import type { Platform } from './platform.ts';
import { sendRun } from './sending.ts';

const AT_A_TIME = 40;
/** Posts of a channel that are claimed in one commit: what a process that dies may leave to be looked up. */
const RUN = 8;
const SLOW_FOR_MS = 60_000;

export interface Pace {
  /** A channel that was told to slow down takes one post in so much time. */
  slow: Map<string, { everyMs: number; until: Instant }>;
  last: Map<string, Instant>;
  /** On their way: one run a channel, one change a post. A slow one holds up no other. */
  busy: Map<string, Promise<void>>;
}
export const newPace = (): Pace => ({ slow: new Map(), last: new Map(), busy: new Map() });

const channelKey = ({ platform, channel }: PostRow): string => `${platform}:${channel}`;

/** How many posts the channel takes now. */
function most({ slow, last }: Pace, row: PostRow, now: Instant): number {
  const key = channelKey(row);
  const limit = slow.get(key);
  if (!limit || limit.until <= now) return RUN;
  return now - (last.get(key) ?? -Infinity) >= limit.everyMs ? 1 : 0;
}

/** Starts all that may go now; each that comes to an end kicks the next. */
export async function sendWaiting(works: Works, pace: Pace, failed: (fault: unknown) => void): Promise<void> {
  const now = works.clock();
  const { unsent, unedited } = await works.store.read(async ({ traffic }) => ({
    unsent: await traffic.unsent(AT_A_TIME),
    unedited: await traffic.unedited(AT_A_TIME),
  }));
  const start = (row: PostRow, name: string, work: (platform: Platform) => Promise<void>): void => {
    const platform = works.platform(row.platform);
    // what is for a platform that is not served just now waits for it
    if (!platform || !works.serving() || row.notBefore > now || pace.busy.has(name)) return;
    if (most(pace, row, now) === 0) return;
    pace.busy.set(name, work(platform).finally(() => void pace.busy.delete(name)).then(() => works.postsChanged(), failed)); // prettier-ignore
  };
  for (const row of unsent) start(row, `post ${channelKey(row)}`, (to) => sendTo(works, pace, to, row));
  for (const row of unedited)
    start(row, `edit ${row.id}`, (to) => {
      pace.last.set(channelKey(row), now);
      return editOne(works, to, row);
    });
}

async function sendTo(works: Works, pace: Pace, platform: Platform, row: PostRow): Promise<void> {
  const key = channelKey(row);
  const now = works.clock();
  const results = await sendRun({ works, platform, row, most: most(pace, row, now) });
  if (results.length > 0) pace.last.set(key, now);
  if (results.some(({ outcome }) => outcome === 'later'))
    pace.slow.set(key, { everyMs: platform.everyMs, until: works.clock() + SLOW_FOR_MS });
}

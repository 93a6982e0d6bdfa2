/** The bot at work on chat platforms: what arrives is stored and handled, what is answered is sent, mornings are kept. */
import type { Instant } from '../maintenance/entry/entry.ts';
import { nextDigest } from '../schedule/digest.ts';
import { openDesk } from './desk.ts';
import { COALESCE_MS, planDigests, refreshDigests } from './digests.ts';
import { handleWaiting } from './inbox.ts';
import { openIntake } from './intake.ts';
import { dropLease, RENEW_MS, takeLease } from './lease.ts';
import { wordOf, type ServiceParts, type Works } from './parts.ts';
import type { PlatformState } from './platform.ts';
import { openPump } from './pump.ts';
import { newPace, sendWaiting } from './sender.ts';

export interface ServiceState {
  platforms: readonly (PlatformState & { name: string })[];
  /** Received and not handled yet. */
  waiting: number;
  /** Posts that are to be sent or changed. */
  unsent: number;
  nextDigest?: Instant;
}

export interface Service {
  /** Resolves when all platforms are connected. Rejects with a PlatformFault of the first that cannot be. */
  start(): Promise<void>;
  /** Takes nothing new, handles and sends what is under way, disconnects, gives the lease back. */
  stop(): Promise<void>;
  state(): Promise<ServiceState>;
  /** Nothing is left that could be done now. */
  settled(): Promise<void>;
  /** Another process has taken the lease: this one must not go on. */
  onLost(lost: () => void): void;
}

const TICK_MS = 500;
const DIGEST_MS = 5_000;
const PRUNE_MS = 60 * 60_000;
const DAY_MS = 24 * 60 * 60_000;
/** Platforms repeat deliveries for a day; buttons are pressed long after. */
const KEEP = { received: 8 * DAY_MS, posts: 60 * DAY_MS };

export function openService(parts: ServiceParts): Service {
  const { store, bot, platforms, clock, log } = parts;
  const pace = newPace();
  let staleAt: Instant | undefined;
  let lost: () => void = () => undefined;

  const works: Works = {
    ...parts,
    platform: (name) => platforms.find((platform) => platform.name === name),
    inboxChanged: () => inbox.kick(),
    postsChanged: () => sender.kick(),
    factsChanged({ platform: name, account }) {
      staleAt ??= clock();
      const home = works.platform(name)?.refreshHome?.(account);
      void home?.catch(failed('home.fault'));
    },
  };
  const failed = (what: string) => (fault: unknown) => log.error(what, { why: wordOf(fault) });
  const inbox = openPump(() => handleWaiting(works), failed('inbox.fault'));
  const sender = openPump(async () => {
    await sendWaiting(works, pace, failed('posts.fault'));
    return false;
  }, failed('posts.fault'));
  /** Nothing is on its way any more, and nothing waits that may go now. */
  const allSent = async (): Promise<void> => {
    await sender.idle();
    while (pace.busy.size > 0) {
      await Promise.all(pace.busy.values());
      await sender.idle();
    }
  };
  const digests = openPump(async () => {
    await planDigests(works);
    if (staleAt !== undefined && clock() - staleAt >= COALESCE_MS) {
      const since = staleAt;
      staleAt = undefined;
      // one that did not come about is still owed
      await refreshDigests(works).catch((fault: unknown) => {
        staleAt ??= since;
        throw fault;
      });
    }
    return false;
  }, failed('digest.fault'));
  const receive = openIntake(store, clock, () => inbox.kick());

  const renew = async (): Promise<void> => {
    const { taken } = await takeLease(store, parts.holder, clock());
    if (!taken) lost();
  };
  const prune = (): Promise<void> =>
    store.transact(async ({ traffic }) => {
      await traffic.pruneInbox(clock() - KEEP.received);
      await traffic.prunePosts(clock() - KEEP.posts);
    });
  const timers: (() => void)[] = [];
  const every = (ms: number, what: string, work: () => void | Promise<void>): void => {
    timers.push(parts.every(ms, () => void Promise.resolve().then(work).catch(failed(what))));
  };

  return {
    async start() {
      // what was noted just before the last process ended is not shown yet
      staleAt = clock();
      for (const platform of platforms) await platform.start(openDesk(works, platform, receive));
      every(TICK_MS, 'tick', () => {
        inbox.kick();
        sender.kick();
      });
      every(DIGEST_MS, 'digest.fault', () => digests.kick());
      every(RENEW_MS, 'lease.fault', renew);
      every(PRUNE_MS, 'prune.fault', prune);
      for (const pump of [inbox, sender, digests]) pump.kick();
    },
    async stop() {
      for (const stop of timers.splice(0)) stop();
      // while they still can send, what was taken in is handled and what was answered is sent
      await Promise.all([inbox.idle(), digests.idle()]);
      await allSent();
      await Promise.all(platforms.map((platform) => platform.stop()));
      await Promise.all([inbox.stop(), sender.stop(), digests.stop()]);
      await dropLease(store, parts.holder);
    },
    async state() {
      const [workshop, calendar] = [await bot.workshop(), await bot.calendar()];
      const next = workshop && calendar ? nextDigest(workshop.workshop, calendar, clock()) : undefined;
      const counts = await store.read(async ({ traffic }) => ({
        waiting: await traffic.waitingCount(),
        unsent: await traffic.openPosts(),
      }));
      return {
        platforms: platforms.map((platform) => ({ name: platform.name, ...platform.state() })),
        ...counts,
        ...(next === undefined ? {} : { nextDigest: next }),
      };
    },
    async settled() {
      for (const pump of [inbox, digests, sender]) {
        pump.kick();
        await pump.idle();
      }
      await allSent();
      await inbox.idle();
    },
    onLost(call) {
      lost = call;
    },
  };
}

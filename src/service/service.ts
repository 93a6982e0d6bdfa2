/** The bot at work on chat platforms: what arrives is stored and handled, what is answered is sent, mornings are kept. */
import type { Instant } from '../maintenance/entry/entry.ts';
import { nextDigest } from '../schedule/digest.ts';
import { openDesk } from './desk.ts';
import { COALESCE_MS, planDigests, refreshDigests } from './digests.ts';
import { handleWaiting } from './inbox.ts';
import { openIntake } from './intake.ts';
import { dropLease, RENEW_MS, takeLease } from './lease.ts';
import { wordOf, type ServiceParts, type Works } from './parts.ts';
import type { Platform, PlatformState } from './platform.ts';
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
  /**
   * Resolves when every platform was tried. One that cannot connect just now is tried again; when none can, it rejects
   * with the first one's PlatformFault.
   */
  start(): Promise<void>;
  /**
   * Takes nothing new, handles and sends what is under way, disconnects, gives the lease back. Without `drain` what is
   * not handled or sent is left as it is: another process holds the lease and does it.
   */
  stop(how?: { drain: boolean }): Promise<void>;
  state(): Promise<ServiceState>;
  /** Nothing is left that could be done now. */
  settled(): Promise<void>;
  /** Another process has taken the lease: this one must not go on. */
  onLost(lost: () => void): void;
}

const TICK_MS = 500;
const DIGEST_MS = 5_000;
/** A platform that could not be reached at the start is tried again so often. */
const AGAIN_MS = 60_000;
const PRUNE_MS = 60 * 60_000;
const DAY_MS = 24 * 60 * 60_000;
/** Platforms repeat deliveries for a day; buttons are pressed long after. */
const KEEP = { received: 8 * DAY_MS, posts: 60 * DAY_MS };

export function openService(parts: ServiceParts): Service {
  const { store, bot, platforms, clock, log } = parts;
  const pace = newPace();
  let staleAt: Instant | undefined;
  let lost: () => void = () => undefined;
  const at = { stopped: false };
  let renewing: () => void = () => undefined;

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

  const connect = (platform: Platform): Promise<void> => platform.start(openDesk(works, platform, receive));
  const away = new Set<Platform>();
  const connectAgain = async (): Promise<void> => {
    for (const platform of away) {
      await connect(platform);
      away.delete(platform);
      log.info('platform.connected', { platform: platform.name });
    }
  };
  /** One that is down keeps no other one from serving. */
  const connectAll = async (): Promise<void> => {
    const tried = await Promise.allSettled(platforms.map(connect));
    const failures = tried.flatMap((one, i) => {
      const platform = platforms[i];
      return one.status === 'rejected' && platform ? [{ platform, reason: one.reason as unknown }] : [];
    });
    const [first] = failures;
    if (first && failures.length === platforms.length) throw first.reason;
    for (const { platform, reason } of failures) {
      away.add(platform);
      log.error('platform.notConnected', { platform: platform.name, why: wordOf(reason) });
    }
  };

  return {
    async start() {
      // what was noted just before the last process ended is not shown yet
      staleAt = clock();
      renewing = parts.every(RENEW_MS, () => void renew().catch(failed('lease.fault')));
      await connectAll();
      if (at.stopped) return;
      every(AGAIN_MS, 'platform.notConnected', connectAgain);
      every(TICK_MS, 'tick', () => {
        inbox.kick();
        sender.kick();
      });
      every(DIGEST_MS, 'digest.fault', () => digests.kick());
      every(PRUNE_MS, 'prune.fault', prune);
      for (const pump of [inbox, sender, digests]) pump.kick();
    },
    async stop({ drain } = { drain: true }) {
      at.stopped = true;
      for (const stop of timers.splice(0)) stop();
      const pumps = [inbox, sender, digests];
      if (!drain) await Promise.all(pumps.map((pump) => pump.stop()));
      else {
        // while they still can send, what was taken in is handled and what was answered is sent
        await Promise.all([inbox.idle(), digests.idle()]);
        await allSent();
      }
      await Promise.all(platforms.map((platform) => platform.stop()));
      await Promise.all(pumps.map((pump) => pump.stop()));
      // until nothing is under way any more the lease is ours
      renewing();
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

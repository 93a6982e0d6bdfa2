/** The bot at work on chat platforms: what arrives is stored and handled, what is answered is sent, mornings are kept. */
import type { Instant } from '../maintenance/entry/entry.ts';
import { nextDigest } from '../schedule/digest.ts';
import { openConnections } from './connections.ts';
import { openDesk } from './desk.ts';
import { openIntake } from './intake.ts';
import { dropLease, RENEW_MS, takeLease } from './lease.ts';
import { wordOf, type ServiceParts } from './parts.ts';
import type { PlatformState } from './platform.ts';
import { openWorkings, type Workings } from './workings.ts';

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
   * Resolves when one platform is connected and what comes is handled. Those that cannot connect just now are tried
   * again; when none can, it rejects with the first one's PlatformFault.
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

interface Standing {
  /** Asked to stop. */
  stopped: boolean;
  /** Another process holds the lease. */
  lost: boolean;
}

export function openService(parts: ServiceParts): Service {
  const { store, platforms, log } = parts;
  const at: Standing = { stopped: false, lost: false };
  const lease = keptLease(parts, at);
  const connections = openConnections(
    platforms,
    (platform) => platform.start(openDesk(works, platform, receive)),
    log,
  );
  const workings = openWorkings(parts, {
    serving: () => !at.lost,
    leaseLost: lease.lose,
    up: () => connections.up(),
  });
  const { works, inbox, pumps } = workings;
  const receive = openIntake(store, parts.clock, () => inbox.kick());
  const timers = openTimers(parts, workings);

  return {
    async start() {
      // what was noted just before the last process ended is not shown yet
      workings.stale();
      lease.keep();
      await connections.first();
      if (!at.stopped) timers.begin(() => connections.again());
    },
    async stop({ drain } = { drain: true }) {
      at.stopped = true;
      if (!drain) at.lost = true;
      timers.end();
      // while they still can send, what was taken in is handled and what was answered is sent
      if (drain) {
        await Promise.all([inbox.idle(), workings.digests.idle()]);
        await workings.allSent();
      } else await Promise.all(pumps.map((pump) => pump.stop()));
      await Promise.all(platforms.map((platform) => platform.stop()));
      await Promise.all(pumps.map((pump) => pump.stop()));
      await lease.giveBack();
    },
    state: () => stateOf(parts),
    async settled() {
      for (const pump of pumps) {
        pump.kick();
        await pump.idle();
      }
      await workings.allSent();
      await inbox.idle();
    },
    onLost: (call) => lease.onLost(call),
  };
}

/** Renewed from the start until nothing is under way any more: so long it is ours. */
function keptLease({ store, holder, clock, every, log }: ServiceParts, at: Standing) {
  let lost: () => void = () => undefined;
  let end: () => void = () => undefined;
  const lose = (): void => {
    at.lost = true;
    lost();
  };
  const renew = async (): Promise<void> => {
    const { taken } = await takeLease(store, holder, clock());
    if (!taken) lose();
  };
  const failed = (fault: unknown): void => log.error('lease.fault', { why: wordOf(fault) });
  return {
    keep: () => void (end = every(RENEW_MS, () => void renew().catch(failed))),
    lose,
    onLost: (call: () => void) => void (lost = call),
    async giveBack() {
      end();
      await dropLease(store, holder);
    },
  };
}

function openTimers({ store, clock, every }: ServiceParts, workings: Workings) {
  const ends: (() => void)[] = [];
  const repeat = (ms: number, what: string, work: () => void | Promise<void>): void => {
    ends.push(every(ms, () => void Promise.resolve().then(work).catch(workings.failed(what))));
  };
  const prune = (): Promise<void> =>
    store.transact(async ({ traffic }) => {
      await traffic.pruneInbox(clock() - KEEP.received);
      await traffic.prunePosts(clock() - KEEP.posts);
    });
  return {
    begin(connectAgain: () => Promise<void>) {
      repeat(AGAIN_MS, 'platform.notConnected', connectAgain);
      repeat(TICK_MS, 'tick', () => {
        workings.inbox.kick();
        workings.sender.kick();
      });
      repeat(DIGEST_MS, 'digest.fault', () => workings.digests.kick());
      repeat(PRUNE_MS, 'prune.fault', prune);
      for (const pump of workings.pumps) pump.kick();
    },
    end() {
      for (const end of ends.splice(0)) end();
    },
  };
}

async function stateOf({ store, bot, platforms, clock }: ServiceParts): Promise<ServiceState> {
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
}

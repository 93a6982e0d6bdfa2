/** A chat platform in memory, behind the port of the service. What was posted outlives the services that post there. */
import { setTimeout as pause } from 'node:timers/promises';
import type { Desk, Outgoing, Platform, PostRef, Received, SendResult } from '../../src/index.ts';

/** A message of the bot, as everybody who may see it sees it now. */
export interface Shown {
  id: string;
  channel: string;
  /** The message that it stands below. */
  below?: string;
  outgoing: Outgoing;
  edits: number;
}

/** Where posts are kept: in memory, or in a file that survives a kill. */
export interface Wall {
  add(shown: Shown): void;
  change(id: string, outgoing: Outgoing): boolean;
  all(): readonly Shown[];
}

export function wallInMemory(): Wall {
  const shown: Shown[] = [];
  return {
    add: (one) => void shown.push(one),
    change(id, outgoing) {
      const at = shown.findIndex((one) => one.id === id);
      const before = shown[at];
      if (!before) return false;
      shown[at] = { ...before, outgoing, edits: before.edits + 1 };
      return true;
    },
    all: () => shown,
  };
}

/**
 * What the next send comes to. `lost`: posted, but the answer does not arrive. `unknown`: not posted, and nobody knows.
 * `throws`: posted, and the call throws against its promise. `hangs`: nothing, until `release`.
 */
export type Fate = 'lost' | 'unknown' | 'refused' | 'throws' | 'hangs' | { later: number } | { slow: number };

export interface FakePlatform extends Platform {
  desk(): Desk;
  /** Fates of the coming sends and edits, in order; then all goes well. */
  sends: Fate[];
  edits: Fate[];
  /** `find` rejects so often. */
  blind: number;
  /** Calls of `send`, `edit` and `find`, by the id of what they were about. */
  calls: { did: 'send' | 'edit' | 'find'; id: string }[];
  refreshed: string[];
  wall: Wall;
  /** What everybody sees, of one channel or of all. */
  posts(channel?: string): readonly Shown[];
  /** Names of channels that exist; all others do not. */
  channels: Map<string, string>;
  deliver(received: Received): Promise<'stored' | 'known'>;
  /** Lets go what hangs. */
  release(): void;
}

export interface FakeOptions {
  name?: string;
  space?: string;
  wall?: Wall;
  everyMs?: number;
}

export const CHANNEL = 'C0PROPSHOP';

export function fakePlatform(options: FakeOptions = {}): FakePlatform {
  const { name = 'slack', space = 'T1', wall = wallInMemory(), everyMs = 1000 } = options;
  let desk: Desk | undefined;
  let hanging: (() => void)[] = [];

  const post = (outgoing: Outgoing): PostRef => {
    const { to, replyTo } = outgoing;
    // a direct conversation that is opened by a person's account has an id of its own
    const channel = to.channel.replace(/^U/u, 'DU');
    const id = `m${wall.all().length + 1}`;
    wall.add({
      id,
      channel,
      outgoing,
      edits: 0,
      ...(replyTo === undefined ? {} : { below: replyTo }),
    });
    return { platform: name, channel, id, ...(replyTo === undefined ? {} : { thread: replyTo }) };
  };
  const meet = async (fate: Fate | undefined, work: () => SendResult): Promise<SendResult> => {
    if (fate === undefined) return work();
    if (typeof fate === 'object' && 'later' in fate)
      return { outcome: 'later', why: 'rate limited', afterMs: fate.later };
    if (typeof fate === 'object') {
      await pause(fate.slow);
      return work();
    }
    if (fate === 'hangs') await new Promise<void>((resolve) => hanging.push(resolve));
    if (fate === 'refused') return { outcome: 'refused', why: 'channel_not_found' };
    if (fate === 'lost' || fate === 'throws') work();
    if (fate === 'throws') throw new TypeError('the line broke');
    return fate === 'hangs' ? work() : { outcome: 'unknown', why: 'no answer' };
  };

  const platform: FakePlatform = {
    name, everyMs, itemsWithButtons: 7, sends: [], edits: [], blind: 0, calls: [], refreshed: [], wall,
    channels: new Map([[CHANNEL, CHANNEL], ['C0STAGE', 'C0STAGE'], ['100000000000000001', '100000000000000001']]),
    desk() {
      if (!desk) throw new Error('Nobody serves here.');
      return desk;
    },
    posts: (channel) => wall.all().filter((one) => channel === undefined || one.channel === channel),
    deliver: (received) => platform.desk().receive(received),
    release() {
      for (const go of hanging) go();
      hanging = [];
    },
    start: async (its) => void (desk = its),
    stop: async () => void (desk = undefined),
    space: () => space,
    channelId: async (named) => platform.channels.get(named),
    async send(outgoing) {
      platform.calls.push({ did: 'send', id: outgoing.id });
      return meet(platform.sends.shift(), () => ({ outcome: 'sent', ref: post(outgoing) }));
    },
    async edit(ref, outgoing) {
      platform.calls.push({ did: 'edit', id: outgoing.id });
      return meet(platform.edits.shift(), () =>
        wall.all().some(({ id, channel }) => id === ref.id && channel === ref.channel) && wall.change(ref.id, outgoing) ? { outcome: 'sent', ref } : { outcome: 'refused', why: 'message_not_found' },
      );
    },
    async find({ id, to, replyTo, audience }) {
      platform.calls.push({ did: 'find', id });
      if (platform.blind > 0) {
        platform.blind -= 1;
        throw new Error('not just now');
      }
      if (audience === 'asker' && !to.direct) return 'private';
      const found = wall.all().find((one) => one.outgoing.id === id && one.channel === to.channel && one.below === replyTo);
      return found && { platform: name, channel: found.channel, id: found.id, ...(replyTo === undefined ? {} : { thread: replyTo }) };
    },
    state: () => ({ connected: desk !== undefined }),
    refreshHome: async (account) => void platform.refreshed.push(account),
  }; // prettier-ignore
  return platform;
}

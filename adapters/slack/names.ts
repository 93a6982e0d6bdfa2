/** People and channels by name. What cannot be looked up quickly goes by what the payload calls it. */
import type { webApi } from '@slack/bolt';
import type { Instant, Log } from '../../src/index.ts';
import { wordOf } from './slackError.ts';

const DAY_MS = 86_400_000;
/** A failed look-up is not repeated for every message of a burst. */
const AGAIN_MS = 60_000;
/** The look-up stands before the acknowledgement, which Slack awaits for three seconds. */
const PATIENCE_MS = 1_000;
const MOST_KEPT = 5_000;

export interface Names {
  /** As Slack shows the person just now; `handle`: what stands in when Slack does not say. */
  person(account: string, handle?: string): Promise<string>;
  /** Without its #; undefined: not known. */
  channel(id: string): Promise<string | undefined>;
}

export function openNames(client: webApi.WebClient, clock: () => Instant, log: Log): Names {
  const people = cache(clock, async (id) => {
    const { user } = await client.users.info({ user: id });
    return user?.profile?.display_name || user?.profile?.real_name || user?.real_name || user?.name;
  });
  const channels = cache(clock, async (id) => {
    const { channel } = await client.conversations.info({ channel: id });
    return channel?.name;
  });
  const quietly = async (what: string, look: Promise<string | undefined>): Promise<string | undefined> => {
    try {
      return await look;
    } catch (fault) {
      log.warn('slack.name', { what, why: wordOf(fault) });
      return undefined;
    }
  };
  return {
    person: async (account, handle) => (await quietly('person', people(account))) ?? handle ?? account,
    channel: (id) => quietly('channel', channels(id)),
  };
}

interface Kept {
  name: Promise<string | undefined>;
  until: Instant;
}

/** One look-up a day for each id, however many ask at once. */
function cache(clock: () => Instant, look: (id: string) => Promise<string | undefined>) {
  const kept = new Map<string, Kept>();
  return (id: string): Promise<string | undefined> => {
    const now = clock();
    const known = kept.get(id);
    if (known && known.until > now) return known.name;
    const name = within(PATIENCE_MS, look(id));
    const entry = { name, until: now + DAY_MS };
    name.catch(() => {
      entry.until = now + AGAIN_MS;
      entry.name = Promise.resolve(undefined);
    });
    kept.delete(id);
    kept.set(id, entry);
    const [oldest] = kept.keys();
    if (kept.size > MOST_KEPT && oldest !== undefined) kept.delete(oldest);
    return name;
  };
}

async function within<T>(ms: number, work: Promise<T>): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error(`no answer within ${ms} ms`)), ms);
  });
  try {
    return await Promise.race([work, late]);
  } finally {
    clearTimeout(timer);
  }
}

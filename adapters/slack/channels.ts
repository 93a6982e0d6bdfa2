/** Channels as the workshop file names them. */
import type { webApi } from '@slack/bolt';
import type { Instant } from '../../src/index.ts';

const ID = /^[CGD][A-Z0-9]{6,}$/u;
const PAGE = 1_000;
/** A workspace may have more channels than anybody wants to read. */
const MOST_PAGES = 5;
const TYPES = 'public_channel,private_channel';

export interface Channel {
  id: string;
  name: string;
}
interface ChannelPage {
  channels?: readonly { id?: string; name?: string }[];
  response_metadata?: { next_cursor?: string };
}

/** Undefined: there is none of that name among those that the bot is in. */
export async function channelId(named: string, client: webApi.WebClient): Promise<string | undefined> {
  if (ID.test(named.trim())) return named.trim();
  return findNamed(named, (cursor) =>
    client.users.conversations({ types: TYPES, exclude_archived: true, limit: PAGE, ...cursor }),
  );
}

/** A name that no channel has is asked again after a while, not for every message. */
const ASK_AGAIN_MS = 60_000;

export interface Channels {
  /** What was found stays known. */
  idOf(named: string): Promise<string | undefined>;
}

export function openChannels(client: webApi.WebClient, clock: () => Instant): Channels {
  const known = new Map<string, string>();
  const missed = new Map<string, Instant>();
  return {
    async idOf(named) {
      const found = known.get(named);
      if (found !== undefined || (missed.get(named) ?? 0) > clock()) return found;
      const id = await channelId(named, client);
      if (id === undefined) missed.set(named, clock() + ASK_AGAIN_MS);
      else known.set(named, id);
      return id;
    },
  };
}

/** Among all that the token can see, whether the bot is in it or not. */
export const anyChannelId = (named: string, client: webApi.WebClient): Promise<string | undefined> =>
  findNamed(named, (cursor) =>
    client.conversations.list({ types: TYPES, exclude_archived: true, limit: PAGE, ...cursor }),
  );

async function findNamed(
  named: string,
  page: (cursor: { cursor?: string }) => Promise<ChannelPage>,
): Promise<string | undefined> {
  const name = named.trim().replace(/^#/u, '').toLowerCase();
  let cursor: { cursor?: string } = {};
  for (let n = 0; n < MOST_PAGES; n += 1) {
    const { channels = [], response_metadata } = await page(cursor);
    const found = channels.find((c) => c.name?.toLowerCase() === name);
    if (found?.id !== undefined) return found.id;
    const next = response_metadata?.next_cursor;
    if (!next) return undefined;
    cursor = { cursor: next };
  }
  return undefined;
}

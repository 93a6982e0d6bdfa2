/** Was it posted? Looks for our own mark in what the channel, or the thread, says since then. */
import type { webApi } from '@slack/bolt';
import { PlatformFault, type Instant, type Outgoing, type PostRef } from '../../src/index.ts';
import { EVENT_TYPE } from './post.ts';
import { isPrivate, threadOf } from './send.ts';
import { codeOf, wordOf } from './slackError.ts';

/** Slack's clock and ours may differ by that much. */
const CLOCKS_DIFFER_MS = 5 * 60_000;
const PAGE = 200;
const MOST_PAGES = 5;
/** Nothing can have been posted where there is nothing. */
const NOWHERE: ReadonlySet<string> = new Set(['channel_not_found', 'thread_not_found', 'user_not_found']);

interface Page {
  messages?: readonly { ts?: string; metadata?: { event_type?: string; event_payload?: object } }[];
  response_metadata?: { next_cursor?: string };
}

/** Rejects with a PlatformFault when it cannot be told just now. What only the asker sees stands in no history. */
export async function find(
  outgoing: Outgoing,
  since: Instant,
  client: webApi.WebClient,
): Promise<PostRef | 'private' | undefined> {
  if (isPrivate(outgoing)) return 'private';
  const { id, to } = outgoing;
  const thread = threadOf(outgoing);
  try {
    const channel = await channelOf(to.channel, client);
    const ts = await search(id, pagesOf(client, channel, thread, since));
    if (ts === undefined) return undefined;
    return { platform: 'slack', channel, id: ts, ...(thread === undefined ? {} : { thread }) };
  } catch (fault) {
    if (NOWHERE.has(codeOf(fault) ?? '')) return undefined;
    throw new PlatformFault('slack', `Whether a message was posted cannot be told: ${wordOf(fault)}.`, fault);
  }
}

/** A person's account stands for the direct conversation with them. */
async function channelOf(id: string, client: webApi.WebClient): Promise<string> {
  if (!/^[UW]/u.test(id)) return id;
  const { channel } = await client.conversations.open({ users: id });
  return channel?.id ?? id;
}

const pagesOf =
  (client: webApi.WebClient, channel: string, thread: string | undefined, since: Instant) =>
  (cursor: string | undefined): Promise<Page> => {
    const query = {
      channel,
      oldest: ((since - CLOCKS_DIFFER_MS) / 1000).toFixed(6),
      include_all_metadata: true,
      limit: PAGE,
      ...(cursor === undefined ? {} : { cursor }),
    };
    return thread === undefined
      ? client.conversations.history(query)
      : client.conversations.replies({ ...query, ts: thread });
  };

async function search(
  id: string,
  page: (cursor: string | undefined) => Promise<Page>,
): Promise<string | undefined> {
  let cursor: string | undefined;
  for (let n = 0; n < MOST_PAGES; n += 1) {
    const { messages = [], response_metadata } = await page(cursor);
    const ours = messages.find((m) => isMarked(m.metadata, id));
    if (ours?.ts !== undefined) return ours.ts;
    cursor = response_metadata?.next_cursor || undefined;
    if (cursor === undefined) return undefined;
  }
  throw new Error('too much was said since');
}

const isMarked = (
  metadata: { event_type?: string; event_payload?: object } | undefined,
  id: string,
): boolean =>
  metadata?.event_type === EVENT_TYPE &&
  metadata.event_payload !== undefined &&
  'id' in metadata.event_payload &&
  metadata.event_payload.id === id;

/** Was it posted? Asked of what the gateway told, then of the channel itself. */
import { Routes, type APIMessage, type REST } from 'discord.js';
import { PlatformFault, type Instant, type Outgoing, type PostRef } from '../../src/index.ts';
import { PLATFORM } from './environment.ts';
import { markOf } from './render/components.ts';
import { faultWord } from './rest.ts';
import type { SentMessages } from './sent.ts';
import { laterOf, snowflakeAt } from './snowflake.ts';

export const PAGE = 100;
const MOST_PAGES = 30;
/** Our clock and Discord's may differ. */
const SKEW_MS = 5 * 60_000;

export interface Finder {
  rest: REST;
  sent: SentMessages;
  bot: () => string;
}

/** Discord does not keep a nonce with its message; the number on the first component it keeps. */
export async function find(
  finder: Finder,
  { id, to, audience }: Outgoing,
  since: Instant,
): Promise<PostRef | 'private' | undefined> {
  const known = finder.sent.of(id);
  if (known) return known;
  const mark = markOf(id);
  for await (const message of messagesAfter(
    finder.rest,
    to.channel,
    snowflakeAt(since - SKEW_MS),
    MOST_PAGES,
  ))
    if (message.author.id === finder.bot() && message.components?.[0]?.id === mark)
      return { platform: PLATFORM, channel: to.channel, id: message.id };
  // what was whispered to the asker stands in no channel
  return audience === 'asker' && !to.direct ? 'private' : undefined;
}

/** Oldest first. Rejects when the channel cannot be read, or holds more than `pages` pages. */
export async function* messagesAfter(
  rest: REST,
  channel: string,
  after: string,
  pages: number,
): AsyncGenerator<APIMessage> {
  let last = after;
  for (let page = 0; page < pages; page += 1) {
    const messages = await pageAfter(rest, channel, last);
    for (const message of messages.toSorted((a, b) => (BigInt(a.id) < BigInt(b.id) ? -1 : 1))) {
      last = laterOf(last, message.id);
      yield message;
    }
    if (messages.length < PAGE) return;
  }
  throw new PlatformFault(PLATFORM, 'There are more messages in the channel than can be looked through.');
}

async function pageAfter(rest: REST, channel: string, after: string): Promise<APIMessage[]> {
  const query = new URLSearchParams({ after, limit: String(PAGE) });
  try {
    return (await rest.get(Routes.channelMessages(channel), { query })) as APIMessage[];
  } catch (cause) {
    throw new PlatformFault(PLATFORM, `The channel cannot be read just now (${faultWord(cause)}).`, cause);
  }
}

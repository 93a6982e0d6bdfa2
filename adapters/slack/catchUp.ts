/**
 * What was said to the bot while it was away, as far as Slack did not send it again: read from the channels that it
 * last heard something in. The inbox knows what it has seen before.
 */
import type { webApi } from '@slack/bolt';
import type { Desk, Instant, Log } from '../../src/index.ts';
import { isForUs, said, type Written } from './incoming/message.ts';
import type { Scene } from './incoming/scene.ts';
import { wordOf } from './slackError.ts';

/** Older than that is no news any more. */
const LOOK_BACK_MS = 3 * 86_400_000;
const MOST_CHANNELS = 20;
const PAGE = 200;

type Message = NonNullable<webApi.ConversationsHistoryResponse['messages']>[number];
type Heard = Awaited<ReturnType<Desk['lastReceived']>>[number];

/** Gives how many were new. Never rejects: what cannot be read is logged. */
export async function catchUp(desk: Desk, scene: Scene, client: webApi.WebClient, log: Log): Promise<number> {
  let fresh = 0;
  try {
    const since = scene.clock() - LOOK_BACK_MS;
    const heard = (await desk.lastReceived()).filter((h) => h.saidAt >= since);
    for (const last of heard.sort((a, b) => b.saidAt - a.saidAt).slice(0, MOST_CHANNELS))
      fresh += await catchUpIn(last, desk, scene, client);
  } catch (fault) {
    log.warn('slack.catchUp', { why: wordOf(fault) });
  }
  if (fresh > 0) log.info('slack.caughtUp', { messages: fresh });
  return fresh;
}

async function catchUpIn(last: Heard, desk: Desk, scene: Scene, client: webApi.WebClient): Promise<number> {
  const { messages = [] } = await client.conversations.history({
    channel: last.channel,
    oldest: last.message,
    limit: PAGE,
  });
  let fresh = 0;
  // Slack gives the newest first
  for (const message of messages.reverse()) {
    const written = humanOf(message, last);
    if (!written || !isForUs(written.text, last.direct, scene)) continue;
    const delivery = {
      key: `slack:history:${last.channel}:${written.ts}`,
      space: scene.me.teamId,
      direct: last.direct,
    };
    if ((await desk.receive(await said(delivery, written, scene))) === 'stored') fresh += 1;
  }
  return fresh;
}

const SPOKEN: ReadonlySet<string | undefined> = new Set([
  undefined,
  'file_share',
  'me_message',
  'thread_broadcast',
]);

function humanOf(
  { user, text, ts, team, thread_ts, bot_id, subtype }: Message,
  { channel, message }: Heard,
): Written | undefined {
  if (user === undefined || ts === undefined || bot_id !== undefined || !SPOKEN.has(subtype))
    return undefined;
  return ts === message ? undefined : { channel, user, ts, text: text ?? '', team, thread_ts };
}

/** A gap shorter than that lost nothing: Slack sends again what was not acknowledged. */
export const GAP_WORTH_A_LOOK_MS: Instant = 60_000;

/**
 * What was said to the bot while it was away, as far as Slack did not send it again: read from the channels that it
 * last heard something in. The inbox knows what it has seen before.
 */
import type { webApi } from '@slack/bolt';
import type { Desk, Instant, Log } from '../../src/index.ts';
import { openHistory, type History } from './history.ts';
import { isForUs, said, type Written } from './incoming/message.ts';
import type { Scene } from './incoming/scene.ts';
import { wordOf } from './slackError.ts';
import { saidInThreads } from './threads.ts';

/** Older than that is no news any more. */
const LOOK_BACK_MS = 3 * 86_400_000;
const MOST_CHANNELS = 20;
const PAGE = 200;
const MOST_MESSAGES = 2_000;

type Message = NonNullable<webApi.ConversationsHistoryResponse['messages']>[number];
type Heard = Awaited<ReturnType<Desk['lastReceived']>>[number];

/** Gives how many were new. Never rejects: a channel that cannot be read is logged, and the others are read. */
export async function catchUp(desk: Desk, scene: Scene, client: webApi.WebClient, log: Log): Promise<number> {
  const history = openHistory(client);
  let fresh = 0;
  for (const last of await lastHeard(desk, log)) {
    try {
      fresh += await catchUpIn(last, desk, scene, history);
    } catch (fault) {
      log.warn('slack.catchUp', { why: wordOf(fault) });
    }
  }
  if (fresh > 0) log.info('slack.caughtUp', { messages: fresh });
  return fresh;
}

async function lastHeard(desk: Desk, log: Log): Promise<Heard[]> {
  try {
    const heard = await desk.lastReceived();
    return heard.toSorted((a, b) => b.saidAt - a.saidAt).slice(0, MOST_CHANNELS);
  } catch (fault) {
    log.warn('slack.catchUp', { why: wordOf(fault) });
    return [];
  }
}

/** After a long silence only the last days are read. */
const oldestFor = ({ message, saidAt }: Heard, now: Instant): string =>
  saidAt >= now - LOOK_BACK_MS ? message : String((now - LOOK_BACK_MS) / 1000);

async function catchUpIn(last: Heard, desk: Desk, scene: Scene, history: History): Promise<number> {
  let fresh = 0;
  for (const message of await saidSince(last, oldestFor(last, scene.clock()), scene, history)) {
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

/** In the channel and in its threads, in the order in which it was said. */
async function saidSince(
  { channel }: Heard,
  oldest: string,
  { clock }: Scene,
  history: History,
): Promise<Message[]> {
  const messages: Message[] = [];
  let cursor: string | undefined;
  do {
    const page = await history.history({
      channel,
      oldest,
      limit: PAGE,
      ...(cursor === undefined ? {} : { cursor }),
    });
    messages.push(...(page.messages ?? []));
    cursor = page.response_metadata?.next_cursor || undefined;
  } while (cursor !== undefined && messages.length < MOST_MESSAGES);
  messages.push(...(await saidInThreads(channel, oldest, clock() - LOOK_BACK_MS, history)));
  return messages.toSorted((a, b) => Number(a.ts) - Number(b.ts));
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

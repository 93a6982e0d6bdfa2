/** What was said in threads while the bot was away: a channel's history holds only the messages that threads hang below. */
import type { webApi } from '@slack/bolt';
import type { Instant } from '../../src/index.ts';
import type { History } from './history.ts';

const PAGE = 200;
const MOST_THREADS = 20;

type Message = NonNullable<webApi.ConversationsHistoryResponse['messages']>[number];

/** `oldest`: Slack's time after which; `begun`: threads that began before then are not looked for. */
export async function saidInThreads(
  channel: string,
  oldest: string,
  begun: Instant,
  history: History,
): Promise<Message[]> {
  const { messages = [] } = await history.history({
    channel,
    oldest: String(begun / 1000),
    limit: PAGE,
  });
  const alive = messages.filter(({ latest_reply: last }) => Number(last ?? 0) > Number(oldest));
  const said: Message[] = [];
  for (const { ts } of alive.slice(0, MOST_THREADS))
    if (ts !== undefined) said.push(...(await repliesTo(ts, channel, oldest, history)));
  return said;
}

async function repliesTo(ts: string, channel: string, oldest: string, history: History): Promise<Message[]> {
  const { messages = [] } = await history.replies({ channel, ts, oldest, limit: PAGE });
  // the one that the thread hangs below comes along
  return messages.filter((message) => message.ts !== ts && Number(message.ts) > Number(oldest));
}

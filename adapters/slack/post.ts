/** One message of ours to Slack: marked so that it can be looked up, with nothing in it that pings, links or unfolds. */
import type { types, webApi } from '@slack/bolt';
import type { Log, Outgoing, SendResult } from '../../src/index.ts';
import type { Clients } from './clients.ts';
import type { Handles } from './handles.ts';
import type { Rendered } from './outgoing/blocks.ts';
import { codeOf } from './slackError.ts';

/** Names our posts among others' in a channel's history. */
export const EVENT_TYPE = 'fettle_post';

export interface SendTools {
  clients: Clients;
  handles: Handles;
  log: Log;
}

/** Nothing in a text of ours is turned into a ping, a link or a preview. */
export const UNPARSED = { link_names: false, parse: 'none' } as const;
const UNFURLED = { unfurl_links: false, unfurl_media: false, mrkdwn: false } as const;

/** The blocks were not to Slack's liking; nothing was posted, and the text alone says the same. */
const BLOCKS_REFUSED: ReadonlySet<string> = new Set([
  'invalid_blocks',
  'invalid_blocks_format',
  'msg_blocks_too_long',
]);
export async function post(
  { id }: Outgoing,
  channel: string,
  thread: string | undefined,
  { text, blocks }: Rendered,
  { clients, log }: SendTools,
): Promise<SendResult> {
  const { postMessage: say } = clients.posts.chat;
  const call = (shown: readonly types.KnownBlock[]): Promise<webApi.ChatPostMessageResponse> =>
    say({
      channel,
      text,
      ...(shown.length > 0 ? { blocks: [...shown] } : {}),
      ...(thread === undefined ? {} : { thread_ts: thread }),
      metadata: { event_type: EVENT_TYPE, event_payload: { id } },
      ...UNPARSED,
      ...UNFURLED,
    });
  const posted = await withoutBlocks(call, blocks, log);
  return sentAs(posted, channel, thread);
}

/** Tries once more with the text alone when the blocks are refused. */
export async function withoutBlocks<T>(
  call: (blocks: readonly types.KnownBlock[]) => Promise<T>,
  blocks: readonly types.KnownBlock[],
  log: Log,
): Promise<T> {
  try {
    return await call(blocks);
  } catch (fault) {
    const code = codeOf(fault);
    if (code === undefined || !BLOCKS_REFUSED.has(code) || blocks.length === 0) throw fault;
    log.error('slack.blocks', { code, blocks: blocks.length });
    return call([]);
  }
}

const sentAs = (
  { channel, ts }: webApi.ChatPostMessageResponse,
  asked: string,
  thread: string | undefined,
): SendResult =>
  ts === undefined
    ? { outcome: 'sent' }
    : {
        outcome: 'sent',
        ref: {
          platform: 'slack',
          channel: channel ?? asked,
          id: ts,
          ...(thread === undefined ? {} : { thread }),
        },
      };

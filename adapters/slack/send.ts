/** One try at showing a reply: in the place, or to the asker alone. */
import type { types, webApi } from '@slack/bolt';
import type { Log, Outgoing, PostRef, SendResult } from '../../src/index.ts';
import type { Clients } from './clients.ts';
import type { Handles } from './handles.ts';
import { render, type Rendered } from './outgoing/blocks.ts';
import { outcomeOf } from './outcome.ts';
import { privateText, respond } from './respond.ts';
import { codeOf } from './slackError.ts';

/** Names our posts among others' in a channel's history. */
export const EVENT_TYPE = 'fettle_post';

export interface SendTools {
  clients: Clients;
  handles: Handles;
  log: Log;
}

/** Nothing in a text of ours is turned into a ping, a link or a preview. */
const UNPARSED = { link_names: false, parse: 'none' } as const;
const UNFURLED = { unfurl_links: false, unfurl_media: false, mrkdwn: false } as const;

/** The blocks were not to Slack's liking; nothing was posted, and the text alone says the same. */
const BLOCKS_REFUSED: ReadonlySet<string> = new Set([
  'invalid_blocks',
  'invalid_blocks_format',
  'msg_blocks_too_long',
]);
/** The bot is not there, or the one who asked is not. */
const NOT_THERE: ReadonlySet<string> = new Set([
  'channel_not_found',
  'not_in_channel',
  'user_not_in_channel',
  'is_archived',
]);

/** An answer in a channel hangs below what it answers; in a direct conversation only when that was in a thread. */
export const threadOf = ({ to, replyTo }: Pick<Outgoing, 'to' | 'replyTo'>): string | undefined =>
  to.thread ?? (to.direct ? undefined : replyTo);

export async function send(outgoing: Outgoing, tools: SendTools): Promise<SendResult> {
  const rendered = render(outgoing.reply, outgoing.tokens);
  return outgoing.audience === 'asker' && !outgoing.to.direct
    ? sendToAsker(outgoing, rendered, tools)
    : sendToPlace(outgoing, rendered, tools);
}

async function sendToPlace(outgoing: Outgoing, rendered: Rendered, tools: SendTools): Promise<SendResult> {
  const thread = threadOf(outgoing);
  try {
    return await post(outgoing, outgoing.to.channel, thread, rendered, tools);
  } catch (fault) {
    const url = NOT_THERE.has(codeOf(fault) ?? '') ? tools.handles.take(outgoing.answers) : undefined;
    if (url !== undefined && (await respond(url, rendered, tools.log))) return { outcome: 'sent' };
    return outcomeOf(fault);
  }
}

async function post(
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
async function withoutBlocks<T>(
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

/** By the address that came with the question, else as a private message in place, else in the direct conversation. */
async function sendToAsker(outgoing: Outgoing, rendered: Rendered, tools: SendTools): Promise<SendResult> {
  const url = tools.handles.take(outgoing.answers);
  if (url !== undefined && (await respond(url, rendered, tools.log))) return { outcome: 'sent' };
  const { asker } = outgoing;
  if (asker === undefined) return { outcome: 'refused', why: 'nobody to show it to' };
  try {
    await postPrivately(outgoing, asker, rendered, tools);
    return { outcome: 'sent' };
  } catch (fault) {
    if (!NOT_THERE.has(codeOf(fault) ?? '')) return outcomeOf(fault);
  }
  try {
    return await post(outgoing, asker, undefined, rendered, tools);
  } catch (fault) {
    return outcomeOf(fault);
  }
}

const postPrivately = (
  outgoing: Outgoing,
  user: string,
  { text, blocks }: Rendered,
  { clients, log }: SendTools,
): Promise<unknown> =>
  withoutBlocks(
    (shown) =>
      clients.posts.chat.postEphemeral({
        channel: outgoing.to.channel,
        user,
        text: privateText(text),
        ...(shown.length > 0 ? { blocks: [...shown] } : {}),
        ...(outgoing.to.thread === undefined ? {} : { thread_ts: outgoing.to.thread }),
        ...UNPARSED,
      }),
    blocks,
    log,
  );

/** Doing it twice is harmless. The post keeps its metadata. */
export async function edit(
  ref: PostRef,
  outgoing: Outgoing,
  { clients, log }: SendTools,
): Promise<SendResult> {
  const { text, blocks } = render(outgoing.reply, outgoing.tokens);
  try {
    await withoutBlocks(
      (shown) =>
        clients.posts.chat.update({
          channel: ref.channel,
          ts: ref.id,
          text,
          blocks: [...shown],
          ...UNPARSED,
        }),
      blocks,
      log,
    );
    return { outcome: 'sent', ref };
  } catch (fault) {
    return outcomeOf(fault);
  }
}

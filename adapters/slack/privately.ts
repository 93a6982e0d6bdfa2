/** An answer to the asker alone, by whichever way is open. Nobody can look up later whether it was shown. */
import type { Outgoing, SendResult } from '../../src/index.ts';
import type { Rendered } from './outgoing/blocks.ts';
import { outcomeOf } from './outcome.ts';
import { post, UNPARSED, withoutBlocks, type SendTools } from './post.ts';
import { privateText, respond } from './respond.ts';
import { codeOf } from './slackError.ts';

/** The bot is not there, or the one who asked is not. */
const NOT_THERE: ReadonlySet<string> = new Set([
  'channel_not_found',
  'not_in_channel',
  'user_not_in_channel',
  'is_archived',
]);

export const isNotThere = (fault: unknown): boolean => NOT_THERE.has(codeOf(fault) ?? '');

/** By the address that came with the question, while it answers. Undefined: that way is closed. */
export async function throughAddress(
  { answers }: Outgoing,
  rendered: Rendered,
  { handles, log }: SendTools,
): Promise<SendResult | undefined> {
  const url = handles.take(answers);
  const responded = url === undefined ? 'refused' : await respond(url, rendered, log);
  if (responded === 'refused') return undefined;
  return responded === 'shown'
    ? { outcome: 'sent' }
    : { outcome: 'unknown', why: 'no answer from the response address' };
}

/** By the address that came with the question, else as a private message in place, else in the direct conversation. */
export async function sendToAsker(
  outgoing: Outgoing,
  rendered: Rendered,
  tools: SendTools,
): Promise<SendResult> {
  const through = await throughAddress(outgoing, rendered, tools);
  if (through) return through;
  const { asker } = outgoing;
  if (asker === undefined) return { outcome: 'refused', why: 'nobody to show it to' };
  try {
    await postPrivately(outgoing, asker, rendered, tools);
    return { outcome: 'sent' };
  } catch (fault) {
    if (!isNotThere(fault)) return outcomeOf(fault);
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

/** One try at showing a reply: in the place, or to the asker alone. */
import type { Outgoing, PostRef, SendResult } from '../../src/index.ts';
import { render, type Rendered } from './outgoing/blocks.ts';
import { outcomeOf } from './outcome.ts';
import { post, UNPARSED, withoutBlocks, type SendTools } from './post.ts';
import { isNotThere, sendToAsker, throughAddress } from './privately.ts';

/** An answer in a channel hangs below what it answers; in a direct conversation only when that was in a thread. */
export const threadOf = ({ to, replyTo }: Pick<Outgoing, 'to' | 'replyTo'>): string | undefined =>
  to.thread ?? (to.direct ? undefined : replyTo);

/** Shown to the asker only, in a place where others are. */
export const isPrivate = ({ audience, to }: Pick<Outgoing, 'audience' | 'to'>): boolean =>
  audience === 'asker' && !to.direct;

export async function send(outgoing: Outgoing, tools: SendTools): Promise<SendResult> {
  const rendered = render(outgoing.reply, outgoing.tokens);
  return isPrivate(outgoing)
    ? sendToAsker(outgoing, rendered, tools)
    : sendToPlace(outgoing, rendered, tools);
}

async function sendToPlace(outgoing: Outgoing, rendered: Rendered, tools: SendTools): Promise<SendResult> {
  const thread = threadOf(outgoing);
  try {
    return await post(outgoing, outgoing.to.channel, thread, rendered, tools);
  } catch (fault) {
    const through = isNotThere(fault) ? await throughAddress(outgoing, rendered, tools) : undefined;
    return through ?? outcomeOf(fault);
  }
}

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

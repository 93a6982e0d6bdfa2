/** An answer on its way to where the message came from, and the message finished: both in the caller's transaction. */
import { isSilent, item, type Reply } from '../replies/reply.ts';
import type { Transaction } from '../store/store.ts';
import { answerId } from './identity.ts';
import type { Works } from './parts.ts';
import type { Audience, Received, Speaker } from './platform.ts';
import { planPost, talkOf } from './posts.ts';

export const sentence = (text: string): Reply => ({ sections: [{ items: [item(text)] }], buttons: [] });

type Said = ({ text: string } | { reply: Reply }) & {
  audience?: Audience;
  /** Whom the buttons are for; without: whoever sent the message. */
  owner?: Speaker;
  /** Key of the message that was answered, where it is not that of the delivery. */
  about?: string;
};

/** The message below which the answer stands. */
function below({ what, place }: Received): string | undefined {
  if (what.kind === 'said' || what.kind === 'edited') return what.message;
  if (what.kind === 'pressed' || what.kind === 'form') return what.on?.thread ?? what.on?.id;
  return place.thread;
}

export async function replyWith(
  works: Works,
  { traffic }: Transaction,
  received: Received,
  said: Said,
): Promise<void> {
  const now = works.clock();
  const { key, platform, place, account, accountName } = received;
  const reply = 'reply' in said ? said.reply : sentence(said.text);
  const replyTo = below(received);
  const fresh = await traffic.finish(key, now);
  if (!fresh || isSilent(reply)) return;
  await planPost(
    traffic,
    {
      id: answerId(key), platform, to: place, ...(replyTo === undefined ? {} : { replyTo }),
      audience: said.audience ?? received.audience, asker: account, answers: key, reply, talk: talkOf(place),
      owner: said.owner ?? { account, name: accountName }, about: said.about ?? key,
    },
    now,
  ); // prettier-ignore
}

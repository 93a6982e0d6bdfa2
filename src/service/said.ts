/** Words: a message, a command, or what a colleague said and somebody noted. */
import type { Answer, IncomingMessage } from '../commands/message.ts';
import type { Transaction } from '../store/store.ts';
import { handledKey } from './identity.ts';
import type { Works } from './parts.ts';
import type { Audience, Received, Speaker } from './platform.ts';
import { talkOf } from './posts.ts';
import { replyWith } from './respond.ts';

/** A message for the bot, but for its words. */
export const incoming = (
  works: Works,
  received: Received,
  speaker?: Speaker,
): Omit<IncomingMessage, 'text'> => ({
  key: handledKey(received),
  platform: received.platform,
  place: talkOf(received.place),
  direct: received.place.direct,
  speaker: speaker?.name ?? received.accountName,
  account: speaker?.account ?? received.account,
  saidAt: received.saidAt,
  now: works.clock(),
});

/** Whoever writes where they may is known in direct talk from then on. */
export async function meet(
  { traffic }: Transaction,
  { platform, place, account, accountName }: Received,
  now: number,
) {
  if (!place.direct) await traffic.saveSeen({ platform, account, name: accountName, at: now });
}

export interface Aloud {
  audience?: Audience;
  owner?: Speaker;
}

/** The bot says its piece; answer, facts and the finished message are one commit. */
export async function say(
  works: Works,
  received: Received,
  message: IncomingMessage,
  aloud: Aloud = {},
): Promise<Answer> {
  const answer = await works.bot.say(message, async (transaction, { reply }) => {
    await meet(transaction, received, message.now);
    await replyWith(works, transaction, received, { ...aloud, reply, about: message.key });
  });
  works.postsChanged();
  if (answer.entries.length > 0) works.factsChanged();
  return answer;
}

export async function answerSaid(works: Works, received: Received): Promise<void> {
  const { what, account, accountName } = received;
  if (what.kind !== 'said' && what.kind !== 'command') return;
  const author = what.kind === 'said' ? what.author : undefined;
  const noted = author && author.account !== account ? { notedBy: { account, name: accountName } } : {};
  await say(works, received, { ...incoming(works, received, author), ...noted, text: what.text });
}

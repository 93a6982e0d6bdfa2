/** Words: a message, a command, or what a colleague said and somebody noted. */
import type { AndAlso } from '../bot.ts';
import type { Answer, IncomingMessage } from '../commands/message.ts';
import { isSilent, SILENT, type Reply } from '../replies/reply.ts';
import type { Transaction } from '../store/store.ts';
import { handledKey } from './identity.ts';
import type { Works } from './parts.ts';
import type { Audience, Received, Speaker } from './platform.ts';
import { talkOf } from './posts.ts';
import { replyWith, sentence } from './respond.ts';

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

/** By another delivery of the same message. */
const wasAnswered = async ({ traffic }: Transaction, message: string): Promise<boolean> =>
  (await traffic.postsAbout(message)).length > 0;

/** Small talk is met with silence; whoever used a form, a button or a command spoke to the bot and waits. */
const aloudFor = ({ what }: Received, reply: Reply): Reply =>
  isSilent(reply) && what.kind !== 'said' && what.kind !== 'edited'
    ? sentence('I could not make anything of that, so nothing was noted. Try other words; “help” shows some.')
    : reply;

export interface Aloud {
  audience?: Audience;
  owner?: Speaker;
  /** Written in the same commit. */
  also?: AndAlso;
  /** An answer that was given before is given again: somebody else asked for it. */
  again?: true;
}

/** The bot says its piece; answer, facts and the finished message are one commit. */
export async function say(
  works: Works,
  received: Received,
  message: IncomingMessage,
  { also, again, ...aloud }: Aloud = {},
): Promise<Answer> {
  const answer = await works.bot.say(message, async (transaction, said) => {
    await meet(transaction, received, message.now);
    const given = said.outcome === 'repeated' && !again && (await wasAnswered(transaction, message.key));
    const reply = given ? SILENT : aloudFor(received, said.reply);
    await replyWith(works, transaction, received, { ...aloud, reply, about: message.key });
    await also?.(transaction, said);
  });
  works.postsChanged();
  if (answer.entries.length > 0) works.factsChanged(received);
  return answer;
}

export async function answerSaid(works: Works, received: Received): Promise<void> {
  const { what, account, accountName } = received;
  if (what.kind !== 'said' && what.kind !== 'command') return;
  const author = what.kind === 'said' ? what.author : undefined;
  const noted = author && author.account !== account ? { notedBy: { account, name: accountName } } : {};
  const message = { ...incoming(works, received, author), ...noted, text: what.text };
  await say(works, received, message, author ? { again: true } : {});
}

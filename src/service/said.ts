/** Words: a message, a command, or what a colleague said and somebody noted. */
import type { AndAlso, Say } from '../bot.ts';
import type { Answer, IncomingMessage } from '../commands/message.ts';
import { isSilent, SILENT, type Reply } from '../replies/reply.ts';
import type { Transaction } from '../store/store.ts';
import { handledKey } from './identity.ts';
import type { Of } from './kinds.ts';
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

/** What the bot is to say, with all that goes into the same commit: its answer on its way, and the message finished. */
const saying = (
  works: Works,
  received: Received,
  message: IncomingMessage,
  { also, again, ...aloud }: Aloud,
): Required<Say> => ({
  message,
  async also(transaction, said) {
    await meet(transaction, received, message.now);
    const given = said.outcome === 'repeated' && !again && (await wasAnswered(transaction, message.key));
    const reply = given ? SILENT : aloudFor(received, said.reply);
    await replyWith(works, transaction, received, { ...aloud, reply, about: message.key });
    await also?.(transaction, said);
  },
});

function tellOthers(works: Works, received: Received, { entries }: Answer): void {
  works.postsChanged();
  if (entries.length > 0) works.factsChanged(received);
}

/** The bot says its piece; answer, facts and the finished message are one commit. */
export async function say(
  works: Works,
  received: Received,
  message: IncomingMessage,
  aloud: Aloud = {},
): Promise<Answer> {
  const one = saying(works, received, message, aloud);
  const answer = await works.bot.say(one.message, one.also);
  tellOthers(works, received, answer);
  return answer;
}

export type Words = Of<'said'> | Of<'command'>;
export const isWords = (received: Received): received is Words =>
  received.what.kind === 'said' || received.what.kind === 'command';

function sayingOf(works: Works, received: Words): Required<Say> {
  const { what, account, accountName } = received;
  const author = what.kind === 'said' ? what.author : undefined;
  const noted = author && author.account !== account ? { notedBy: { account, name: accountName } } : {};
  const message = { ...incoming(works, received, author), ...noted, text: what.text };
  return saying(works, received, message, author ? { again: true } : {});
}

export async function answerSaid(works: Works, received: Words): Promise<void> {
  const { message, also } = sayingOf(works, received);
  tellOthers(works, received, await works.bot.say(message, also));
}

/** Messages that wait one behind the other share a commit; all are answered, or the call rejects and none is. */
export async function answerTogether(works: Works, run: readonly Words[]): Promise<void> {
  const answers = await works.bot.sayTogether(run.map((received) => sayingOf(works, received)));
  run.forEach((received, i) => {
    const answer = answers[i];
    if (answer) tellOthers(works, received, answer);
  });
}

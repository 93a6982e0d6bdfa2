/** A pressed button: what it stands for is in the database, so that old ones still answer. */
import type { Answer, IncomingMessage } from '../commands/message.ts';
import type { Of } from './kinds.ts';
import { markPressed } from './marks.ts';
import type { Works } from './parts.ts';
import type { Received } from './platform.ts';
import { pressableOf, type Pressable } from './posts.ts';
import { replyWith } from './respond.ts';
import { incoming, say } from './said.ts';

const TOO_OLD = 'That button is from too long ago for me to know what it stood for. Say it in words.';

export const findPressable = (works: Works, token: string): Promise<Pressable | undefined> =>
  works.store.read(async ({ traffic }) => {
    const row = await traffic.button(token);
    return row && pressableOf(row);
  });

/** A question is answered by whom it was put to; everything else is judged as if whoever presses had said it. */
export function notTheirs({ press, owner }: Pressable, { account }: Received): string | undefined {
  if (press.does !== 'answer' || !owner || owner.account === account) return undefined;
  return `That question was put to ${owner.name}. Say it yourself if you know.`;
}

export const pressMessage = (
  works: Works,
  received: Received,
  { press, talk }: Pressable,
): IncomingMessage => ({
  ...incoming(works, received),
  place: talk,
  text: '',
  press,
});

export async function answerPress(works: Works, received: Of<'pressed'>): Promise<void> {
  const { token } = received.what;
  const button = await findPressable(works, token);
  const refusal = button ? notTheirs(button, received) : TOO_OLD;
  if (!button || refusal !== undefined) {
    await works.store.transact((transaction) =>
      replyWith(works, transaction, received, { text: refusal ?? TOO_OLD, audience: 'asker' }),
    );
    return works.postsChanged();
  }
  const answer = await say(works, received, pressMessage(works, received, button));
  if (settled(button, answer)) await markPressed(works, received, token, button);
}

/** It did what it stands for, so that the message need not offer it any more. */
const settled = ({ press }: Pressable, { entries, question }: Answer): boolean =>
  entries.length > 0 || press.does === 'leave' || (press.does === 'answer' && question === null);

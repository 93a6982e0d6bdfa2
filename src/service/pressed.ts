/** A pressed button: what it stands for is in the database, so that old ones still answer. */
import type { AndAlso } from '../bot.ts';
import type { Answer, IncomingMessage } from '../commands/message.ts';
import type { Of } from './kinds.ts';
import { markOn, markPressed } from './marks.ts';
import type { Works } from './parts.ts';
import type { Received } from './platform.ts';
import { pressableOf, type Mark, type Pressable } from './posts.ts';
import { replyWith } from './respond.ts';
import { incoming, say } from './said.ts';
import { doneSince } from './seen.ts';
import { saveTelling, tellingsOf } from './tellings.ts';

const TOO_OLD = 'That button is from too long ago for me to know what it stood for. Say it in words.';

const DONE_SINCE =
  'That was noted already since this list was drawn, so nothing more was noted. If it is to be noted once more, say it in words.';

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

const already = ({ label, by, time, outdated }: Mark): string =>
  outdated
    ? `${label}: ${by}, ${time}. This button stands for what that message said before, so nothing was changed.`
    : `${label}: ${by}, ${time}. Pressed again, so nothing more was noted. If it is to be noted once more, say it in words.`;

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

/** Why it does nothing for whoever presses it; undefined: it does what it stands for. */
export async function refusalOf(
  works: Works,
  received: Received,
  token: string,
  button: Pressable | undefined,
): Promise<string | undefined> {
  if (!button) return TOO_OLD;
  const mark = await works.store.read((view) => markOn(view, token));
  const refused = notTheirs(button, received) ?? (mark && already(mark));
  return refused ?? ((await doneSince(works, button.seen)) ? DONE_SINCE : undefined);
}

export async function refuse(works: Works, received: Received, text: string): Promise<void> {
  await works.store.transact((transaction) =>
    replyWith(works, transaction, received, { text, audience: 'asker' }),
  );
  works.postsChanged();
}

export async function answerPress(works: Works, received: Of<'pressed'>): Promise<void> {
  const { token } = received.what;
  const button = await findPressable(works, token);
  const refusal = await refusalOf(works, received, token, button);
  if (!button || refusal !== undefined) return refuse(works, received, refusal ?? TOO_OLD);
  const message = pressMessage(works, received, button);
  const { press } = button;
  const mark = await marker(works, received, token, button);
  if (press.does !== 'reread') return void (await say(works, received, message, { also: mark }));
  const { next } = await tellingsOf(works.store, press.message);
  const also: AndAlso = async (transaction, answer) => {
    await saveTelling(transaction, answer, press);
    await mark(transaction, answer);
  };
  await say(works, received, { ...message, key: next }, { also });
}

/** Marks the button in the commit that did what it stands for. */
export async function marker(
  works: Works,
  received: Received,
  token: string,
  button: Pressable,
): Promise<AndAlso> {
  const calendar = await works.bot.calendar();
  return async (transaction, answer) => {
    if (calendar && settled(button, answer))
      await markPressed(works, transaction, received, token, button, calendar);
  };
}

/** It did what it stands for, so that the message need not offer it any more. */
const settled = ({ press }: Pressable, { entries, question }: Answer): boolean =>
  entries.length > 0 || press.does === 'leave' || (press.does === 'answer' && question === null);

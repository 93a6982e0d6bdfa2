/** A message that its author changed after it was noted: read anew, and asked about if it now says something else. */
import type { Press, Reply } from '../replies/reply.ts';
import { item } from '../replies/reply.ts';
import type { Of } from './kinds.ts';
import { messageKey } from './identity.ts';
import { markOutdated } from './marks.ts';
import type { Works } from './parts.ts';
import { replyWith } from './respond.ts';
import { incoming, say } from './said.ts';
import { tellingsOf } from './tellings.ts';

const reread = (label: string, text: string, press: Extract<Press, { does: 'reread' }>): Reply => ({
  sections: [{ items: [item(text)] }],
  buttons: [
    { label, press },
    { label: 'Leave', press: { does: 'leave' } },
  ],
});

/** What was taken back does not stand: then there is nothing to change, only something to note. */
const offer = (stands: boolean, press: Extract<Press, { does: 'reread' }>): Reply =>
  stands
    ? reread(
        'Change',
        'You changed that message after I noted it, and it says something else now. What I noted stands.',
        press,
      )
    : reread(
        'Note it',
        'You changed that message, and it says something else now. What I had noted of it was taken back: nothing of it stands.',
        press,
      );

export async function answerEdit(works: Works, received: Of<'edited'>): Promise<void> {
  const { what, platform, place } = received;
  const { last, stands, next } = await tellingsOf(
    works.store,
    messageKey(platform, place.channel, what.message),
  );
  // nothing was noted of it yet, or it came to us by the edit: what it says now is said now
  if (!last)
    return void (await say(works, received, { ...incoming(works, received), key: next, text: what.text }));
  const now = works.clock();
  const { at: saidAt = received.saidAt, key: message } = last;
  const [nothing, before, after] = await Promise.all(
    ['', last.text, what.text].map((text) => works.bot.actsOf(text, saidAt, now)),
  );
  const isElse = before !== after && (stands || after !== nothing);
  const calendar = await works.bot.calendar();
  await works.store.transact(async (transaction) => {
    if (calendar) await markOutdated(works, transaction, message, received, calendar);
    if (!isElse) return void (await transaction.traffic.finish(received.key, now));
    const reply = offer(stands, { does: 'reread', message, text: what.text, saidAt });
    await replyWith(works, transaction, received, { reply, about: message });
  });
  works.postsChanged();
}

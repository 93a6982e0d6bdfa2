/** A message that its author changed after it was noted: read anew, and asked about if it now says something else. */
import type { Reply } from '../replies/reply.ts';
import { item } from '../replies/reply.ts';
import type { Of } from './kinds.ts';
import { messageKey } from './identity.ts';
import type { Works } from './parts.ts';
import { replyWith } from './respond.ts';
import { incoming, say } from './said.ts';
import { tellingsOf } from './tellings.ts';

const offer = (message: string, text: string, saidAt: number): Reply => ({
  sections: [
    {
      items: [
        item(
          'You changed that message after I noted it, and it says something else now. What I noted stands.',
        ),
      ],
    },
  ],
  buttons: [
    { label: 'Change', press: { does: 'reread', message, text, saidAt } },
    { label: 'Leave', press: { does: 'leave' } },
  ],
});

export async function answerEdit(works: Works, received: Of<'edited'>): Promise<void> {
  const { what, platform, place } = received;
  const { last, next } = await tellingsOf(works.store, messageKey(platform, place.channel, what.message));
  // nothing was noted of it yet, or it came to us by the edit: what it says now is said now
  if (!last)
    return void (await say(works, received, { ...incoming(works, received), key: next, text: what.text }));
  const now = works.clock();
  const { at = received.saidAt } = last;
  const [before, after] = await Promise.all(
    [last.text, what.text].map((text) => works.bot.actsOf(text, at, now)),
  );
  await works.store.transact(async (transaction) => {
    if (before !== after)
      return replyWith(works, transaction, received, {
        reply: offer(last.key, what.text, at),
        about: last.key,
      });
    await transaction.traffic.finish(received.key, now);
  });
  works.postsChanged();
}

/** A message that its author changed after it was noted: read anew, and asked about if it now says something else. */
import type { Reply } from '../replies/reply.ts';
import { item } from '../replies/reply.ts';
import type { Of } from './kinds.ts';
import { messageKey } from './identity.ts';
import type { Works } from './parts.ts';
import { replyWith } from './respond.ts';
import { incoming, say } from './said.ts';

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
  const message = messageKey(platform, place.channel, what.message);
  const words = await works.store.read(({ post }) => post.words(message));
  // nothing was noted of it yet, or it came to us by the edit: what it says now is said now
  if (!words) return void (await say(works, received, { ...incoming(works, received), text: what.text }));
  const now = works.clock();
  const changed =
    words !== undefined &&
    (await works.bot.actsOf(words.text, words.at, now)) !==
      (await works.bot.actsOf(what.text, words.at, now));
  await works.store.transact(async (transaction) => {
    if (changed)
      return replyWith(works, transaction, received, {
        reply: offer(message, what.text, words.at),
        about: message,
      });
    await transaction.traffic.finish(received.key, now);
  });
  works.postsChanged();
}

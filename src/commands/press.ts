/** What a pressed button does: the same as a sentence would. */
import { dateOfDay } from '../maintenance/calendar.ts';
import type { Press } from '../replies/reply.ts';
import { standingBatch } from './lastBatch.ts';
import { playAsk, playDeeds } from './play.ts';
import { changeQuestion, putOffLimit } from './questions.ts';
import type { Scene } from './scene.ts';
import { playAnswer } from './settle.ts';
import type { Played } from './step.ts';
import { thenAsk } from './turns.ts';

/** A sentence that belongs to no act. */
export const aside = (text: string): Played => ({ steps: [], caution: [], grave: false, aside: text });

/** A safety task that cannot wait any longer is not asked about: it is refused, with the other way. */
function playWhen(scene: Scene, { about, field }: Extract<Press, { does: 'ask' }>): Promise<Played> | Played {
  const limit = putOffLimit(scene, about);
  const tomorrow = dateOfDay(scene.today + 1);
  if (field === 'until' && about.kind === 'defer' && limit !== undefined && limit < tomorrow)
    return playDeeds(scene, [{ ...about, until: tomorrow }], {});
  return playAsk(scene, about, field);
}

export async function playPress(scene: Scene, press: Press): Promise<Played> {
  const { conversation } = scene;
  switch (press.does) {
    case 'deeds':
      return playDeeds(scene, press.deeds, {});
    case 'ask':
      return playWhen(scene, press);
    case 'undo':
      return playDeeds(scene, [{ kind: 'undo' }], {
        batch: await standingBatch(scene.transaction.journal, press.message, scene.message.now),
      });
    case 'change': {
      const open = conversation.question ? [conversation.question] : [];
      const asking = { about: 0, question: changeQuestion(scene, press.message) };
      const asked: Played = { steps: [], caution: [], grave: false, asking, changing: press.message };
      return thenAsk(asked, [...open, ...(conversation.waiting ?? [])]);
    }
    case 'answer': {
      const { question } = conversation;
      if (question?.id !== press.question)
        return { ...aside('That question is settled already; say it again if it is not.'), keeps: true };
      return playAnswer(scene, question, press.value);
    }
  }
}

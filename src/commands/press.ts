/** What a pressed button does: the same as a sentence would. */
import { dateOfDay } from '../maintenance/calendar.ts';
import type { Press } from '../replies/reply.ts';
import { standingBatch } from './lastBatch.ts';
import { playActs, playAsk, playDeeds } from './play.ts';
import { changeQuestion, putOffLimit } from './questions.ts';
import { notedBy } from './remember.ts';
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

/** What is put right leaves open what else was asked of it. */
const stillOpen = ({ conversation: { question, waiting = [] } }: Scene) => [
  ...(question ? [question] : []),
  ...waiting,
];

export async function playPress(scene: Scene, press: Press): Promise<Played> {
  const { conversation } = scene;
  switch (press.does) {
    case 'deeds':
      return press.deeds.every(({ kind }) => kind === 'amend')
        ? thenAsk(await playDeeds(scene, press.deeds, {}), stillOpen(scene))
        : playDeeds(scene, press.deeds, {});
    case 'ask':
      return playWhen(scene, press);
    case 'undo':
      return undoMessage(scene, press.message);
    case 'reread':
      return playReread(scene, press.message);
    case 'leave':
      return aside('Left as it is.');
    case 'change': {
      const asking = { about: 0, question: changeQuestion(scene, press.message) };
      const asked: Played = { steps: [], caution: [], grave: false, asking, changing: press.message };
      return thenAsk(asked, stillOpen(scene));
    }
    case 'answer': {
      const { question } = conversation;
      if (question?.id !== press.question)
        return { ...aside('That question is settled already; say it again if it is not.'), keeps: true };
      return playAnswer(scene, question, press.value);
    }
  }
}

async function undoMessage(scene: Scene, message: string): Promise<Played> {
  const { transaction, person, message: said } = scene;
  const noted = await notedBy(transaction.post, message);
  return playDeeds(scene, [{ kind: 'undo' }], {
    batch: await standingBatch(transaction.journal, message, said.now),
    ...(noted === person.id ? { noted: true } : {}),
  });
}

/** The author changed the message: what still stands of it goes, what it says now is played as if it were new. */
async function playReread(scene: Scene, message: string): Promise<Played> {
  const { transaction, message: said } = scene;
  const batch = await standingBatch(transaction.journal, message, said.now);
  if (batch.length === 0) return playActs(scene);
  const undone = await playDeeds(scene, [{ kind: 'undo' }], { batch });
  if (undone.steps.some(({ outcome }) => outcome !== 'written')) return undone;
  const again = await playActs(scene);
  return { ...again, steps: [...undone.steps, ...again.steps], ...moved(again.asking, undone.steps.length) };
}

const moved = (asking: Played['asking'], by: number): Pick<Played, 'asking'> =>
  asking ? { asking: { ...asking, about: asking.about + by } } : {};

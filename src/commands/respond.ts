/** What a message is: a button, the answer to the open question, or something new. */
import { CONFIRM, LEAVE, answerIn, filled, typedPress } from './answering.ts';
import type { Reading } from '../language/act.ts';
import type { Deed } from '../maintenance/decide/deed.ts';
import type { Press } from '../replies/reply.ts';
import type { Conversation, OpenQuestion } from './conversation.ts';
import { standingBatch } from './lastBatch.ts';
import { playActs, playAsk, playDeeds } from './play.ts';
import type { Scene } from './scene.ts';
import type { Played } from './step.ts';

export async function respond(scene: Scene): Promise<Played> {
  const { message, conversation, reading } = scene;
  const press = message.press ?? typedPress(message.text, conversation);
  if (press) return playPress(scene, press);
  const { question } = conversation;
  const value = question && answerIn(message.text, reading, question);
  if (question && value !== undefined) return playAnswer(scene, question, value);
  const { bare } = reading;
  if (conversation.tookMachine && bare?.machine !== undefined && !says(reading))
    return {
      ...(await playDeeds(scene, [{ kind: 'amend', machine: bare.machine }], {})),
      ...stillOpen(conversation),
    };
  return playActs(scene);
}

/** A question about what was written stays open when only its machine was put right. */
const stillOpen = ({ question }: Conversation): Pick<Played, 'asking'> =>
  question?.field === 'reason' ? { asking: { about: 0, question } } : {};

/** More than a name alone. */
const says = (reading: Reading): boolean => reading.acts.some(({ act }) => act.kind !== 'unclear');

async function playPress(scene: Scene, press: Press): Promise<Played> {
  switch (press.does) {
    case 'deeds':
      return playDeeds(scene, press.deeds, {});
    case 'ask':
      return playAsk(scene, press.about, press.field);
    case 'undo':
      return playDeeds(scene, [{ kind: 'undo' }], {
        batch: await standingBatch(scene.transaction.journal, press.message, scene.message.now),
      });
    case 'change':
      return aside(CHANGE_HELP);
    case 'answer': {
      const { question } = scene.conversation;
      if (question?.id !== press.question)
        return aside('That question is settled already; say it again if it is not.');
      return playAnswer(scene, question, press.value);
    }
  }
}

const CHANGE_HELP =
  'Say what should be different, such as “make that 12 h” or “that was Maple, not Alder”; for a day or a reason, “undo” and say it anew.';

const aside = (text: string): Played => ({ steps: [], caution: [], grave: false, aside: text });

/** The answer fills the field that was asked about, and what waited is decided as of when it was said. */
async function playAnswer(scene: Scene, question: OpenQuestion, value: string): Promise<Played> {
  if (value === LEAVE) return aside('Left as it is: nothing noted.');
  scene.because = question.message;
  scene.saidAt = question.saidAt;
  const deeds: Deed[] = question.pending.map((deed) => filled(deed, question.field, value));
  if (deeds.length === 0) return aside('Thanks. Say the rest in one go, and I note it.');
  return playDeeds(scene, deeds, { confirmed: value === CONFIRM });
}

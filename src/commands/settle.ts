/** The open question has its answer: what waited is decided as of when it was said, and the next doubt has its turn. */
import type { Deed } from '../maintenance/decide/deed.ts';
import type { Entry } from '../maintenance/entry/entry.ts';
import { CONFIRM, filled, LAST, LEAVE, repeatsFigure } from './answering.ts';
import { inContext } from './context.ts';
import type { OpenQuestion } from './conversation.ts';
import { standingBatch } from './lastBatch.ts';
import { isOrderQuestion, playOrderAnswer } from './orders/answer.ts';
import { playDeeds } from './play.ts';
import { foundConfirm } from './questions.ts';
import type { Scene } from './scene.ts';
import { deedsOf, type Played } from './step.ts';
import { isCompleting, thenAsk } from './turns.ts';

export async function playAnswer(scene: Scene, question: OpenQuestion, value: string): Promise<Played> {
  return thenAsk(await settled(scene, question, value), scene.conversation.waiting);
}

function left(question: OpenQuestion): string {
  if (question.field === 'found') return 'It stays held.';
  if (question.field === 'later') return 'Nothing noted. Say it again when you are ready.';
  return isCompleting(question) ? 'Left as it was noted.' : 'Left as it is: nothing noted.';
}

const said = (text: string): Played => ({ steps: [], caution: [], grave: false, aside: text });

async function settled(scene: Scene, question: OpenQuestion, value: string): Promise<Played> {
  if (value === LEAVE) return said(left(question));
  if (question.field === 'found' && value !== CONFIRM) return readBack(scene, question, value);
  scene.because = question.message;
  scene.saidAt = question.saidAt;
  if (isOrderQuestion(question)) return playOrderAnswer(scene, question, value);
  const stands = value === CONFIRM || question.pending.some((deed) => repeatsFigure(deed, value));
  const deeds: Deed[] = question.pending.map((deed) => filled(deed, question.field, value));
  if (deeds.length === 0) return said('Thanks. Say the rest in one go, and I note it.');
  return playDeeds(scene, deeds, {
    // only a figure that was asked about is stood by; what waited for another word is judged as if told now
    confirmed: stands && question.field === 'hours',
    reaches: question.field === 'far',
    sweeps: question.field === 'sweep',
    ...(question.batches
      ? { batch: await entriesOf(scene, value === LAST ? question.batches.slice(0, 1) : question.batches) }
      : {}),
  });
}

const entriesOf = async (
  { transaction, message }: Scene,
  messages: readonly string[],
): Promise<readonly Entry[]> =>
  (await Promise.all(messages.map((key) => standingBatch(transaction.journal, key, message.now)))).flat();

/** What was told lifts nothing before a keeper has seen it as it will stand; work told with it is noted then too. */
function readBack(scene: Scene, question: OpenQuestion, found: string): Played {
  const [release] = question.pending;
  if (release?.kind !== 'release')
    return said('That question is settled already; say it again if it is not.');
  const acts = scene.reading.acts.map((reading) => inContext(reading, release.machine).act);
  // a symptom told here is what was found, over by now: it must not hold the machine anew
  const told = deedsOf(acts).filter(({ kind }) => kind !== 'symptom' && kind !== 'gone');
  const asking = foundConfirm(scene, { ...release, found }, told);
  return { steps: [], caution: [], grave: false, asking: { about: 0, question: asking } };
}

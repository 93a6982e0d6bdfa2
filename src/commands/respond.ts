/** What a message is: a button, the answer to the open question, or something new. */
import { answerIn } from './answering.ts';
import type { Reading } from '../language/act.ts';
import { changeIn, playChange } from './change.ts';
import type { Conversation } from './conversation.ts';
import { dropped } from './dropped.ts';
import { isElse } from './elsewhere.ts';
import { falseAlarm } from './falseAlarm.ts';
import { playIsItSafe } from './isItSafe.ts';
import { playNever } from './never.ts';
import { mendTold } from './mended.ts';
import { isOrderQuestion, orderAnswer } from './orders/answer.ts';
import { playMessage } from './orders/index.ts';
import { playDeeds } from './play.ts';
import { playPlain } from './plain.ts';
import { aside, playPress } from './press.ts';
import type { Scene } from './scene.ts';
import { playAnswer } from './settle.ts';
import { typedPress, type Typed } from './typed.ts';
import { isCompleting } from './turns.ts';
import type { Played } from './step.ts';
import { thenAsk } from './turns.ts';
import { playWhy } from './whyDue.ts';

export async function respond(scene: Scene): Promise<Played> {
  const { message, conversation, reading } = scene;
  if (message.press) return playPress(scene, message.press);
  const typed = typedPress(message, conversation, scene);
  if (typed) return playTyped(scene, typed);
  const gone = await dropped(scene);
  if (gone) return gone;
  const alarm = falseAlarm(scene);
  if (alarm) return playDeeds(scene, alarm, {});
  const { question, changing } = conversation;
  const change = changing === undefined || isOther(question) ? undefined : changeIn(reading);
  if (changing !== undefined && change)
    return thenAsk(await playChange(scene, change, changing), conversation.waiting);
  const value =
    question &&
    !isElse(scene, question) &&
    (answerIn(message.text, reading, question) ??
      (isOrderQuestion(question) ? orderAnswer(message.text, reading, question) : undefined));
  if (question && value !== undefined && value !== false) return playAnswer(scene, question, value);
  const mended = mendTold(scene);
  if (mended) return mended;
  const { bare } = reading;
  if (conversation.tookMachine && bare?.machine !== undefined && !says(reading))
    return {
      ...(await playDeeds(scene, [{ kind: 'amend', machine: bare.machine }], {})),
      ...stillOpen(conversation),
    };
  return (
    playNever(scene) ??
    (await playIsItSafe(scene)) ??
    (await playPlain(scene)) ??
    playWhy(scene) ??
    playMessage(scene)
  );
}

function playTyped(scene: Scene, typed: Typed): Promise<Played> | Played {
  if ('press' in typed) return playPress(scene, typed.press);
  if ('which' in typed) return { ...aside('Which one?'), offers: typed.which, keeps: true };
  const { unsure } = typed;
  return {
    ...aside(
      `Is that the figure, or the answer of that number? Say “${unsure} h”, or the answer in its words.`,
    ),
    keeps: true,
  };
}

/** Another question is open: a bare word answers that one. */
const isOther = (question: Conversation['question']): boolean =>
  question !== undefined && question.field !== 'change';

/** A question about what was written stays open when only its machine was put right. */
const stillOpen = ({ question }: Conversation): Pick<Played, 'asking'> =>
  question && isCompleting(question) ? { asking: { about: 0, question } } : {};

/** More than a name alone. */
const says = (reading: Reading): boolean => reading.acts.some(({ act }) => act.kind !== 'unclear');

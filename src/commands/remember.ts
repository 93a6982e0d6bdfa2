/** What stays of a message besides its entries: the answer for a second delivery, its words, the conversation. */
import { z } from 'zod';
import { CONVERSATION_MS, type Conversation } from './conversation.ts';
import { foldName } from '../maintenance/machine.ts';
import { item } from '../replies/reply.ts';
import { everWrote, standingBatch } from './lastBatch.ts';
import type { Answer, IncomingMessage } from './message.ts';
import type { HandledReader } from '../store/post.ts';
import type { Transaction } from '../store/store.ts';
import { tellsWork } from './notRead.ts';
import type { Scene } from './scene.ts';
import type { Played, Step } from './step.ts';

/** Platforms deliver again for a day at most; two months leave room for a machine that stood still. */
const KEPT_MS = 60 * 24 * 60 * 60_000;

/** Stores the answer for a second delivery, the words if anything came of them, and the conversation. */
export async function remember(scene: Scene, played: Played, answer: Answer): Promise<void> {
  const { transaction, message, person } = scene;
  const { post } = transaction;
  await post.recordHandled(message.key, answer, message.now, person.id);
  await post.pruneHandled(message.now - KEPT_MS);
  await post.dropExpiredConversations(message.now);
  if (scene.entries.length > 0 && message.text !== '')
    await post.saveWords({ message: message.key, person: person.id, text: message.text, at: message.saidAt });
  const unwritten = wroteNothing(scene, played, answer);
  if (answer.outcome === 'silent' && !unwritten) return;
  await post.saveConversation({
    place: scene.place,
    person: person.id,
    state: unwritten ? unwrittenTalk(scene, played, answer) : nextConversation(scene, played, answer),
    expiresAt: message.now + CONVERSATION_MS,
  });
}

function nextConversation(scene: Scene, played: Played, answer: Answer): Conversation {
  const { conversation, message } = scene;
  const { unwritten: _before, ...still } = conversation;
  if (played.keeps ?? saysNothing(played))
    return {
      ...(answer.entries.length > 0 ? still : conversation),
      ...pressesOf(played.offers ? answer : undefined),
    };
  const lastMachine = lastNamed(played.steps) ?? conversation.lastMachine;
  return {
    at: message.now,
    ...(lastMachine === undefined ? {} : { lastMachine }),
    ...(played.changing === undefined ? {} : { changing: played.changing }),
    ...(tookMachine(played.steps) ? { tookMachine: true } : {}),
    ...questionAfter(conversation, played),
    ...(played.waiting ? { waiting: played.waiting.map(({ question }) => question) } : {}),
    ...pressesOf(answer),
  };
}

/** What is asked now; a machine that is being added waits while other things are asked about. */
function questionAfter(
  { question }: Conversation,
  { asking, steps }: Played,
): Pick<Conversation, 'question'> {
  if (asking) return { question: asking.question };
  const onlyAsked = steps.length > 0 && steps.every(({ outcome }) => outcome === 'answered');
  return onlyAsked && question?.order?.kind === 'add' ? { question } : {};
}

/** A typed "undo" is no press of the button under the reply before. */
function unwrittenTalk(scene: Scene, played: Played, answer: Answer): Conversation {
  const { presses, ...rest } = nextConversation(scene, played, answer);
  const kept = presses?.filter(({ press }) => press.does !== 'undo') ?? [];
  return { ...rest, ...(kept.length > 0 ? { presses: kept } : {}), unwritten: true };
}

/** Work was told, as far as its words show, and none of it came to stand. */
const wroteNothing = ({ entries, message, record }: Scene, { steps }: Played, { outcome }: Answer): boolean =>
  entries.length === 0 &&
  (outcome === 'refused' ||
    (steps.length === 0 && !message.press && !message.text.includes('?') && tellsWork(message.text, record)));

/** "Thanks": no answer to what is open, and no reason to forget it. */
const saysNothing = ({ steps, asking, aside, caution }: Played): boolean =>
  steps.length === 0 && !asking && aside === undefined && caution.length === 0;

const pressesOf = (answer: Answer | undefined): Pick<Conversation, 'presses'> =>
  answer ? { presses: answer.buttons.map(({ label, press }) => ({ label, press })) } : {};

const tookMachine = (steps: readonly Step[]): boolean =>
  steps.some((s) => s.outcome === 'written' && s.assumed?.['machine']?.from === 'conversation');

const lastNamed = (steps: readonly Step[]): string | undefined =>
  steps.flatMap(({ act }) => ('machine' in act && act.machine !== undefined ? [act.machine] : [])).at(-1);

// An answer that an older version stored may lack what this one needs: then it is not an answer any more.
const answerShape = z.looseObject({
  now: z.number(),
  by: z.string(),
  message: z.string(),
  acts: z.array(z.looseObject({ kind: z.string() })),
  results: z.array(z.looseObject({ act: z.number() })),
  reply: z.looseObject({ sections: z.array(z.looseObject({})), buttons: z.array(z.looseObject({})) }),
  buttons: z.array(z.looseObject({ label: z.string() })),
  notedBy: z.string().optional(),
});
const isAnswer = (json: unknown): json is Answer => answerShape.safeParse(json).success;

/** Who noted a message for its author, by person id. */
export async function notedBy(post: HandledReader, message: string): Promise<string | undefined> {
  const answer = (await post.handled(message))?.answer;
  return isAnswer(answer) ? answer.notedBy : undefined;
}

/**
 * The answer that a message got. It is kept for a while and never exported; what the message wrote is kept for good, so
 * that an old one, or one whose entries were imported, is known by those.
 */
export async function answeredBefore(
  { post, journal }: Pick<Transaction, 'post' | 'journal'>,
  message: IncomingMessage,
): Promise<Answer | undefined> {
  const before = await post.handled(message.key);
  if (before) return parseAnswer(before.answer, message);
  if (!(await everWrote(journal, message.key))) return undefined;
  const stands = (await standingBatch(journal, message.key, message.now)).length > 0;
  return onlyThat(message, stands ? NOTED_BEFORE : TAKEN_BACK);
}

const NOTED_BEFORE = 'That message is noted already; nothing more was noted.';
const TAKEN_BACK =
  'That message was noted before, and taken back since; nothing was noted. If it holds after all, say it in a new message.';

/** The first answer; when its words were deleted, or another version made it, only that there was one. */
const parseAnswer = (json: unknown, message: IncomingMessage): Answer =>
  isAnswer(json)
    ? json
    : onlyThat(message, 'This message was answered before; that answer is not kept any more.');

function onlyThat(message: IncomingMessage, text: string): Answer {
  return {
    now: message.now,
    by: foldName(message.speaker),
    message: message.key,
    outcome: 'repeated',
    acts: [],
    results: [],
    entries: [],
    question: null,
    reply: { sections: [{ items: [item(text)] }], buttons: [] },
    buttons: [],
  };
}

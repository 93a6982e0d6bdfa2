/** "Undo" while a question is open about what is not noted yet: the question goes, and no entry with it. */
import type { OpenQuestion } from './conversation.ts';
import { standingBatch } from './lastBatch.ts';
import { SEVERAL } from './reach.ts';
import type { Scene } from './scene.ts';
import type { Played } from './step.ts';
import { isCompleting } from './turns.ts';

/** Undefined when more is said, or what the question is about stands in the journal already. */
export async function dropped(scene: Scene): Promise<Played | undefined> {
  const { question } = scene.conversation;
  if (!question || !isBareUndo(scene) || isOfTheWritten(question)) return undefined;
  const { transaction, message } = scene;
  const noted = await standingBatch(transaction.journal, question.message, message.now);
  if (noted.length > 0) return undefined;
  return {
    steps: [],
    caution: [],
    grave: false,
    aside:
      'That question is dropped: nothing was noted of it. What was noted before stands; “undo” again takes the last of that back.',
  };
}

function isBareUndo({ reading: { acts, orders, injury }, message }: Scene): boolean {
  const [only, ...more] = acts;
  if (
    only?.act.kind !== 'undo' ||
    more.length > 0 ||
    orders.length > 0 ||
    injury ||
    SEVERAL.test(message.text)
  )
    return false;
  const { machine, part, task } = only.act;
  return machine === undefined && part === undefined && task === undefined;
}

/** About entries that stand: which of them, how far back, what to change in them. */
const isOfTheWritten = (question: OpenQuestion): boolean =>
  isCompleting(question) ||
  question.field === 'change' ||
  question.pending.some(({ kind }) => kind === 'undo' || kind === 'amend');

/** A correction that reaches further than the speaker may think: nothing old goes without a word. */
import type { Deed } from '../maintenance/decide/deed.ts';
import type { Entry } from '../maintenance/entry/entry.ts';
import { standing } from '../maintenance/record/standing.ts';
import { capital } from '../replies/format/list.ts';
import { machineName } from '../replies/wording/names.ts';
import { note } from '../replies/wording/noted.ts';
import { since } from '../replies/wording/view.ts';
import type { OpenQuestion } from './conversation.ts';
import { batchesOf, originOf } from './lastBatch.ts';
import { emptyQuestion, farQuestion, manyQuestion } from './questions.ts';
import type { Scene } from './scene.ts';
import type { WriteOptions } from './write.ts';

/** A shift: what was said before that is another day's work. */
const REACH_MS = 12 * 60 * 60_000;
const MIDNIGHT_MS = 2 * 60 * 60_000;
const MOST_AT_ONCE = 10;
export const SEVERAL = /\b(?:both|everything|all|the lot|two|three|last \d)\b/iu;

/** Undefined where the correction is about what was just said, or its entries are named. */
export async function reachQuestion(
  scene: Scene,
  deed: Deed,
  { batch, reaches }: WriteOptions,
): Promise<OpenQuestion | undefined> {
  if (batch || reaches || !isLoose(deed)) return undefined;
  const { transaction, person, message } = scene;
  const several = deed.kind === 'undo' && SEVERAL.test(message.text);
  const batches: (readonly Entry[])[] = [];
  for await (const each of batchesOf(transaction.journal, person.id, message.now)) {
    const old = isFar(saidAt(each), scene);
    if (batches.length === 0 && scene.conversation.unwritten && deed.kind === 'undo' && isBare(deed))
      return emptyQuestion(scene, deed, await wordsOf(scene, each));
    if (batches.length === 0 && old) return farQuestion(scene, deed, await wordsOf(scene, each));
    if (old) break;
    batches.push(each);
    if (!several || batches.length === MOST_AT_ONCE) break;
  }
  return several ? manyOf(scene, deed, batches) : undefined;
}

/** A shift ago, or on another day and not just across midnight. */
const isFar = (at: number, { message: { now }, calendar }: Scene): boolean =>
  at < now - REACH_MS || (at < now - MIDNIGHT_MS && calendar.dayOf(at) !== calendar.dayOf(now));

/** About "that", whatever it was. */
const isLoose = (deed: Deed): boolean =>
  (deed.kind === 'amend' && deed.target === undefined) || deed.kind === 'undo';

const isBare = ({ machine, part, task }: Deed & { kind: 'undo' }): boolean =>
  machine === undefined && part === undefined && task === undefined;

const saidAt = (batch: readonly Entry[]): number => Math.max(...batch.map((entry) => entry.saidAt));

/** "Both", said of two entries of one message, is that message. */
async function manyOf(
  scene: Scene,
  deed: Deed,
  batches: readonly (readonly Entry[])[],
): Promise<OpenQuestion | undefined> {
  const [last = [], ...before] = batches;
  const both = /\bboth\b|\btwo\b/iu.test(scene.message.text);
  if (before.length === 0 || (both && last.length === 2)) return undefined;
  const chosen = both ? batches.slice(0, 2) : batches;
  const told = await Promise.all(chosen.map((batch) => wordsOf(scene, batch)));
  const keys = chosen.flatMap(([first]) => (first ? [originOf(first)] : []));
  return manyQuestion(scene, deed, told, keys);
}

/** "15:41, Birch: 3 h run". */
async function wordsOf(scene: Scene, batch: readonly Entry[]): Promise<string> {
  const { journal } = scene.transaction;
  const family = await journal.familyOf(batch.map((entry) => entry.id));
  const ids = new Set(batch.map((entry) => (entry.kind === 'amended' ? entry.target : entry.id)));
  const facts = standing(family).filter((fact) => ids.has(fact.id));
  const told = facts.map((fact) => {
    const where =
      'machine' in fact && fact.machine !== undefined ? `${machineName(fact.machine, scene)}: ` : '';
    return `${where}${note(fact, scene)}`;
  });
  const when = capital(since(saidAt(batch), scene));
  return `${when}, ${told.slice(0, 3).join(' · ')}${told.length > 3 ? ' · …' : ''}`;
}

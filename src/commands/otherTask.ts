/** "No, it was the belts, not the rods": a part is named for a deed that is a task; which of that part's tasks was it? */
import type { Deed } from '../maintenance/decide/deed.ts';
import { planned } from '../maintenance/due/plan.ts';
import { standing, type Fact } from '../maintenance/record/standing.ts';
import { capital } from '../replies/format/list.ts';
import { didIt, machineName } from '../replies/wording/names.ts';
import { LEAVE } from './answering.ts';
import { careOfPart } from './ask/partCare.ts';
import type { OpenQuestion } from './conversation.ts';
import { lastBatch } from './lastBatch.ts';
import { open } from './questions.ts';
import type { Scene } from './scene.ts';
import type { WriteOptions } from './write.ts';

/** Undefined where something of the last batch has a part to put right, or more than one task could be meant. */
export async function otherTaskQuestion(
  scene: Scene,
  deed: Deed,
  { batch }: WriteOptions,
): Promise<OpenQuestion | undefined> {
  if (deed.kind !== 'amend' || deed.part === undefined || deed.task !== undefined) return undefined;
  const { transaction, person, message, record } = scene;
  const entries = batch ?? (await lastBatch(transaction.journal, person.id, message.now));
  const ids = new Set(entries.map((entry) => (entry.kind === 'amended' ? entry.target : entry.id)));
  const facts = standing(await transaction.journal.familyOf([...ids])).filter(({ id }) => ids.has(id));
  const [only, ...more] = facts.filter(isTask);
  if (!only || more.length > 0 || facts.some((fact) => 'part' in fact)) return undefined;
  const machine = record.machines.get(deed.machine ?? only.machine);
  const tasks = careOfPart(deed.part).filter(
    (task) => task !== only.task && (!machine || planned(task, machine)),
  );
  if (tasks.length === 0) return undefined;
  const { part: _part, ...rest } = deed;
  return open(scene, {
    field: 'task',
    text: `${machineName(only.machine, scene)}, not “${didIt(only.task)}” but what? Nothing is changed yet.`,
    options: [
      ...tasks.map((value) => ({ value, label: capital(didIt(value)) })),
      { value: LEAVE, label: 'Leave it' },
    ],
    pending: [{ ...rest, target: only.id }],
  });
}

const isTask = (fact: Fact): fact is Extract<Fact, { kind: 'done' }> => fact.kind === 'done';

/**
 * All that the last writing message wrote and still stands is taken back by new entries; nothing is deleted.
 * Taking back an amendment restores, taking back a take-back does it again.
 */
import { replaceTask } from '../codes.ts';
import type { Draft, Entry } from '../entry/entry.ts';
import { standing, type Fact } from '../record/standing.ts';
import type { DecideContext, Shops } from './context.ts';
import type { UndoDeed } from './deed.ts';
import { refused, written, type Decision } from './decision.ts';
import { heldBy } from './hold.ts';
import { aboutIn, holdOf } from './lifting.ts';
import { notYours } from './own.ts';
import { canonicalName } from './scene.ts';

export function decideUndo(deed: UndoDeed, shops: Shops, context: DecideContext): Decision {
  const { part, task } = deed;
  const machine = deed.machine === undefined ? undefined : canonicalName(deed.machine, shops.latest);
  const named = machine === undefined ? deed : { ...deed, machine };
  const chosen = context.lastBatch.filter((entry) => isMeant(entry, named, context));
  if (chosen.length === 0)
    return refused('nothing-to-undo', {
      act: 'undo',
      ...(machine === undefined ? {} : { machine }),
      ...(part === undefined ? {} : { part }),
      ...(task === undefined ? {} : { task }),
    });
  const foreign = notYours(chosen, context);
  if (foreign) return foreign;
  const facts = standing([...context.lastBatch, ...(context.corrected ?? [])]);
  const holds = chosen.flatMap((entry) => holdBehind(entry, facts, shops) ?? []);
  const free = chosen.filter((entry) => !holdBehind(entry, facts, shops));
  const [held] = holds;
  if (held && free.length === 0) return heldBy(held.machine, held.hold);
  const at = Math.min(context.saidAt, context.now);
  const drafts = free.map(({ id: target }): Draft => ({
    kind: 'takenBack',
    target,
    at,
    precision: 'instant',
  }));
  if (!held) return written(drafts);
  return written(drafts, ['hold-stays'], { hold: held.hold.symptom, stays: held.machine });
}

function holdBehind(entry: Entry, facts: readonly Fact[], shops: Shops): ReturnType<typeof holdOf> {
  const fact = aboutIn(entry, facts);
  return fact && holdOf(fact, shops.latest);
}

/** An entry goes by what it comes to now; an amendment by what it is about. */
function isMeant(entry: Entry, deed: UndoDeed, context: DecideContext): boolean {
  if (deed.machine === undefined && deed.part === undefined && deed.task === undefined) return true;
  const target = entry.kind === 'amended' || entry.kind === 'takenBack' ? entry.target : entry.id;
  const known = standing([...context.lastBatch, ...(context.corrected ?? [])]);
  const about = known.find((fact) => fact.id === target) ?? entry;
  return (
    (deed.machine === undefined || ('machine' in about && about.machine === deed.machine)) &&
    (deed.part === undefined || ('part' in about && about.part === deed.part)) &&
    (deed.task === undefined || tasksOf(about).includes(deed.task))
  );
}

/** A swap is its replacement task too. */
function tasksOf(entry: Entry): readonly string[] {
  if (entry.kind === 'swapped') return [replaceTask(entry.part)];
  return 'task' in entry && entry.task !== undefined ? [entry.task] : [];
}

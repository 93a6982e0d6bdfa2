/** "did hazel and rowan, and dusted the lot": those two, or all of them? */
import type { ActReading, OrderReading } from '../../act.ts';
import type { Passage } from './passage.ts';

export function whichAll(
  passages: readonly Passage[],
  acts: readonly ActReading[],
  machines: readonly string[],
): OrderReading[] {
  const passage = passages.find(({ facts }) => facts.has('the-lot') && facts.has('machine'));
  if (!passage || machines.length < 2) return [];
  const covers = acts.flatMap((_, i) => (onAll(acts, i, machines) ? [i] : []));
  const named = passage.machines;
  if (covers.length === 0 || covers.length === acts.length || named.length >= machines.length) return [];
  return [
    { order: { kind: 'whichAll', named }, covers, trail: [{ rule: 'order whichAll: the lot after names', span: passage.span }] },
  ]; // prettier-ignore
}

/** The same act on every machine. */
function onAll(acts: readonly ActReading[], at: number, machines: readonly string[]): boolean {
  const own = acts[at]?.act;
  if (own?.kind !== 'done') return false;
  const twins = acts.flatMap(({ act }) =>
    act.kind === 'done' && act.task === own.task ? [act.machine] : [],
  );
  return machines.every((machine) => twins.includes(machine));
}

/** Machines under a safety hold: on top of every answer about them, and of those that send people round the room. */
import type { AskTopic } from '../language/act.ts';
import type { Deed } from '../maintenance/decide/deed.ts';
import { asksFinding } from '../maintenance/record/reasons.ts';
import { heldFor, machineName } from '../replies/wording/names.ts';
import { since } from '../replies/wording/view.ts';
import type { Scene } from './scene.ts';
import type { Played, Step } from './step.ts';

/** Questions whose answer sends people to machines without naming one. */
const OF_THE_ROOM: ReadonlySet<string> = new Set<AskTopic>(['due', 'overdue', 'next', 'status', 'handover']);
const ofTheRoom = ({ act }: Step): boolean =>
  act.kind === 'ask' && act.machine === undefined && OF_THE_ROOM.has(act.topic);

const SAYS_HOLD: ReadonlySet<string> = new Set<Deed['kind']>(['release', 'find']);

/** Machines under a safety hold that this message speaks of, or the room's: on top of every answer about them. */
export function heldLines(scene: Scene, { steps, caution }: Played): string[] {
  const refused = steps.some((s) => s.decision?.outcome === 'refused' && s.decision.code === 'safety-hold');
  // the stop answer, the refusal and the words about lifting it say it themselves
  if (caution.length > 0 || refused) return [];
  const named = new Set(
    steps.flatMap(({ act }) =>
      'machine' in act && act.machine !== undefined && !SAYS_HOLD.has(act.kind) ? [act.machine] : [],
    ),
  );
  const others = steps.some(ofTheRoom) ? [...scene.record.machines.keys()].filter((n) => !named.has(n)) : [];
  return [
    ...[...named].map((name) => heldLine(name, scene)),
    ...others.map((name) => heldShort(name, scene)),
  ].filter((line) => line !== '');
}

function heldShort(name: string, scene: Scene): string {
  const machine = scene.record.machines.get(name);
  if (!machine?.hold || machine.retired) return '';
  return `${machineName(name, scene)} is held since ${since(machine.hold.since.at, scene)}: ${heldFor(machine.hold)}. Nobody starts it.`;
}

/** Empty where it is not held. */
export function heldLine(name: string, scene: Scene): string {
  const hold = scene.record.machines.get(name)?.hold;
  if (!hold) return '';
  const by = scene.personName(hold.since.by);
  const falseAlarm = asksFinding(hold) ? '' : `, or “false alarm on ${machineName(name, scene)}”`;
  return `${machineName(name, scene)} is held: ${heldFor(hold)}, told by ${by} ${since(hold.since.at, scene)}. Nobody starts it. To lift it: a keeper says what was found and mended${falseAlarm}.`;
}

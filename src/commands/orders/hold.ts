/** A hold is explained: as a false alarm, or with what was found and mended. */
import { isSafetySymptom } from '../../maintenance/codes.ts';
import type { Deed } from '../../maintenance/decide/deed.ts';
import type { MachineRecord } from '../../maintenance/record/record.ts';
import { list } from '../../replies/format/list.ts';
import { heldFor, machineName } from '../../replies/wording/names.ts';
import { since } from '../../replies/wording/view.ts';
import { CONFIRM, LEAVE } from '../answering.ts';
import { playAsk } from '../play.ts';
import { foundConfirm } from '../questions.ts';
import type { Scene } from '../scene.ts';
import { askFor, askMachine, carryDeeds, machinesMeant, recordsOf, type Carried, type Carrier, type OrderOf } from './order.ts'; // prettier-ignore

/** Those meant that are held; none spoken of: the one that is, where there is just one. */
function heldOf(scene: Scene, named: readonly string[], anywhere: boolean): MachineRecord[] {
  const meant = recordsOf(scene, machinesMeant(scene, named)).filter((m) => m.hold);
  if (meant.length > 0 || named.length > 0 || !anywhere) return meant;
  const held = [...scene.record.machines.values()].filter((m) => m.hold && !m.retired);
  return held.length === 1 ? held : [];
}

export const FALSE_ALARM: Carrier<'falseAlarm'> = {
  // "it was the toaster" means something only where a machine that was just spoken of is held
  takes: (scene, { machines, said }) => heldOf(scene, machines, said).length > 0 || (said && (machines.length > 0 || anyHeld(scene))),
  carry(scene, order, first) {
    const held = heldOf(scene, order.machines, order.said);
    const release = (machine: string): Deed => ({ kind: 'release', machine, falseAlarm: true, ...foundIn(order) });
    if (held.length === 0 && order.machines.length === 0)
      return askMachine(scene, order, { kind: 'release', falseAlarm: true }, first, 'On which machine was it a false alarm?');
    if (held.length === 0) return carryDeeds(scene, order.machines.map(release), first);
    if (order.said || order.confirmed) return carryDeeds(scene, held.map(({ name }) => release(name)), first);
    const names = list(held.map(({ name }) => machineName(name, scene)));
    const stays = `${names} ${held.length > 1 ? 'stay' : 'stays'} held until someone has looked.`;
    return askFor(scene, order, release(held[0]?.name ?? ''), first, {
      field: 'other',
      text: order.certain ? `${stays} Looked, and it was a false alarm?` : stays,
      options: [
        { value: CONFIRM, label: 'False alarm' },
        { value: LEAVE, label: 'Stays held' },
      ],
    });
  },
}; // prettier-ignore

const anyHeld = ({ record }: Scene): boolean => [...record.machines.values()].some((m) => m.hold);

/** "false alarm" says nothing of what it was; "it was just the toaster" does. */
const foundIn = ({ said, text }: OrderOf<'falseAlarm'>): { found?: string } =>
  said && text.split(/\s+/u).length <= 6 ? {} : { found: text };

export const LIFT: Carrier<'lift'> = {
  // a keeper's “it is back” is refused with the way to lift it: nothing more to do here
  takes: (scene, { machines }) =>
    heldOf(scene, machines, false).length > 0 &&
    (scene.person.role !== 'keeper' || !scene.reading.acts.some(({ act }) => act.kind === 'up')),
  async carry(scene, order, first) {
    const [machine] = heldOf(scene, order.machines, false);
    if (!machine) return { steps: [] };
    const release = { kind: 'release', machine: machine.name } as const;
    if (scene.person.role === 'keeper' && order.mended) {
      const back: Deed[] = machine.down ? [{ kind: 'up', machine: machine.name }] : [];
      const question = foundConfirm(scene, { ...release, found: order.text }, back);
      const step = { act: release, outcome: 'asked', entries: [], text: question.text } as const;
      return { steps: [step], asking: { about: first, question } };
    }
    const told = await carryDeeds(scene, [{ kind: 'find', machine: machine.name, text: order.text }], first);
    if (scene.person.role !== 'keeper') return { ...told, aside: byKeeper(machine, scene) };
    const asked = playAsk(scene, release, 'found');
    return withQuestion(told, asked.asking && { ...asked.asking, about: first }, whyNot(machine, scene));
  },
};

const withQuestion = (told: Carried, asking: Carried['asking'], aside: string): Carried => ({
  ...told,
  aside,
  ...(asking ? { asking } : {}),
});

const whyNot = ({ name, hold }: MachineRecord, scene: Scene): string =>
  hold === undefined
    ? ''
    : `${machineName(name, scene)} stays held: ${heldFor(hold)}, told by ${scene.personName(hold.since.by)} ${since(hold.since.at, scene)}. What was replaced or mended, and by whom, is still missing.`;

/** A member's word is kept for the keeper who lifts the hold. */
function byKeeper({ name, hold }: MachineRecord, scene: Scene): string {
  const keepers = scene.workshop.people.filter((p) => p.role === 'keeper').map((p) => p.name);
  const what = hold && isSafetySymptom(hold.symptom) ? ` for ${heldFor(hold)}` : '';
  return `${machineName(name, scene)} stays held${what}: a keeper lifts it${keepers.length > 0 ? ` (${list(keepers, 'or')})` : ''}, with what was found, what was replaced and by whom. Your words are kept for that.`;
}

/** Starting a print where hands are in, reminders that nobody wants, a joke, and "the lot". */
import type { Deed } from '../../maintenance/decide/deed.ts';
import { ROOM } from '../../maintenance/codes.ts';
import { listed, planned } from '../../maintenance/due/plan.ts';
import type { MachineRecord } from '../../maintenance/record/record.ts';
import { list } from '../../replies/format/list.ts';
import { count } from '../../replies/format/number.ts';
import { item } from '../../replies/reply.ts';
import { capital } from '../../replies/format/list.ts';
import { heldFor, machineName, todo } from '../../replies/wording/names.ts';
import { since } from '../../replies/wording/view.ts';
import { inContext } from '../context.ts';
import type { Scene } from '../scene.ts';
import { deedsOf } from '../step.ts';
import { always, answered, askFor, carryDeeds, machinesMeant, recordsOf, type Carrier } from './order.ts';

/** Why nobody should start it, as far as the records know. */
function inTheWay({ name, opened, hold, down }: MachineRecord, scene: Scene): string[] {
  const who = machineName(name, scene);
  const by = (mark: { by: string; at: number }): string =>
    `${scene.personName(mark.by)} since ${since(mark.at, scene)}`;
  return [
    ...(hold ? [`${who} is held for ${heldFor(hold)}, told by ${scene.personName(hold.since.by)} ${since(hold.since.at, scene)}. Nobody starts it.`] : []),
    ...(opened ? [`${who} is open, hands are in it: ${by(opened)}. Don’t start it; ask ${opened.by === scene.person.id ? 'nobody but yourself: is it closed again?' : `${scene.personName(opened.by)}.`}`] : []),
    ...(down ? [`${who} is out of use: ${by(down)}.`] : []),
  ];
} // prettier-ignore

export const START: Carrier<'start'> = {
  // whoever says in the same breath that it is open warns, and starts nothing
  takes: (scene, { machines }) =>
    !scene.reading.acts.some(({ act }) => act.kind === 'open' || act.kind === 'down') &&
    recordsOf(scene, machinesMeant(scene, machines)).some((m) => inTheWay(m, scene).length > 0),
  carry(scene, { machines, hours }) {
    const meant = recordsOf(scene, machinesMeant(scene, machines));
    const lines = meant.flatMap((machine) => inTheWay(machine, scene));
    const [machine] = meant;
    const ask = { kind: 'ask', topic: 'ready', ...(machine ? { machine: machine.name } : {}), ...(hours === undefined ? {} : { hours }) } as const;
    const text = 'Nothing noted. I can’t stop the machine.';
    return { ...answered(ask, { sections: [{ items: [item(text)] }], buttons: [] }), caution: lines };
  },
}; // prettier-ignore

/** Half a year: long enough to be quiet, short enough to come back. */
const QUIET_DAYS = 180;

export const QUIET: Carrier<'quiet'> = {
  takes: always,
  async carry(scene, { machines, tasks }, first) {
    if (tasks.length === 0) {
      const name = machines[0] === undefined ? 'it' : machineName(machines[0], scene);
      return { steps: [], aside: `Which task on ${list(machines.map((name) => machineName(name, scene)))}? To have nothing asked of it at all: “${name} is out of use”.` };
    }
    const all = [...scene.record.machines.values()].filter((m) => !m.retired);
    const where = machines.length > 0 ? recordsOf(scene, machines) : all;
    const wanted = tasks.map((task) => listed(task));
    const deeds = wanted.flatMap((task) =>
      [...where, ...(planned(task, scene.record.room) ? [scene.record.room] : [])]
        .filter((machine) => planned(task, machine))
        .map(({ name }): Deed => ({ kind: 'defer', task, days: QUIET_DAYS, ...(name === ROOM ? {} : { machine: name }) })),
    );
    if (deeds.length === 0) return { steps: [], aside: `Nothing of that is asked for here: ${list(wanted.map(todo))}.` };
    const carried = await carryDeeds(scene, deeds, first);
    const quiet = carried.steps.filter(({ outcome }) => outcome === 'written').length;
    const firmware = wanted.includes('check-notices') ? ' Safety notices are not put off: whoever hears of one says so.' : '';
    return quiet === 0 ? carried : { ...carried, aside: `That is ${QUIET_DAYS} days on ${count(quiet, 'machine')}.${firmware}` };
  },
}; // prettier-ignore

/** The hold that the words set is set all the same; a way out of it is among the buttons. */
export const MAYBE_JOKE: Carrier<'maybeJoke'> = { takes: () => false, carry: () => ({ steps: [] }) };

export const WHICH_ALL: Carrier<'whichAll'> = {
  takes: ({ reading }, { named }) => named.length > 0 && reading.acts.length > 0,
  carry(scene, order, first) {
    const covers = new Set(scene.reading.orders.find((one) => one.order.kind === 'whichAll')?.covers);
    const acts = scene.reading.acts.filter((_, i) => covers.has(i)).map((r) => inContext(r, undefined).act);
    const pending = deedsOf(acts);
    const tasks = [...new Set(pending.flatMap((deed) => (deed.kind === 'done' ? [todo(deed.task)] : [])))];
    const [any] = pending;
    if (!any) return { steps: [] };
    const all = new Set(pending.flatMap((deed) => ('machine' in deed ? [deed.machine] : []))).size;
    const asked = askFor(scene, order, any, first, {
      field: 'other',
      text: `${capital(list(tasks))}: ${list(order.named.map((name) => machineName(name, scene)))}, or all ${all}? Not noted yet.`,
      options: [
        { value: 'these', label: order.named.length === 1 ? 'Only this one' : `These ${order.named.length === 2 ? 'two' : order.named.length}` },
        { value: 'all', label: `All ${all}` },
      ],
    });
    const { asking } = asked;
    return asking ? { ...asked, asking: { ...asking, question: { ...asking.question, pending } } } : asked;
  },
}; // prettier-ignore

/** A machine goes, or is called something else; all its tasks count as done; how often a task falls due. */
import { partReplacedBy } from '../../maintenance/codes.ts';
import { dayOfDate } from '../../maintenance/calendar.ts';
import type { Deed } from '../../maintenance/decide/deed.ts';
import type { LocalDate } from '../../maintenance/entry/entry.ts';
import { foldName } from '../../maintenance/machine.ts';
import type { MachineRecord } from '../../maintenance/record/record.ts';
import { list } from '../../replies/format/list.ts';
import { hours } from '../../replies/format/number.ts';
import { machineName, partName, titled } from '../../replies/wording/names.ts';
import { dateWord } from '../../replies/wording/view.ts';
import { CONFIRM, LEAVE } from '../answering.ts';
import type { Scene } from '../scene.ts';
import { baselineQuestion } from '../sweep.ts';
import {
  always,
  askFor,
  askMachine,
  carryDeeds,
  machinesMeant,
  recordsOf,
  type Carried,
  type Carrier,
} from './order.ts';

/** From so many machines on it is the room that is spoken of. */
const MANY = 3;

export const BASELINE: Carrier<'baseline'> = {
  takes: (scene, { machines }) => machinesMeant(scene, machines).length > 0 || scene.message.direct,
  carry(scene, order, first) {
    const machines = machinesMeant(scene, order.machines);
    const on = order.on === undefined ? {} : { on: order.on };
    if (machines.length === 0)
      return askMachine(scene, order, { kind: 'state', ...on }, first, 'Which machine counts as all fine from now on?');
    const deeds = machines.map((machine): Deed => ({ kind: 'state', machine, ...on }));
    if (machines.length < MANY || scene.person.role !== 'keeper') return carryDeeds(scene, deeds, first);
    const question = baselineQuestion(scene, recordsOf(scene, machines), on);
    return {
      steps: question.pending.map((act) => ({ act, outcome: 'asked' as const, entries: [], text: question.text })),
      asking: { about: first, question },
    };
  },
}; // prettier-ignore

export const INTERVAL: Carrier<'interval'> = {
  takes: (scene, { machines }) => machinesMeant(scene, machines).length > 0 || scene.message.direct,
  carry(scene, order, first) {
    const { tasks, source, hours: each, days } = order;
    const interval = { ...(each === undefined ? {} : { hours: each }), ...(days === undefined ? {} : { days }) };
    const deeds = tasks.map((task): Deed & { kind: 'setInterval' } => ({ kind: 'setInterval', task, interval, source }));
    const machines = machinesMeant(scene, order.machines);
    const [any] = deeds;
    if (machines.length === 0 && any)
      return askMachine(scene, order, any, first, 'On which machine?');
    return carryDeeds(scene, machines.flatMap((machine) => deeds.map((deed) => ({ ...deed, machine }))), first);
  },
}; // prettier-ignore

export const RENAME: Carrier<'rename'> = {
  takes: always,
  async carry(scene, order, first) {
    const { machine, name } = order;
    const deed = { kind: 'change', set: {}, ...(machine === undefined ? {} : { machine }) } as const;
    if (machine === undefined) return askMachine(scene, order, deed, first, 'Which machine gets another name?');
    if (name === undefined)
      return askFor(scene, order, deed, first, { field: 'name', text: `What is ${machineName(machine, scene)} called from now on?`, options: [] });
    const [record] = recordsOf(scene, [machine]);
    const before = machineName(machine, scene);
    const was = record?.calledAs === undefined ? [] : [foldName(record.calledAs)];
    const aliases = [...new Set([...(record?.aliases ?? []), ...was])].filter((alias) => alias !== machine);
    const set = { calledAs: titled(name.trim()), ...(was.length > 0 ? { aliases } : {}) };
    const carried = await carryDeeds(scene, [{ ...deed, machine, set }], first);
    return wrote(carried) ? { ...carried, aside: `Its record goes on, and “${before}” is still understood.` } : carried;
  },
}; // prettier-ignore

const wrote = ({ steps }: Carried): boolean => steps.some(({ outcome }) => outcome === 'written');

export const RETIRE: Carrier<'retire'> = {
  takes: (_, { machines }) => machines.length > 0,
  carry(scene, order, first) {
    const { machines, on, confirmed } = order;
    const deeds = machines.map((machine): Deed => ({ kind: 'retire', machine, ...(on === undefined ? {} : { on }) }));
    const [any] = deeds;
    // who may not say so is told at once, not after a question
    const gone = recordsOf(scene, machines).some((m) => m.retired);
    if (confirmed || scene.person.role !== 'keeper' || gone || !any) return carryDeeds(scene, deeds, first, true);
    return askFor(scene, order, any, first, {
      field: 'other',
      text: recordsOf(scene, machines).map((machine) => leaving(machine, scene, on)).join(' '),
      options: [
        { value: CONFIRM, label: on === undefined || dayOfDate(on) <= scene.today ? 'Retire' : `Retire ${onDay(on, scene)}` },
        { value: LEAVE, label: 'Not yet' },
      ],
    });
  },
}; // prettier-ignore

/** "on Friday", "tomorrow", "on 20 March". */
function onDay(on: LocalDate, scene: Scene): string {
  const word = dateWord(on, scene);
  return /^[A-Z\d]/u.test(word) ? `on ${word}` : word;
}

/** What to think of before it goes. */
function leaving(machine: MachineRecord, scene: Scene, on: string | undefined): string {
  const name = machineName(machine.name, scene);
  const when = on === undefined ? '' : ` ${onDay(on, scene)}`;
  const parts = worthKeeping(machine);
  const keep = parts.length === 0 ? '' : ` Parts to keep first? ${list(parts)}.`;
  return `${name} leaves${when}: its history stays, and nothing is asked of it any more.${keep} Its record as a file: “fettle export”. Wipe network keys and stored logins. Retire it?`;
}

const MOST_KEPT = 4;
/** Parts of known age, the least used first. */
const worthKeeping = (machine: MachineRecord): string[] =>
  Object.values(machine.parts).length === 0
    ? []
    : (Object.keys(machine.parts) as (keyof typeof machine.parts)[])
        .flatMap((part) => {
          const fitted = machine.parts[part];
          if (!fitted?.ageKnown || fitted.hoursUnknown || partReplacedBy(`replace-${part}`) === undefined)
            return [];
          return [{ part, used: machine.totals.hours - fitted.totals.hours }];
        })
        .toSorted((a, b) => a.used - b.used)
        .slice(0, MOST_KEPT)
        .map(({ part, used }) => `${partName(part)} ${hours(used)}`);

/** "We got another one like hazel, call it willow": its build is copied, and only what varies is asked. */
import type { Deed } from '../../maintenance/decide/deed.ts';
import { canonicalName } from '../../maintenance/decide/scene.ts';
import { foldName, type Build } from '../../maintenance/machine.ts';
import { machineDue } from '../../maintenance/due/rows.ts';
import type { DueRow } from '../../maintenance/due/row.ts';
import { describeNozzle, readNozzle } from '../../maintenance/record/nozzle.ts';
import { capital, list } from '../../replies/format/list.ts';
import { machineName, todo } from '../../replies/wording/names.ts';
import { dueContext, type Scene } from '../scene.ts';
import { always, askFor, askMachine, carryDeeds, type Carried, type Carrier, type OrderOf } from './order.ts';

type Add = OrderOf<'add'>;

export const ADD: Carrier<'add'> = {
  takes: always,
  carry: (scene, order, first) => missing(scene, order, first) ?? enrolled(scene, order, first),
};

/** One question at a time, in the order in which the answers are at hand. */
function missing(scene: Scene, order: Add, first: number): Carried | undefined {
  const { like, name, condition, hours, nozzle } = order;
  const deed = deedOf(scene, order);
  const ask = (field: 'name' | 'other' | 'hours' | 'fitted', text: string, options: { value: string; label: string }[] = []): Carried =>
    askFor(scene, order, deed, first, { field, text, options });
  if (name === undefined) return ask('name', 'What is it called?');
  const taken = holderOf(name, scene);
  if (taken !== undefined) return ask('name', `${taken} What is the new one called?`);
  if (like === undefined)
    return askMachine(scene, order, deed, first, `Which machine is ${capital(name)} built like? A build of its own goes into the workshop file.`);
  if (condition === undefined && hours === undefined)
    return ask('other', `${capital(name)}, built like ${machineName(like, scene)}: new or used?`, [
      { value: 'new', label: 'New' },
      { value: 'used', label: 'Used' },
    ]);
  if (condition !== 'new' && hours === undefined)
    return ask('hours', `How many hours are on ${capital(name)}’s counter?`, [{ value: 'unknown', label: 'Nobody knows' }]);
  if (nozzle === undefined) return askNozzle(scene, order, ask);
  return undefined;
} // prettier-ignore

/** Who has that name, now or before: an old name is still understood. */
function holderOf(name: string, scene: Scene): string | undefined {
  const machine = scene.record.machines.get(canonicalName(name, scene.record));
  if (!machine?.enrolled || machine.retired) return undefined;
  const called = machineName(machine.name, scene);
  return foldName(called) === foldName(name)
    ? `There is a machine called ${called} already.`
    : `${capital(name)} is another name of ${called}.`;
}

function askNozzle(
  scene: Scene,
  { like = '', name = '' }: Add,
  ask: (field: 'fitted', text: string, options: { value: string; label: string }[]) => Carried,
): Carried {
  const own = describeNozzle(scene.record.machines.get(like)?.nozzle ?? {});
  return ask('fitted', `Which nozzle is in ${capital(name)}?`, [
    ...(own === undefined
      ? []
      : [{ value: own, label: `${capital(own)}, like ${machineName(like, scene)}` }]),
    { value: 'unknown', label: 'Not known' },
  ]);
}

function deedOf(
  { record }: Scene,
  { like, name = '', condition, hours, nozzle }: Add,
): Deed & { kind: 'enrol' } {
  const model = like === undefined ? undefined : record.machines.get(like);
  const { nozzle: old, ...frame }: Build = model?.build ?? {};
  const mount = old?.mount === undefined ? {} : { mount: old.mount };
  const stated = nozzle === undefined ? {} : readNozzle(nozzle);
  const fitted = Object.keys(stated).length === 0 ? {} : { nozzle: { ...mount, ...stated } };
  const known = hours !== undefined && hours >= 0 ? { startHours: hours } : {};
  const fresh = condition === 'new' ? { new: true as const } : known;
  return { kind: 'enrol', machine: foldName(name), build: { ...frame, ...fitted }, ...fresh };
}

async function enrolled(scene: Scene, order: Add, first: number): Promise<Carried> {
  const deed = deedOf(scene, order);
  const carried = await carryDeeds(scene, [deed], first);
  const record = scene.record.machines.get(deed.machine);
  if (!record || carried.steps.some(({ outcome }) => outcome !== 'written')) return carried;
  const rows = machineDue(record, dueContext(scene), scene.record.room);
  return { ...carried, aside: `${start(rows)} ${ages(order, record.name, scene)}` };
}

/** What a machine that has just come needs before it is trusted; the rest waits for its first dates. */
const FIRST = ['check-mains-lead', 'test-protection', 'run-in'] as const;

function start(rows: readonly DueRow[]): string {
  const has = FIRST.filter((task) => rows.some((row) => row.task === task));
  const words = has.filter((task) => task !== 'run-in').map(todo);
  const runIn = has.includes('run-in') ? ' Then the run-in at 20 h and again at 50 h.' : '';
  return `First: ${list(words)}.${runIn}`;
}

const ages = ({ condition, like = '' }: Add, name: string, scene: Scene): string =>
  condition === 'new'
    ? `Its build is ${machineName(like, scene)}’s; all its tasks count from today.`
    : `Its build is ${machineName(like, scene)}’s; the ages of its parts are unknown. When it has been gone over: “all fine on ${machineName(name, scene)} as of today”.`;

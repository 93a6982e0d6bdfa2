/** "Alder has a direct feed now": the sheet is changed, and what that changes in its list is said. */
import type { Task } from '../../maintenance/codes.ts';
import { rulesFor } from '../../maintenance/care/index.ts';
import type { Build, Guide } from '../../maintenance/machine.ts';
import type { MachineRecord } from '../../maintenance/record/record.ts';
import { list, shortened } from '../../replies/format/list.ts';
import { machineName, todo } from '../../replies/wording/names.ts';
import type { Scene } from '../scene.ts';
import {
  askFor,
  askMachine,
  carryDeeds,
  machinesMeant,
  recordsOf,
  type Carried,
  type Carrier,
  type OrderOf,
} from './order.ts';

export const CONVERT: Carrier<'convert'> = {
  // what the sheet says already is no news
  takes: (scene, { machines, build, guide }) => {
    const meant = recordsOf(scene, machinesMeant(scene, machines));
    return meant.some((machine) => isNews(machine.build, guide === undefined ? build : onAxes('x y z', guide)));
  },
  async carry(scene, order, first) {
    const all = recordsOf(scene, machinesMeant(scene, order.machines));
    if (order.guide !== undefined) return askAxes(scene, order, all, first);
    const meant = all.filter((m) => isNews(m.build, order.build));
    if (meant.length === 0) return askMachine(scene, order, { kind: 'change', set: {} }, first, 'Which machine is that?');
    const deeds = meant.map((machine) => ({ kind: 'change', machine: machine.name, set: { build: changed(machine.build, order.build) } }) as const);
    const carried = await carryDeeds(scene, deeds, first);
    const said = meant.map((before) => difference(before, scene)).filter((text) => text !== '');
    return said.length === 0 ? carried : { ...carried, aside: said.join(' ') };
  },
}; // prettier-ignore

const AXES = [
  { value: 'x', label: 'X' },
  { value: 'y', label: 'Y' },
  { value: 'x y', label: 'X and Y' },
  { value: 'x y z', label: 'X, Y and Z' },
] as const;
/** "x y" with rails: both of them run on rails. */
export const onAxes = (axes: string, guide: Guide): Build =>
  Object.fromEntries(axes.split(' ').map((axis) => [axis, guide]));

/** "Birch has linear rails now": which axes run on them decides what is greased. */
const askAxes = (
  scene: Scene,
  order: OrderOf<'convert'>,
  meant: readonly MachineRecord[],
  first: number,
): Carried =>
  askFor(scene, order, { kind: 'change', set: {} }, first, {
    field: 'other',
    text: `Which axes of ${list(meant.map(({ name }) => machineName(name, scene)))} run on ${order.guide ?? 'them'} now?`,
    options: [...AXES],
  });

const isNews = (was: Build, said: Build): boolean =>
  Object.entries(said).some(
    ([feature, value]) => !Object.entries(was).some(([f, v]) => f === feature && v === value),
  );

/** Measures of a tube or a limit of a hot end that is not there any more are not stated any more. */
export function changed(was: Build, said: Build): Build {
  const { tubeLengthMm: _length, tubeNeededMm: _needed, ...untubed } = was;
  const { hotEndMaxC: _limit, ...unlimited } = said.feed === undefined ? was : untubed;
  return { ...(said.hotEnd === undefined ? (said.feed === undefined ? was : untubed) : unlimited), ...said };
}

const tasksOf = (machine: MachineRecord | undefined): Set<Task> =>
  new Set(machine ? rulesFor(machine.build).map(({ rule }) => rule.task).filter((t) => !t.startsWith('replace-')) : []); // prettier-ignore

const MOST = 4;
const named = (tasks: readonly Task[]): string => {
  const { shown, more } = shortened(tasks.map(todo), MOST);
  return list([...shown, ...(more > 0 ? [`${more} more`] : [])]);
};

function difference(before: MachineRecord, scene: Scene): string {
  const { record } = scene;
  const [was, is] = [tasksOf(before), tasksOf(record.machines.get(before.name))];
  const come = [...is].filter((task) => !was.has(task));
  const gone = [...was].filter((task) => !is.has(task));
  return [
    ...(come.length > 0 ? [`${machineName(before.name, scene)} has now also: ${named(come)}.`] : []),
    ...(gone.length > 0 ? [`No longer asked: ${named(gone)}.`] : []),
  ].join(' ');
}

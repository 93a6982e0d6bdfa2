/** All tasks at once, put off or stated as done: asked first, and the safety checks stay as they are. */
import { rulesFor } from '../maintenance/care/index.ts';
import { partReplacedBy, ROOM, type Task } from '../maintenance/codes.ts';
import type { Deed } from '../maintenance/decide/deed.ts';
import { isSafety, planned } from '../maintenance/due/plan.ts';
import type { MachineRecord } from '../maintenance/record/record.ts';
import { capital, list, shortened } from '../replies/format/list.ts';
import { machineName, todo } from '../replies/wording/names.ts';
import { CONFIRM, LEAVE } from './answering.ts';
import type { OpenQuestion } from './conversation.ts';
import { open } from './questions.ts';
import type { Scene } from './scene.ts';
import type { WriteOptions } from './write.ts';

const MOST_NAMED = 3;

const tasksOf = ({ build }: MachineRecord): readonly Task[] => rulesFor(build).map(({ rule }) => rule.task);

/** "Check the mains lead, test the shut-down and 2 more". */
function safetyWords(machine: MachineRecord): string {
  const safe = tasksOf(machine).filter((task) => isSafety(task, machine.build) && planned(task, machine));
  const { shown, more } = shortened(safe.map(todo), MOST_NAMED);
  return list([...shown, ...(more > 0 ? [`${more} more`] : [])]);
}

const yes = (label: string): OpenQuestion['options'] => [
  { value: CONFIRM, label },
  { value: LEAVE, label: 'Leave it' },
];

/** A put-off that names no task: nobody means the safety checks with it, and one task may have been meant. */
export function sweepQuestion(scene: Scene, deed: Deed, { sweeps }: WriteOptions): OpenQuestion | undefined {
  if (sweeps || deed.kind !== 'defer' || deed.task !== undefined || deed.machine === undefined)
    return undefined;
  if (deed.until === undefined && deed.days === undefined && deed.hours === undefined) return undefined;
  const machine = scene.record.machines.get(deed.machine);
  if (!machine || machine.retired || machine.name === ROOM) return undefined;
  const safe = safetyWords(machine);
  const stay = safe === '' ? '' : ` ${capital(safe)} would stay: safety checks.`;
  return open(scene, {
    field: 'sweep',
    text: `Put off everything on ${machineName(machine.name, scene)}, or one task? Say which task; nothing is put off yet.${stay}`,
    options: yes('Everything but safety'),
    pending: [deed],
  });
}

/** The whole room counts as done from a word: asked once, each machine's safety checks left out. */
export function baselineQuestion(
  scene: Scene,
  machines: readonly MachineRecord[],
  on: { on?: string },
): OpenQuestion {
  const pending = machines
    .filter((machine) => !machine.retired)
    .map((machine): Deed => ({ kind: 'state', machine: machine.name, tasks: ordinary(machine), ...on }));
  return open(scene, {
    field: 'sweep',
    text: `All tasks of ${list(machines.map(({ name }) => machineName(name, scene)))} count as done? Safety checks are left out: they are said one by one, by who did them. Nothing is noted yet.`,
    options: yes('Yes, all but safety'),
    pending,
  });
}

const ordinary = (machine: MachineRecord): Task[] =>
  tasksOf(machine).filter((task) => !isSafety(task, machine.build) && partReplacedBy(task) === undefined);

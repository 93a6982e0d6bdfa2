/**
 * The cautions of one task on one machine: the task's hazards, worded for how the machine is built.
 * A feature that is not stated is taken as the worse case, and the line says that it is not stated.
 */
import { partReplacedBy } from '../codes.ts';
import type { Task } from '../codes.ts';
import type { Build } from '../machine.ts';
import { CAUTIONS_BY_PART } from './byPart.ts';
import { CAUTIONS_BY_TASK } from './byTask.ts';
import type { PlainTask, TaskCaution, TaskCautionRow } from './byTask.ts';
import { LINED_LIMIT_C, hotLimit } from './hotLimit.ts';
import { CAUTION_LINES } from './keys.ts';
import type { Caution, CautionKey } from './keys.ts';

const isPlain = (task: Task): task is PlainTask => task in CAUTIONS_BY_TASK;

/** The row of any task; that of a `replace-…` task is its part's. */
export function cautionRow(task: Task): TaskCautionRow {
  if (isPlain(task)) return CAUTIONS_BY_TASK[task];
  const part = partReplacedBy(task); // always a part here: a task is plain or replaces one
  return part === undefined ? 'none needed' : CAUTIONS_BY_PART[part];
}

/** How the work stands to the machine: what of it changes a hazard's line. */
type Work = Pick<TaskCaution, 'powered' | 'loosens'>;

function dropLine(build: Build, { loosens }: Work): string | undefined {
  if (loosens === true) return 'Prop bed or gantry first: this work loosens what holds it up.';
  if (build.zHolds === true) return undefined;
  if (build.zHolds === false) return 'Prop bed or gantry first: this Z axis drops when the power goes off.';
  return 'Prop bed or gantry first: whether this Z axis stays up without power is not stated.';
}

const ALL_METAL_FUMES =
  'Burnt plastic gives off bad fumes: air the room, do not lean in, do not heat it again.';
const POWERED_MOVE =
  'Motors off before fingers go near moving parts, hands clear while anything moves; queued jobs cancelled.';

function fumeLine(build: Build): string {
  const { limitC, stated } = hotLimit(build);
  if (build.hotEnd === 'all-metal') return ALL_METAL_FUMES;
  const which = stated ? 'PTFE-lined hot end' : 'Hot end not stated, so taken as PTFE-lined';
  return `${which}: not above ${limitC ?? LINED_LIMIT_C} °C; browned PTFE fumes, air the room and do not lean in.`;
}

function mainsLine(build: Build): string {
  if (build.bedHeater === 'mains')
    return 'This bed is heated from the mains: bed wiring, mains side and supply for a qualified person only.';
  if (build.bedHeater === undefined)
    return 'Whether the bed is heated from the mains is not stated: treat it so; mains side for a qualified person only.';
  return CAUTION_LINES.MAINS;
}

/** The line of one hazard for one build and kind of work; undefined where the build rules the hazard out. */
export function cautionLine(key: CautionKey, build: Build, work: Work = {}): string | undefined {
  if (key === 'DROP') return dropLine(build, work);
  if (key === 'FUME') return fumeLine(build);
  if (key === 'MAINS') return mainsLine(build);
  return key === 'MOVE' && work.powered === true ? POWERED_MOVE : CAUTION_LINES[key];
}

/** Tasks whose hands come near a mains-heated bed's leads although the task itself is no mains work. */
const NEAR_BED_LEADS: ReadonlySet<Task> = new Set<Task>([
  'check-heater',
  'check-fasteners',
  'run-in',
  'replace-bed-spring',
]);

/**
 * The cautions of a task on a build, the worst first; empty where none is needed.
 * @example cautionsFor('grease-screw', { zHolds: true }) gives MOVE alone: the axis stays up by itself.
 */
export function cautionsFor(task: Task, build: Build): readonly Caution[] {
  const row = cautionRow(task);
  if (row === 'none needed') return [];
  const extra: readonly CautionKey[] =
    build.bedHeater === 'mains' && NEAR_BED_LEADS.has(task) ? ['MAINS'] : [];
  return [...extra, ...row.keys].flatMap((key) => {
    const line = cautionLine(key, build, row);
    return line === undefined ? [] : [{ key, line }];
  });
}

/** The one line of a task, and what must end the work; undefined where no caution is needed. */
export function shortCaution(task: Task): { line: string; stopWhen?: string } | undefined {
  const row = cautionRow(task);
  if (row === 'none needed') return undefined;
  return { line: row.line, ...(row.stopWhen === undefined ? {} : { stopWhen: row.stopWhen }) };
}

/** Says when a task, a part or a topic must not be answered with steps on a given build. */
import { isPart, replaceTask } from '../codes.ts';
import type { Part, Task } from '../codes.ts';
import type { Build } from '../machine.ts';
import { NEVER, NEVER_TOPICS } from './never.ts';
import type { Never, NeverTopic } from './never.ts';

export interface NeverAnswer extends Never {
  topic: NeverTopic;
  /** What the build does not state and is therefore taken as the worse case. */
  notStated?: string;
  /** What a member may do before the qualified person comes, and after: nothing of it is wiring. */
  before?: readonly string[];
  after?: readonly string[];
}

const topicSet: ReadonlySet<string> = new Set(NEVER_TOPICS);
const isTopic = (code: string): code is NeverTopic => topicSet.has(code);

const never = (
  topic: NeverTopic,
  extra: Omit<Partial<NeverAnswer>, keyof Never | 'topic'> = {},
): NeverAnswer => ({
  topic,
  ...NEVER[topic],
  ...extra,
});

const powerSupply = (): NeverAnswer =>
  never('open-power-supply', {
    before: ['Pull the plug and leave the covers shut.', 'Label the machine: out of use, and why.'],
    after: ['Check the mains lead from outside and test the heater protection before the first print.'],
  });

const controlBoard = (): NeverAnswer =>
  never('board-wiring', {
    before: [
      'Save the settings to a file while the board still answers.',
      'Pull the plug, wait 2 minutes, then photograph every plug and wire as it sits.',
      'Note the exact board and firmware version for the person who fits it.',
    ],
    after: [
      'Load the settings back and test the heater protection before anything is printed.',
      'Then check the feeder’s steps and the first layer.',
    ],
  });

function mainsBed(build: Build): NeverAnswer | undefined {
  if (build.bedHeater === 'mains') return never('mains-bed-wiring');
  if (build.bedHeater !== undefined) return undefined;
  return never('mains-bed-wiring', { notStated: 'whether the bed is heated from the mains' });
}

/** Which lead is meant is not part of the task, so a mains-heated bed closes it as a whole. */
const leads = (build: Build): NeverAnswer | undefined =>
  build.bedHeater === 'mains' ? never('mains-bed-wiring') : undefined;

/** Closed on every build. */
const ALWAYS_CLOSED = {
  'replace-power-supply': powerSupply,
  'replace-control-board': controlBoard,
} as const satisfies Partial<Record<Task, () => NeverAnswer>>;
export type AlwaysClosed = keyof typeof ALWAYS_CLOSED;
export const isAlwaysClosed = (code: string): code is AlwaysClosed => Object.hasOwn(ALWAYS_CLOSED, code);

/** Closed on some builds. */
const CLOSED_FOR: Readonly<Partial<Record<Task, (build: Build) => NeverAnswer | undefined>>> = {
  'replace-bed-heater': mainsBed,
  'replace-wiring': leads,
};

/**
 * The answer that stands in place of steps; undefined where steps can be given.
 * A part is judged as its replacement; a topic is never given, on any build.
 */
export function neverSteps(asked: AlwaysClosed, build: Build): NeverAnswer;
export function neverSteps(asked: Task | Part | NeverTopic, build: Build): NeverAnswer | undefined;
export function neverSteps(asked: Task | Part | NeverTopic, build: Build): NeverAnswer | undefined {
  if (isTopic(asked)) return never(asked);
  const task: Task = isPart(asked) ? replaceTask(asked) : asked;
  return isAlwaysClosed(task) ? ALWAYS_CLOSED[task]() : CLOSED_FOR[task]?.(build);
}

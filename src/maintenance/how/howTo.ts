/** How a task is done on one machine: its steps for this build, each caution at the step where it is met. */
import { cautionRow, cautionsFor } from '../cautions/forBuild.ts';
import type { Caution, CautionKey } from '../cautions/keys.ts';
import { isAlwaysClosed, neverSteps } from '../cautions/neverSteps.ts';
import type { NeverAnswer } from '../cautions/neverSteps.ts';
import { partReplacedBy } from '../codes.ts';
import type { Part, Task } from '../codes.ts';
import type { Build } from '../machine.ts';
import { RECIPES } from './index.ts';
import type { OpenTask } from './index.ts';
import type { Recipe, StepLine } from './recipe.ts';
import type { Supply, Tool } from './tools.ts';

/** Said once with every answer that tells somebody how. */
export const DEFER = 'The machine’s manual, local rules and licensed practice come first.';

export interface Step {
  text: string;
  /** Printed at this step; each hazard once in the whole answer. */
  cautions: readonly Caution[];
}

export interface HowTo {
  kind: 'steps';
  task: Task;
  tools: readonly Tool[];
  supplies: readonly Supply[];
  /** What a replacement fits. */
  spare?: Part;
  steps: readonly Step[];
  good: string;
  stopWhen?: string;
  /** What the build does not state and is taken for granted. */
  assumed: readonly string[];
  defer: string;
}

export interface NoSteps {
  kind: 'no-steps';
  task: Task;
  /** `never`: not by steps from a chat, on any wording. `unfit`: this machine is not built that way. */
  why: 'never' | 'unfit';
  because: string;
  ask?: string;
  /** The task that this machine has in its place. */
  instead?: Task;
  notStated?: string;
  before?: readonly string[];
  after?: readonly string[];
  defer: string;
}

const closed = (task: Task, answer: NeverAnswer): NoSteps => ({
  kind: 'no-steps',
  task,
  why: 'never',
  because: answer.because,
  ask: answer.ask,
  ...(answer.notStated === undefined ? {} : { notStated: answer.notStated }),
  ...(answer.before === undefined ? {} : { before: answer.before }),
  ...(answer.after === undefined ? {} : { after: answer.after }),
  defer: DEFER,
});

function recipeFor(task: OpenTask, build: Build): Recipe {
  const recipe = RECIPES[task];
  return typeof recipe === 'function' ? recipe(build) : recipe;
}

/** A caution that no step of this build claims stands at the first step: it is never lost. */
function placeCautions(
  lines: readonly StepLine[],
  cautions: readonly Caution[],
  build: Build,
): readonly Step[] {
  const placed = new Set<CautionKey>(lines.flatMap((line) => line.caution ?? []));
  const unplaced = cautions.filter((caution) => !placed.has(caution.key));
  const said = new Set<CautionKey>();
  return lines.map((line, index) => {
    const own = cautions.filter((caution) => caution.key === line.caution && !said.has(caution.key));
    for (const caution of own) said.add(caution.key);
    const text = typeof line.text === 'string' ? line.text : line.text(build);
    return { text, cautions: index === 0 ? [...unplaced, ...own] : own };
  });
}

function written(task: Task, recipe: Recipe, build: Build): HowTo {
  const row = cautionRow(task);
  const stopWhen = row === 'none needed' ? undefined : row.stopWhen;
  const spare = partReplacedBy(task);
  const lines = recipe.steps.filter((line) => line.when === undefined || line.when(build));
  return {
    kind: 'steps',
    task,
    tools: recipe.tools,
    supplies: recipe.supplies ?? [],
    ...(spare === undefined ? {} : { spare }),
    steps: placeCautions(lines, cautionsFor(task, build), build),
    good: recipe.good,
    ...(stopWhen === undefined ? {} : { stopWhen }),
    assumed: (recipe.assumes ?? []).filter((assumed) => assumed.when(build)).map((assumed) => assumed.text),
    defer: DEFER,
  };
}

/** The recipe of a task on a build, or why there is none. */
export function recipeOn(task: Task, build: Build): Recipe | NoSteps {
  if (isAlwaysClosed(task)) return closed(task, neverSteps(task, build));
  const never = neverSteps(task, build);
  if (never !== undefined) return closed(task, never);
  const recipe = recipeFor(task, build);
  const unfit = recipe.unfit?.(build);
  return unfit === undefined ? recipe : { kind: 'no-steps', task, why: 'unfit', ...unfit, defer: DEFER };
}

/**
 * How to do a task on a build, or why there are no steps for it.
 * @example howTo('grease-screw', { screwNut: 'plastic' }) has no steps and names `clean-screw` instead
 */
export function howTo(task: Task, build: Build): HowTo | NoSteps {
  const recipe = recipeOn(task, build);
  return 'kind' in recipe ? recipe : written(task, recipe, build);
}

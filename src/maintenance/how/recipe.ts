/** The shape in which every task's steps are kept: data, with a condition where a build makes the difference. */
import type { CautionKey } from '../cautions/keys.ts';
import type { Task } from '../codes.ts';
import type { Build } from '../machine.ts';
import type { Supply, Tool } from './tools.ts';

export type When = (build: Build) => boolean;

export interface StepLine {
  /** One imperative line, short enough for a phone; a function where it names a figure of the build. */
  text: string | ((build: Build) => string);
  /** The hazard that is met at this step, so that its line stands here and not at the end. */
  caution?: CautionKey;
  /** Only on builds of which this holds. */
  when?: When;
}

/** Why a task is not this machine's, and what it has in its place. */
export interface Unfit {
  because: string;
  instead?: Task;
}

export interface Recipe {
  tools: readonly Tool[];
  supplies?: readonly Supply[];
  /** Three to seven on any build. */
  steps: readonly StepLine[];
  /** What good looks like when it is done. */
  good: string;
  /** What is taken for granted where the build does not state it. */
  assumes?: readonly { text: string; when: When }[];
  unfit?: (build: Build) => Unfit | undefined;
}

/** A recipe, or a choice of one where whole ways of working differ. */
export type RecipeFor = Recipe | ((build: Build) => Recipe);
/** The recipes of one subsystem; `satisfies` keeps its exact tasks, so that the list can miss none. */
export type Recipes = Readonly<Partial<Record<Task, RecipeFor>>>;

export const step = (text: StepLine['text'], caution?: CautionKey): StepLine => ({
  text,
  ...(caution === undefined ? {} : { caution }),
});

/** A step that holds for some builds only. */
export const only = (when: When, text: StepLine['text'], caution?: CautionKey): StepLine => ({
  ...step(text, caution),
  when,
});

/** Not this machine's task where the condition holds. */
export const unfitWhen =
  (when: When, because: string, instead?: Task) =>
  (build: Build): Unfit | undefined =>
    when(build) ? { because, ...(instead === undefined ? {} : { instead }) } : undefined;

/** The first of several reasons that holds. */
export const firstUnfit =
  (...reasons: readonly ((build: Build) => Unfit | undefined)[]) =>
  (build: Build): Unfit | undefined => {
    for (const reason of reasons) {
      const unfit = reason(build);
      if (unfit !== undefined) return unfit;
    }
    return undefined;
  };

/** The words in which the tables of this folder are written. */
import type { Material, Part, Symptom, Task } from '../codes.ts';
import type { ConsequenceClass, DoseItem, Event, Once, Raise, Term } from './rule.ts';

export const hours = (interval: number, of?: readonly Material[]): Term => ({
  trigger: 'hours',
  interval,
  ...(of && { of }),
});
export const days = (interval: number): Term => ({ trigger: 'days', interval });
export const runDays = (interval: number): Term => ({ trigger: 'runDays', interval });
export const wornBy = (item: DoseItem): Term => ({ trigger: 'dose', interval: 1, item });
export const grams = (interval: number, gramsOf: readonly Material[]): Term => ({
  trigger: 'dose',
  interval,
  gramsOf,
});

export const seen = (...symptoms: readonly Symptom[]): readonly Raise[] =>
  symptoms.map((symptom) => ({ when: { symptom } }));
export const seenAs = (as: ConsequenceClass, ...symptoms: readonly Symptom[]): readonly Raise[] =>
  symptoms.map((symptom) => ({ when: { symptom }, class: as }));
export const swapped = (...parts: readonly Part[]): readonly Raise[] =>
  parts.map((part) => ({ when: { swapped: part } }));
export const doneBefore = (...tasks: readonly Task[]): readonly Raise[] =>
  tasks.map((task) => ({ when: { done: task } }));
export const foundBad = (...tasks: readonly Task[]): readonly Raise[] =>
  tasks.map((task) => ({ when: { done: task, finding: 'bad' } }));
/** Two jams within 50 h are not chance: something else than the filament. */
export const SECOND_JAM: Event = { symptom: 'no-extrusion', times: 2, withinHours: 50 };
/** A machine that stood for a month is looked over before it runs. */
export const BACK_AFTER_A_MONTH: Raise = { when: { backAfterDays: 30 } };

export const NEW_OR_MOVED: readonly Event[] = [{ started: true }, { symptom: 'moved' }];
/** A look so many hours after a machine was new or moved, which the run-in stands for. */
export const newOrMoved = (after: number): readonly Once[] =>
  NEW_OR_MOVED.map((event) => ({ after: event, hours: after, inRunIn: true }));
export const hoursAfterSwap = (after: number, ...parts: readonly Part[]): readonly Once[] =>
  parts.map((part) => ({ after: { swapped: part }, hours: after }));

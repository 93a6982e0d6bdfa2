/** One question, with the smallest set of answers. */
import type { Asked, Facts } from '../../maintenance/decide/decision.ts';
import { hours } from '../format/number.ts';
import { machineName, partName, todo } from './names.ts';
import { dateWord, since, type View } from './view.ts';

type Field = Asked['field'];
type Sentence = (facts: Facts, view: View) => string;

const what = (facts: Facts): string => {
  if (facts.part !== undefined) return partName(facts.part);
  return facts.task === undefined ? 'that' : `“${todo(facts.task)}”`;
};
const name = ({ machine }: Facts, view: View): string =>
  machine === undefined ? 'it' : machineName(machine, view);

const QUESTIONS: Readonly<Record<Field, Sentence>> = {
  machine: (f) =>
    f.machine === undefined ? 'Which machine was that?' : `I know no “${f.machine}”. Which machine was that?`,
  hours: (f, view) => {
    const given = hours(f.given ?? 0);
    const limit = f.limit === undefined || f.limit >= 24 ? '' : `, at most ${hours(f.limit)}`;
    const border =
      f.border === 'clock'
        ? `there was less time than that since its last run${f.at === undefined ? '' : ` (${since(f.at, view)})`}${limit}`
        : f.border === 'today'
          ? `the day has not had that many hours beside what is noted of it${limit}`
          : `that makes more than 24 h on one day${limit}`;
    return `${name(f, view)}: ${given}? By the clock ${border}. Which figure is right?`;
  },
  until: (f, view) =>
    f.date === undefined
      ? `Put off ${what(f)} on ${name(f, view)} until when?`
      : `Put off ${what(f)} on ${name(f, view)} until when? At the latest ${dateWord(f.date, view)}.`,
  task: (f, view) => `Which task on ${name(f, view)}?`,
  part: (f, view) => `Which part on ${name(f, view)}?`,
  fitted: (f) => `Which ${what(f)}: the shelf keeps more than one sort?`,
  entry: () => 'Which of these do you mean?',
  value: () => 'What should the figure be?',
  other: () => 'What do you mean?',
};

export const question = (asked: Pick<Asked, 'field' | 'facts'>, view: View): string =>
  QUESTIONS[asked.field](asked.facts, view);

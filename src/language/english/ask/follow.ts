/** What a question takes from the clauses before it: "alder extrudes too little, what might it be". */
import type { Symptom } from '../../../maintenance/codes.ts';
import { sensesOf } from '../../item.ts';
import { type Scene, valueOf } from '../../scene.ts';
import { partOf } from '../frames/parts-said.ts';
import { taskPlanned } from '../frames/tasks.ts';
import { symptomsIn } from '../frames/symptom.ts';
import type { Fact, Question } from './question.ts';

type Source = (question: Question, earlier: readonly Scene[]) => Question;

const nothingNamed = ({ facts }: Question): boolean => !facts.has('part') && !facts.has('task') && !facts.has('symptom'); // prettier-ignore
const having = (question: Question, more: Partial<Question>, ...facts: readonly Fact[]): Question => ({
  ...question,
  ...more,
  facts: new Set([...question.facts, ...facts]),
});

/** A wish for the cause, with no trouble of its own. */
const trouble: Source = (question, earlier) => {
  const { facts } = question;
  const ails = facts.has('state') && /\bwrong\b|\bmatter\b/u.test(question.scene.text);
  if (
    !(
      facts.has('cause') ||
      facts.has('idea') ||
      facts.has('why') ||
      facts.has('worse') ||
      facts.has('more-often') ||
      ails
    ) ||
    !nothingNamed(question)
  )
    return question;
  if (facts.has('machine')) return question;
  const symptom = earlier
    .map((scene): Symptom | undefined => symptomsIn(scene)[0]?.symptom)
    .findLast((one) => one !== undefined);
  return symptom === undefined
    ? question
    : having(
        question,
        { symptom },
        'symptom',
        ...(facts.has('worse') || facts.has('more-often') ? [] : ['cause' as const]),
      );
};

/** "oldest belt we have? and is there a spare", "spare thermistors, how many". */
const PART_ASKS: readonly Fact[] = [
  'shelf',
  'old',
  'spare',
  'lifetime',
  'endures',
  'it',
  'left',
  'how-many',
  'have',
  'when',
  'how',
  'spec',
];
const part: Source = (question, earlier) => {
  const { facts } = question;
  if (!nothingNamed(question) || facts.has('machine') || !PART_ASKS.some((fact) => facts.has(fact)))
    return question;
  const source = earlier.findLast((scene) => scene.nouns.some((one) => one.part !== undefined));
  const noun = source?.nouns.find((one) => one.part !== undefined);
  const found = noun === undefined ? undefined : (partOf(question.scene, noun) ?? noun.part);
  return found === undefined ? question : having(question, { part: found }, 'part');
};

/** "juniper 24 h, ready?", "I need 18 hours from alder, will it cope?" */
const job: Source = (question, earlier) => {
  const { facts, scene } = question;
  if (!facts.has('fit') || facts.has('span') || facts.has('next')) return question;
  if (!facts.has('it') && scene.items.length > 2) return question;
  const hours = earlier.map((before) => valueOf(before, 'hours')).findLast((one) => one !== undefined);
  return hours === undefined ? question : having(question, { hours }, 'span', 'it');
};

/** "I take over from Ines now, what do I have to know?" */
const shift: Source = (question, earlier) =>
  question.facts.has('pass-on') &&
  nothingNamed(question) &&
  earlier.some((scene) => sensesOf(scene.items, 'cue').some(({ code }) => code === 'handover'))
    ? having(question, {}, 'handover')
    : question;

/** "bed wipe #6: who / when last?": the task is said before the question. */
const task: Source = (question, earlier) => {
  const { facts, scene } = question;
  const before = earlier.at(-1);
  const next =
    facts.has('when') &&
    facts.has('it') &&
    (facts.has('due') ||
      facts.has('next') ||
      (before?.items.some((item) => item.senses.some((s) => s.tag === 'cue' && s.code === 'next')) ?? false));
  const way = facts.has('how') && scene.items.length === 1;
  const asks = facts.has('who') || (facts.has('when') && facts.has('last')) || next || way;
  if (
    !asks ||
    !nothingNamed(question) ||
    !before ||
    before.clause.sentence !== scene.clause.sentence ||
    scene.items.length > 5
  )
    return question;
  const named = taskPlanned(before)[0]?.task;
  if (named === undefined) return question;
  return next || way
    ? having(question, { task: named }, 'task')
    : having(question, { task: named }, 'task', 'past', 'last');
};

const SOURCES: readonly Source[] = [trouble, part, task, job, shift];

export const follow: Source = (question, earlier) =>
  earlier.length === 0 ? question : SOURCES.reduce((q, source) => source(q, earlier), question);

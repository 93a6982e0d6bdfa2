/** "Does a filter really need swapping every two months?": how long parts of this kind lasted here. */
import { isPart, partReplacedBy, type Part } from '../../maintenance/codes.ts';
import type { PartLife } from '../../maintenance/record/record.ts';
import { count, hours } from '../../replies/format/number.ts';
import { item, type Item, type Reply } from '../../replies/reply.ts';
import { partName } from '../../replies/wording/names.ts';
import { machinesOf, type AskScene, type Topic } from './topic.ts';

const partAsked = ({ act }: AskScene): Part | undefined => {
  if (act.part !== undefined) return isPart(act.part) ? act.part : undefined;
  return act.task === undefined ? undefined : partReplacedBy(act.task);
};

const isOf =
  (part: Part) =>
  (life: Pick<PartLife, 'part'>): boolean =>
    life.part === part || (part === 'belt' && (life.part === 'x-belt' || life.part === 'y-belt'));

const middle = (values: readonly number[]): number => {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
};

/** Ended by wear or breakage, of known age: only these say how long one lasts. */
const failed = (lives: readonly PartLife[]): PartLife[] =>
  lives.filter((life) => life.ageKnown && (life.reason === 'worn' || life.reason === 'broken'));

function lines(part: Part, lives: readonly PartLife[], stillIn: number): Item[] {
  const ended = failed(lives);
  const early = lives.filter((life) => life.reason === 'planned').length;
  const silent = lives.filter((life) => life.reason === undefined).length;
  const rest = [
    ...(early > 0 ? [`${early} taken out before they failed`] : []),
    ...(silent > 0 ? [`${silent} without a reason told`] : []),
    ...(stillIn > 0 ? [`${stillIn} still in`] : []),
  ];
  const known =
    ended.length === 0
      ? item(
          `No ${partName(part)} is on record as worn or broken here, so nobody can say how long one lasts.`,
        )
      : item(
          `${count(ended.length, partName(part), partName(part, 2))} worn or broken: the middle one after ${hours(middle(ended.map((l) => l.hours)))} and ${count(middle(ended.map((l) => l.days)), 'day')}, from ${hours(Math.min(...ended.map((l) => l.hours)))} to ${hours(Math.max(...ended.map((l) => l.hours)))}.`,
        );
  return [
    known,
    ...(rest.length > 0 ? [item(`Beside them ${rest.join(', ')}.`)] : []),
    ...(ended.length > 0 && ended.length < 5 ? [item('That is few: read it as a hint, not as a rule.')] : []),
  ];
}

export const life: Topic = (scene): Reply => {
  const part = partAsked(scene);
  if (part === undefined) return { sections: [{ items: [item('Which part do you mean?')] }], buttons: [] };
  const machines = machinesOf(scene);
  const lives = machines.flatMap((m) => m.lives.filter(isOf(part)));
  const stillIn = machines.filter((m) => m.parts[part] !== undefined).length;
  return { sections: [{ items: lines(part, lives, stillIn) }], buttons: [] };
};

/** What a correction sets, from the values on its right side. */
import { type Part, type Reason } from '../../../maintenance/codes.ts';
import type { AmendAct, LocalDate } from '../../act.ts';
import { hasTag, isFn, isThing, type Item, sense, sensesOf } from '../../item.ts';
import { makeScene, type Scene } from '../../scene.ts';
import { readMood } from '../../mood.ts';
import { partOf } from '../frames/parts-said.ts';
import { symptomsIn } from '../frames/symptom.ts';
import type { Side, Sided } from './sides.ts';

export type Change = Omit<AmendAct, 'kind'>;

export const sceneOf = (items: readonly Item[]): Scene => {
  const clause = { items, joint: 'start', sentence: 0, asked: false } as const;
  return makeScene(clause, readMood(clause), 0, false);
};
const at = (sided: readonly Sided[], ...sides: readonly Side[]): Item[] =>
  sided.filter((one) => sides.includes(one.side)).map((one) => one.item);

/** `all`: every item of the right side, for symptoms that are made of several words. */
export function changeOf(sided: readonly Sided[], all: readonly Item[], today: LocalDate): Change {
  const right = at(sided, 'right');
  const machine = sensesOf(right, 'machine').at(-1)?.code;
  const material = sensesOf(right, 'material').at(-1)?.code;
  const reason = reasonIn(right);
  const figure = figureIn(sided);
  const part = partIn(sided, figure);
  const day = dayIn(right, all, today);
  const symptom =
    part === undefined && reason === undefined ? symptomsIn(sceneOf(all))[0]?.symptom : undefined;
  const set: Change = {
    ...(machine === undefined ? {} : { machine }),
    ...figure,
    ...(material === undefined ? {} : { material }),
    ...(part === undefined ? {} : { part }),
    ...(reason === undefined ? {} : { reason }),
    ...(symptom === undefined ? {} : { symptom }),
    ...day,
    ...fittedIn(right),
  };
  // The machine of the entry that is meant: "juniper's 9 was wrong, it was 6".
  const named = sensesOf(at(sided, 'subject'), 'machine').at(-1)?.code;
  return Object.keys(set).length > 0 && machine === undefined && named !== undefined
    ? { ...set, machine: named }
    : set;
}

/** "until Monday": an end, not the day of a deed. */
function dayIn(right: readonly Item[], all: readonly Item[], today: LocalDate): Pick<Change, 'on' | 'until'> {
  const day = sensesOf(right, 'date').findLast((one) => !one.vague);
  if (!day) return {};
  if (all.some((item) => isFn(item, 'until'))) return day.future > today ? { until: day.future } : {};
  return { on: day.past <= today ? day.past : day.future };
}

const UNITS: Readonly<Record<string, keyof Change>> = {
  hours: 'hours',
  clock: 'hours',
  grams: 'grams',
  metres: 'metres',
  days: 'days',
};
/** A bare figure takes the unit of the one that it stands for: "I put six hours, it should have said nine". */
function figureIn(sided: readonly Sided[]): Change {
  const value = sensesOf(at(sided, 'right'), 'value').findLast(
    (one) => one.code !== 'other' && one.code !== 'range',
  );
  if (!value) return {};
  const other = sensesOf(at(sided, 'wrong', 'subject'), 'value').findLast((one) => one.code in UNITS);
  const unit = UNITS[value.code] ?? (other === undefined ? undefined : UNITS[other.code]);
  return { [unit ?? 'value']: value.value };
}

/** "x and not y belt": the noun is said once for both. */
function partIn(sided: readonly Sided[], figure: Change): Part | undefined {
  const scene = sceneOf(at(sided, 'right'));
  const noun = scene.nouns.findLast((one) => one.part !== undefined && !(one.weak && 'value' in figure));
  if (noun) return partOf(scene, noun);
  const belt = at(sided, 'wrong', 'subject').some((item) => /belt/u.test(item.text));
  const axis = belt ? scene.items.find((item) => isThing(item, 'x-axis', 'y-axis')) : undefined;
  return axis === undefined ? undefined : isThing(axis, 'x-axis') ? 'x-belt' : 'y-belt';
}

const WORN: Readonly<Record<string, Reason>> = {
  worn: 'worn',
  broken: 'broken',
  dead: 'broken',
  cracked: 'broken',
};
function reasonIn(right: readonly Item[]): Reason | undefined {
  const said = sensesOf(right, 'reason').at(-1)?.code;
  if (said) return said;
  const flaw = right.findLast((item) => hasTag(item, 'complaint') && !hasTag(item, 'part'));
  return flaw === undefined ? undefined : WORN[sense(flaw, 'complaint')?.code ?? ''];
}

/** "hardened 0.6": what was fitted, where nothing says that the size is anything else. */
function fittedIn(right: readonly Item[]): Pick<Change, 'fitted'> {
  const words = right.filter((item) => hasTag(item, 'spec') && !hasTag(item, 'part', 'material', 'machine'));
  return words.length === 0 ? {} : { fitted: words.map((item) => item.text).join(' ') };
}

/** Which figures of a clause are of a run: said with a unit, as a span of the clock, or as a bare number in a row. */
import { hasTag, isFn } from '../../item.ts';
import { deedOf, hasMachine, type Scene, valueOf } from '../../scene.ts';

export interface Amounts {
  hours?: number;
  grams?: number;
  metres?: number;
}
const FIELDS = ['hours', 'grams', 'metres'] as const;

export function amounts(scene: Scene, earlier: readonly Scene[] = []): Amounts {
  const hours = valueOf(scene, 'hours') ?? clockSpan(scene);
  const grams = valueOf(scene, 'grams');
  const metres = valueOf(scene, 'metres');
  const own = {
    ...(hours === undefined ? {} : { hours }),
    ...(grams === undefined ? {} : { grams }),
    ...(metres === undefined ? {} : { metres }),
  };
  return Object.keys(own).length > 0 ? own : inARow(scene, earlier);
}

/** "ran 6:30" and the bare "hazel 1:45" are spans; "at 6:30" is a time of day. */
function clockSpan(scene: Scene): number | undefined {
  const value = scene.values.find((v) => v.code === 'clock');
  if (!value || isFn(scene.items[value.at - 1], 'at', 'until', 'since', 'from', 'by')) return undefined;
  const alone = scene.items.length === 2 && hasMachine(scene);
  return alone || deedOf(scene, 'run', 'print') ? value.value : undefined;
}

/** Longer stretches say more than a name and a figure. */
const ROW = 5;
/** "alder 4 hours, birch 3 and cedar 2": the unit was said once, at the head of the row. */
function inARow(scene: Scene, earlier: readonly Scene[]): Amounts {
  const [value, ...more] = scene.values;
  const only =
    value?.code === 'bare' &&
    more.length === 0 &&
    value.value > 0 &&
    scene.items.length <= ROW &&
    hasMachine(scene);
  const alone = scene.nouns.length === 0 && scene.verbs.every((verb) => !verb.deed);
  if (!only || !alone || scene.items.some((item) => hasTag(item, 'finding', 'complaint', 'state'))) return {};
  for (const before of [...earlier].reverse()) {
    if (before.clause.sentence !== scene.clause.sentence || before.mood.question) return {};
    const units = FIELDS.filter((field) => valueOf(before, field) !== undefined);
    const unit = units[0];
    if (unit !== undefined)
      return units.length === 1 && hasMachine(before) && before.nouns.every((noun) => noun.part === undefined)
        ? { [unit]: value.value }
        : {};
    if (!before.values.some((one) => one.code === 'bare')) return {};
  }
  return {};
}

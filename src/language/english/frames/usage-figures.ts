/** Which figures of a clause are of a run: said with a unit, as a span of the clock, or as a bare number in a row. */
import { hasTag, isFn, sensesOf } from '../../item.ts';
import { deedOf, hasMachine, type Scene, valueOf } from '../../scene.ts';

export interface Amounts {
  hours?: number;
  grams?: number;
  metres?: number;
}
const FIELDS = ['hours', 'grams', 'metres'] as const;

export function amounts(scene: Scene, earlier: readonly Scene[] = [], later: readonly Scene[] = []): Amounts {
  const hours =
    scene.values.find((v) => v.code === 'hours' && !isOfMore(scene, v.at))?.value ??
    clockSpan(scene, later[0]);
  const grams = valueOf(scene, 'grams');
  const metres = valueOf(scene, 'metres');
  const own = {
    ...(hours === undefined ? {} : { hours }),
    ...(grams === undefined ? {} : { grams }),
    ...(metres === undefined ? {} : { metres }),
  };
  return Object.keys(own).length > 0 ? own : inARow(scene, earlier, later);
}

/** "2 hours into a 9 hour print", "2 hours longer than planned", "4 h to go": a part of a run, or what is over. */
const isOfMore = ({ items, text }: Scene, at: number): boolean => {
  const [next, after] = [items[at + 1], items[at + 2]];
  if (next === undefined) return false;
  if (next.text === 'into' || PART_WAY.test(next.text) || (next.text === 'too' && after?.text === 'long'))
    return true;
  if (isFn(next, 'in') && (after === undefined || /^(?:already|now|so far)$/u.test(after.text))) return true;
  // "another 5 h to run"
  if (isFn(next, 'to') && /^(?:run|go|print|wait|finish)$/u.test(after?.text ?? '')) return true;
  if (next.text === 'more' && isFn(after, 'than', 'to')) return true;
  return (
    / into an? (?:\S+ )?\S+ (?:print|job|run)\b/u.test(text) &&
    items.slice(0, at).some((item) => item.text === 'into')
  );
};
const PART_WAY = /^(?:longer|late|early|behind|ahead|over schedule|to go|remaining|left|shorter)$/u;
/** "ran 6:30" and the bare "hazel 1:45" are spans; "at 6:30" is a time of day. */
function clockSpan(scene: Scene, next: Scene | undefined): number | undefined {
  const value = scene.values.find((v) => v.code === 'clock');
  if (!value || isFn(scene.items[value.at - 1], 'at', 'until', 'since', 'from', 'by')) return undefined;
  // "02:40 cedar: …" opens a line of a night's log; "hazel 1:45" is a span.
  if (value.at === 0 || /^0\d/u.test(scene.items[value.at]?.text ?? '')) return undefined;
  // "alder 2:45", "alder 2:45 pla"
  const alone = hasMachine(scene) && scene.items.length === 2 + scene.materials.length;
  // "Birch, 15:10, returned to service": when it was, with what it was behind it.
  if (alone && next !== undefined && next.clause.sentence === scene.clause.sentence && !hasMachine(next))
    return undefined;
  return alone || deedOf(scene, 'run', 'print') ? value.value : undefined;
}

/** Longer stretches say more than a name and a figure. */
const ROW = 5;
/** "alder 4 hours, birch 3 and cedar 2", "alder 6.5, birch 4, maple 7.25 h": the unit is said once, first or last. */
function inARow(scene: Scene, earlier: readonly Scene[], later: readonly Scene[]): Amounts {
  const [value, ...more] = scene.values;
  const only =
    value?.code === 'bare' &&
    more.length === 0 &&
    value.value > 0 &&
    scene.items.length <= ROW &&
    (hasMachine(scene) || goesOnInDays(scene, earlier.at(-1)));
  const alone =
    scene.nouns.length === 0 &&
    scene.verbs.every((verb) => !verb.deed || ['run', 'print', 'did'].includes(verb.code));
  if (!only || !alone || scene.items.some((item) => hasTag(item, 'finding', 'complaint', 'state'))) return {};
  const unit = unitAlong(scene, [...earlier].reverse()) ?? unitAlong(scene, later);
  return unit === undefined ? {} : { [unit]: value.value };
}
/** "6 h yesterday and 2 and a half this morning": another day of the same machine. */
const goesOnInDays = (scene: Scene, before: Scene | undefined): boolean =>
  before !== undefined &&
  before.clause.sentence === scene.clause.sentence &&
  valueOf(before, 'hours') !== undefined &&
  scene.items.some((item) => hasTag(item, 'date')) &&
  scene.items.every(
    (item) => hasTag(item, 'date', 'value') || isFn(item, 'on', 'in', 'article', 'another', 'more'),
  );
/** "hours today:", "print hours yesterday -", "grams run:": what the figures of the row below it are in. */
function unitOfHead(scene: Scene): (typeof FIELDS)[number] | undefined {
  const small = scene.items.every(
    (item) =>
      hasTag(item, 'date', 'unit', 'material') ||
      isFn(item, 'article', 'for', 'of', 'my', 'in', 'on') ||
      HEAD_WORDS.test(item.text),
  );
  if (!small || scene.items.length > LONGEST_HEAD || scene.clause.asked) return undefined;
  const units = sensesOf(scene.items, 'unit').map((s) => s.code);
  if (
    units.includes('hours') ||
    scene.items.some((item) =>
      /^(?:run ?time|usage|running time|print time|printing time|runs|log|shift totals?|day totals?|daily totals?|totals)$/u.test(
        item.text,
      ),
    )
  )
    return 'hours';
  return units.includes('grams') ? 'grams' : units.includes('metres') ? 'metres' : undefined;
}
const LONGEST_HEAD = 5;
const HEAD_WORDS =
  /^(?:operating|time|consumption|consumed|hours run|shift totals?|day totals?|daily totals?|totals?|shift|run|printed|used|logged|usage|runtime|run time|running time|print time|printing time|runs|log|filament|filament used|report|so far|update)$/u;
/** "that's hours", "in grams, petg", "(hours)": said last, what the figures of the row before it are in. */
function unitOfTail(scene: Scene): (typeof FIELDS)[number] | undefined {
  const units = sensesOf(scene.items, 'unit').map((s) => s.code);
  const small = scene.items.every(
    (item) => hasTag(item, 'unit', 'material', 'spec', 'cue') || isFn(item, ...TAIL_WORDS),
  );
  if (!small || scene.clause.asked || scene.mood.negated) return undefined;
  return FIELDS.find((field) => units.includes(field));
}
const TAIL_WORDS = ['this', 'these', 'they', 'it', 'be', 'all', 'both', 'each', 'of', 'in', 'throughout', 'article', 'only', 'both'] as const; // prettier-ignore
/** A head and the first of its figures: neither asks. */
export const isLogHead = (scene: Scene, after: Scene | undefined): boolean =>
  after !== undefined &&
  /^(?:colon|dash|sentence)$/u.test(after.clause.joint) &&
  hasMachine(after) &&
  after.values.length > 0 &&
  unitOfHead(scene) !== undefined;

/** "#5 idle": nothing ran, and the row goes on. */
const isIdle = (scene: Scene): boolean =>
  hasMachine(scene) &&
  scene.items.length <= 3 &&
  scene.items.some((item) => isFn(item, 'nothing', 'no') || /^(?:idle|off|none|nil|down)$/u.test(item.text));

/** The unit of the nearest figure in that direction that bears one; nothing else may stand between. */
function unitAlong(scene: Scene, row: readonly Scene[]): (typeof FIELDS)[number] | undefined {
  for (const other of row) {
    const headed = other.index < scene.index ? unitOfHead(other) : unitOfTail(other);
    if (headed !== undefined) return headed;
    if (other.clause.sentence !== scene.clause.sentence || other.mood.question) return undefined;
    const units = FIELDS.filter((field) => valueOf(other, field) !== undefined);
    if (units.length > 0)
      return units.length === 1 && hasMachine(other) && other.nouns.every((noun) => noun.part === undefined)
        ? units[0]
        : undefined;
    if (!other.values.some((one) => one.code === 'bare') && !isIdle(other)) return undefined;
  }
  return undefined;
}

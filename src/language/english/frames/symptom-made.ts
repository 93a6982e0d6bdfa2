/** Symptoms that no single word names: a smell and what it is of, a noise and what makes it, plastic and where it sits. */
import type { Symptom } from '../../../maintenance/codes.ts';
import { hasTag, isFn, isThing, type Item } from '../../item.ts';
import type { NounAt, Scene } from '../../scene.ts';
import { SYMPTOMS_OF } from './symptom-table.ts';

export interface Seen {
  symptom: Symptom;
  at: number;
  noun?: NounAt;
  complaint?: string;
}

/** `uses`: the places of the words that it is made of; they name nothing else. */
export interface Made {
  readonly seen: Seen;
  readonly uses: (at: number) => boolean;
}
type Maker = (scene: Scene) => Made | undefined;

const BURN = /\b(?:burn\w*|sing(?:e|ed|eing)|scorch\w*|char(?:red)?|electric\w*|fire|smok\w*|acrid|melt\w*|hot (?:wir\w+|metal|dust|electronics|insulation))\b/u; // prettier-ignore
const SMELL = /^(?:smell\w*|smelt|stink\w*|stank|stunk|reek\w*|pong\w*|whiff\w*|odou?r|stench|niff\w*)\b/u;

/** "smell of singed plastic", "stinks of asa", "sweet plastic whiff". */
const smell: Maker = (scene) => {
  const at = scene.items.findIndex((item) => SMELL.test(item.text));
  if (at < 0) return undefined;
  const near = (i: number): boolean => Math.abs(i - at) <= 5;
  if (scene.items.some((item, i) => near(i) && BURN.test(item.text)))
    return { seen: { symptom: 'burning-smell', at }, uses: (i) => near(i) };
  const plastic = scene.items.some(
    (item, i) =>
      near(i) && (isThing(item, 'plastic') || hasTag(item, 'material') || /^stale|plastic/u.test(item.text)),
  );
  return plastic ? { seen: { symptom: 'plastic-smell', at }, uses: (i) => near(i) } : undefined;
};

/** "the fan makes a strong noise": the noise is the complaint, where what makes it can be told. */
const noise: Maker = (scene) => {
  const at = scene.items.findIndex((item) => isThing(item, 'noise'));
  if (at < 0 || scene.items.some((item) => hasTag(item, 'symptom', 'complaint'))) return undefined;
  const noun = scene.nouns.find((one) => SYMPTOMS_OF.noisy[one.code] !== undefined);
  const symptom = noun === undefined ? undefined : SYMPTOMS_OF.noisy[noun.code];
  return noun === undefined || symptom === undefined
    ? undefined
    : { seen: { symptom, at, noun, complaint: 'noisy' }, uses: (i) => i === at };
};

const STAYS = /^(?:stuck|stays?|stayed|staying|sits?|sat|sitting|hangs?|hanging|remains?|stopped|stops|sticks)\b/u; // prettier-ignore
/** Degrees that no hot end or bed is set to. */
const COLDEST_SET = 45;
/** "stuck at 22 degrees", "the bed stays at 30". */
const figure: Maker = (scene) => {
  const value = scene.values.find((v) => ['other', 'bare'].includes(v.code) && v.value < COLDEST_SET);
  if (!value) return undefined;
  const degrees = /deg|\bc\b|celsius|°/u.test(scene.items[value.at]?.text ?? '');
  const heated = scene.nouns.find((noun) => ['bed', 'hot-end', 'nozzle', 'heater', 'bed-heater', 'temperature'].includes(noun.code)); // prettier-ignore
  const from = Math.max(0, value.at - 4);
  const at = scene.items.findIndex((item, i) => i >= from && i < value.at && STAYS.test(item.text));
  if (at < 0 || !(degrees || heated) || !(heated || hasMachineIn(scene.items))) return undefined;
  const bed = heated?.code === 'bed' || heated?.code === 'bed-heater';
  return { seen: { symptom: bed ? 'bed-no-heat' : 'no-heat', at }, uses: (i) => i >= at && i <= value.at };
};
const hasMachineIn = (items: readonly Item[]): boolean => items.some((item) => hasTag(item, 'machine'));

/** "homing fails every second time". */
const homing: Maker = (scene) => {
  const at = scene.items.findIndex((item) => item.text === 'homing');
  const wrong = (item: Item): boolean =>
    hasTag(item, 'complaint') || /^(?:fail\w*|error\w*|trouble|problems?|issues?|wrong)$/u.test(item.text);
  const by = scene.items.findIndex(wrong);
  return at < 0 || by < 0 ? undefined : { seen: { symptom: 'homing-failed', at }, uses: (i) => i === by };
};

const HOT_SIDE = new Set(['hot-end', 'sock', 'heat-break', 'heater']);
/** "plastic all round the heater block", "a blob in the sock": plastic where none belongs has leaked. */
const leak: Maker = (scene) => {
  const cleaned = scene.verbs.some(
    (verb) => verb.deed && ['clean', 'wipe', 'clear', 'remove'].includes(verb.code),
  );
  const at = scene.items.findIndex(
    (item) =>
      isThing(item, 'plastic', 'gunk') || item.senses.some((s) => s.tag === 'symptom' && s.code === 'blobs'),
  );
  if (at < 0 || cleaned) return undefined;
  const place = scene.items.findIndex(
    (item, i) =>
      i > at &&
      (/^(?:above|round|around|up round|over|all over|in|inside)$/u.test(item.text) || isFn(item, 'over')),
  );
  if (place < 0) return undefined;
  const there = scene.nouns.some(
    (noun) =>
      noun.at > place &&
      noun.at - place <= 4 &&
      (HOT_SIDE.has(noun.code) ||
        (noun.code === 'nozzle' && /^(?:above|over|round|around)$/u.test(scene.items[place]?.text ?? ''))),
  );
  const block = scene.items.some((item, i) => i > place && i - place <= 4 && item.text === 'block');
  return there || block
    ? { seen: { symptom: 'nozzle-leak', at }, uses: (i) => i >= at && i <= place }
    : undefined;
};

/** "rowan, print off the plate mid-run": nobody took it. */
const off: Maker = (scene) => {
  const print = scene.items.findIndex((item) => /^(?:the )?prints?(?: off)?$/u.test(item.text));
  const at = (scene.items[print]?.text.endsWith(' off') ?? true) ? print : print + 1;
  const from = scene.nouns.some((noun) => noun.at > at && noun.at <= at + 2 && (noun.code === 'bed' || noun.code === 'build-plate')); // prettier-ignore
  const lies =
    scene.verbs.every((verb) => !verb.deed && verb.at >= print) &&
    !scene.items.some((item) => hasTag(item, 'finding'));
  return from && lies && /^(?:prints? off|off|off of|adrift|loose on)$/u.test(scene.items[at]?.text ?? '')
    ? { seen: { symptom: 'detached-print', at }, uses: (i) => i === at }
    : undefined;
};

const MAKERS: readonly Maker[] = [smell, noise, figure, homing, leak, off];
export const madeUp = (scene: Scene): Made[] =>
  MAKERS.map((make) => make(scene)).filter((one) => one !== undefined);

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

/** Somewhere in the clause; the words themselves are looked for only then. */
const SMELLS = /smel|st[aeiu]n|reek|pong|whiff|odou?r|niff/u;

/** "smell of singed plastic", "stinks of asa", "sweet plastic whiff". */
const smell: Maker = (scene) => {
  if (!SMELLS.test(scene.text)) return undefined;
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

const STAYS = /^(?:(?:gets |got |is )?stuck|stays?|stayed|staying|sits?|sat|sitting|hangs?|hanging|remains?|stopped|stops|sticks)\b/u; // prettier-ignore
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

const WIRE = /\b(?:cable|cables|wire|wires|wiring|insulation|flex|cord|lead|leads)\b/u;
const HURT = /^(?:nibbled|bitten|munched|nicked|nick|cut|chewed|gnawed|sliced|split|pierced|slit|torn|rubbed through|worn through|chafed through|damaged)\b/u; // prettier-ignore
/** "the cable to hazel's bed is nicked", "a mouse chewed through the cable": insulation that no longer keeps. */
const insulation: Maker = (scene) => {
  const wire = scene.nouns.find((noun) => WIRE.test(scene.items[noun.at]?.text ?? '')) ?? undefined;
  const bare = scene.items.some((item) => item.text.startsWith('insulation'));
  if (!wire && !bare) return undefined;
  const at = scene.items.findIndex((item) => HURT.test(item.text));
  const own =
    scene.items.some((item) => isFn(item, 'i', 'we', 'no', 'not', 'to', 'please')) &&
    !/ is | are /u.test(scene.text);
  if (at < 0 || (!wire && !bare) || own || scene.mood.negated || at === 0) return undefined;
  return { seen: { symptom: 'bare-wire', at }, uses: (i) => i === at };
};

const SHORT =
  /\b(?:shorted|shorts out|shorting|shorts to|short circuit\w*|short circuited|dead short|short to (?:earth|ground|frame))\b/u;
const LIVE = new Set(['heater', 'bed-heater', 'thermistor', 'wiring', 'power-supply', 'control-board', 'plug', 'mains-lead', 'hot-end', 'bed', 'motor', 'fan', 'hot-end-fan', 'part-fan', 'board-fan']); // prettier-ignore
/** "the heater cartridge shorted": a current goes where it must not; no "no heat" alone. */
const short: Maker = (scene) => {
  const noun = scene.nouns.find((one) => LIVE.has(one.code));
  if (!noun) return undefined;
  const at = scene.items.findIndex((item) => item.text.startsWith('short'));
  if (at < 0 || !SHORT.test(scene.text) || scene.mood.negated) return undefined;
  return { seen: { symptom: 'bare-wire', at, noun }, uses: () => true };
};

const STRONG_WIRE = /\b(?:heater|mains|power|bed|psu|supply|hot end|live|earth|neutral)\b/u;
/** "the heater wire is hanging loose": of a wire that carries the heating current or the mains. */
const looseWire: Maker = (scene) => {
  const wire = scene.nouns.find((noun) => noun.code === 'wiring' && /\b(?:wires?|cables?|leads?|wiring)$/u.test(scene.items[noun.at]?.text ?? '')); // prettier-ignore
  const at = scene.items.findIndex((item) => item.senses.some((s) => s.tag === 'complaint' && (s.code === 'loose' || s.code === 'slack'))); // prettier-ignore
  if (at < 0 || !wire || !STRONG_WIRE.test(scene.text) || scene.mood.negated) return undefined;
  return { seen: { symptom: 'bare-wire', at, noun: wire }, uses: (i) => i === at };
};

const RISES = /^(?:go|goes|going|went|climb\w*|rise\w*|rose|rising|heat\w*|shoot\w*|shot|run|ran|runs|jump\w*|creep\w*|crept|reach\w*|hit|hits|at|up)\b/u; // prettier-ignore
const UNBIDDEN = /\b(?:by itself|on its own|of its own accord|by its own|all by itself|unasked|unprompted|nobody|no one|commanded off|heater off|switched off|turned off|when off|is off|was off|while off|set to|instead of)\b/u; // prettier-ignore
/** Degrees that nobody sets: past these a heater is out of hand, whatever is said of its target. */
const NEVER_SET: Readonly<Partial<Record<string, number>>> = { bed: 130, 'bed-heater': 130, 'hot-end': 295, nozzle: 295, heater: 295, temperature: 295 }; // prettier-ignore
/** "the bed goes to 140 by itself", "hot end climbs past 300": heat that nobody asked for. */
const unbidden: Maker = (scene) => {
  const value = scene.values.find(
    (v) => ['other', 'bare'].includes(v.code) && v.value >= 60 && v.value < 700,
  );
  if (!value || scene.mood.question || scene.mood.wished) return undefined;
  const at = scene.items.findIndex((item, i) => i < value.at && value.at - i <= 4 && RISES.test(item.text));
  const heated = scene.nouns.find((noun) => NEVER_SET[noun.code] !== undefined);
  const degrees =
    value.value >= 150 && !/[a-z]/u.test(scene.items[value.at]?.text.replace(/deg\w*|c$/u, '') ?? '');
  const heats =
    heated !== undefined ||
    (degrees && hasMachineIn(scene.items) && UNBIDDEN.test(scene.text)) ||
    /\b(?:heater|reading|degrees|deg)\b|°/u.test(scene.text);
  if (at < 0 || !heats || scene.verbs.some((verb) => verb.at === 0 && verb.form === 'base')) return undefined;
  const past = value.value >= (NEVER_SET[heated?.code ?? 'hot-end'] ?? Infinity);
  return past || UNBIDDEN.test(scene.text)
    ? { seen: { symptom: 'runaway', at }, uses: (i) => i >= at && i <= value.at }
    : undefined;
};

const NOISES: ReadonlySet<string> = new Set(['squeak', 'grind', 'rattle', 'click', 'noisy']);
/** "homing fails every second time". */
const homing: Maker = (scene) => {
  const at = scene.items.findIndex((item) => item.text === 'homing');
  if (at < 0) return undefined;
  // "grinds when homing": a noise, and it homes
  const wrong = (item: Item): boolean =>
    item.senses.some((s) => s.tag === 'complaint' && !NOISES.has(s.code)) ||
    /^(?:fail\w*|error\w*|trouble|problems?|issues?|wrong)$/u.test(item.text);
  const by = scene.items.findIndex(wrong);
  return by < 0 ? undefined : { seen: { symptom: 'homing-failed', at }, uses: (i) => i === by };
};

const SOUNDS = /\b(?:smoke|fire) (?:alarms?|detectors?|sensors?)(?: in the [a-z]+(?: room)?)?(?: is| was| has| have| just| keeps?| kept| started| been)* (?:going off|goes off|went off|gone off|sounding|screaming|screams|blaring|ringing|rang|shrieking|howling|wailing)\b|\b(?:set|sets|setting) off (?:the |our |a )?(?:smoke|fire) (?:alarm|detector|sensor)\b/u; // prettier-ignore
/** Made to sound, or by what is burnt elsewhere. */
const MADE_TO =
  /\b(?:test\w*|drills?|press\w*|push\w*|button|when you|on demand|should|loud and clear|toast\w*|kitchen|cook\w*|corridor|batter(?:y|ies)|home|flat|house|shower|steam|neighbou?r\w*|next door)\b/u;
/** A detector that sounds unasked: smoke, until somebody has looked. */
export const soundsAlarm = ({ text }: Scene): boolean => SOUNDS.test(text) && !MADE_TO.test(text);
/** "… went off because of the toast": what made it sound stands in the clause behind. */
export const isMadeToSound = (scene: Scene, after: Scene | undefined): boolean =>
  soundsAlarm(scene) && after?.clause.sentence === scene.clause.sentence && MADE_TO.test(after.text);
const alarm: Maker = (scene) => {
  if (!soundsAlarm(scene)) return undefined;
  const at = scene.items.findIndex((item) => /^(?:go|goes|going|went|gone|sound|scream|blar|ring|rang|shriek|howl|wail|set|off)/u.test(item.text)); // prettier-ignore
  return at < 0 ? undefined : { seen: { symptom: 'smoke', at }, uses: () => true };
};

const SCORCHED =
  /^(?:scorch(?: marks?)?|burn marks?|singe marks?|scorched|scorches|scorching|singed|singes|charred|burnt|burned|burns|burning|melted|melts)\b/u;
const BESIDE = /\b(?:tables?|tabletop|table top|benches|bench|desk|worktop|shelf|wall|curtains?|carpet|lino|mat under|wood under)\b/u; // prettier-ignore
/** "hazel scorched the table", "the bench under elm is charred": heat where none belongs. */
const scorched: Maker = (scene) => {
  if (!hasMachineIn(scene.items) || !BESIDE.test(scene.text) || scene.mood.negated) return undefined;
  const at = scene.items.findIndex((item) => SCORCHED.test(item.text));
  if (at < 0 || scene.items.some((item) => isFn(item, 'i', 'we'))) return undefined;
  const near = scene.items.findIndex((item) => BESIDE.test(item.text));
  return Math.abs(near - at) <= 6
    ? { seen: { symptom: 'burning-smell', at }, uses: (i) => i === at }
    : undefined;
};

const CLEANS: ReadonlySet<string> = new Set(['clean', 'wipe', 'clear', 'remove']);
const HOT_SIDE = new Set(['hot-end', 'sock', 'heat-break', 'heater']);
/** "plastic all round the heater block", "a blob in the sock": plastic where none belongs has leaked. */
const leak: Maker = (scene) => {
  const at = scene.items.findIndex(
    (item) =>
      isThing(item, 'plastic', 'gunk') || item.senses.some((s) => s.tag === 'symptom' && s.code === 'blobs'),
  );
  if (at < 0 || scene.verbs.some((verb) => verb.deed && CLEANS.has(verb.code))) return undefined;
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
  if (!scene.nouns.some((noun) => noun.code === 'bed' || noun.code === 'build-plate')) return undefined;
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

/** "all its settings were gone", "its offsets had vanished". */
const settings: Maker = (scene) => {
  const noun = scene.nouns.find((one) => ['settings', 'offset', 'mesh', 'esteps'].includes(one.code));
  if (!noun) return undefined;
  const at = scene.items.findIndex((item, i) => i > noun.at && GONE.test(item.text));
  const own = scene.items.some((item) => isFn(item, 'i', 'we'));
  if (at < 0 || own || scene.mood.negated) return undefined;
  return { seen: { symptom: 'settings-lost', at }, uses: (i) => i === at };
};
const GONE = /^(?:gone|all gone|are gone|is gone|lost|vanished|disappeared|wiped|wiped out|erased|missing)$/u;

/** What it will not do, asked with the name in between: "why doesn't cedar extrude", "won't elm's bed heat". */
const NOT_DONE: readonly (readonly [RegExp, Symptom])[] = [
  [/^(?:extrude|feed|push filament)\b/u, 'no-extrusion'],
  [/^(?:heat|heat up|warm|warm up|get hot|get warm|reach temperature)$/u, 'no-heat'],
  [/^(?:home|homing)$/u, 'homing-failed'],
  [/^(?:stick|hold)$/u, 'poor-adhesion'],
  [/^(?:turn on|switch on|power on|power up|boot|boot up|start up|come on)$/u, 'power-lost'],
];
const refuses: Maker = (scene) => {
  const { items } = scene;
  if (!scene.mood.question) return undefined;
  const not = items.findIndex(
    (item, i) =>
      /^(?:doesn't|does not|won't|isn't|didn't|will not|can't)$/u.test(item.text) &&
      items.slice(i + 1, i + 6).some((one) => hasTag(one, 'machine')),
  );
  if (not < 0 || scene.items.some((item) => isFn(item, 'i', 'we'))) return undefined;
  const at = items.findIndex((item, i) => i > not + 1 && NOT_DONE.some(([words]) => words.test(item.text)));
  const row = NOT_DONE.find(([words]) => words.test(items[at]?.text ?? ''));
  if (!row) return undefined;
  const bed = scene.nouns.some(
    (noun) => noun.code === 'bed' || noun.code === 'build-plate' || noun.code === 'bed-heater',
  );
  const symptom = row[1] === 'no-heat' && bed ? 'bed-no-heat' : row[1];
  return { seen: { symptom, at }, uses: (i) => i === at || i === not };
};

/** "jumped 3 mm sideways", "a step of 1.8 mm in y": how far the layers went. */
const sidestep: Maker = (scene) => {
  const { items } = scene;
  const value = scene.values.find(
    (one) => one.code === 'other' && (items[one.at]?.text.endsWith('mm') ?? false),
  );
  if (!value) return undefined;
  const at = items.findIndex((item) =>
    /^(?:jumped|shifted|stepped|slipped|step|jump|offset|shift)$/u.test(item.text),
  );
  const aside = items.some(
    (item) =>
      /^(?:sideways|to the side|to the left|to the right|left|right)$/u.test(item.text) ||
      isThing(item, 'x-axis', 'y-axis', 'layer', 'side') ||
      /^(?:x|y)$/u.test(item.text),
  );
  if (at < 0 || !aside || Math.abs(value.at - at) > 4 || !hasMachineIn(items)) return undefined;
  if (items.some((item) => isFn(item, 'i', 'we', 'no', 'not') || hasTag(item, 'part'))) return undefined;
  return { seen: { symptom: 'layer-shift', at }, uses: (i) => i === at };
};

const MAKERS: readonly Maker[] = [
  smell,
  noise,
  figure,
  insulation,
  short,
  looseWire,
  unbidden,
  homing,
  leak,
  off,
  refuses,
  sidestep,
  settings,
  alarm,
  scorched,
];
export const madeUp = (scene: Scene): Made[] =>
  MAKERS.map((make) => make(scene)).filter((one) => one !== undefined);

/** Deeds: a verb class in the past, and what it was done to. */
import type { Finding, Task } from '../../../maintenance/codes.ts';
import { hasTag, isFn, sensesOf } from '../../item.ts';
import {
  asserted,
  deedOf,
  type Draft,
  draft,
  hasMachine,
  type NounAt,
  objects,
  type Scene,
  someFn,
  type VerbAt,
} from '../../scene.ts';
import { ROOM_THINGS, TASK_ALONE, TASKS_OF } from './task-table.ts';
import { lookedAt } from './looked.ts';
import { byResult } from './results.ts';
import { symptomsIn } from './symptom.ts';
import { soundsAlarm } from './symptom-made.ts';
import { type Named, tasksNamed } from './tasks.ts';

/** Classes whose deeds are tasks of the table. */
const LOOKS = new Set(['look', 'test', 'work']);

export function findingIn(scene: Scene): Finding | undefined {
  const said = sensesOf(scene.items, 'finding').map((s) => s.code);
  if (sensesOf(scene.items, 'symptom').length > 0) return 'bad';
  if (said.includes('watch')) return 'watch';
  if (said.includes('fine')) return 'fine';
  // "checked for cracks, none"
  const found = scene.items.some(
    (item, at) => hasTag(item, 'complaint') && !isFn(scene.items[at - 1], 'for', 'no'),
  );
  return found ? 'bad' : undefined;
}

function toDraft(scene: Scene, named: Named): Draft {
  const room =
    named.noun !== undefined && (ROOM_THINGS.has(named.noun.code) || named.task === 'check-solvents');
  const finding = named.verb !== undefined && LOOKS.has(named.verb) ? findingIn(scene) : undefined;
  const act = {
    kind: 'done' as const,
    task: named.task,
    ...(finding === undefined ? {} : { finding }),
    ...(room ? { machine: 'room' } : {}),
  };
  return draft(scene, act, `done: ${named.verb ?? 'named'} x ${named.noun?.code ?? '-'}`, {
    ...(named.noun === undefined ? {} : { noun: named.noun.code }),
    ...(named.noun?.weak === true ? { weak: true as const } : {}),
    ...(room ? { placeless: true as const } : {}),
  });
}

/** How what blocks the way is got out of it by hand. */
const FREES = new RegExp(
  `\\b(?:poked|pushed|prodded|rodded|rammed|shoved|pricked|picked|dug|teased|fished|worked|drilled|melted|flushed|pulled|got|freed|coaxed|forced|cleared|hooked|tweezed|reamed|punched|knocked|squeezed)(?: [a-z']+){1,5}? (?:through|thru|out|clear|free|loose|open)\\b|\\b(?:ran|stuck|poked|shoved|pushed) (?:a|an|the|my) (?:[a-z]+ )?(?:needle|pin|wire|drill bit|allen key|string) (?:through|up|in|into)\\b`,
  'u',
);
/** "jammed, so I poked it through": the deed beside the jam that it ended. */
function unblocked(scene: Scene, earlier: readonly Scene[]): Draft[] {
  if (hasMachine(scene) && symptomsIn(scene).length > 0) return [];
  const jammed = earlier
    .slice(-3)
    .some(
      (one) =>
        one.clause.sentence >= scene.clause.sentence - 1 &&
        !one.mood.question &&
        symptomsIn(one).some(({ symptom }) => symptom === 'no-extrusion'),
    );
  return jammed && FREES.test(scene.text) && scene.nouns.every((noun) => noun.code !== 'fastener')
    ? [toDraft(scene, { task: 'clear-jam', verb: 'clear' })]
    : [];
}

export function readDone(scene: Scene, earlier: readonly Scene[] = []): Draft[] {
  if (!asserted(scene) || hasSwap(scene) || someFn(scene, 'nobody')) return [];
  const freed = unblocked(scene, earlier);
  if (freed.length > 0) return freed;
  const named = tasksNamed(
    scene,
    (verb) =>
      (verb.deed &&
        verb.code !== 'work' &&
        !ranIt(scene, verb) &&
        !isSetting(scene, verb) &&
        !finishesOther(scene, verb) &&
        !turnsOver(scene, verb)) ||
      (verb.code === 'pull' && scene.verbs.some((other) => other.deed)),
  );
  const off = offWhat(scene);
  if (off.length > 0) return off;
  if (named.length > 0) return named.map((one) => toDraft(scene, one));
  return first(
    dried(scene, earlier.at(-1)),
    byResult(scene).map((one) => toDraft(scene, one)),
    unjammed(scene, earlier),
    gotOff(scene),
    roomWorks(scene, earlier),
    verbless(scene),
    lookedAt(scene, earlier).map((one) => toDraft(scene, one)),
  );
}
/** "elm did 11 h on the lamp housings", "320 g gone through rowan": with a figure of running these tell of a run. */
const ranIt = (scene: Scene, verb: VerbAt): boolean =>
  (verb.code === 'did' || (verb.code === 'look' && deedOf(scene, 'run')?.at === verb.at)) &&
  scene.values.some((value) => ['hours', 'grams', 'metres'].includes(value.code));
/** "just finished calibrating the feeder": the deed is the verb behind. */
const finishesOther = (scene: Scene, verb: VerbAt): boolean =>
  verb.code === 'did' &&
  scene.verbs.some((other) => other.at === verb.at + 1 && other.form === 'ing' && other.deed);
/** "turned the plate round": the other side of it, and no adjusting. */
const turnsOver = (scene: Scene, verb: VerbAt): boolean =>
  /^(?:turned|flipped|turn)$/u.test(scene.items[verb.at]?.text ?? '') &&
  scene.nouns.some((noun) => noun.code === 'build-plate' || noun.code === 'spool') &&
  /\b(?:over|round|around)\b/u.test(scene.text);
/** "set the hot end to 215": how a print is made, not a tuning; "e-steps set to 415" tells of one. */
const isSetting = (scene: Scene, verb: VerbAt): boolean =>
  verb.code === 'adjust' &&
  scene.nouns.some((noun) => noun.at > verb.at && noun.code !== 'esteps') &&
  /^set(?:ting)?$/u.test(scene.items[verb.at]?.text ?? '') &&
  scene.values.some((value) => value.at > verb.at && scene.items[value.at - 1]?.text === 'to');
const first = (...sets: readonly Draft[][]): Draft[] => sets.find((set) => set.length > 0) ?? [];

/** What a jam is of, or is got out as. */
const OF_JAM: ReadonlySet<string> = new Set(['jam', 'nozzle', 'hot-end', 'heat-break', 'filament', 'plastic', 'gunk', 'feeder', 'liner', 'guide-tube', 'leftover']); // prettier-ignore
const isJam = (scene: Scene): boolean =>
  scene.items.some((item) =>
    item.senses.some(
      (s) =>
        (s.tag === 'complaint' && (s.code === 'jam' || s.code === 'blocked')) ||
        (s.tag === 'symptom' && s.code === 'no-extrusion'),
    ),
  );
/** "maple was jammed, Priya cleared it", "… heated it up, got the slug out", "… so I poked it through": what was told to be stuck is free. */
function unjammed(scene: Scene, earlier: readonly Scene[]): Draft[] {
  if (!scene.named || !earlier.slice(-2).some((before) => isJam(before) && asserted(before))) return [];
  if (scene.nouns.some((noun) => noun.at >= 0 && !OF_JAM.has(noun.code))) return [];
  const free =
    deedOf(scene, 'clear', 'pull', 'fix') !== undefined ||
    (someFn(scene, 'did-it') && !scene.items.some((item) => isFn(item, 'be'))) ||
    ((pulledOut(scene) ?? deedOf(scene, 'get', 'remove')) !== undefined && someFn(scene, 'out', 'through'));
  return free ? [toDraft(scene, { task: 'clear-jam', verb: 'clear' })] : [];
}

const DIRT = new Set(['glue', 'gunk', 'plastic', 'dust', 'debris', 'jam', 'leftover']);
/** "nylon's been in the dryer for 8 h"; "the tpu was damp, so I dried it for 6 h". */
function dried(scene: Scene, before: Scene | undefined): Draft[] {
  const same =
    before !== undefined && before.clause.sentence === scene.clause.sentence && before.materials.length > 0;
  if (same && scene.materials.length === 0 && scene.nouns.length === 0 && deedOf(scene, 'dry'))
    return [toDraft(scene, { task: 'dry-filament', verb: 'dry' })];
  const stuff =
    scene.materials.length > 0 ||
    scene.nouns.some((noun) => noun.code === 'spool' || noun.code === 'filament');
  const been =
    scene.nouns.some((noun) => noun.code === 'dryer') && /\b(?:been|was|were|spent|had)\b/u.test(scene.text);
  const put =
    deedOf(scene, 'put', 'get', 'fit', 'give') !== undefined &&
    scene.nouns.some((noun) => noun.code === 'dryer') &&
    (scene.values.some((value) => value.code === 'hours') ||
      /\b(?:overnight|over night|all night)\b/u.test(scene.text));
  return stuff && (been || put) ? [toDraft(scene, { task: 'dry-filament', verb: 'dry' })] : [];
}
const LUMP = /\b(?:blobs?|lumps?|globs?|ball of plastic|strings?)\b/u;
/** "wiped the old grease off its rods": what is to go, and no oiling. */
const isSpent = (scene: Scene, noun: NounAt): boolean =>
  (noun.code === 'oil' || noun.code === 'grease') &&
  (isFn(scene.items[noun.at - 1], 'old') ||
    /^(?:excess|dried|dirty|surplus|extra)$/u.test(scene.items[noun.at - 1]?.text ?? ''));
/** "brushed the fluff off cedar's fans": what was cleaned is what the dirt came off. */
function offWhat(scene: Scene): Draft[] {
  const deed = deedOf(scene, 'clean', 'wipe', 'dust', 'clear');
  const dirt = scene.nouns.find(
    (noun) => deed !== undefined && noun.at > deed.at && (DIRT.has(noun.code) || isSpent(scene, noun)),
  );
  const from = scene.items.findIndex(
    (item, at) => at > (dirt?.at ?? scene.items.length) && isFn(item, 'off', 'from'),
  );
  const noun = scene.nouns.find(
    (one) => from > 0 && one.at > from && TASKS_OF.clean?.[one.code] !== undefined,
  );
  const task = noun === undefined ? undefined : TASKS_OF.clean?.[noun.code];
  return noun !== undefined && task !== undefined && dirt?.code !== 'jam' && dirt?.code !== 'debris'
    ? [toDraft(scene, { task, noun, verb: 'clean' })]
    : [];
}
/** "got the glue off the glass", "took 5 mm off the tube", "got it flowing again". */
function gotOff(scene: Scene): Draft[] {
  const deed = deedOf(scene, 'get', 'take', 'remove') ?? pulledOut(scene);
  if (!deed) return [];
  if (
    scene.items.some((item) => /^(?:flowing|feeding|extruding|unjammed)$/u.test(item.text)) &&
    someFn(scene, 'again')
  )
    return [toDraft(scene, { task: 'clear-jam', verb: 'clear' })];
  const away = someFn(scene, 'off', 'out', 'from') || deed.code === 'remove';
  const length = scene.values.some(
    (value) => value.code === 'other' && /(?:mm|cm)$/u.test(scene.items[value.at]?.text ?? ''),
  );
  if (!away) return [];
  if (length && scene.nouns.some((noun) => noun.code === 'guide-tube' || noun.code === 'tube-end'))
    return [toDraft(scene, { task: 'trim-tube', verb: 'trim' })];
  if (!scene.nouns.some((noun) => DIRT.has(noun.code)) && !LUMP.test(scene.text)) return [];
  const firm =
    scene.nouns.find((noun) => !DIRT.has(noun.code) && TASKS_OF.clean?.[noun.code] !== undefined) ??
    scene.nouns.find((noun) => DIRT.has(noun.code));
  const task = firm === undefined ? undefined : TASKS_OF.clean?.[firm.code];
  return firm === undefined || task === undefined
    ? []
    : [toDraft(scene, { task, noun: firm, verb: 'clean' })];
}
/** "pulled a nasty clog out of maple". */
const pulledOut = (scene: Scene): VerbAt | undefined =>
  scene.verbs.find((verb) =>
    /^(?:pulled|dug|picked|fished|teased|yanked|pushed|poked|rammed|shoved|worked|melted)$/u.test(
      scene.items[verb.at]?.text ?? '',
    ),
  );
const hasSwap = (scene: Scene): boolean =>
  deedOf(scene, 'swap', 'install') !== undefined &&
  objects(scene).some((noun) => noun.part !== undefined && noun.code !== 'filament');

/** "first aid kit restocked with plasters", "the dryer's beads changed": whoever fills it up has looked. */
function refilled(scene: Scene, noun: NounAt): Task | undefined {
  const kit = /\b(?:kit|box|cabinet)\b/u.test(scene.items[noun.at]?.text ?? '');
  const into = isFn(scene.items[noun.at - 1], 'in', 'to') || isFn(scene.items[noun.at - 2], 'in', 'to');
  if (noun.code === 'safety-kit' && kit)
    return deedOf(scene, 'arrive') !== undefined || (into && deedOf(scene, 'put', 'install', 'swap'))
      ? 'check-safety-kit'
      : undefined;
  const beads = /\b(?:silica|silica gel|desiccant|beads)\b/u.test(scene.text);
  return noun.code === 'dryer' && beads && deedOf(scene, 'swap', 'dry', 'install')
    ? 'check-dryer'
    : undefined;
}

const BEEPED = 'Was that a test of the smoke detector, its battery, or smoke?';
const TESTED =
  /\b(?:test\w*|press\w*|push\w*|button|check\w*|tried|on demand|should|when (?:you|i|we|one)|loud|batter(?:y|ies))\b/u;
/** "smoke detector beeps": no test unless somebody made it. */
const beepsUnasked = (scene: Scene, earlier: readonly Scene[]): boolean =>
  /\b(?:beep|bleep)\w*\b/u.test(scene.text) &&
  findingIn(scene) === undefined &&
  ![scene, ...earlier].some((one) => TESTED.test(one.text));

/** "smoke detector beeps when you press it", "the extinguisher's gauge is in the green". */
function roomWorks(scene: Scene, earlier: readonly Scene[]): Draft[] {
  const noun = scene.nouns.find((one) => ROOM_THINGS.has(one.code));
  if (!noun) return [];
  const filled = refilled(scene, noun);
  if (filled !== undefined) return [toDraft(scene, { task: filled, noun, verb: 'clean' })];
  if (soundsAlarm(scene)) return [];
  if (noun.code === 'smoke-detector' && beepsUnasked(scene, earlier))
    return [draft(scene, { kind: 'unclear', why: BEEPED }, 'unclear: beeped unasked', {
      doubt: { field: 'task', said: scene.text, options: [] },
    })]; // prettier-ignore
  const works = scene.verbs.some((verb) => verb.code === 'work') || findingIn(scene) === 'fine';
  const task = TASKS_OF.look?.[noun.code];
  return works && task !== undefined ? [toDraft(scene, { task, noun, verb: 'look' })] : [];
}

/** "belts done on elm", "rods and rails sorted", "elm: service done", "all the belts are done". */
function verbless(scene: Scene): Draft[] {
  if (!someFn(scene, 'did-it') && !deedOf(scene, 'did')) return [];
  const whole = scene.verbs.find((verb) => !verb.deed && TASK_ALONE[verb.code] !== undefined);
  const alone = whole === undefined ? undefined : TASK_ALONE[whole.code];
  if (whole && alone !== undefined && scene.nouns.every((noun) => noun.weak && noun.part === undefined))
    return [toDraft(scene, { task: alone, verb: whole.code })];
  if (!someFn(scene, 'did-it')) return [];
  return objects(scene).flatMap((noun): Draft[] => {
    const verb = scene.verbs.find((one) => TASKS_OF[one.code]?.[noun.code] !== undefined)?.code ?? 'did';
    const task = TASKS_OF[verb]?.[noun.code];
    return task === undefined || (noun.weak && !hasMachine(scene) && scene.nouns.length === 0)
      ? []
      : [toDraft(scene, { task, noun, verb })];
  });
}

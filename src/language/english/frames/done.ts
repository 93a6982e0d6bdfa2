/** Deeds: a verb class in the past, and what it was done to. */
import type { Finding } from '../../../maintenance/codes.ts';
import { isFn, isVerb, sensesOf } from '../../item.ts';
import { asserted, deedOf, type Draft, draft, hasMachine, objects, type Scene, someFn } from '../../scene.ts';
import { ROOM_THINGS, TASKS_OF } from './task-table.ts';
import { type Named, tasksNamed } from './tasks.ts';

/** Classes whose deeds are tasks of the table. */
const LOOKS = new Set(['look', 'test', 'work']);

export function findingIn(scene: Scene): Finding | undefined {
  const said = sensesOf(scene.items, 'finding').map((s) => s.code);
  if (sensesOf(scene.items, 'symptom').length > 0) return 'bad';
  if (said.includes('watch')) return 'watch';
  if (said.includes('fine')) return 'fine';
  return sensesOf(scene.items, 'complaint').length > 0 ? 'bad' : undefined;
}

function toDraft(scene: Scene, named: Named): Draft {
  const room = named.noun !== undefined && ROOM_THINGS.has(named.noun.code);
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

export function readDone(scene: Scene): Draft[] {
  if (!asserted(scene) || hasSwap(scene)) return [];
  const named = tasksNamed(
    scene,
    (verb) =>
      (verb.deed && verb.code !== 'work') ||
      (verb.code === 'pull' && scene.verbs.some((other) => other.deed)),
  );
  if (named.length > 0) return named.map((one) => toDraft(scene, one));
  return first(dried(scene), byState(scene), gotOff(scene), roomWorks(scene), verbless(scene));
}
const first = (...sets: readonly Draft[][]): Draft[] => sets.find((set) => set.length > 0) ?? [];

const DIRT = new Set(['glue', 'gunk', 'plastic', 'dust', 'debris', 'jam', 'leftover']);
/** "nylon's been in the dryer for 8 h". */
function dried(scene: Scene): Draft[] {
  const stuff =
    scene.materials.length > 0 ||
    scene.nouns.some((noun) => noun.code === 'spool' || noun.code === 'filament');
  const been =
    scene.nouns.some((noun) => noun.code === 'dryer') && /\b(?:been|was|were|spent|had)\b/u.test(scene.text);
  return stuff && been ? [toDraft(scene, { task: 'dry-filament', verb: 'dry' })] : [];
}
/** "got the glue off the glass", "took 5 mm off the tube", "got it flowing again". */
function gotOff(scene: Scene): Draft[] {
  const deed = deedOf(scene, 'get', 'take', 'remove');
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
  if (!scene.nouns.some((noun) => DIRT.has(noun.code))) return [];
  const firm =
    scene.nouns.find((noun) => !DIRT.has(noun.code) && TASKS_OF.clean?.[noun.code] !== undefined) ??
    scene.nouns.find((noun) => DIRT.has(noun.code));
  const task = firm === undefined ? undefined : TASKS_OF.clean?.[firm.code];
  return firm === undefined || task === undefined
    ? []
    : [toDraft(scene, { task, noun: firm, verb: 'clean' })];
}
const hasSwap = (scene: Scene): boolean =>
  deedOf(scene, 'swap', 'install') !== undefined &&
  objects(scene).some((noun) => noun.part !== undefined && noun.code !== 'filament');

/** "rowan's bed is level again", "the belts are tight again", "firmware is up to date". */
function byState(scene: Scene): Draft[] {
  const be = scene.items.some((item) => isFn(item, 'be'));
  const again =
    someFn(scene, 'again', 'now', 'just') ||
    scene.items.some((item) => /^(?:back in|up to date|nice and)/u.test(item.text));
  if (!be || !again) return [];
  const level = scene.items.some(
    (item) =>
      isVerb(item, 'level', 'square') && item.senses.some((s) => s.tag === 'verb' && s.form === 'base'),
  );
  const tight = scene.items.some((item) => /^(?:tight|tensioned|taut|snug)$/u.test(item.text));
  const clean = scene.items.some((item) => /^(?:clean|spotless|dust free|shiny)$/u.test(item.text));
  const current =
    scene.nouns.some((noun) => noun.code === 'firmware') &&
    /\b(?:up to date|current|on the latest)\b/u.test(scene.text);
  if (current) return [toDraft(scene, { task: 'update-firmware', verb: 'update' })];
  const verb = level ? 'level' : tight ? 'tighten' : clean ? 'clean' : undefined;
  if (verb === undefined) return [];
  const noun = objects(scene).find((one) => TASKS_OF[verb]?.[one.code] !== undefined);
  const task = noun === undefined ? undefined : TASKS_OF[verb]?.[noun.code];
  return noun === undefined || task === undefined ? [] : [toDraft(scene, { task, noun, verb })];
}

/** "smoke detector beeps when you press it", "the extinguisher's gauge is in the green". */
function roomWorks(scene: Scene): Draft[] {
  const noun = scene.nouns.find((one) => ROOM_THINGS.has(one.code));
  if (!noun) return [];
  const works = scene.verbs.some((verb) => verb.code === 'work') || findingIn(scene) === 'fine';
  const task = TASKS_OF.look?.[noun.code];
  return works && task !== undefined ? [toDraft(scene, { task, noun, verb: 'look' })] : [];
}

/** "belts done on elm", "rods and rails sorted", "elm: service done", "all the belts are done". */
function verbless(scene: Scene): Draft[] {
  if (!someFn(scene, 'did-it')) return [];
  return objects(scene).flatMap((noun): Draft[] => {
    const verb = scene.verbs.find((one) => TASKS_OF[one.code]?.[noun.code] !== undefined)?.code ?? 'did';
    const task = TASKS_OF[verb]?.[noun.code];
    return task === undefined || (noun.weak && !hasMachine(scene) && scene.nouns.length === 0)
      ? []
      : [toDraft(scene, { task, noun, verb })];
  });
}

/** A look told by what it found: "wheels ok, no play", "mains cord juniper ok", "goggles and gloves all present". */
import { hasTag, isFn, sensesOf } from '../../item.ts';
import { asserted, hasMachine, type NounAt, objects, type Scene, someFn } from '../../scene.ts';
import type { Named } from './tasks.ts';
import { ROOM_THINGS, TASKS_OF } from './task-table.ts';

/** Say where something is, not what was looked at. */
const MERE: ReadonlySet<string> = new Set([
  'print', 'machine', 'bed', 'frame', 'temperature', 'crack', 'play', 'plug', 'spool', 'alcohol', 'hot-end', 'pressure', 'gantry', 'feeder',
]); // prettier-ignore
/** Longer stretches tell a story. */
const LONGEST = 10;

/**
 * The nouns that were found in order. Nothing may be done in the clause, and nothing may say that it is so "now"
 * or "again": that ends a trouble and is no look.
 */
export function lookedAt(scene: Scene, earlier: readonly Scene[]): Named[] {
  if (!asserted(scene) || scene.items.length > LONGEST || scene.values.some((v) => v.code !== 'bare'))
    return [];
  const found = sensesOf(scene.items, 'finding').length > 0;
  if (!found || scene.items.some((item) => hasTag(item, 'symptom', 'complaint') && !hasTag(item, 'finding')))
    return [];
  if (
    someFn(scene, 'now', 'again', 'new', 'back', 'just', 'after', 'will', 'i', 'we', 'you', 'every') ||
    scene.mood.hedged
  )
    return [];
  if (
    scene.verbs.some(
      (verb) => verb.deed && verb.code !== 'work' && !hasTag(scene.items[verb.at], 'finding'),
    ) ||
    saysBe(scene)
  )
    return [];
  if (onlyClean(scene)) return [];
  const placed = hasMachine(scene) || scene.named || earlier.some(hasMachine);
  return once(
    objects(scene).filter((noun) => !MERE.has(noun.code) && (placed || ROOM_THINGS.has(noun.code))),
  );
}
/** "plate clean" tells of a wash as well as of a look; a first layer is clean only to the eye. */
const onlyClean = (scene: Scene): boolean =>
  scene.items.every((item) => !hasTag(item, 'finding') || item.text === 'clean') &&
  !scene.nouns.some((noun) => noun.code === 'first-layer');
/** "the belts are fine" answers somebody; "belts fine" is a line of a round. */
const saysBe = (scene: Scene): boolean =>
  scene.items.some(
    (item, at) => isFn(item, 'be') && item.text !== "'s" && !hasTag(item, 'finding') && at > 0,
  );

function once(nouns: readonly NounAt[]): Named[] {
  const named = nouns.flatMap((noun): Named[] => {
    const task = TASKS_OF.look?.[noun.code];
    return task === undefined ? [] : [{ task, noun, verb: 'look' }];
  });
  return named.filter((one, i) => named.findIndex((other) => other.task === one.task) === i);
}

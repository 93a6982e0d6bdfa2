/** A deed told by what came of it: "the bed is level again", "got the gantry square", "made the nozzle free". */
import { isFn } from '../../item.ts';
import { deedOf, objects, type Scene, someFn } from '../../scene.ts';
import type { VerbClass } from '../../senses.ts';
import type { Named } from './tasks.ts';
import { TASKS_OF } from './task-table.ts';

/** The state that a class of deeds leaves behind. */
const LEAVES: readonly (readonly [VerbClass, RegExp])[] = [
  ['level', /^(?:level|flat|even|in tram)$/u],
  ['square', /^(?:square|parallel|aligned|true)$/u],
  ['tighten', /^(?:tight|tensioned|taut|snug|all tight)$/u],
  ['clean', /^(?:clean|spotless|dust free|shiny|sparkling|gleaming|spick and span)$/u],
  ['clear', /^(?:free|unblocked|unclogged|clear)$/u],
];

export function byResult(scene: Scene): Named[] {
  // "firmware was brought up to the March release"
  const brought = /\bbrought (?:up )?to\b/u.test(scene.text) ? scene.nouns.find((noun) => noun.code === 'firmware') : undefined; // prettier-ignore
  if (brought) return [{ task: 'update-firmware', noun: brought, verb: 'update' }];
  const made = deedOf(scene, 'get', 'make') !== undefined;
  if (!made && !isAgain(scene) && !shines(scene)) return [];
  if (/\bis now \d+(?:\.\d+)+\b|\b(?:up to date|current|on the (?:new|newest|latest))\b/u.test(scene.text)) {
    const firmware = scene.nouns.find((noun) => noun.code === 'firmware');
    if (firmware) return [{ task: 'update-firmware', noun: firmware, verb: 'update' }];
  }
  for (const [verb, words] of LEAVES) {
    if (!scene.items.some((item) => words.test(item.text)) || (verb === 'clear' && !made)) continue;
    const noun = objects(scene).find((one) => TASKS_OF[verb]?.[one.code] !== undefined);
    const task = noun === undefined ? undefined : TASKS_OF[verb]?.[noun.code];
    // "hazel's wheels are shiny" tells of no cleaning
    const looked = verb === 'clean' && task?.startsWith('check-') === true && !made;
    if (noun !== undefined && task !== undefined && !looked) return [{ task, noun, verb }];
  }
  return [];
}
/** "plate hazel spotless": nothing shines by itself. */
const shines = (scene: Scene): boolean =>
  scene.verbs.every((verb) => !verb.deed) &&
  scene.items.some((item) => /^(?:spotless|sparkling|gleaming|shiny|spick and span)$/u.test(item.text));
/** "is … again", "… now", and without the verb "belts tight again". */
function isAgain(scene: Scene): boolean {
  const be = scene.items.some((item) => isFn(item, 'be'));
  const again = someFn(scene, 'again', 'now', 'just') || scene.items.some((item) => /^(?:back in|up to date|nice and)/u.test(item.text)); // prettier-ignore
  return again && (be || (someFn(scene, 'again') && scene.verbs.every((verb) => !verb.deed)));
}

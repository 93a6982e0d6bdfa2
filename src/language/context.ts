/** What a clause takes from its neighbours before any frame reads it: mood, and the thing that "it" stands for. */
import { isInterrogative } from './mood.ts';
import { hasTag, isFn } from './item.ts';
import type { NounAt, Scene } from './scene.ts';

/** Conditions and quotes hold to the end of their sentence; a question mark only for what asks. */
function settleMoods(scenes: readonly Scene[]): Scene[] {
  let sentence = -1;
  let conditional = false;
  let reported = false;
  let asking = -1;
  return scenes.map((scene, i) => {
    if (scene.clause.sentence !== sentence) {
      conditional = reported = false;
      sentence = scene.clause.sentence;
      asking = scene.clause.asked ? firstAsking(scenes, i) : -1;
    }
    conditional ||= scene.mood.conditional;
    reported ||= scene.mood.reported;
    const question = scene.mood.question && (asking < 0 || i >= asking || isInterrogative(scene.items));
    return { ...scene, mood: { ...scene.mood, question, conditional, reported } };
  });
}
/** "birch kept clicking so I cleaned it, what's next?": the first clause of the sentence that asks by its words. */
function firstAsking(scenes: readonly Scene[], from: number): number {
  const sentence = scenes[from]?.clause.sentence;
  for (
    let i = from;
    i < Math.min(scenes.length, from + 12) && scenes[i]?.clause.sentence === sentence;
    i += 1
  ) {
    const items = scenes[i]?.items ?? [];
    if (
      isInterrogative(items) ||
      items.some(
        (item) => hasTag(item, 'cue') && item.senses.some((s) => s.tag === 'cue' && s.code === 'idea'),
      )
    )
      return i;
  }
  return -1;
}

const POINTS: Parameters<typeof isFn>[1][] = ['it', 'this', 'they', 'these', 'both'];
const CARE = new Set([
  'clean',
  'wipe',
  'oil',
  'tighten',
  'tension',
  'swap',
  'fit',
  'install',
  'look',
  'adjust',
  'clear',
  'trim',
  'dry',
  'update',
  'save',
  'put',
  'did',
  'test',
  'calibrate',
  'fix',
  'level',
  'put-off',
]);
/** Nouns that nothing is ever done to: they do not stand in the way of "it". */
const MERE = new Set(['shelf', 'side', 'job', 'corner', 'floor']);

/** "took the last sock and fitted it", "the gear was packed so I cleaned that", "old nozzle out, put a 0.6 in". */
function lendNouns(scenes: readonly Scene[]): Scene[] {
  let last: readonly NounAt[] = [];
  return scenes.map((scene) => {
    const own = scene.nouns.filter((noun) => !MERE.has(noun.code));
    const points =
      scene.items.some((item) => isFn(item, ...POINTS) && !hasTag(item, 'machine')) ||
      scene.items.some((item) => hasTag(item, 'spec') || isFn(item, 'new'));
    const does = scene.verbs.some((verb) => CARE.has(verb.code));
    if (own.length > 0) last = own;
    else if (points && does && last.length > 0)
      return { ...scene, nouns: last.map((noun) => ({ ...noun, at: -1 })) };
    return scene;
  });
}

/** "belts on alder and wheels on birch": the deed is said once for both. */
function lendVerbs(scenes: readonly Scene[]): Scene[] {
  return scenes.map((scene, i) => {
    const before = scenes[i - 1];
    if (
      !before ||
      scene.verbs.some((verb) => verb.form !== 'base') ||
      scene.nouns.length === 0 ||
      scene.clause.sentence !== before.clause.sentence
    )
      return scene;
    if (scene.clause.joint !== 'and' && scene.clause.joint !== 'comma') return scene;
    const machine = scene.items.some((item) => hasTag(item, 'machine'));
    const silent = scene.items.every(
      (item) =>
        !hasTag(item, 'symptom', 'complaint', 'state', 'value', 'finding') &&
        !isFn(item, 'new', 'did-it', 'be', 'not', 'will'),
    );
    const verbs = before.verbs.filter((verb) => verb.deed);
    return machine && silent && verbs.length > 0 && !before.mood.question
      ? { ...scene, verbs: verbs.map((verb) => ({ ...verb, at: -1 })) }
      : scene;
  });
}

export const inContext = (scenes: readonly Scene[]): Scene[] => lendVerbs(lendNouns(settleMoods(scenes)));

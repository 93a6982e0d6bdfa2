/** What a clause takes from its neighbours before any frame reads it: mood, and the thing that "it" stands for. */
import { isInterrogative } from './mood.ts';
import { hasTag, isFn, type Item } from './item.ts';
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
/** "alder 4 hours, birch 3 and cedar 2 would be nice": a row of figures is meant as its last clause means it. */
function wishBack(scenes: readonly Scene[]): Scene[] {
  const out = [...scenes];
  for (let i = out.length - 2; i >= 0; i -= 1) {
    const [here, after] = [out[i], out[i + 1]];
    if (!here || !after || here.clause.sentence !== after.clause.sentence) continue;
    const row = here.verbs.length === 0 && here.values.length > 0 && after.verbs.every((verb) => !verb.deed);
    const hopes = after.mood.wished || after.mood.planned;
    if (row && hopes && after.values.length > 0) out[i] = { ...here, mood: { ...here.mood, wished: true } };
  }
  return out;
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
const MERE = new Set(['shelf', 'side', 'job', 'corner', 'floor', 'gauge', 'paper']);
/** What a deed is done with: "fresh grease on both" is of what stands before. */
const STUFF = new Set<string>(['oil', 'grease', 'cloth', 'alcohol', 'air-can']);

/** "…, checked", "…, pushed to thursday": a deed alone is of what was just named. */
const follows = (scene: Scene): boolean =>
  (scene.items.length <= 3 &&
    scene.clause.joint !== 'sentence' &&
    scene.verbs.some((verb) => verb.deed) &&
    !scene.items.some((item) => hasTag(item, 'machine', 'value'))) ||
  (scene.items.length <= 2 &&
    scene.verbs.some((verb) => verb.deed && (verb.code === 'look' || verb.code === 'test'))) ||
  (scene.items.length <= 5 &&
    scene.clause.joint !== 'sentence' &&
    scene.verbs.some((verb) => verb.code === 'put-off' && verb.form !== 'ing' && verb.form !== 's'));

/** "took the last sock and fitted it", "the gear was packed so I cleaned that", "old nozzle out, put a 0.6 in". */
function lendNouns(scenes: readonly Scene[]): Scene[] {
  let last: readonly NounAt[] = [];
  return scenes.map((scene) => {
    const points =
      scene.items.some((item) => isFn(item, ...POINTS) && !hasTag(item, 'machine')) ||
      scene.items.some((item) => hasTag(item, 'spec') || isFn(item, 'new') || /^ones?$/u.test(item.text));
    const does = scene.verbs.some((verb) => CARE.has(verb.code));
    const own = scene.nouns.filter(
      (noun) =>
        !MERE.has(noun.code) &&
        !(STUFF.has(noun.code) && scene.verbs.some((verb) => verb.deed && verb.code === 'oil')),
    );
    if (own.length === 0 && last.length > 0 && countsAgain(scene))
      return { ...scene, nouns: [...scene.nouns, ...last.slice(-1).map((noun) => ({ ...noun, at: -1 }))] };
    if (own.length > 0) last = own;
    else if (
      (((points || follows(scene)) && does) ||
        scene.items.some((item) => /^new ones?$|^(?:fresh|spare) one$/u.test(item.text))) &&
      last.length > 0
    )
      return { ...scene, nouns: last.map((noun) => ({ ...noun, at: -1 })) };
    else if (last.length > 0 && (complains(scene) || oneOf(scene)))
      return { ...scene, nouns: last.map((noun) => ({ ...noun, at: -1 })) };
    return scene;
  });
}
/** How a first layer lies: "thick at the front and thin at the back" is of one layer. */
const OF_LAYERS = new Set<string>(['squashed', 'round-lines', 'gaps', 'thin', 'fat']);
const isComplaint = (item: Item, codes: ReadonlySet<string>): boolean =>
  item.senses.some((s) => s.tag === 'complaint' && codes.has(s.code));

/** "… three bottles in the cupboard now", "so we're at zero": a count of what was just named. */
const countsAgain = (scene: Scene): boolean =>
  !scene.items.some((item) => hasTag(item, 'machine')) &&
  ((scene.nouns.some((noun) => noun.code === 'shelf') &&
    scene.items.some((item) => hasTag(item, 'unit') && !hasTag(item, 'value')) &&
    scene.values.some((value) => value.code === 'bare')) ||
    /\b(?:at|down to) (?:zero|none|nil|nothing|0|one|two)$/u.test(scene.text));
/** "checked the belts on elm, slack": a complaint alone is of what stands before it. */
const complains = (scene: Scene): boolean =>
  scene.items.length <= 4 &&
  // "tried to get it off, but gave up": who speaks gave up.
  !(
    scene.clause.joint === 'but' &&
    /^(?:gave up|packed in|packed up|quit|stopped)$/u.test(scene.items[0]?.text ?? '')
  ) &&
  (['comma', 'colon', 'dash', 'but', 'bracket'].includes(scene.clause.joint) ||
    (scene.clause.joint === 'and' && scene.items.some((item) => isComplaint(item, OF_LAYERS)))) &&
  scene.items.some((item) => hasTag(item, 'complaint')) &&
  !scene.items.some((item) => hasTag(item, 'machine', 'value', 'symptom') && !hasTag(item, 'complaint'));

/** "the one on birch is fraying": the part is the one just named. */
const oneOf = (scene: Scene): boolean =>
  scene.items.some((item) => /^(?:the |that )?one$/u.test(item.text)) &&
  scene.items.some((item) => hasTag(item, 'complaint')) &&
  scene.items.some((item) => hasTag(item, 'machine'));

/** "belts on alder and wheels on birch": the deed is said once for both; "counted: 6 nozzles, 3 collets". */
function lendVerbs(scenes: readonly Scene[]): Scene[] {
  const out: Scene[] = [];
  for (const scene of scenes) out.push(withVerbs(scene, out.at(-1)));
  return out;
}

const COUNTING = new Set(['arrive', 'count', 'use', 'take', 'buy', 'bin']);
const LISTING = new Set(['and', 'comma', 'colon', 'dash']);

function withVerbs(scene: Scene, before: Scene | undefined): Scene {
  if (!before || before.mood.question || scene.nouns.length === 0) return scene;
  const too =
    scene.items.some((item) => isFn(item, 'too') && !hasTag(item, 'joint')) &&
    scene.items.some((item) => hasTag(item, 'machine', 'part', 'thing')) &&
    scene.verbs.every((verb) => verb.form === 'base' || verb.form === 's');
  if (too && before.verbs.some((verb) => verb.deed))
    return { ...scene, verbs: before.verbs.filter((verb) => verb.deed).map((verb) => ({ ...verb, at: -1 })) };
  if (scene.clause.sentence !== before.clause.sentence || scene.verbs.some((verb) => verb.form !== 'base'))
    return scene;
  const { items } = scene;
  const lend = (verbs: Scene['verbs']): Scene => ({
    ...scene,
    verbs: verbs.map((verb) => ({ ...verb, at: -1 })),
  });
  const counts = before.verbs.filter((verb) => verb.deed && COUNTING.has(verb.code));
  const list =
    items.some((item) => hasTag(item, 'value')) &&
    !items.some(
      (item) => hasTag(item, 'machine', 'state', 'symptom', 'complaint') || isFn(item, 'be', 'left', 'not'),
    );
  if (list && counts.length > 0 && LISTING.has(scene.clause.joint)) return lend(counts);
  if (scene.clause.joint !== 'and' && scene.clause.joint !== 'comma') return scene;
  const machine = items.some((item) => hasTag(item, 'machine'));
  const silent = items.every(
    (item) =>
      !hasTag(item, 'symptom', 'complaint', 'state', 'value', 'finding') &&
      !isFn(item, 'new', 'did-it', 'be', 'not', 'will'),
  );
  const deeds = before.verbs.filter((verb) => verb.deed);
  return machine && silent && deeds.length > 0 ? lend(deeds) : scene;
}

/** "belts on alder and wheels on birch checked": the deed at the end is of both. */
function lendBack(scenes: readonly Scene[]): Scene[] {
  return scenes.map((scene, i) => {
    const after = scenes[i + 1];
    if (
      !after ||
      after.clause.joint !== 'and' ||
      after.clause.sentence !== scene.clause.sentence ||
      after.mood.question ||
      scene.nouns.length === 0
    )
      return scene;
    const bare =
      scene.items.every(
        (item) =>
          !hasTag(item, 'verb', 'symptom', 'complaint', 'state', 'value', 'finding') ||
          (hasTag(item, 'part', 'thing') && !item.senses.some((s) => s.tag === 'verb' && s.form !== 'base')),
      ) &&
      !scene.items.some((item) => isFn(item, 'new', 'did-it', 'be', 'not', 'will') && item.text !== "'s");
    const deeds = after.verbs.filter(
      (verb) => verb.deed && after.nouns.some((noun) => noun.at >= 0 && noun.at < verb.at),
    );
    const both = [scene, after].every((one) => one.items.some((item) => hasTag(item, 'machine')));
    return bare && both && deeds.length > 0
      ? { ...scene, verbs: deeds.map((verb) => ({ ...verb, at: scene.items.length })) }
      : scene;
  });
}

export const inContext = (scenes: readonly Scene[]): Scene[] =>
  lendVerbs(lendNouns(lendBack(wishBack(settleMoods(scenes)))));

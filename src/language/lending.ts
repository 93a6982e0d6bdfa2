/** What a clause takes from its neighbours beside their mood: the thing that "it" stands for, a deed said once for two, a shelf. */
import { hasTag, isFn, type Item } from './item.ts';
import { lexicon } from './lexicon.ts';
import {
  asserted,
  knownAs,
  lentNoun,
  lentVerb,
  type NounAt,
  nounAt,
  type Scene,
  sceneWith,
} from './scene.ts';
import { longest } from './trie.ts';

const WITHIN = new Map<string, NounAt | undefined>();
/** The last part or thing among the words; the words of troubles are few, so each is looked at once. */
function nounWithin(text: string): NounAt | undefined {
  if (!WITHIN.has(text)) {
    const words = text.split(' ').map((word) => ({ text: word }));
    const nouns = words.flatMap((_, at): NounAt[] => {
      const senses = longest(lexicon().words, words, at)?.senses ?? [];
      const part = senses.find((s) => s.tag === 'part');
      const thing = senses.find((s) => s.tag === 'thing');
      if (part) return [nounAt(part.code, part.code, false, -1)];
      return thing ? [nounAt(thing.code, undefined, true, -1)] : [];
    });
    WITHIN.set(text, nouns.at(-1));
  }
  return WITHIN.get(text);
}

const POINTS: Parameters<typeof isFn>[1][] = ['it', 'this', 'they', 'these', 'both'];
export const CARE = new Set([
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

/** "pulled the tube and cut 3 mm off". */
const cutsOff = (scene: Scene): boolean =>
  scene.clause.joint !== 'sentence' &&
  scene.verbs.some((verb) => verb.deed && verb.code === 'trim') &&
  (scene.values.some((value) => value.code === 'other') || /\bends?\b/u.test(scene.text));

/** "put fresh oil on them": on what was named before. */
const putsOn = (scene: Scene, at: number): boolean =>
  isFn(scene.items[at + 1], 'on') && isFn(scene.items[at + 2], 'they', 'it', 'both', 'these');

/** "…, checked", "…, pushed to thursday": a deed alone is of what was just named. */
const follows = (scene: Scene): boolean =>
  (scene.items.length <= 3 &&
    scene.clause.joint !== 'sentence' &&
    scene.verbs.some((verb) => verb.deed) &&
    !scene.items.some((item) => hasTag(item, 'machine', 'value'))) ||
  (scene.items.length <= 2 &&
    scene.values.length === 0 &&
    scene.verbs.some((verb) => verb.deed && (verb.code === 'look' || verb.code === 'test'))) ||
  (scene.items.length <= 5 &&
    scene.clause.joint !== 'sentence' &&
    scene.verbs.some((verb) => verb.code === 'put-off' && verb.form !== 'ing' && verb.form !== 's'));

/** "took the last sock and fitted it", "the gear was packed so I cleaned that", "old nozzle out, put a 0.6 in". */
export function lendNouns(scenes: readonly Scene[]): Scene[] {
  let last: readonly NounAt[] = [];
  // A part within the words of a trouble is what a deed behind it was done to, and nothing else.
  let troubled: readonly NounAt[] | undefined;
  return scenes.map((scene, i) => {
    const points =
      scene.items.some((item) => isFn(item, ...POINTS) && !hasTag(item, 'machine')) ||
      scene.items.some((item) => hasTag(item, 'spec') || isFn(item, 'new') || /^ones?$/u.test(item.text));
    const does = scene.verbs.some((verb) => CARE.has(verb.code));
    const own = scene.nouns.filter(
      (noun) =>
        !MERE.has(noun.code) &&
        !(
          STUFF.has(noun.code) &&
          (scene.verbs.some((verb) => verb.deed && verb.code === 'oil') ||
            putsOn(scene, noun.at) ||
            // "scrubbed it down with alcohol"
            isFn(scene.items[noun.at - 1], 'with'))
        ),
    );
    if (own.length === 0 && last.length > 0 && countsAgain(scene))
      return sceneWith(scene, { nouns: [...scene.nouns, ...last.slice(-1).map(lentNoun)] });
    if (own.length === 0 && last.length > 0 && binsOf(scene, scenes[i - 1]))
      return sceneWith(scene, { nouns: last.slice(-1).map(lentNoun) });
    const lent = troubled ?? last;
    troubled = own.length > 0 ? undefined : (ofTroubles(scene) ?? troubled);
    if (own.length > 0) {
      last = own.length > 1 ? own.filter((noun) => !saysWhereOf(scene, noun)) : own;
      if (own.length > last.length && complainsOfOne(scene)) return sceneWith(scene, { nouns: last });
    } else if (
      (((points || follows(scene) || cutsOff(scene)) && does) || hasNewOne(scene)) &&
      lent.length > 0
    )
      return sceneWith(scene, { nouns: lent.map(lentNoun) });
    else if (last.length > 0 && (complains(scene) || oneOf(scene)))
      return sceneWith(scene, { nouns: last.map(lentNoun) });
    return scene;
  });
}
/** "found a loose belt and tightened it": the part within the words of a trouble. */
function ofTroubles(scene: Scene): readonly NounAt[] | undefined {
  const found = scene.items.flatMap((item): NounAt[] => {
    const noun = hasTag(item, 'symptom') && item.text.includes(' ') ? nounWithin(item.text) : undefined;
    return noun === undefined ? [] : [noun];
  });
  return found.length > 0 ? found : undefined;
}
/** "4 nozzles came, binned a bent one": of those that came; the one that a swap took out was no spare. */
const binsOf = (scene: Scene, before: Scene | undefined): boolean =>
  before?.clause.sentence === scene.clause.sentence &&
  before.verbs.some((verb) => verb.deed && verb.code === 'arrive') &&
  scene.verbs.some((verb) => verb.deed && verb.code === 'bin') &&
  scene.items.some((item) => /^ones?$|^of them$/u.test(item.text));
/** "there's a new one in there", "the replacement is in", "four fresh ones went on". */
const hasNewOne = ({ items }: Scene): boolean =>
  items.some(
    (item, at) =>
      /^(?:an? )?(?:brand )?(?:new|fresh|spare) ones?$/u.test(item.text) ||
      (item.text === 'replacement' &&
        isFn(items[at + 1], 'be') &&
        isFn(items[at + 2], 'in', 'on') &&
        !isFn(items[at + 3], 'article')) ||
      (isFn(item, 'new') && /^ones?$/u.test(items[at + 1]?.text ?? '')),
  );
/** "the liner was worn at the tip": of the liner; the tip is where. */
const saysWhereOf = (scene: Scene, noun: NounAt): boolean => {
  const at = isFn(scene.items[noun.at - 1], 'article', 'its') ? noun.at - 2 : noun.at - 1;
  // "snapped off its bracket"
  if (isFn(scene.items[noun.at - 1], 'its') && scene.items[at]?.text.endsWith(' off') === true) return true;
  return (
    noun.at > 0 && isFn(scene.items[at], 'at') && scene.nouns.some((other) => other.at >= 0 && other.at < at)
  );
};
const complainsOfOne = (scene: Scene): boolean =>
  scene.items.some((item) => hasTag(item, 'complaint')) && scene.verbs.every((verb) => !verb.deed);
/** "the nut of the Z screw was worn, so I fitted a new nut": the same nut. */
export function sameNut(scenes: readonly Scene[]): Scene[] {
  let named = false;
  return scenes.map((scene) => {
    const nouns = scene.nouns.map((noun): NounAt =>
      named && /^nuts?$/u.test(scene.items[noun.at]?.text ?? '') ? knownAs(noun, 'screw-nut') : noun,
    );
    named ||= scene.nouns.some((noun) => noun.code === 'screw-nut');
    return named ? sceneWith(scene, { nouns }) : scene;
  });
}
/** How a first layer lies: "thick at the front and thin at the back" is of one layer. */
const OF_LAYERS = new Set<string>(['squashed', 'round-lines', 'gaps', 'thin', 'fat']);
/** What is done to a thing by accident. */
const HARM = new Set<string>(['scratched', 'bent', 'torn', 'cracked', 'broken']);
const isComplaint = (item: Item | undefined, codes: ReadonlySet<string>): boolean =>
  item?.senses.some((s) => s.tag === 'complaint' && codes.has(s.code)) === true;

/** "… three bottles in the cupboard now", "so we're at zero": a count of what was just named. */
const countsAgain = (scene: Scene): boolean =>
  !scene.items.some((item) => hasTag(item, 'machine')) &&
  ((scene.nouns.some((noun) => noun.code === 'shelf') &&
    scene.items.some((item) => hasTag(item, 'unit') && !hasTag(item, 'value')) &&
    scene.values.some((value) => value.code === 'bare')) ||
    saysHowMany(scene) ||
    /\b(?:at|down to) (?:zero|none|nil|nothing|0|one|two)$/u.test(scene.text));
/** "there are 14", "we have 5 of them left": a figure and nothing that it is of. */
const saysHowMany = (scene: Scene): boolean =>
  scene.values.length === 1 &&
  scene.values[0]?.code === 'bare' &&
  scene.verbs.every((verb) => ['get', 'take', 'find', 'make', 'put-off', 'leave'].includes(verb.code)) &&
  /^(?:that |which |it )?leaves (?:us |only |with |us with |just )*\S+$|^(?:only |just )?\S+ left(?: now| over| on the shelf| in the (?:drawer|box|cupboard))?$|^(?:so |and |that )?(?:(?:there|we|i) (?:are|is|'s|'re|have|'ve|'ve got|have got|got) |it 's |makes )(?:about |only |still |exactly |now )?\S+(?: of them| of those)?(?: left| now| still| in all| in total| there)?$/u.test(
    scene.text,
  );
/** "checked the belts on elm, slack": a complaint alone is of what stands before it. */
const complains = (scene: Scene): boolean =>
  (scene.items.length <= 4 ||
    (scene.items.length <= 7 &&
      isFn(scene.items[0], 'it') &&
      !scene.items.some((item) => hasTag(item, 'state')))) &&
  // "tried to get it off, but gave up": who speaks gave up.
  !(
    scene.clause.joint === 'but' &&
    /^(?:gave up|packed in|packed up|quit|stopped)$/u.test(scene.items[0]?.text ?? '')
  ) &&
  (['comma', 'colon', 'dash', 'but', 'bracket'].includes(scene.clause.joint) ||
    // "… a connector which is brown and hot"
    (scene.clause.joint === 'because' && isFn(scene.items[0], 'be')) ||
    (scene.clause.joint === 'and' &&
      (scene.items.length === 1 ||
        (scene.items.length === 2 && isFn(scene.items[0], 'be')) ||
        scene.items.some((item) => isComplaint(item, OF_LAYERS)) ||
        // "… into the plate and scratched it badly"
        (scene.items.some((item) => isFn(item, 'it')) && isComplaint(scene.items[0], HARM))))) &&
  scene.items.some((item) => hasTag(item, 'complaint')) &&
  !scene.items.some((item) => hasTag(item, 'machine', 'value', 'symptom') && !hasTag(item, 'complaint'));

/** "the one on birch is fraying": the part is the one just named. */
const oneOf = (scene: Scene): boolean =>
  scene.items.some((item) => /^(?:the |that )?one$/u.test(item.text)) &&
  scene.items.some((item) => hasTag(item, 'complaint')) &&
  scene.items.some((item) => hasTag(item, 'machine'));

/** "belts on alder and wheels on birch": the deed is said once for both; "counted: 6 nozzles, 3 collets". */
export function lendVerbs(scenes: readonly Scene[]): Scene[] {
  const out: Scene[] = [];
  for (const scene of scenes) out.push(withVerbs(scene, out.at(-1)));
  return out;
}

/** "… got replaced, and I did the thermistor too". */
const swapped = (scene: Scene): boolean => scene.verbs.some((verb) => verb.deed && verb.code === 'swap');

/** "put 2 spools of filament and one spool holder in the cupboard": where the list ends is where all of it went. */
export function lendShelf(scenes: readonly Scene[]): Scene[] {
  return scenes.map((scene, i) => {
    const after = scenes[i + 1];
    const shelf = after?.nouns.find((noun) => noun.code === 'shelf');
    const put = scene.verbs.filter((verb) => verb.deed && verb.code === 'put');
    const list =
      shelf !== undefined &&
      put.length > 0 &&
      after?.clause.joint === 'and' &&
      after.clause.sentence === scene.clause.sentence &&
      [scene, after].every((one) => one.values.some((value) => value.code === 'bare') && !one.machine) &&
      after.verbs.every((verb) => !verb.deed) &&
      scene.nouns.every((noun) => noun.code !== 'shelf');
    return list ? sceneWith(scene, { nouns: [...scene.nouns, lentNoun(shelf)] }) : scene;
  });
}

const COUNTING = new Set(['arrive', 'count', 'use', 'take', 'buy', 'bin']);
const LISTING = new Set(['and', 'comma', 'colon', 'dash']);

function withVerbs(scene: Scene, before: Scene | undefined): Scene {
  // "mounted PETG on Cedar and plain PLA on Alder"
  const loads = before?.verbs.filter((verb) => verb.deed && verb.code === 'load') ?? [];
  if (
    before !== undefined &&
    loads.length > 0 &&
    asserted(before) &&
    before.materials.length > 0 &&
    scene.materials.length > 0 &&
    scene.machine &&
    scene.verbs.length === 0 &&
    scene.nouns.every((noun) => noun.code === 'spool') &&
    before.clause.sentence === scene.clause.sentence &&
    LISTING.has(scene.clause.joint) &&
    scene.values.every((value) => value.code === 'grams')
  )
    return sceneWith(scene, { verbs: loads.map((verb) => lentVerb(verb)) });
  if (!before || before.mood.question || scene.nouns.length === 0) return scene;
  const too =
    scene.items.some((item) => isFn(item, 'too') && !hasTag(item, 'joint')) &&
    scene.items.some((item) => hasTag(item, 'machine', 'part', 'thing')) &&
    scene.verbs.every(
      (verb) => verb.form === 'base' || verb.form === 's' || (verb.code === 'did' && swapped(before)),
    );
  if (too && before.verbs.some((verb) => verb.deed))
    return sceneWith(scene, {
      verbs: before.verbs.filter((verb) => verb.deed).map((verb) => lentVerb(verb)),
    });
  if (scene.clause.sentence !== before.clause.sentence || scene.verbs.some((verb) => verb.form !== 'base'))
    return scene;
  const { items } = scene;
  const lend = (verbs: Scene['verbs']): Scene =>
    sceneWith(scene, { verbs: verbs.map((verb) => lentVerb(verb)) });
  const shelved = scene.nouns.some((noun) => noun.code === 'shelf');
  const counts = before.verbs.filter(
    (verb) => verb.deed && (COUNTING.has(verb.code) || (shelved && verb.code === 'put')),
  );
  const list =
    (items.some((item) => hasTag(item, 'value')) ||
      (/^(?:an?|one|another)$/u.test(items[0]?.text ?? '') && hasTag(items[1], 'part'))) &&
    !items.some(
      (item) => hasTag(item, 'machine', 'state', 'symptom', 'complaint') || isFn(item, 'be', 'left', 'not'),
    );
  if (list && counts.length > 0 && LISTING.has(scene.clause.joint)) return lend(counts);
  if (scene.clause.joint !== 'and' && scene.clause.joint !== 'comma') return scene;
  const machine = items.some((item) => hasTag(item, 'machine'));
  // "fitted a new nut and a new lead screw"
  const fits = before.verbs.filter((verb) => verb.deed && ['swap', 'fit', 'install'].includes(verb.code));
  if (fits.length > 0 && !machine && isNewPart(scene)) return lend(fits);
  // "juniper got a new tube and a new collet"
  const got = before.verbs.filter((verb) => verb.deed && (verb.code === 'get' || verb.code === 'give'));
  if (
    got.length > 0 &&
    before.machine &&
    !machine &&
    isNewPart(scene) &&
    before.items.some((item) => isFn(item, 'new'))
  )
    return lend(got.map((verb) => ({ ...verb, code: 'fit' as const })));
  const silent = items.every(
    (item) =>
      !hasTag(item, 'symptom', 'complaint', 'state', 'value', 'finding') &&
      !isFn(item, 'new', 'did-it', 'be', 'not', 'will'),
  );
  const deeds = before.verbs.filter((verb) => verb.deed);
  return machine && silent && deeds.length > 0 ? lend(deeds) : scene;
}

/** "a new lead screw", "fresh sock": a new part, and nothing said of it. */
const isNewPart = ({ items, verbs }: Scene): boolean =>
  items.length <= 5 &&
  verbs.length === 0 &&
  items.some((item) => isFn(item, 'new')) &&
  items.every((item) => isFn(item, 'article', 'new', 'too', 'its') || hasTag(item, 'part', 'spec'));

/** "belts on alder and wheels on birch checked": the deed at the end is of both. */
export function lendBack(scenes: readonly Scene[]): Scene[] {
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
      ? sceneWith(scene, { verbs: deeds.map((verb) => lentVerb(verb, scene.items.length)) })
      : scene;
  });
}

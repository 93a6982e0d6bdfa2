/** What a clause takes from its neighbours before any frame reads it: mood, and the thing that "it" stands for. */
import { isSafetySymptom } from '../maintenance/codes.ts';
import { isInterrogative, readMood } from './mood.ts';
import { type Heading, headingIn, LONGEST_HEADING } from './headings.ts';
import { hasTag, isFn, type Item } from './item.ts';
import { lexicon } from './lexicon.ts';
import {
  asserted,
  knownAs,
  lentNoun,
  lentVerb,
  makeScene,
  type NounAt,
  nounAt,
  type Scene,
  sceneWith,
  type VerbAt,
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

/** "the old note on the wall says 'maple down'": read somewhere, and not told by who speaks. */
const WRITTEN =
  /\b(?:note|sign|label|sticker|poster|board|whiteboard|e ?mail|leaflet|card|letter)\b.{0,40}\bsays?\b/u;

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
    // "whenever its bed moves, #1 squeaks" tells of a trouble and when
    const holds =
      scene.mood.conditional && !/^(?:whenever|every time|each time)$/u.test(scene.items[0]?.text ?? '');
    conditional ||= holds || isUnreal(scene, scenes[i + 1]);
    reported ||=
      scene.mood.reported ||
      WRITTEN.test(scene.text) ||
      /\b(?:was|were|is|'s|'m|be)(?: all| just)? like$/u.test(scene.text);
    const unreal = isUnreal(scene, scenes[i + 1]);
    const question =
      !unreal &&
      (goesOnAsking(scenes, i) ||
        isTopicOf(scene, scenes[i + 1]) ||
        isYesOrNo(scene, scenes[i + 1]) ||
        isMeasureOf(scene, scenes[i + 1]) ||
        (scene.mood.question && (asking < 0 ? !isFelt(scene) : i >= asking || isInterrogative(scene.items))));
    const { conditional: own } = scene.mood;
    return sceneWith(scene, { mood: { ...scene.mood, question, conditional: own || conditional, reported } });
  });
}
/** "I'll get the screw cleaned and greased", "I'll wash the plate and oil the rods": promised in one breath. */
function promiseOn(scenes: readonly Scene[]): Scene[] {
  const out: Scene[] = [];
  for (const scene of scenes) {
    const before = out.at(-1);
    const goesOn =
      before?.mood.promised === true &&
      !before.mood.negated &&
      before.clause.sentence === scene.clause.sentence &&
      /^(?:and|next|comma)$/u.test(scene.clause.joint) &&
      opensWithDeed(scene, before) &&
      !isFn(scene.items[0], 'i', 'we', 'it', 'they', 'had-to');
    const { promised, planned } = goesOn ? before.mood : scene.mood;
    out.push(goesOn ? sceneWith(scene, { mood: { ...scene.mood, promised, planned } }) : scene);
  }
  return out;
}
/** "rods I wipe first and then oil them": a deed told in the present goes on in the present. */
function reportOn(scenes: readonly Scene[]): Scene[] {
  let reporting = -1;
  return scenes.map((scene) => {
    const { sentence, joint } = scene.clause;
    if (scene.verbs.some((verb) => isPresentReport(scene, verb))) reporting = asserted(scene) ? sentence : -1;
    const at = isFn(scene.items[0], 'just', 'now', 'after') ? 1 : 0;
    const goesOn =
      reporting === sentence &&
      /^(?:and|next|comma)$/u.test(joint) &&
      asserted(scene) &&
      scene.verbs.some((verb) => verb.at === at && verb.form === 'base' && CARE.has(verb.code));
    const told = (verb: VerbAt): VerbAt => (verb.at === at ? { ...verb, deed: true } : verb);
    return goesOn ? sceneWith(scene, { verbs: scene.verbs.map(told) }) : scene;
  });
}
/** "I wipe the rods", "I fit a new one": a deed whose form may be the present. */
const isPresentReport = ({ items, verbs }: Scene, { at, deed, code }: VerbAt): boolean =>
  deed &&
  CARE.has(code) &&
  isFn(items[at - 1], 'i', 'we') &&
  verbs.some((verb) => verb.at === at && verb.form === 'base');
/** A base form, or a participle behind one: "get it cleaned and greased"; "…, cleaned the plate already" is done. */
function opensWithDeed(scene: Scene, before: Scene): boolean {
  const verbs = scene.verbs.filter((verb) => verb.at <= 1);
  if (verbs.some((verb) => verb.form === 'base')) return verbs.every((verb) => verb.form !== 'past');
  const participle = (verb: { form: string }): boolean => verb.form === 'past' || verb.form === 'both';
  return verbs.some(participle) && before.verbs.some(participle) && scene.clause.joint === 'and';
}
/** "had cedar been running, we'd have lost the batch": an "if" without the word, and what would have come of it. */
const isUnreal = (scene: Scene, next: Scene | undefined): boolean =>
  !scene.clause.asked &&
  /^(?:had|were|should)$/u.test(scene.items[0]?.text ?? '') &&
  (hasTag(scene.items[1], 'machine') ||
    isFn(scene.items[1], 'i', 'we', 'it', 'they', 'article', 'someone')) &&
  next?.clause.sentence === scene.clause.sentence &&
  (next.mood.wished || next.items.some((item, at) => item.text === "'d" && isFn(next.items[at + 1], 'have')));
/** "what makes it thick one side and thin the other": the second half has nobody of its own. */
function goesOnAsking(scenes: readonly Scene[], at: number): boolean {
  const [before, scene] = [scenes[at - 1], scenes[at]];
  return (
    before !== undefined &&
    scene !== undefined &&
    scene.clause.joint === 'and' &&
    scene.clause.sentence === before.clause.sentence &&
    before.mood.question &&
    isInterrogative(before.items) &&
    scene.items.length <= 5 &&
    !scene.machine &&
    scene.nouns.every((noun) => noun.part === undefined) &&
    scene.verbs.every((verb) => verb.form === 'base') &&
    hasTag(scene.items[0], 'complaint') &&
    !scene.items.some((item) => isFn(item, 'be', 'have', 'i', 'we', 'it'))
  );
}
/** "one full turn of a bed screw, how many millimetres is that": a measure that is asked about. */
const isMeasureOf = (scene: Scene, next: Scene | undefined): boolean =>
  next?.clause.sentence === scene.clause.sentence &&
  next.mood.question &&
  next.items.some((item) => isFn(item, 'this', 'it')) &&
  (hasTag(scene.items[0], 'value') || /^an?$/u.test(scene.items[0]?.text ?? '')) &&
  scene.verbs.every((verb) => !verb.deed) &&
  scene.items.some((item) => item.text === 'of') &&
  !scene.items.some((item) => hasTag(item, 'symptom', 'complaint', 'state') || isFn(item, 'be', 'have'));
/** "rowan for 30 hours: yes or no". */
const isYesOrNo = (scene: Scene, next: Scene | undefined): boolean =>
  next?.clause.sentence === scene.clause.sentence &&
  /^(?:yes or no|y or n|yay or nay|ok or not|or not)$/u.test(next.text);
/** "rowan stringing: better or worse than last month": what is asked about, and not told. */
const isTopicOf = (scene: Scene, next: Scene | undefined): boolean =>
  next !== undefined &&
  (next.clause.joint === 'colon' || next.clause.joint === 'dash') &&
  next.clause.sentence === scene.clause.sentence &&
  next.mood.question &&
  scene.items.length <= 4 &&
  scene.items.some((item) => hasTag(item, 'symptom')) &&
  scene.items.every(
    (item) => hasTag(item, 'machine', 'symptom') || isFn(item, 'on', 'of', 'in', 'possessive', 'article'),
  ) &&
  !scene.items.some((item) => item.senses.some((s) => s.tag === 'symptom' && isSafetySymptom(s.code)));
/** "as I touched its frame it gave me a tickle, like a fence??": felt, whatever mark stands at the end. */
const isFelt = (scene: Scene): boolean =>
  !isInterrogative(scene.items) &&
  scene.items.some((item) => item.senses.some((s) => s.tag === 'symptom' && isSafetySymptom(s.code))) &&
  scene.items.some((item) => isFn(item, 'i')) &&
  scene.items.some((item) => item.senses.some((s) => s.tag === 'verb' && s.form === 'past'));
const headingOf = (scene: Scene, next: Scene | undefined): Heading | undefined =>
  !next || scene.clause.asked || scene.machine || scene.items.length > LONGEST_HEADING
    ? undefined
    : headingIn(scene.text, next.clause.joint, next.clause.sentence === scene.clause.sentence);
const toldInPast = (scene: Scene): boolean => scene.verbs.some((verb) => verb.deed && verb.form === 'past');
const toldAsDone = (scene: Scene): boolean => toldInPast(scene) || scene.values.length > 0;
const HEADED_AS: Readonly<Record<Heading, Partial<Scene['mood']>>> = {
  lists: { requested: true },
  plans: { wished: true },
  cites: { reported: true },
};
/** A heading of work to come, or of another's words, holds for what it heads; a deed told in the past ends it. */
function underHeadings(scenes: readonly Scene[]): Scene[] {
  let heading: Heading | undefined;
  let sentence = -1;
  return scenes.map((scene, i) => {
    const own = headingOf(scene, scenes[i + 1]);
    if (own) {
      heading = own;
      sentence = scene.clause.sentence;
      return sceneWith(scene, { mood: { ...scene.mood, reported: true } });
    }
    if (heading === 'cites' && scene.clause.sentence !== sentence) heading = undefined;
    if (heading === 'lists' && (toldAsDone(scene) || scene.mood.question)) heading = undefined;
    if (
      heading === 'plans' &&
      (toldInPast(scene) || scene.mood.question || scene.clause.sentence !== sentence)
    )
      heading = undefined;
    if (heading === undefined) return scene;
    return sceneWith(scene, { mood: { ...scene.mood, ...HEADED_AS[heading] } });
  });
}

/** "fit": a past and a bidding. */
const isAlsoBase = (scene: Scene, at: number): boolean =>
  scene.verbs.some((verb) => verb.at === at && verb.form === 'base');
/** "…, please", "…, would you", "…, if you get a chance": asks for what stands before it. */
function askBack(scenes: readonly Scene[]): readonly Scene[] {
  return scenes.map((scene, i) => {
    const tail = scenes[i + 1];
    const asks =
      tail !== undefined &&
      tail.clause.sentence === scene.clause.sentence &&
      tail.items.length <= 3 &&
      tail.items.some((item) => isFn(item, 'please')) &&
      tail.items.every((item) => isFn(item, 'please', 'thanks', 'would', 'someone', 'you')) &&
      !scene.verbs.some((verb) => verb.deed && verb.form === 'past' && !isAlsoBase(scene, verb.at));
    return asks ? sceneWith(scene, { mood: { ...scene.mood, requested: true } }) : scene;
  });
}

/** "just need to tighten the belt and it's done", "one more screw and birch is back together": once that has been. */
const endsIn = (scene: Scene, before: Scene): boolean =>
  scene.clause.joint === 'and' &&
  scene.clause.sentence === before.clause.sentence &&
  scene.verbs.every((verb) => !verb.deed || isFn(scene.items[verb.at], 'did-it')) &&
  scene.items.some((item) => isFn(item, 'be')) &&
  ((before.mood.wished &&
    scene.items.length <= 4 &&
    scene.items.some((item) => isFn(item, 'it', 'this', 'we'))) ||
    (before.verbs.every((verb) => !verb.deed) &&
      /^(?:just |only )?(?:one more|a few more|two more|three more|another)\b/u.test(before.text)));
/** "will take 9 hours and 200 g on elm": the second figure is to come as the first is. */
function wishOn(scenes: readonly Scene[]): Scene[] {
  const out: Scene[] = [];
  for (const scene of scenes) {
    const before = out.at(-1);
    const row =
      before !== undefined &&
      before.clause.sentence === scene.clause.sentence &&
      scene.verbs.length === 0 &&
      scene.values.length > 0 &&
      (before.values.length > 0 || (before.mood.wished && before.machine && !scene.machine)) &&
      (before.mood.wished || before.mood.planned);
    const hoped = row || (before !== undefined && endsIn(scene, before));
    out.push(hoped ? sceneWith(scene, { mood: { ...scene.mood, wished: true } }) : scene);
  }
  return out;
}

/** "alder 4 hours, birch 3 and cedar 2 would be nice": a row of figures is meant as its last clause means it. */
function wishBack(scenes: readonly Scene[]): Scene[] {
  const out = [...scenes];
  for (let i = out.length - 2; i >= 0; i -= 1) {
    const [here, after] = [out[i], out[i + 1]];
    if (!here || !after || here.clause.sentence !== after.clause.sentence) continue;
    const row = here.verbs.length === 0 && here.values.length > 0 && after.verbs.every((verb) => !verb.deed);
    const hopes = after.mood.wished || after.mood.planned;
    if (row && hopes && after.values.length > 0)
      out[i] = sceneWith(here, { mood: { ...here.mood, wished: true } });
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
function lendNouns(scenes: readonly Scene[]): Scene[] {
  let last: readonly NounAt[] = [];
  // A part within the words of a trouble is what a deed behind it was done to, and nothing else.
  let troubled: readonly NounAt[] | undefined;
  return scenes.map((scene) => {
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
function sameNut(scenes: readonly Scene[]): Scene[] {
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
function lendVerbs(scenes: readonly Scene[]): Scene[] {
  const out: Scene[] = [];
  for (const scene of scenes) out.push(withVerbs(scene, out.at(-1)));
  return out;
}

/** "… got replaced, and I did the thermistor too". */
const swapped = (scene: Scene): boolean => scene.verbs.some((verb) => verb.deed && verb.code === 'swap');

/** "put 2 spools of filament and one spool holder in the cupboard": where the list ends is where all of it went. */
function lendShelf(scenes: readonly Scene[]): Scene[] {
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
      ? sceneWith(scene, { verbs: deeds.map((verb) => lentVerb(verb, scene.items.length)) })
      : scene;
  });
}

const putsOff = (item: Item | undefined): boolean =>
  item?.senses.some((s) => s.tag === 'verb' && s.code === 'put-off') === true &&
  !hasTag(item, 'part', 'thing');
/** "Move the plate check on elm and the probe check on cedar to Tuesday": one putting off, and one day, for both. */
function sharePutOff(scenes: readonly Scene[]): readonly Scene[] {
  return scenes.map((scene, i) => {
    const [before, after] = [scenes[i - 1], scenes[i + 1]];
    const opens =
      putsOff(scene.items[0]) &&
      after !== undefined &&
      goesOn(scene, after) &&
      untilIn(scene) < 0 &&
      scene.values.every((value) => value.code !== 'hours' && value.code !== 'days');
    if (opens && untilIn(after) > 0)
      return remade(scene, [...scene.items, ...after.items.slice(untilIn(after))]);
    const closes =
      before !== undefined && putsOff(before.items[0]) && goesOn(before, scene) && untilIn(before) < 0;
    return closes && untilIn(scene) > 0
      ? remade(scene, [...before.items.slice(0, 1), ...scene.items])
      : scene;
  });
}
const goesOn = (scene: Scene, after: Scene): boolean =>
  after.clause.joint === 'and' &&
  after.clause.sentence === scene.clause.sentence &&
  [scene, after].every((one) => one.machine && one.nouns.length > 0) &&
  !putsOff(after.items[0]);
/** Where "to Tuesday", "until Friday", "by a week" begins; nothing but the time may stand behind it. */
const untilIn = ({ items }: Scene): number => {
  const at = items.findLastIndex((item) => isFn(item, 'to', 'until', 'by'));
  return at > 0 &&
    items.slice(at + 1).length > 0 &&
    items.slice(at + 1).every((item) => hasTag(item, 'date', 'value') || isFn(item, 'article'))
    ? at
    : -1;
};
const remade = (scene: Scene, items: readonly Item[]): Scene => {
  const clause = { ...scene.clause, items };
  return makeScene(clause, readMood(clause), scene.index, scene.named);
};

/** In order: each may build on what those before it have settled. */
const PASSES: readonly ((scenes: readonly Scene[]) => readonly Scene[])[] = [
  sharePutOff, settleMoods, underHeadings, askBack, promiseOn, reportOn, wishBack, wishOn, lendBack, sameNut, lendNouns, lendShelf, lendVerbs,
]; // prettier-ignore
export const inContext = (scenes: readonly Scene[]): readonly Scene[] =>
  PASSES.reduce((row, pass) => pass(row), scenes);

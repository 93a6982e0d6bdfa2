/** What a clause takes from its neighbours before any frame reads it: mood, and the thing that "it" stands for. */
import { isSafetySymptom } from '../maintenance/codes.ts';
import { isInterrogative } from './asking.ts';
import { readMood } from './mood.ts';
import { type Heading, headingIn, LONGEST_HEADING } from './headings.ts';
import { hasTag, isFn, type Item } from './item.ts';
import { CARE, lendBack, lendNouns, lendShelf, lendVerbs, sameNut } from './lending.ts';
import { asserted, makeScene, type Scene, sceneWith, type VerbAt } from './scene.ts';

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

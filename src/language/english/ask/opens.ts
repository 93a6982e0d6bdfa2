/** Whether a clause asks at all: by its mood, by a verb of telling, or as a telegram of few words. */
import { hasTag, isFn, type Item } from '../../item.ts';
import { isCleft, isRelative } from '../../asking.ts';
import type { Scene } from '../../scene.ts';
import type { AskCue } from '../../senses.ts';
import { spareMinutes } from './question.ts';

const isCue = (item: Item | undefined, ...codes: readonly AskCue[]): boolean =>
  item?.senses.some((s) => s.tag === 'cue' && codes.includes(s.code)) ?? false;

/** Deeds that a question may name in its few words: "elm log", "hours run by alder". */
const MILD: ReadonlySet<string> = new Set(['read', 'get', 'did', 'take', 'find', 'use', 'run', 'print', 'last', 'look', 'log', 'give', 'hand', 'say', 'order', 'work', 'need', 'keep', 'count', 'have', 'leave']); // prettier-ignore
const LONGEST_TELEGRAM = 7;

/** "status #2", "overdue elm", "spare thermistors, how many": few words, a strong cue at either end, no deed. */
function terse(scene: Scene): boolean {
  const { items, mood } = scene;
  if (mood.negated || items.length > LONGEST_TELEGRAM) return false;
  // "hazel's meter was 1893 when I locked up" tells; "a spare is on order" too
  if (
    !mood.question &&
    (/\bon order\b/u.test(scene.text) ||
      (scene.nouns.some((noun) => noun.code === 'counter') &&
        scene.values.some((value) => value.value >= 50)))
  )
    return false;
  // "elm is not to be used" forbids
  if (
    items.some(
      (item) =>
        /^(?:not|no|nobody|don't|do not)\b/u.test(item.text) &&
        item.senses.some((s) => s.tag === 'state' && s.code === 'down'),
    )
  )
    // prettier-ignore
    return false;
  // "shelf count done"
  if (items.some((item) => isFn(item, 'did-it')) && !mood.question) return false;
  // "#6 can be used again" tells.
  if (
    !mood.question &&
    scene.text.endsWith(' again') &&
    items.some((item, at) => /^(?:can|may)\b/u.test(item.text) && at > 0)
  )
    return false;
  if (
    scene.values.some(
      (v) =>
        v.code !== 'days' &&
        v.code !== 'months' &&
        !(v.code === 'other' && items.some((item) => isCue(item, 'spec'))),
    )
  )
    return false;
  if (scene.verbs.some((verb) => verb.deed && !MILD.has(verb.code) && !isFn(items[verb.at], 'left')))
    return false;
  // "…, on the shelf": where what was told before is, no question of its own
  if (scene.index > 0 && isFn(items[0], 'on', 'in', 'at') && scene.clause.joint === 'comma' && !mood.question)
    return false;
  // "took the last sock from the shelf" tells of a deed
  if (items[0]?.senses.some((s) => s.tag === 'verb' && s.form === 'past')) return false;
  if (isFn(items[0], 'it', 'they', 'i', 'we') || items.some((item) => isFn(item, 'no', 'anymore')))
    return false;
  const asksHow = (item: Item): boolean =>
    isCue(item, 'how-many', 'how-long', 'how-tight') ||
    (isFn(item, 'how') && isCue(item, 'old', 'how-often'));
  if (isCue(items[0], 'strong') || items.some(asksHow)) return true;
  const last = items.findLast((item) => !hasTag(item, 'date', 'machine') && !isFn(item, 'please', 'thanks'));
  return isCue(last, 'strong') && !isTold(items) && !hasTag(last, 'state');
}
/** "the belts are due": said, not asked. */
const isTold = (items: readonly Item[]): boolean =>
  items.some((item) => isFn(item, 'be', 'have', 'not', 'will', 'should') && !hasTag(item, 'cue'));

/** "show me …", "tell me …": opens with a verb of telling, or holds an indirect question. */
function tells({ items, mood, verbs }: Scene): boolean {
  if (mood.promised || verbs.some((verb, i) => i === 0 && verb.deed && verb.form === 'past')) return false;
  const first = items.findIndex((item) => !isFn(item, 'please', 'thanks', 'now', 'sorry'));
  // "guide tube on birch was worn": a tube's name guides nobody
  const told = [items[first], items[0]].filter((item) => !hasTag(item, 'part'));
  return told.some((item) => isCue(item, 'tell')) || (told.length > 1 && isCue(items[0], 'embedded'));
}
const indirect = ({ items, mood }: Scene): boolean =>
  !mood.promised && items.some((item) => isCue(item, 'embedded'));

const LONGEST_IDEA = 6;
const hasIdea = ({ items }: Scene): boolean =>
  items.length <= LONGEST_IDEA && items.some((item) => isCue(item, 'idea'));

const HANDWORK: ReadonlySet<string> = new Set(['clean', 'wipe', 'dust', 'oil', 'tighten', 'tension', 'level', 'square', 'swap', 'fit', 'install', 'remove', 'look', 'test', 'adjust', 'trim', 'clear', 'load', 'put', 'fix', 'dry']); // prettier-ignore
/** More words than these stand not between who is asked and what for. */
const LONGEST_ADDRESS = 7;
/** "odd, can you swap the nozzle on cedar", "could one of the late shift check its wiring": hands are wanted, not an answer. */
function asksColleague({ items, verbs }: Scene): boolean {
  const at = items.findIndex(
    (item, i) =>
      /^(?:can|could|would|will) (?:you|someone|somebody|anyone|anybody|one of you|one of us)$/u.test(
        item.text,
      ) ||
      (/^(?:can|could|would|will)$/u.test(item.text) && isFn(items[i + 1], 'someone', 'any', 'you')),
  );
  if (at < 0) return false;
  const wanted = verbs.find(
    (verb) => verb.at > at && HANDWORK.has(verb.code) && verb.form !== 'past' && verb.form !== 's',
  );
  const between = items.slice(at + 1, wanted?.at ?? at + 2);
  // "@priya can you do alder's belts": who is called by name is no bot.
  if (
    at > 0 &&
    hasTag(items[at - 1], 'person') &&
    !verbs.some((verb) => verb.at <= at + 2 && verb.at > at && verb.code === 'say')
  )
    return true;
  return (
    wanted !== undefined &&
    between.length <= LONGEST_ADDRESS &&
    !between.some(
      (item) =>
        hasTag(item, 'machine', 'part', 'value') ||
        isCue(item, 'tell', 'embedded') ||
        isFn(item, 'i', 'we', 'if', 'when', 'what', 'who', 'how', 'why', 'which'),
    ) &&
    !isFn(items[wanted.at + 1], 'if', 'when', 'what', 'who', 'how', 'why', 'which')
  );
}

/** "is it ok if I leave at 5": of no printer at all. */
const asksLeave = ({ items, nouns, materials }: Scene): boolean =>
  nouns.length === 0 &&
  materials.length === 0 &&
  !items.some((item) => hasTag(item, 'machine')) &&
  items.some(
    (item, at) =>
      /^(?:ok|okay|alright|fine|all right)(?: if)?$/u.test(item.text) &&
      items.slice(at, at + 3).some((one) => isFn(one, 'if') || one.text.endsWith(' if')) &&
      items.slice(at, at + 4).some((one) => isFn(one, 'i')),
  );

const TIME_WORDS =
  /^(?:i|we|i've|i 've got|we 've got|got|have|'ve|'ve got|about|only|just|spare|free|to spare|left|now|here|so|ok|hi|hey|fettle|before lunch|today|then|half|an|a)$/u;
/** "I've got 20 mins", "half an hour free now": nothing else is said, and it is said to the bot. */
const hasTime = (scene: Scene): boolean =>
  spareMinutes(scene) !== undefined &&
  scene.items.length <= 7 &&
  scene.items.every((item) => hasTag(item, 'value', 'date') || TIME_WORDS.test(item.text));

/** "log that please": of what was just told. */
const isLogIt = ({ items }: Scene): boolean =>
  items.length <= 4 &&
  /^(?:log|note|record|write)$/u.test(items[0]?.text ?? '') &&
  isFn(items[1], 'this', 'it', 'they') &&
  items.slice(2).every((item) => isFn(item, 'please', 'thanks', 'down', 'for', 'i'));

/** "spare chargers": none of the printers'. */
const isOtherThing = (item: Item | undefined): boolean =>
  item !== undefined &&
  item.senses.every((s) => s.tag === 'foreign') &&
  /^\p{L}{4,}$/u.test(item.text) &&
  !/^(?:stuff|around|please|bits|here)$/u.test(item.text);
/** "…, in hours?": says what the answer is to be given in. */
const isUnitAlone = ({ items }: Scene): boolean =>
  items.length === 2 && isFn(items[0], 'in') && hasTag(items[1], 'unit');

export function opens(scene: Scene): boolean {
  const { mood } = scene;
  if (mood.reported || isCleft(scene.clause) || isRelative(scene.clause)) return false;
  // "what if we swapped them all", "how about a new nozzle", "what about greasing it on Sunday": proposed
  if (/^what if\b|^(?:how|what) about (?:an? |some |we |\p{L}+ing\b)/u.test(scene.text)) return false;
  // "how much does a kilo cost", "what time do we open", "any spare chargers"
  if (/\b(?:costs?|price|paying|pay for|paid for)\b|\bwe (?:open|close)\b/u.test(scene.text)) return false;
  if (scene.nouns.length === 0 && scene.items.some((item, at) => isCue(item, 'spare') && isOtherThing(scene.items[at + 1]))) return false; // prettier-ignore
  // "what would happen if birch ran dry"
  if (mood.conditional && /\bhappens?\b/u.test(scene.text)) return false;
  // "…, all used up": of what was just told
  if (
    !mood.question &&
    /^(?:all |now |completely )?(?:used up|gone|finished|empty)(?: now)?$/u.test(scene.text)
  )
    return false;
  // "tomasz showed me how"
  if (/\b(?:showed|shown|taught|told) (?:me|us|him|her) how\b/u.test(scene.text)) return false;
  // "any volunteers?", "log that please"
  if (scene.items.some((item) => /^volunteers?$/u.test(item.text)) || isLogIt(scene)) return false;
  // "which one I do not know any more"
  if (
    /^(?:which|what|who|when)\b.*\b(?:do not|don't|can't|cannot|didn't) (?:know|remember|recall|say)\b/u.test(
      scene.text,
    )
  )
    return false;
  if (asksColleague(scene) || isUnitAlone(scene) || asksLeave(scene)) return false;
  const brief = terse(scene) || hasTime(scene);
  if (!mood.question && !tells(scene) && !indirect(scene) && !brief && !hasIdea(scene)) return false;
  if (mood.conditional && !mood.question) return false;
  // "could you oil the rods" asks a colleague for a deed, not the bot for an answer.
  return !mood.requested || brief || scene.items.some((item) => isCue(item, 'tell', 'embedded', 'strong', 'fit', 'overview', 'rundown', 'bot')); // prettier-ignore
}

/** Does a clause ask? By its mark, its words and their order; "the lead, which is undamaged" and "what I did was …" tell. */
import type { Clause } from './clauses.ts';
import { hasTag, isFn, type Item, pastOnly } from './item.ts';

export const CANNOT_OFF = /^(?:can't|cant|cannot|can not|couldn't|could not|unable to) .*\boff$/u;

const INVERTED = new Set(['is', 'are', 'was', 'were', 'has', 'have', 'had', 'do', 'does', 'did', 'can', 'could', 'will', 'would', 'should', "isn't", "hasn't", "haven't", "didn't", "doesn't", "wasn't", "aren't", 'shall', 'am', 'may', "can't"]); // prettier-ignore
const SUBJECTS = new Set<string>([
  'i',
  'we',
  'you',
  'someone',
  'it',
  'they',
  'any',
  'article',
  'this',
  'my',
  'there',
  'nobody',
  'all',
  'which',
  'who',
  'its',
  'these',
  'both',
  'person',
  'printer',
  'old',
  'another',
  'last',
]);

/** Words that open a clause before its verb: greetings, "so", "hey". */
export const OPENER =
  /^(?:\uFFF9|so|hey|hi|hello|ok|okay|and|but|um|uh|well|fettle|please|anyone|right|also|oh|now|then|yo|guys|folks|team|morning|good|quick|question)$/u;

/** "dunno when", "can't say who". */
const isUnknown = (items: readonly Item[]): boolean =>
  items.some(
    (item) =>
      isFn(item, 'unsure', 'not', 'nobody') ||
      /\b(?:know|remember|say|tell|matter|idea|clue|showed|forgot)\b/u.test(item.text),
  );
/** "… or don't you", "… or does it", "better or worse than". */
const isTagged = (items: readonly Item[]): boolean =>
  items.some(
    (item, at) =>
      (item.text === 'or' &&
        at > 0 &&
        /^(?:do|don't|does|doesn't|did|didn't|is|isn't|are|aren't|can|can't|will|won't)$/u.test(
          items[at + 1]?.text ?? '',
        ) &&
        isFn(items[at + 2], 'you', 'it', 'they', 'we', 'i', 'this')) ||
      (item.text === 'or' &&
        /^(?:better|worse)$/u.test(items[at - 1]?.text ?? '') &&
        /^(?:better|worse)\b/u.test(items[at + 1]?.text ?? '')),
  );
/** "we got any socks left", "… left or nah": asked without a mark or an inversion. */
function asksByWords(items: readonly Item[]): boolean {
  const [last, beforeLast] = [items.at(-1), items.at(-2)];
  // "any socks left or", "… or don't you take that"
  if (items.length > 2 && last?.text === 'or') return true;
  if (isTagged(items)) return true;
  // "cedar belts last tensioned when"
  if (items.length > 2 && /^(?:when|who|why|by whom)$/u.test(last?.text ?? '') && !isUnknown(items))
    return true;
  // "is tensioning once a month too often", "do belts really have to go after a year"
  if (
    /^(?:is|are)$/u.test(items[0]?.text ?? '') &&
    /^(?:often|enough|soon|necessary|too \p{L}+|\p{L}+ enough|really necessary|overkill)$/u.test(
      last?.text ?? '',
    )
  )
    return true;
  if (
    items[0]?.text === 'do' &&
    hasTag(items[1], 'part', 'spec') &&
    items.length > 4 &&
    items.some((item) => isFn(item, 'should'))
  )
    return true;
  if (isFn(beforeLast, 'or') && /^(?:not|no|nah|naw|nope|what|nae)$/u.test(last?.text ?? '')) return true;
  const at = items.findIndex((item) => (item.text === 'got' || item.text === 'have') && isFn(item, 'have'));
  return (
    at >= 0 &&
    at <= 1 &&
    items[at + 1]?.text === 'any' &&
    (at === 0 || isFn(items[0], 'we', 'you')) &&
    !items.some((item) => isFn(item, 'not', 'nobody', 'nothing'))
  );
}

/** "roughly how much", "honestly who": said of the question. */
const isAdverb = (item: Item | undefined): boolean =>
  item !== undefined && item.senses.length === 0 && /^(?:\p{L}{3,}ly|about|approx|ca)$/u.test(item.text);
/** "￼ what …": what was quoted before says nothing. */
const isQuoteless = (item: Item | undefined): boolean => isFn(item, 'mention');

/** Not knowing, wishing to know: with a question word right behind it is a question. */
const UNKNOWING =
  /(?:^|\s)(?:sure|idea|clue|know|wonder|wondering|wondered|curious|remember|recall|interested|tell me|tell us|remind me|faintest|certain|find out|work out|figure out|look up|show me|explain|interesting to know|good to know|in doubt)(?: (?:about|of|on|as to))?$/u;
/** "not sure when we last tensioned hazel's belts", "would love to know how old the plate is", "curious whether elm …". */
function asksIndirectly(items: readonly Item[]): boolean {
  for (let at = 0; at < Math.min(6, items.length - 2); at += 1) {
    if (!UNKNOWING.test(items[at]?.text ?? '')) continue;
    const word = items[at + 1];
    if (!isFn(word, 'when', 'how', 'who', 'if', 'why') || word?.text === 'how to') continue;
    // "not sure which belt it was", "no idea why": of what was just told; a name or a part must be asked about
    const about = items.slice(at + 2);
    return (
      about.some((item) => hasTag(item, 'machine', 'part')) &&
      !items.slice(0, at).some((item) => hasTag(item, 'machine', 'part', 'person')) &&
      !about.some((item) => hasTag(item, 'symptom')) &&
      !isFn(items[0], 'you', 'someone') &&
      // "tell me if it jams" asks for a word to come, "see if …" is a deed to come
      !(isFn(word, 'if') && /(?:tell me|tell us|remind me|out|up)$/u.test(items[at]?.text ?? ''))
    );
  }
  return false;
}

const LONGEST_TOPIC = 7;
/** "alder, what wants doing", "x belt on alder - when's it up for renewal": what is asked of stands before the question. */
function topicEnd(items: readonly Item[]): number {
  let at = 0;
  while (at < Math.min(items.length, LONGEST_TOPIC) && isTopic(items[at])) at += 1;
  const [word, next] = [items[at], items[at + 1]];
  const asks =
    (isFn(word, 'what', 'why', 'how') && !isFn(word, 'which')) ||
    (isFn(word, 'when') && (word?.text !== 'when' || isFn(next, 'be', 'do', 'have', 'will', 'should')));
  return asks && at > 0 && next !== undefined && items.slice(0, at).some((item) => hasTag(item, 'machine', 'part')) ? at : 0; // prettier-ignore
}
const isTopic = (item: Item | undefined): boolean =>
  item !== undefined &&
  (hasTag(item, 'machine', 'part', 'thing', 'spec') ||
    isFn(item, 'article', 'on', 'in', 'of', 'for', 'possessive', 'my', 'these', 'they', 'new', 'old') ||
    hasTag(item, 'before-person')) &&
  !item.senses.some((s) => s.tag === 'verb' && s.form === 'past') &&
  !hasTag(item, 'complaint', 'symptom', 'state');

/** "…, which is undamaged": of what stands before it. */
export const isRelative = ({ items, joint, asked }: Clause): boolean =>
  !asked &&
  (joint === 'comma' || joint === 'and' || joint === 'bracket') &&
  ((items[0]?.text === 'which' && isFn(items[1], 'be', 'have', 'i', 'we', 'do', 'not')) ||
    (items[0]?.text === 'where' && isFn(items[1], 'they', 'it')));
/** "what I changed was the pulley", "what I just logged happened yesterday": told, for nothing is inverted. */
export const isCleft = ({ items, asked }: Clause): boolean =>
  !asked &&
  items[0]?.text === 'what' &&
  isFn(items[1], 'i', 'we', 'they', 'person') &&
  items
    .slice(2, 5)
    .some((item) => pastOnly(item) || item.senses.some((s) => s.tag === 'verb' && s.form === 'both'));

export const opensWith = (items: readonly Item[], ...starts: readonly string[]): boolean =>
  starts.some((start) => items[0]?.text.startsWith(start));
export const textOf = (items: readonly Item[]): string => items.map((item) => item.text).join(' ');

/** "did elm's belts": what was done to the machine's own; "did elm's belts get done" asks. */
const didOwned = (rest: readonly Item[]): boolean =>
  isFn(rest[0], 'possessive') &&
  hasTag(rest[1], 'part', 'thing') &&
  rest
    .slice(2)
    .every(
      (item) =>
        hasTag(item, 'part', 'thing', 'date', 'machine', 'spec') ||
        isFn(item, 'too', 'possessive', 'on', 'article', 'its', 'just', 'with', 'again'),
    );

export function isInterrogative(items: readonly Item[]): boolean {
  // "did the thing at the printer" tells
  if (opensWith(items, 'did') && /^did (?:the|that|this) (?:thing|usual|stuff)\b/u.test(textOf(items)))
    return false;
  // "then thought, why stop"
  if (opensWith(items, 'w') && /^(?:well )?why (?:stop|bother|not)$/u.test(textOf(items))) return false;
  if (asksByWords(items) || asksIndirectly(items)) return true;
  const topic = topicEnd(items);
  if (topic > 0) return isInterrogative(items.slice(topic));
  let at = 0;
  while (
    at < Math.min(3, items.length - 1) &&
    (OPENER.test(items[at]?.text ?? '') || isAdverb(items[at]) || isQuoteless(items[at]))
  )
    at += 1;
  const first = items[at];
  if (!first) return false;
  if (
    isFn(first, 'since', 'for', 'in', 'on', 'at', 'by', 'until', 'from', 'to') &&
    isFn(items[at + 1], 'what', 'when', 'which', 'how', 'who')
  )
    return true;
  if (isFn(first, 'who', 'what', 'why', 'how', 'which', 'where')) return true;
  if (isFn(first, 'when'))
    return (
      first.text !== 'when' ||
      isFn(items[at + 1], 'be', 'do', 'have', 'should', 'will', 'would') ||
      at + 1 >= items.length ||
      hasTag(items[at + 1], 'cue')
    );
  if (isFn(first, 'sorry', 'let-me', 'too')) return false;
  // "do not start maple" forbids
  if (first.senses.some((s) => s.tag === 'state' && s.code === 'down')) return false;
  // "can't turn off the heater": the speaker is left out
  if (CANNOT_OFF.test(first.text)) return false;
  const head = first.text.split(' ')[0] ?? '';
  // "would be 14 h, too long": said of it, and nothing inverted
  if (/^(?:would|could|might|should) be$/u.test(first.text)) return false;
  // "didn't oil em yet"
  if (head.endsWith("n't") && hasTag(items[at + 1], 'verb') && !hasTag(items[at + 1], 'fn')) return false;
  if (!INVERTED.has(head) || (first.text !== head && hasTag(first, 'verb'))) return false;
  const next = items[at + 1];
  if (
    (head === 'have' || head === 'has' || head === 'had') &&
    isFn(next, 'article', 'my', 'all') &&
    items.some((item) => item.text === 'been' || /\bbeen\b/u.test(item.text))
  )
    return true;
  // "do hardened nozzles last longer": a verb follows; "do belts elm" is a note.
  if (head === 'do' && hasTag(next, 'spec', 'part') && items.slice(at + 2).some((item) => hasTag(item, 'verb'))) return true; // prettier-ignore
  // "have layer shifts on rowan become more common"
  if ((head === 'have' || head === 'has') && at === 0 && items.length > 4 && hasTag(next, 'symptom'))
    return true;
  // "and did maple's as well" goes on, it does not ask; "did elm's belts and rods" tells.
  if (
    head === 'did' &&
    hasTag(next, 'machine') &&
    (items.slice(at + 2).every((item) => isFn(item, 'too', 'possessive')) || didOwned(items.slice(at + 2)))
  )
    return false;
  // "did hazel's belts" tells; "did hazel's belts get done" asks.
  if (
    head === 'did' &&
    hasTag(next, 'machine') &&
    isFn(items[at + 2], 'possessive') &&
    !items
      .slice(at + 3)
      .some((item) => hasTag(item, 'verb', 'complaint', 'symptom', 'state') && !hasTag(item, 'part', 'thing'))
  )
    return false;
  if (head === 'did' || head === 'had' || head === 'do' || head === 'have')
    return (
      isFn(next, 'i', 'we', 'you', 'someone', 'it', 'they', 'any', 'nobody') ||
      (hasTag(next, 'machine', 'person') &&
        (head !== 'had' || /\bbeen\b/u.test(items.map((item) => item.text).join(' ')))) ||
      (head === 'did' && isFn(next, 'this', 'person'))
    );
  return next === undefined
    ? false
    : (next.senses.some((s) => s.tag === 'fn' && SUBJECTS.has(s.code)) && next.text !== 'me') ||
        // "may I take the last one"
        next.text.startsWith('i ') ||
        hasTag(next, 'machine', 'person', 'part', 'thing', 'value', 'material');
}

/** How a clause is meant: done, under way, planned, denied, asked, wished, told by somebody else. */
import { fnsOf, hasTag, isFn, isVerb, type Item, pastOnly } from './item.ts';
import { CANNOT_OFF, isCleft, isInterrogative, isRelative, OPENER, opensWith, textOf } from './asking.ts';
import { MAY_BE_OWN } from './english/words/refusals.ts';
import type { Clause } from './clauses.ts';

export interface Mood {
  question: boolean;
  negated: boolean;
  /** A time to come, or "will". */
  planned: boolean;
  /** "I'll", "let me": the speaker takes it on. */
  promised: boolean;
  /** "should", "needs to", "would": no deed and no promise. */
  wished: boolean;
  conditional: boolean;
  requested: boolean;
  hedged: boolean;
  reported: boolean;
  /** "had to", "managed to": the base form after it is a deed. */
  carriedOut: boolean;
}

/** "yesterday I take the fan out", "I take maple out of service": told in the present, and no promise. */
const isToldSo = (items: readonly Item[]): boolean =>
  items.some(
    (item) =>
      /^(?:yesterday|last)\b/u.test(item.text) ||
      item.senses.some((s) => s.tag === 'state' && s.code === 'down'),
  );

/** "I'll find out who did the belts": what will be asked, and nothing told. */
const seeks = (items: readonly Item[]): boolean =>
  items.some(
    (item, at) =>
      /^(?:find|find out|ask|see|check|look up|check out|learn|work out)$/u.test(item.text) &&
      items.slice(at + 1, at + 4).some((one) => isFn(one, 'who', 'which', 'when')),
  );

/** "I'll get the belts tensioned", "I'm going to have its nozzle changed": not "I'll get you the belts". */
const getsDone = (items: readonly Item[], at: number): boolean =>
  /(?:'ll|going to|gonna)$/u.test(items[at]?.text ?? '') &&
  /^(?:get|have)$/u.test(items[at + 1]?.text ?? '') &&
  !isFn(items[at + 2], 'you', 'they', 'someone') &&
  items
    .slice(at + 3)
    .some((item) => isFn(item, 'new') || item.senses.some((s) => s.tag === 'verb' && s.form !== 'base'));

/** "Tomasz will do birch's belts": who takes it on is somebody else. */
const byAnother = (before: Item | undefined): boolean =>
  hasTag(before, 'person', 'human') || isFn(before, 'someone', 'they', 'you', 'person', 'who');

/** "once the belts arrive", "as soon as they are here": a time to come, where nothing in it is told as past. */
const awaits = (items: readonly Item[]): boolean =>
  opensAwaiting(items) &&
  !isFn(items[1], 'more', 'again') &&
  items.length > 2 &&
  !items.some(
    (item, at) =>
      /^(?:was|were|had|did)$/u.test(item.text) ||
      // "once it has done 500 h": still to come, unless something else in it is told as past.
      (pastOnly(item) && !/^(?:has|have|'s|'ve|gets|get)$/u.test(items[at - 1]?.text ?? '')),
  );
const opensAwaiting = (items: readonly Item[]): boolean =>
  /^(?:once|as soon as|when|whenever)$/u.test(items[0]?.text ?? '') ||
  /^the (?:moment|minute|second|instant|day)$/u.test(`${items[0]?.text ?? ''} ${items[1]?.text ?? ''}`);

/** What is promised by none of these: "I'll never know", "I'll learn it one day". */
const OF_MIND =
  /^(?:know|hear|ask|learn|find out|see|understand|never|miss|regret|love|hate|wonder|remember|bet|be glad|admit|believe|only|hardly|survive|live|die|cry|laugh|scream|eat|drink|marry)$/u;
/** Hearing and smelling: "I can hear it grind" tells what is so. */
const SENSING = /^(?:hear|see|feel|smell|notice|tell|find|spot|wait|go|hang|do|last|have|again)\b/u;
const MAY: ReadonlySet<string> = new Set(['can', 'may', 'might', 'will often', 'can often']);
/** "a loose belt can skip teeth", "a jam may burn you": what may happen to anybody, not what did. */
function isGeneral(items: readonly Item[]): boolean {
  const at = items.findIndex((item) => MAY.has(item.text) && !hasTag(item, 'machine'));
  return (
    at > 0 &&
    at < items.length - 1 &&
    !isFn(items[at - 1], 'i', 'we', 'you', 'someone', 'it', 'nobody') &&
    !hasTag(items[at - 1], 'person') &&
    !(hasTag(items[at - 1], 'machine') && /^(?:be|print|run|use)\b/u.test(items[at + 1]?.text ?? '')) &&
    // "cedar's layers can be peeled apart by hand": of that one
    !(
      items[at + 1]?.text.startsWith('be') === true &&
      items.slice(0, at).some((item) => hasTag(item, 'machine'))
    ) &&
    !SENSING.test(items[at + 1]?.text ?? '') &&
    !items.some((item) => isFn(item, 'again'))
  );
}

/** "you know how alder has been ghosting": tells, whatever mark it ends in. */
const isRhetorical = (items: readonly Item[]): boolean =>
  opensWith(items, 'you', 'remember', 'guess') &&
  /^(?:you know how|you know that|you know the|remember how|you remember how|guess who|guess what)\b/u.test(
    items
      .slice(0, 4)
      .map((item) => item.text)
      .join(' '),
  ) &&
  !isFn(items[3], 'to', 'much', 'many', 'long', 'often');

export function readMood(clause: Clause): Mood {
  const { items } = clause;
  const fns = fnsOf(items);
  const some = (...codes: Parameters<typeof isFn>[1][]): boolean => codes.some((code) => fns.has(code));
  const future =
    items.some((item) => hasTag(item, 'date') && /^next (?!to\b)/u.test(item.text) && !isCounted(item)) ||
    items.some((item) =>
      item.senses.some(
        (s) => s.tag === 'date' && s.past === s.future && !s.vague && !s.counted && isTomorrow(item),
      ),
    );
  const carriedOut = some('had-to');
  const promised =
    !carriedOut &&
    some('let-me', 'will') &&
    items.some(
      (item, i) =>
        (isFn(item, 'let-me') &&
          !byAnother(items[i - 1]) &&
          !(item.text === 'i take' && isToldSo(items)) &&
          // "every screw I could reach"
          !(item.text.endsWith('could') && hasTag(items[i - 1], 'part', 'thing')) &&
          !hasTag(items[i + 1], 'symptom', 'complaint') &&
          !OF_MIND.test(items[i + 1]?.text ?? '') &&
          // "I can hear it grind", "I could see it smoke"; "I'll get the belts tensioned" is taken on all the same
          (!isVerb(items[i + 1], 'find') || getsDone(items, i))) ||
        (isFn(item, 'will') &&
          !OF_MIND.test(items[i + 1]?.text ?? '') &&
          (isFn(items[i - 1], 'i', 'we') ||
            (i === 0 &&
              hasTag(items[1], 'verb') &&
              !/^(?:planning|hoping|aiming|intending|hope|the idea|the plan|idea is|plan is)/u.test(
                item.text,
              )))),
    );
  const verbBefore = (at: number): boolean =>
    items.slice(0, at).some(
      (item) =>
        // "chirps whenever x moves" tells of a trouble and when; "if it chirps" does not.
        hasTag(item, 'complaint', 'symptom') ||
        item.senses.some((s) => s.tag === 'verb' && (s.form === 'past' || s.form === 'ing')),
    );
  const conditional =
    awaits(items) ||
    (some('if') &&
      items.some(
        (item, i) =>
          isFn(item, 'if') && !(item.text === 'whether' || isFn(items[i - 1], 'as', 'like') || verbBefore(i)),
      ));
  return {
    question:
      !isRhetorical(items) &&
      !isInvertedIf(clause) &&
      !isRelative(clause) &&
      !isCleft(clause) &&
      (clause.asked || isInterrogative(items)),
    negated: items.some(
      (item, i) =>
        ownDenial(items, i) ||
        (isFn(item, 'not') &&
          !/^(?:not only|not just)/u.test(`${item.text} ${items[i + 1]?.text ?? ''}`) &&
          !isUntroubled(items, i) &&
          !isResult(items, i) &&
          !isInsteadOf(items, i) &&
          !hasTag(items[i + 1], 'machine')),
    ),
    planned: !carriedOut && (some('will') || future),
    promised,
    wished:
      !carriedOut &&
      (items.some((_, i) => isMissed(items, i)) ||
        (some('would') && !BELIEVE.test(textOf(items))) ||
        // "it'd be a 12 h job"
        items.some((item, i) => item.text === "'d" && items[i + 1]?.text === 'be') ||
        (some('should') && items.some((item, i) => isFn(item, 'should') && !isSeeming(items, i))) ||
        (items.some(
          (item, i) =>
            isVerb(item, 'order') &&
            !hasTag(item, 'fn') &&
            !(item.text === 'order' && isFn(items[i - 1], 'possessive', 'article', 'my', 'this')),
        ) &&
          !items.some((item) =>
            item.senses.some((s) => s.tag === 'verb' && s.code === 'arrive' && s.form === 'past'),
          ))),
    conditional:
      conditional ||
      isInvertedIf(clause) ||
      isGeneral(items) ||
      isOfAny(items) ||
      isSupposed(items) ||
      isScoffed(items),
    requested: (some('please') && !isKindlyDone(items)) || isBidden(items),
    hedged:
      some('maybe') || (some('unsure') && items.some((item, i) => isFn(item, 'unsure') && !picks(items, i))),
    // "cold even though it says 60": what the screen shows
    reported:
      some('said-quote', 'joke') ||
      (some('let-me') && some('who', 'which', 'when') && seeks(items)) ||
      (some('reported') &&
        items.some(
          (item, i) =>
            isFn(item, 'reported') &&
            !(item.text === 'it says' && hasTag(items[i + 1], 'value')) &&
            !(
              hasTag(items[i - 1], 'machine') &&
              i === items.length - 2 &&
              hasTag(items[i + 1], 'symptom', 'complaint')
            ),
        )),
    carriedOut,
  };
}

/** "a worn nozzle prints fat lines", "jams happen when …": of any such thing, and of none here. */
function isOfAny(items: readonly Item[]): boolean {
  if (
    items.some((item) => hasTag(item, 'machine', 'date') || isFn(item, 'it', 'this', 'now', 'again', 'still'))
  )
    return false;
  const happens = items.findIndex((item) => /^(?:happens?|occurs?)$/u.test(item.text));
  if (happens > 0 && isFn(items[happens + 1], 'when', 'if', 'from')) return true;
  const noun = items.findIndex((item) => hasTag(item, 'part', 'thing', 'symptom'));
  if (isBarePlural(items, noun)) return true;
  const any = /^(?:any|every|most|each|no)$/u.test(items[0]?.text ?? '');
  if (
    any &&
    noun > 0 &&
    noun <= 3 &&
    items.slice(items[noun]?.text.includes(' ') === true ? noun : noun + 1).some((item) => isPresent(item))
  )
    return true;
  return (
    (any || /^(?:an?|one)$/u.test(items[0]?.text ?? '')) &&
    noun > 0 &&
    noun <= 4 &&
    items
      .slice(noun + 1)
      .some((item) =>
        /^(?:prints|makes|gives|causes|means|leads to|leaves|ruins|needs|wants|shows up as)$/u.test(
          item.text,
        ),
      )
  );
}
/** "clogs", "wears": what such things do. */
const isPresent = (item: Item): boolean =>
  (hasTag(item, 'complaint', 'symptom', 'thing') && /[^s]s$/u.test(item.text)) ||
  /^(?:likes|loves|hates|lasts)$/u.test(item.text);
const WHAT_THEY_DO =
  /^(?:clogs?|jams?|wears?(?: out)?|squeak|slip|rattle|leak|snap|break|crack|bend|warp|stretch|melt|burn(?: out)?|wobble|strings?|oozes?|make|makes|cause|causes|attracts?|ruins?|fail|fails|die|fray|crumble|hardens?|needs?|prints?|lasts?)$/u;
/** "brass nozzles wear fast", "worn wheels make the bed wobble", "damp petg strings": no article, and the present. */
function isBarePlural(items: readonly Item[], noun: number): boolean {
  const led = hasTag(items[0], 'complaint', 'spec', 'symptom');
  const at = noun === 0 || (led && noun === 1) ? noun : led && hasTag(items[1], 'material') ? 1 : -1;
  const [head, verb] = [items[at], items[at + 1]];
  return (
    head !== undefined &&
    verb !== undefined &&
    (/[^s]s$/u.test(head.text) || hasTag(head, 'material') || head.text === 'filament') &&
    WHAT_THEY_DO.test(verb.text) &&
    !items.some((item) => hasTag(item, 'value') || isFn(item, 'not', 'my', 'i', 'we'))
  );
}
/** "like elm ever finished a print": as if. */
const isScoffed = (items: readonly Item[]): boolean =>
  /^(?:like|as if)$/u.test(items[0]?.text ?? '') &&
  items.some((item) => /^(?:ever|would|will)$/u.test(item.text));
/** "say alder broke, who would mend it?": supposed. */
const isSupposed = (items: readonly Item[]): boolean =>
  items[0]?.text === 'say' &&
  hasTag(items[1], 'machine') &&
  items.slice(2).some((item) => hasTag(item, 'complaint', 'symptom', 'state') || pastOnly(item));

/** "someone chuck a new filter in elm", "Tomasz, change the oil": a bare verb after whoever is to do it. */
function isBidden(items: readonly Item[]): boolean {
  let at = 0;
  while (at < Math.min(3, items.length - 1) && OPENER.test(items[at]?.text ?? '')) at += 1;
  const [who, verb, next] = [items[at], items[at + 1], items[at + 2]];
  return (
    isFn(who, 'someone', 'person') &&
    !isFn(who, 'they') &&
    next !== undefined &&
    isBareVerb(verb) &&
    !hasTag(verb, 'part', 'thing', 'complaint', 'symptom', 'state')
  );
}
/** A form that can be no past: "change", "clean"; not "put", "cut". */
const isBareVerb = (item: Item | undefined): boolean =>
  item !== undefined &&
  item.senses.some((s) => s.tag === 'verb' && s.form === 'base') &&
  !item.senses.some((s) => s.tag === 'verb' && s.form !== 'base');

/** "a parent kindly donated six rolls": how it was done. */
const isKindlyDone = (items: readonly Item[]): boolean =>
  items.filter((item) => isFn(item, 'please')).length === 1 &&
  items.some(
    (item, at) => item.text === 'kindly' && items[at + 1] !== undefined && pastOnly(items[at + 1] ?? item),
  );

/** "ran 5 hours without trouble", "printed all night without a hitch": it was done all the same. */
const isUntroubled = (items: readonly Item[], at: number): boolean =>
  items[at]?.text === 'without' &&
  items
    .slice(at + 1, at + 4)
    .some(
      (item) =>
        hasTag(item, 'symptom') ||
        /^(?:hiccups?|glitch(?:es)?|snags?|troubles?|problems?|issues?|hitch|hitches|faults?|incidents?|jams?|stops?|stopping|complaints?|errors?|interruption|fail|failure|fuss|drama)$/u.test(
          item.text,
        ),
    );

/** "printed a ball of string instead of a bracket": there was a trouble, and no bracket. */
const isInsteadOf = (items: readonly Item[], at: number): boolean =>
  /^(?:instead of|rather than)$/u.test(items[at]?.text ?? '') &&
  items.slice(0, at).some((item) => hasTag(item, 'symptom', 'complaint'));

/** "would you believe it": a wonder, and no wish. */
const BELIEVE = /\bwould (?:you|ye|ya) believe\b/u;

/** "so hot I can't hold my finger on it": what is denied follows from a trouble that is there. */
function isResult(items: readonly Item[], at: number): boolean {
  const trouble = items.findLastIndex((item, i) => i < at && hasTag(item, 'complaint', 'symptom'));
  return (
    trouble > 0 &&
    at - trouble <= 4 &&
    /^(?:so|that|too)$/u.test(items[trouble - 1]?.text ?? '') &&
    items.slice(trouble + 1, at).some((item) => isFn(item, 'i', 'we', 'you', 'nobody', 'it'))
  );
}

/** "one of the rods", "one of our plates": which of several like parts it was leaves nothing in doubt. */
const picks = (items: readonly Item[], at: number): boolean =>
  /^one of (?:the|our|its|those)$/u.test(items[at]?.text ?? '') &&
  !/^(?:ones?|machines?|printers?)$/u.test(items[at + 2]?.text ?? '') &&
  (hasTag(items[at + 1], 'part') ||
    ((hasTag(items[at + 1], 'spec', 'machine') || isFn(items[at + 1], 'new', 'old')) &&
      items.slice(at + 2, at + 4).some((item) => hasTag(item, 'part'))));

/** "Had that nozzle been worn, we'd have seen it". */
const isUnrealPast = ({ items, asked, joint }: Clause): boolean =>
  !asked &&
  joint === 'start' &&
  items[0]?.text === 'had' &&
  isFn(items[1], 'this', 'article', 'my', 'its', 'any') &&
  items.some((item) => item.text === 'been') &&
  items.some((item) => hasTag(item, 'complaint', 'symptom'));

/** "birch should have been levelled": and was not. */
const isMissed = (items: readonly Item[], at: number): boolean =>
  /^should(?:'ve| have) been$/u.test(items[at]?.text ?? '') &&
  hasTag(items[at - 1], 'machine', 'part', 'thing') &&
  items[at + 1]?.senses.some((s) => s.tag === 'verb' && s.form === 'past') === true;

/** "should juniper lose its head again: …": an "if" without the word. */
const isInvertedIf = (clause: Clause): boolean => isUnrealPast(clause) || isInverted(clause);
const isInverted = ({ items, asked }: Clause): boolean =>
  (!asked && items[0]?.text === 'should' && hasTag(items[1], 'machine')) ||
  // "had elm gone up in flames, we'd have noticed", "were the bed level it would stick"
  (!asked &&
    /^(?:had|were)$/u.test(items[0]?.text ?? '') &&
    (hasTag(items[1], 'machine') ||
      isFn(items[1], 'i', 'we', 'it', 'they', 'article', 'my', 'you', 'someone')) &&
    items
      .slice(2)
      .some(
        (item) => /\b(?:would|'d have|would've|wouldn't)\b|^'d$/u.test(item.text) || isFn(item, 'would'),
      ));

/** "I don't run", "we never start", "didn't turn on": the speaker's own deed is denied, not the machine's doing. */
export function ownDenial(items: readonly Item[], at: number): boolean {
  const item = items[at];
  if (!item || !hasTag(item, 'complaint', 'symptom') || !MAY_BE_OWN.test(item.text)) return false;
  // "not going to bother"
  if (item.text.endsWith('going') && isFn(items[at + 1], 'to')) return true;
  // "can't get pla to stick" tells of a trouble, whoever says it.
  if (/ get /u.test(item.text)) return false;
  let i = at - 1;
  while (
    i >= 0 &&
    (isFn(items[i], 'just', 'really', 'still', 'be', 'have') || items[i]?.text.endsWith('ly') === true)
  )
    i -= 1;
  // "I can't turn the heater off": the heater's doing, whoever tried; a rule for others is none.
  if (CANNOT_OFF.test(item.text) && (i < 0 || isFn(items[i], 'i', 'we'))) return false;
  if (isFn(items[i], 'i', 'we', 'you', 'nobody', 'please') || hasTag(items[i], 'person')) return true;
  return i < 0 && /^(?:don't|do not|didn't|did not|couldn't|can't|cannot|never)\b/u.test(item.text);
}

/** "Next day: belts tensioned": after a day that was told of. */
const isCounted = (item: Item): boolean => item.senses.some((s) => s.tag === 'date' && s.counted);
/** "seems to be jammed", "turned out to be the idler": so it is. */
const isSeeming = (items: readonly Item[], at: number): boolean =>
  /^to (?:be|have)$/u.test(items[at]?.text ?? '') &&
  /^(?:seems?|seemed|appears?|appeared|turns out|turned out|proved|happens?|happened|found|known)$/u.test(
    items[at - 1]?.text ?? '',
  );

const isTomorrow = (item: Item): boolean =>
  /^(?:tomorrow|tmrw|tmr|tmw|tomo|next|the day after|in \d)/u.test(item.text);

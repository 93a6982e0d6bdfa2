/**
 * Is a verb told as carried out? Past forms, and the many ways in which workshop English tells a deed without one:
 * a light verb and a noun ("gave it a wipe", "put oil on"), a telegram ("drop of oil on …"), a present that reports.
 */
import { hasTag, isFn, isThing, isVerb, type Item, sense, type SenseOf } from './item.ts';
import type { Mood } from './mood.ts';
import type { VerbClass, VerbForm } from './senses.ts';

/** Verbs that say little themselves: the noun after them is the deed. */
const LIGHT: readonly VerbClass[] = ['give', 'did', 'take', 'get', 'run', 'make', 'apply', 'put', 'use'];
/** "put fresh oil on": of a stuff nothing is installed. */
const LIGHT_WITH_STUFF: readonly VerbClass[] = [...LIGHT, 'look', 'work', 'install'];
const LIGHT_WITH_TOOL: readonly VerbClass[] = [...LIGHT, 'look', 'work'];

/** A tool or a stuff stands for what is done with it: "ran a cloth over the rods", "went round it with an allen key". */
const INSTRUMENTS: readonly (readonly [RegExp, VerbClass])[] = [
  [/\b(?:oil|oily|grease|greasy|lube|lubricant)\b/u, 'oil'],
  [/\b(?:cloth|rag|wipes?|towel|microfib[re]+)s?\b/u, 'wipe'],
  [/\b(?:air|duster)\b/u, 'dust'],
  [/\b(?:isopropyl|ipa|alcohol|soap and water|soapy water|dish soap|cotton buds?|swabs?)\b/u, 'clean'],
];
/** Tools named by a noun that is no order: "wipe round …" could be one. */
const TOOL =
  /^(?:(?:.* )?(?:cloth|rag|wipes?|towel|ipa|alcohol|isopropyl|soap and water|soapy water|allen keys?|hex keys?|spanner|wrench|screwdriver|duster|cotton buds?|swabs?|toothbrush|air can)|iso)$/u;
const STUFF_ONLY = /^(?:ipa|alcohol|isopropyl|iso|.* alcohol)$/u;
const PATH = /^(?:over|across|along|round|around|down|on|all over|up and down|to)$/u;
/** "dry cloth over alder's rods", "ipa over the plate", "allen key round juniper": the tool alone tells of the deed. */
const toolGoesOver = (items: readonly Item[], at: number): boolean =>
  TOOL.test(items[at]?.text ?? '') &&
  PATH.test(items[at + 1]?.text ?? '') &&
  // "alcohol on the plate" may have been spilled
  !(items[at + 1]?.text === 'on' && STUFF_ONLY.test(items[at]?.text ?? '')) &&
  !items.some((one) => one.senses.some((s) => s.tag === 'thing' && s.code === 'floor')) &&
  items.slice(at + 2).some((one) => hasTag(one, 'machine')) &&
  items
    .slice(0, at)
    .every(
      (one) =>
        isMeasure(one) ||
        isFn(one, 'article', 'some', 'new', 'just') ||
        hasTag(one, 'spec', 'date', 'value') ||
        /^(?:dry|soft|damp|clean|lint|free|lint free|little|wet|warm|old)$/u.test(one.text),
    );
export const byInstrument = (item: Item): SenseOf<'verb'>[] =>
  hasTag(item, 'part')
    ? INSTRUMENTS.flatMap(([words, code]): SenseOf<'verb'>[] =>
        words.test(item.text) && !isVerb(item, code) && !/bottle|tube of|tub of|can of|tin/u.test(item.text)
          ? [{ tag: 'verb', code, form: 'base' }]
          : [],
      )
    : [];
const isTool = (item: Item | undefined): boolean =>
  item !== undefined &&
  (byInstrument(item).length > 0 || isVerb(item, 'tighten', 'clean', 'dust', 'wipe', 'oil')) &&
  !isLubricant(item);
/** Stuff that is a deed as soon as it is put on: "oil" is a noun and a verb. */
const isLubricant = (item: Item | undefined): boolean =>
  item !== undefined && hasTag(item, 'part') && /^(?:.* )?(?:oil|grease|lube|lubricant)$/u.test(item.text);
const isPastForm = (form: VerbForm): boolean => form === 'past' || form === 'both';
const isLightDeed = (item: Item, ...codes: readonly VerbClass[]): boolean =>
  item.senses.some((s) => s.tag === 'verb' && isPastForm(s.form) && codes.includes(s.code));

export function isDeed(
  code: VerbClass,
  form: VerbForm,
  at: number,
  items: readonly Item[],
  mood: Mood,
  named: boolean,
): boolean {
  const before = items[at - 1];
  if (code === 'runin' && isBrokenIn(items, at)) return false;
  // "are getting replaced on Thursday", "is being rebuilt": not yet
  if (
    form === 'past' &&
    /^(?:is |are |'s |'re )?(?:getting|being)$/u.test(before?.text ?? '') &&
    !isFn(items[at - 2], 'after', 'since')
  )
    return false;
  // "one full turn of a bed screw"
  if (items[at]?.text === 'turn' && form === 'base' && isFn(items[at + 1], 'of')) return false;
  if (isHabit(items) || (form !== 'past' && items.some((one) => isAlways(one)))) return false;
  // "nothing replaced", "nothing was changed"
  if (isFn(before, 'nothing') || (isFn(before, 'be') && isFn(items[at - 2], 'nothing'))) return false;
  // "the cartridge had burned out": it did so by itself.
  if (
    code === 'clear' &&
    hasTag(items[at], 'complaint') &&
    !hasTag(items[at + 1], 'part', 'thing') &&
    !isFn(items[at + 1], 'article', 'my', 'its')
  )
    return false;
  // "the pulley was broken" tells of a trouble, "broke a nozzle" of a spare.
  if (code === 'bin' && hasTag(items[at], 'complaint') && isFn(before, 'be') && before?.text !== 'got')
    return false;
  // "laid up with a broken belt": what the part is, not what was done
  if (
    code === 'bin' &&
    hasTag(items[at], 'complaint') &&
    isFn(before, 'article', 'with') &&
    hasTag(items[at + 1], 'part')
  )
    // prettier-ignore
    return false;
  // "had spanners, tray and lamp laid out"
  if (
    /^(?:spanners?|wrench(?:es)?|allen keys?|hex keys?|screwdrivers?|scrapers?|brush(?:es)?)$/u.test(
      items[at]?.text ?? '',
    ) &&
    before?.text === 'had'
  )
    return false;
  // "the replaced thermistor was from the good batch"
  if (
    (form === 'past' || form === 'both') &&
    /^(?:the|this|that|my|our)$/u.test(before?.text ?? '') &&
    hasTag(items[at + 1], 'part')
  )
    return false;
  const toBe = before?.text === 'be' || (isFn(before, 'be') && isFn(items[at - 2], 'should', 'will', 'to'));
  if (toBe || /^(?:can|may)$/u.test(before?.text ?? '')) return false;
  // "thermistor dead -> replaced": an arrow, which reads as "to"
  const arrow = before?.text === 'to' && hasTag(items[at - 2], 'complaint', 'symptom');
  if (form === 'past') return !isFn(before, 'should', 'to') || before?.text === 'had' || arrow;
  if (form === 'both')
    return !isFn(before, 'to', 'will', 'should', 'let-me', 'please', 'would') && !isLubricant(items[at]);
  if (nominal(items, at) || (named && code === 'pull' && items.length <= 3 && !mood.question)) return true;
  if (form === 'ing')
    return (
      items
        .slice(Math.max(0, at - 3), at)
        .some((one) => /^(?:finished|done|after|completed|got round to|by)$/u.test(one.text)) ||
      spentOn(items, at)
    );
  if (form !== 'base') return false;
  return (
    mood.carriedOut || before?.text === 'did' || hasDone(items, at) || presentReport(code, items, at, named)
  );
}

/** "spent half an hour getting the gantry square", "went around checking for loose screws". */
const spentOn = (items: readonly Item[], at: number): boolean =>
  items
    .slice(Math.max(0, at - 6), at)
    .some((one) => /^(?:spent|went (?:around|round|about|over)|been (?:around|round))$/u.test(one.text)) ||
  (/^(?:round|around)$/u.test(items[at - 1]?.text ?? '') && items[at - 2]?.text === 'went');

/** "broke in the storm", "broke in act three": it broke, and nothing was run in. */
const isBrokenIn = (items: readonly Item[], at: number): boolean =>
  /^(?:break|breaks|broke|broken|breaking) in$/u.test(items[at]?.text ?? '') &&
  items[at + 1] !== undefined &&
  !items.slice(at + 1, at + 4).some((one) => hasTag(one, 'machine', 'part') || isThing(one, 'machine')) &&
  !isFn(items[at + 1], 'it', 'they', 'now', 'again');

const isAlways = (item: Item): boolean =>
  /^(?:always|usually|normally|generally|typically|as a rule)$/u.test(item.text);
/** "gets its filter changed every 3 months", "are oiled every Friday": a rule, and no deed of a day. */
const isHabit = (items: readonly Item[]): boolean =>
  items.some(
    (one, at) =>
      /^(?:every|once a|once every|twice a)$/u.test(one.text) &&
      (['hours', 'days', 'weeks', 'months', 'years'].includes(sense(items[at + 1], 'value')?.code ?? '') ||
        hasTag(items[at + 1], 'calendar', 'unit') ||
        /^(?:week|month|year|day|morning|evening|night|spring|autumn|weekend|other|second|third|time|shift)\b/u.test(
          items[at + 1]?.text ?? '',
        )),
  );

/** The deed as a noun: "gave it a wipe", "put some oil on", "drop of oil on", "two cold pulls", "quick wipe of". */
function nominal(items: readonly Item[], at: number): boolean {
  // "gave every bed a wipe" tells of once
  if (
    items.some(
      (one, i) => HABIT.test(one.text) && !(one.text === 'every' && hasTag(items[i + 1], 'part', 'thing')),
    )
  )
    return false;
  const earlier = items.slice(0, at);
  if (earlier.some((one) => isLightDeed(one, 'give'))) return true;
  if (toolGoesOver(items, at)) return true;
  const light = earlier.some((one) =>
    isLightDeed(one, ...(isLubricant(items[at]) ? LIGHT_WITH_STUFF : LIGHT_WITH_TOOL)),
  );
  if (isLubricant(items[at])) return !deniedOrOld(items, at) && (light || measured(items, at));
  if (light && isTool(items[at]) && !isFn(items[at - 1], 'no', 'not')) return true;
  if (earlier.some((one) => isLightDeed(one, ...LIGHT)) && led(items, at)) return true;
  return (
    measured(items, at) && earlier.every((one) => !hasTag(one, 'verb') || isMeasure(one)) && goesOn(items, at)
  );
}
const deniedOrOld = (items: readonly Item[], at: number): boolean =>
  (isFn(items[at - 1], 'no', 'not', 'old', 'with', 'of') &&
    !isMeasure(items[at - 2]) &&
    !isMeasure(items[at - 1])) ||
  // "no new oil yet"
  (isFn(items[at - 1], 'new') && isFn(items[at - 2], 'no', 'not'));
/** "a", "its", "some", "quick" stand before a noun, or before its adjective: "a soft brush". */
const led = (items: readonly Item[], at: number): boolean =>
  leads(items, at) ||
  ((items[at - 1]?.senses.length === 0 || hasTag(items[at - 1], 'spec')) && leads(items, at - 1));
const leads = (items: readonly Item[], at: number): boolean =>
  isFn(items[at - 1], 'article', 'all', 'just', 'my', 'its', 'some', 'new', 'another') ||
  isMeasure(items[at - 1]);
const isMeasure = (item: Item | undefined): boolean =>
  item !== undefined && (/^(?:drop|drops|dab|dabs|smear|smears|bit|lick|touch|squirt|coat|coating|film|blob|splash|dollop|quick|proper|good|full|thorough|light|nice|decent|generous)(?: of)?$/u.test(item.text) || isFn(item, 'some')); // prettier-ignore
/** A measure right before, with or without "of", or a number. */
const measured = (items: readonly Item[], at: number): boolean => {
  const i = items[at - 1]?.text === 'of' ? at - 2 : at - 1;
  return isMeasure(items[i]) || (isFn(items[i], 'new') && i === at - 1) || (i === at - 1 && hasTag(items[i], 'number', 'value'));
}; // prettier-ignore
const goesOn = (items: readonly Item[], at: number): boolean =>
  at === items.length - 1 || isFn(items[at + 1], 'on', 'of', 'for', 'in', 'to');

/** "I have change the filter", "we have clean it". */
const hasDone = (items: readonly Item[], at: number): boolean =>
  /^(?:have|has|had|'ve)$/u.test(items[at - 1]?.text ?? '') &&
  isFn(items[at - 2], 'i', 'we', 'it') &&
  items.length > at + 1;

/** What is done to a machine with hands or tools: only these are told of in the present. */
const HANDWORK: ReadonlySet<VerbClass> = new Set<VerbClass>([
  'clean', 'wipe', 'dust', 'oil', 'tighten', 'tension', 'level', 'square', 'swap', 'fit', 'remove', 'look', 'test', 'adjust', 'calibrate', 'trim',
  'clear', 'pull', 'dry', 'update', 'save', 'load', 'install', 'print', 'make', 'put', 'move', 'fix',
]); // prettier-ignore
/** The words between two deeds were cut away: "I wipe the rods, then oil them". */
const CUT_AWAY = 4;
const goesOnFrom = (items: readonly Item[], at: number): boolean =>
  (items[at]?.from ?? 0) - (items[at - 1]?.to ?? 0) >= CUT_AWAY &&
  items
    .slice(0, at)
    .some(
      (one, i) =>
        isFn(items[i - 1], 'i', 'we') &&
        one.senses.some((s) => s.tag === 'verb' && s.form === 'base' && HANDWORK.has(s.code)),
    );
/** What makes a present a habit or no report at all. */
const HABIT =
  /^(?:helps|always|usually|normally|never|generally|typically|sometimes|often|every|each time|tend)$/u;

/**
 * "I clean the plate of birch": many speakers report a deed in the present. It counts where a machine is named
 * and nothing says habit, plan, condition or question.
 */
function presentReport(code: VerbClass, items: readonly Item[], at: number, named: boolean): boolean {
  if (!named || !HANDWORK.has(code)) return false;
  const subject = isFn(items[at - 1], 'just', 'now', 'too') ? items[at - 2] : items[at - 1];
  if (!/^(?:i|we)$/u.test(subject?.text ?? '') && !goesOnFrom(items, at)) return false;
  // "I lubricate it tonight" is to come
  if (items.some((one) => /^(?:tonight|later|soon|this evening|tomorrow)/u.test(one.text))) return false;
  return !items.some(
    (one) =>
      HABIT.test(one.text) ||
      isFn(one, 'when', 'how', 'why', 'what', 'if', 'who', 'before', 'while', 'every', 'until', 'later') ||
      sense(one, 'calendar') !== undefined,
  );
}

/** Operating time, filament run, the counter read, a spool mounted. */
import type { Material } from '../../../maintenance/codes.ts';
import { hasTag, isFn, isThing, isVerb, sense } from '../../item.ts';
import { type Phrase, phraseReader } from '../../phrases.ts';
import { symptomsIn } from './symptom.ts';
import { RUNNING_WORDS } from '../words/running.ts';
import { type Amounts, amounts } from './usage-figures.ts';
import {
  asserted,
  deedOf,
  type Draft,
  draft,
  hasMachine,
  hasVerb,
  type NounAt,
  type Scene,
  someFn,
  valueOf,
} from '../../scene.ts';

const running = phraseReader(RUNNING_WORDS);
const said = (
  scene: Scene,
  code: keyof typeof RUNNING_WORDS,
): readonly Phrase<keyof typeof RUNNING_WORDS>[] => running(scene.items).filter((one) => one.code === code);

/** Above this many hours in one go a bare figure is more likely a counter's. */
const ONE_RUN_HOURS = 200;

const RUNNING = ['run', 'print', 'put', 'use', 'give', 'did', 'get', 'log', 'make'] as const;

/** "counters: birch 2318, hazel 1764, maple 3055": a name and a figure in a row that a counter opened. */
const inCounterRow = (scene: Scene, earlier: readonly Scene[]): boolean =>
  scene.items.filter(
    (item) => !isFn(item, 'be', 'at', 'now', 'article', 'on', 'it', 'of', 'for', 'possessive'),
  ).length <= 3 &&
  hasMachine(scene) &&
  scene.values.length === 1 &&
  scene.nouns.length === 0 &&
  earlier.some(
    (before) => before.items.some((item) => isThing(item, 'counter')) || inCounterRow(before, []),
  ) &&
  earlier.every(
    (before) =>
      (before.items.length <= 5 || headsCounters(before)) &&
      before.verbs.every((verb) => !verb.deed || verb.code === 'read'),
  ) &&
  (scene.values[0]?.value ?? 0) >= 50;

/** "Hour counters for whoever keeps the spreadsheet": a head may say for whom. */
const headsCounters = ({ items }: Scene): boolean =>
  items.length <= 10 && [...items.slice(0, 3), ...items.slice(-1)].some((item) => isThing(item, 'counter'));

/** "was changed in 2019". */
const isYear = (scene: Scene, { code, value, at }: Scene['values'][number]): boolean =>
  code === 'bare' && value >= 1990 && value <= 2100 && isFn(scene.items[at - 1], 'in', 'since', 'of', 'from');

export function readMeter(scene: Scene, earlier: readonly Scene[] = []): Draft[] {
  const { mood } = scene;
  if (mood.question || mood.negated || mood.conditional || mood.requested || mood.reported) return [];
  const named = scene.items.some((item) => isThing(item, 'counter')) || inCounterRow(scene, earlier);
  const figure = [...scene.values]
    .reverse()
    .find((v) => (v.code === 'hours' || v.code === 'bare') && !isYear(scene, v));
  if (!figure || someFn(scene, 'until') || hasVerb(scene, 'last', 'put-off')) return [];
  const hours = figure.value;
  const standing = said(scene, 'stands');
  const stands = scene.items.some(
    (item, i) => i < figure.at && (isVerb(item, 'read') || isFn(item, 'be') || item.text === 'at'),
  );
  const stated =
    (stands &&
      figure.code === 'hours' &&
      !someFn(scene, 'will') &&
      isFn(scene.items[figure.at - 1], 'at', 'be', 'now', 'over') &&
      (scene.items[figure.at - 1]?.text !== "'s" || figure.at === scene.items.length - 1)) ||
    scene.items.some(
      (item, i) =>
        i < figure.at &&
        isVerb(item, 'read') &&
        standing.some((one) => one.from === i) &&
        !hasTag(item, 'fn'),
    );
  // "rowan has 4010 h on it", "elm total 2244 h"
  const carries = /\bon (?:it|the clock|her|him)$|\btotal\b/u.test(scene.text) && hours >= ONE_RUN_HOURS;
  const enough =
    (stated || carries) &&
    hasMachine(scene) &&
    hours >= ONE_RUN_HOURS / 4 &&
    (figure.code === 'hours' || hours >= ONE_RUN_HOURS);
  if (!(named || enough) || (mood.planned && !named)) return [];
  if (named && deedOf(scene, 'run') && scene.nouns.some((noun) => noun.code === 'print')) return [];
  const changed = hasVerb(scene, 'reset') && said(scene, 'anew').length > 0;
  return [
    draft(
      scene,
      { kind: 'meter', hours, ...(changed ? { newCounter: true as const } : {}) },
      'meter: counter x figure',
    ),
  ];
}

/** Hours that belong to something else than running: drying, waiting, a life, a time taken. */
function elsewhere(scene: Scene, before: Scene | undefined): boolean {
  if (tookToPrint(scene) || tookSoLong(scene, before)) return false;
  if (stoodStill(scene)) return true;
  if (hasVerb(scene, 'dry', 'put-off', 'last', 'take') && !deedOf(scene, 'run', 'print')) {
    if (
      hasVerb(scene, 'dry') ||
      hasVerb(scene, 'last') ||
      scene.items.some(
        (item) =>
          isVerb(item, 'put-off') &&
          !isVerb(item, 'run', 'put', 'give', 'load', 'fit', 'move') &&
          !hasTag(item, 'fn', 'state'),
      ) ||
      said(scene, 'takes').length > 0
    )
      return true;
  }
  return (
    someFn(scene, 'every', 'ago') ||
    (someFn(scene, 'until') && valueOf(scene, 'grams', 'metres') === undefined && !fromUntil(scene)) ||
    scene.items.some(
      (item, i) =>
        isFn(item, 'after', 'in', 'before', 'than') &&
        // "320 g of petg in 1 h 45": two figures of one run.
        !(item.text === 'in' && valueOf(scene, 'grams', 'metres') !== undefined) &&
        !(item.text === 'after' && i === 0 && hasMachine(scene) && goesOn(scene, before)) &&
        scene.values.some(
          (v) => v.at === (isFn(scene.items[i + 1], 'another') ? i + 2 : i + 1) && v.code === 'hours',
        ) &&
        item.text !== 'on',
    )
  );
}

/** "sat idle 5 h", "down for 2 h": so long nothing ran. */
const stoodStill = (scene: Scene): boolean =>
  deedOf(scene, 'run', 'print') === undefined &&
  scene.materials.length === 0 &&
  scene.items.some(
    (item) =>
      item.senses.some((s) => s.tag === 'state' && s.code === 'down') ||
      /^(?:idle|sat idle|stood idle|waited|waiting|parked|paused|unused|out of use)$/u.test(item.text),
  );
/** "made 7.5 hours from yesterday evening until this morning": when it ran. */
const fromUntil = (scene: Scene): boolean => {
  const [value] = scene.values;
  const from = scene.items.findIndex((item) => isFn(item, 'from'));
  const until = scene.items.findIndex((item) => isFn(item, 'until'));
  return value !== undefined && value.at < from && from < until && scene.verbs.some((verb) => verb.deed);
};
/** "… 5 hours with birch and after 2 hours with rowan": "after" for "after that". */
const goesOn = (scene: Scene, before: Scene | undefined): boolean =>
  before !== undefined && before.clause.sentence === scene.clause.sentence && hasMachine(before) && valueOf(before, 'hours') !== undefined; // prettier-ignore

/** "the 12 hour print on juniper failed at hour 9": what it was to take, and did not. */
const neverEnded = (scene: Scene): boolean =>
  symptomsIn(scene).some((one) => one.symptom === 'failed-print' || one.symptom === 'detached-print') &&
  scene.values.length > 0 &&
  scene.values.every(
    (value) => value.code !== 'hours' || /^(?:print|job|run)\b/u.test(scene.items[value.at + 1]?.text ?? ''),
  ) &&
  scene.values.some((value) => value.code === 'hours');

/** Under way, or about to begin: nothing has been run yet. */
const underWay = (scene: Scene): boolean =>
  scene.verbs.some(
    (verb) =>
      (verb.form === 'ing' &&
        !verb.deed &&
        scene.items[verb.at - 1]?.text !== 'of' &&
        ['start', 'run', 'print', 'load', 'work', 'did'].includes(verb.code)) ||
      (verb.code === 'start' && verb.form !== 'base'),
  ) && deedOf(scene, 'run', 'print') === undefined;

/** "jam cleared, 20 min", "bed levelled, took a quarter of an hour": so long the care took, and nothing ran. */
const timeTaken = (scene: Scene, before: Scene | undefined): boolean =>
  before !== undefined &&
  before.clause.sentence === scene.clause.sentence &&
  !hasMachine(scene) &&
  scene.materials.length === 0 &&
  scene.nouns.length === 0 &&
  valueOf(scene, 'hours') !== undefined &&
  valueOf(scene, 'grams', 'metres') === undefined &&
  deedOf(scene, 'run', 'print') === undefined &&
  before.verbs.some((verb) => verb.deed) &&
  deedOf(before, 'run', 'print', 'start', 'load', 'use') === undefined &&
  valueOf(before, 'hours', 'grams', 'metres') === undefined &&
  !before.nouns.some((noun) => noun.code === 'print' || noun.code === 'filament') &&
  before.materials.length === 0 &&
  (before.nouns.length > 0 || before.verbs.some((verb) => verb.deed && HANDWORK.has(verb.code)));
/** Done with hands to the machine: what takes time without anything being printed. */
const HANDWORK: ReadonlySet<string> = new Set([
  'clean', 'wipe', 'dust', 'oil', 'tighten', 'tension', 'level', 'square', 'swap', 'fit', 'remove', 'look', 'test', 'adjust', 'calibrate', 'trim',
  'clear', 'pull', 'dry', 'update', 'save', 'install', 'fix', 'runin',
]); // prettier-ignore

/** "maple started at ten and came off at two, so 4 h": when it went on and off stands before how long it was. */
const toldByClock = (scene: Scene, earlier: readonly Scene[]): boolean =>
  !hasMachine(scene) &&
  scene.items.length <= 7 &&
  earlier.some(
    (before) =>
      before.clause.sentence === scene.clause.sentence &&
      hasMachine(before) &&
      asserted(before) &&
      said(before, 'begins').length > 0 &&
      before.items.some((item, at) => isFn(item, 'at') && hasTag(before.items[at + 1], 'value', 'number')),
  );

/** "8 hours to go", "60 % through a 10 h print", "at 4 of 9 hours": what it will have run. */
const unfinished = ({ items, values }: Scene): boolean =>
  items.some(
    (item, at) =>
      ((item.text === 'to go' ||
        (item.text === 'to' && items[at + 1]?.text === 'go') ||
        item.text === 'remaining') &&
        values.some((value) => value.at < at && at - value.at <= 3)) ||
      (/%$|^percent$|^halfway$|^half way$/u.test(item.text) && isFn(items[at + 1], 'through', 'in', 'to')) ||
      (item.text === 'of' &&
        sense(items[at - 1], 'value')?.code === 'bare' &&
        sense(items[at + 1], 'value')?.code === 'hours'),
  );
/** "could be 3 hours": nobody knows yet. */
const isGuessed = ({ items }: Scene): boolean =>
  /^(?:could|might|may|should|would) be$/u.test(items[0]?.text ?? '') && hasTag(items[1], 'value');
/** "20 hours a week", "6 h per day": how much it runs at a time, and no run. */
const isRate = ({ items, values }: Scene): boolean =>
  values.some(
    ({ at, code }) =>
      code === 'hours' &&
      /^(?:a|per|each|every)$/u.test(items[at + 1]?.text ?? '') &&
      /^(?:day|week|month|year|night|shift)s?$/u.test(items[at + 2]?.text ?? ''),
  );
/** "I have cedar from 2 till 5": kept for somebody. */
const isKept = ({ items }: Scene): boolean =>
  isFn(items[0], 'i', 'we') &&
  isFn(items[1], 'have') &&
  hasTag(items[2], 'machine') &&
  isFn(items[3], 'from', 'for', 'at');

/** "rowan: 2h pla, 3h petg": the list goes on. */
const listGoesOn = (scene: Scene, before: Scene | undefined): boolean =>
  (before !== undefined &&
    !before.mood.question &&
    !before.verbs.some((verb) => verb.code === 'put-off') &&
    scene.items.length <= 2 &&
    before.verbs.some((verb) => verb.deed) &&
    before.verbs.every((verb) => verb.code !== 'dry') &&
    asserted(before)) ||
  (before !== undefined &&
    before.clause.sentence === scene.clause.sentence &&
    !before.mood.question &&
    before.values.some((v) => v.code === 'hours' || v.code === 'grams') &&
    before.nouns.every((noun) => noun.part === undefined) &&
    scene.items.length <= 6) ||
  toldLater(scene, before) ||
  toldAfterName(scene, before) ||
  toldUnderHead(scene, before) ||
  (before !== undefined && busyBefore(scene, before));
/** "Operating time Birch today: 7.5 h", "consumed on juniper: 1.2 kg": a heading with its machine. */
const toldUnderHead = (scene: Scene, before: Scene | undefined): boolean =>
  before !== undefined &&
  scene.clause.joint === 'colon' &&
  asserted(before) &&
  hasMachine(before) &&
  !hasMachine(scene) &&
  before.items.length <= 7 &&
  before.nouns.length === 0 &&
  before.values.length === 0 &&
  said(before, 'heads').length > 0;
/** "cedar is eating well: 1.2 kg of the nylon": what follows the colon is of the name before it. */
const toldAfterName = (scene: Scene, before: Scene | undefined): boolean =>
  before !== undefined &&
  scene.clause.joint === 'colon' &&
  asserted(before) &&
  hasMachine(before) &&
  before.nouns.length === 0 &&
  before.verbs.every((verb) => !verb.deed) &&
  scene.materials.length > 0;
/** "hazel chewed through them yesterday, about six and a half hours all told": the figure comes after its run. */
const toldLater = (scene: Scene, before: Scene | undefined): boolean =>
  before !== undefined &&
  before.clause.sentence === scene.clause.sentence &&
  asserted(before) &&
  hasMachine(before) &&
  deedOf(before, 'run', 'print', 'did') !== undefined &&
  !hasMachine(scene) &&
  scene.items.length <= 8;

export function readUsage(
  scene: Scene,
  earlier: readonly Scene[] = [],
  later: readonly Scene[] = [],
): Draft[] {
  const before = earlier.at(-1);
  if (unfinished(scene) || isGuessed(scene) || isRate(scene) || isKept(scene)) return [];
  if (underWay(scene) || neverEnded(scene) || timeTaken(scene, before)) return [];
  if (!(asserted(scene) || isBooked(scene)) || elsewhere(scene, before)) return [];
  const amount = amounts(scene, earlier, later);
  const booked = isBooked(scene);
  if (Object.keys(amount).length === 0 || amount.hours === 0) return [];
  const ran =
    (tookToPrint(scene) && scene.verbs.some((verb) => verb.code === 'take')) ||
    tookSoLong(scene, before) ||
    cameTo(scene) ||
    deedOf(scene, 'run', 'print') !== undefined ||
    worked(scene) ||
    scene.items.some(
      (item) =>
        isVerb(item, 'run', 'print') &&
        item.senses.some((s) => s.tag === 'verb' && (s.form === 'both' || s.form === 'past')),
    );
  const putOn =
    RUNNING.some((code) => deedOf(scene, code) !== undefined) &&
    (amount.hours !== undefined ||
      scene.materials.length > 0 ||
      scene.nouns.some((noun) => noun.code === 'print' || noun.code === 'filament'));
  const terse =
    (hasMachine(scene) || listGoesOn(scene, before) || toldByClock(scene, earlier)) &&
    scene.verbs.every((verb) => !verb.deed || ['run', 'print', 'did', 'put', 'use'].includes(verb.code)) &&
    scene.nouns.every(
      (noun) =>
        ['print', 'filament', 'job', 'counter', 'machine', 'gunk'].includes(noun.code) ||
        // "log 1,450 g of pla on juniper"
        (noun.code === 'entry' && noun.at === 0),
    ) &&
    !hasBlocking(scene);
  if (!ran && !putOn && !terse && !booked && !busy(scene) && !putIn(scene)) return [];
  if (
    scene.nouns.some(
      (noun) => noun.part !== undefined && noun.part !== 'filament' && !noun.weak && !isProduct(scene, noun),
    )
  )
    return [];
  if (amount.hours !== undefined && amount.hours > ONE_RUN_HOURS && !ran)
    return [
      draft(scene, { kind: 'unclear', why: 'Hours run, or the counter?' }, 'unclear: too many hours', {
        doubt: { field: 'value', said: String(amount.hours), options: [] },
      }),
    ];
  const material =
    scene.materials[0] ??
    (someFn(scene, 'same') || /\b(?:with|of|from|in) it\b/u.test(scene.text) || headsRow(scene, before)
      ? before?.materials[0]
      : undefined);
  return runsIn(scene, eachOf(scene, amount)).map((one) =>
    draft(
      scene,
      { kind: 'usage', ...one, ...(material === undefined ? {} : { material }) },
      ran ? 'usage: ran x amount' : 'usage: machine x amount',
    ),
  );
}
/** "four prints of 90 min each": so many times. */
function eachOf(scene: Scene, amount: Amounts): Amounts {
  const [count, span, ...more] = scene.values;
  const times =
    amount.hours !== undefined &&
    more.length === 0 &&
    count?.code === 'bare' &&
    Number.isInteger(count.value) &&
    count.value > 1 &&
    count.value <= 50 &&
    span?.code === 'hours' &&
    scene.nouns.some((noun) => noun.code === 'print' && noun.at > count.at && noun.at < span.at) &&
    isFn(scene.items[span.at + 1], 'each');
  return times ? { ...amount, hours: span.value * count.value } : amount;
}
/** "2 h, 4 h and 45 min", "2h30 1h15": figures side by side are a run each. */
function runsIn(scene: Scene, amount: Amounts): readonly Amounts[] {
  const spans = scene.values.filter((value) => value.code === 'hours');
  const [first] = spans;
  const side =
    first !== undefined &&
    spans.length > 1 &&
    spans.every((value, i) => value.at === first.at + i) &&
    scene.values.every((value) => value.code === 'hours' || (value.code === 'bare' && value.at < first.at));
  return side ? spans.map(({ value }) => ({ hours: value })) : [amount];
}
/** "alder and birch have each worked two hours": the machine did; who says "I worked" was at it. */
function worked(scene: Scene): boolean {
  const at = scene.items.findIndex((item) => item.text === 'worked');
  return (
    at > 0 &&
    valueOf(scene, 'hours') !== undefined &&
    scene.items.slice(0, at).some((item) => hasTag(item, 'machine')) &&
    !scene.items.slice(Math.max(0, at - 3), at).some((item) => isFn(item, 'i', 'we', 'they'))
  );
}
/** "petg through rowan 310 g, through hazel 95": said before the first name it is of the whole row. */
const headsRow = (scene: Scene, before: Scene | undefined): boolean =>
  before !== undefined &&
  scene.values.every((value) => value.code === 'bare') &&
  before.items.findIndex((item) => hasTag(item, 'material')) <
    before.items.findIndex((item) => hasTag(item, 'machine')) &&
  before.materials.length === 1;
/** "went into that door handle", "for the brackets": what was made may be called like a part. */
const isProduct = (scene: Scene, noun: NounAt): boolean =>
  scene.items
    .slice(Math.max(0, noun.at - 3), noun.at)
    .some((item) => isFn(item, 'for', 'to') || /\b(?:into|for)$/u.test(item.text));
/** "rowan was busy all afternoon, four hours, abs". */
const busyBefore = (scene: Scene, before: Scene): boolean =>
  before.clause.sentence === scene.clause.sentence &&
  asserted(before) &&
  busy(before) &&
  !hasMachine(scene) &&
  scene.nouns.length === 0;
/** "the overnight on cedar came to 10 h 20": what a job added up to. */
const cameTo = (scene: Scene): boolean =>
  hasMachine(scene) &&
  valueOf(scene, 'hours', 'grams', 'metres') !== undefined &&
  said(scene, 'totals').length > 0 &&
  scene.nouns.every((noun) => ['print', 'job', 'filament', 'spool'].includes(noun.code));
/** "add 3 h to cedar", "log 7h for juniper please": told to the log, as done. */
function isBooked(scene: Scene): boolean {
  const { items, mood } = scene;
  const words = items.filter((item) => !isFn(item, 'please', 'thanks', 'just') && !hasTag(item, 'date'));
  const [verb, value] = words;
  const machine = words.findIndex((item) => hasTag(item, 'machine'));
  return (
    verb !== undefined &&
    !mood.question &&
    !mood.negated &&
    !mood.conditional &&
    !mood.wished &&
    !mood.planned &&
    !mood.reported &&
    BOOKS.test(verb.text) &&
    /^(?:hours|grams|metres)$/u.test(sense(value, 'value')?.code ?? '') &&
    machine > 1 &&
    words
      .slice(2)
      .every(
        (item) =>
          hasTag(item, 'machine', 'material') ||
          isFn(item, 'to', 'for', 'on', 'of', 'under', 'with', 'in', 'article') ||
          /^(?:against|and|print|printing)$/u.test(item.text),
      ) &&
    words.slice(2, machine).some((item) => isFn(item, 'to', 'for', 'on', 'under') || item.text === 'against')
  );
}
const BOOKS = /^(?:log|book|add|enter|record|note|put|put down|write down|note down|charge|credit)$/u;
/** "kept cedar busy for seven hours". */
const busy = (scene: Scene): boolean => hasMachine(scene) && said(scene, 'busy').length > 0;
/** "pulled the vase off hazel, that took 11 hours", "… and it ended up taking 5": the job that was just named. */
const tookSoLong = (scene: Scene, before: Scene | undefined): boolean =>
  before !== undefined &&
  asserted(before) &&
  hasMachine(before) &&
  !hasMachine(scene) &&
  isFn(scene.items[0], 'it', 'this', 'what') &&
  hasVerb(scene, 'take') &&
  valueOf(scene, 'hours') !== undefined &&
  (before.nouns.some((noun) => noun.code === 'print') || scene.materials.length > 0);
/** "the helmet took 9 h on rowan", "juniper took from nine till two over it": the job is what took the time. */
const tookToPrint = (scene: Scene): boolean =>
  hasMachine(scene) &&
  scene.nouns.every((noun) => ['print', 'job', 'filament', 'spool'].includes(noun.code)) &&
  scene.verbs.every((verb) => !verb.deed || ['take', 'print', 'run', 'did'].includes(verb.code)) &&
  !scene.verbs.some((verb) => verb.form === 'ing' && verb.code !== 'print' && verb.code !== 'run') &&
  (scene.nouns.some((noun) => noun.code === 'print') || said(scene, 'over').length > 0);
const hasBlocking = (scene: Scene): boolean =>
  scene.items.some(
    (item) =>
      hasTag(item, 'symptom', 'cue') && !hasTag(item, 'unit', 'value', 'date', 'fn') && words(item.text) > 1,
  ) ||
  someFn(scene, 'to') ||
  // "start the 6 h job", "queue the mask": an order to a colleague.
  scene.verbs.some((verb) => verb.at === 0 && verb.code === 'start' && verb.form === 'base');
const words = (text: string): number => text.split(' ').length;

/** "maple put in 5 hours on petg": it worked so long. */
const putIn = (scene: Scene): boolean =>
  valueOf(scene, 'hours') !== undefined &&
  scene.items.some(
    (item, at) =>
      /^(?:put|puts) in$/u.test(item.text) && sense(scene.items[at + 1], 'value')?.code === 'hours',
  );

/** "petg is on rowan now": the clause ends in where it is. */
function isOnMachine({ items }: Scene): boolean {
  const at = items.findIndex((item, i) => isFn(item, 'be') && isFn(items[i + 1], 'on', 'in'));
  return (
    at >= 0 && items.slice(at + 2).every((item) => hasTag(item, 'machine') || isFn(item, 'now', 'article'))
  );
}

/** "dried the petg for hazel, then mounted it". */
const mountsIt = (scene: Scene, before: Scene | undefined): Material | undefined =>
  before !== undefined &&
  scene.clause.sentence === before.clause.sentence &&
  scene.materials.length === 0 &&
  scene.nouns.every((noun) => noun.at < 0) &&
  scene.values.length === 0 &&
  someFn(scene, 'it') &&
  deedOf(scene, 'load') !== undefined &&
  deedOf(before, 'dry') !== undefined
    ? before.materials[0]
    : undefined;

/** "fresh roll of petg on rowan, 750 g", "loaded maple with nylon-cf", "elm has tpu in it now". */
export function readLoad(scene: Scene, before?: Scene): Draft[] {
  if (!asserted(scene)) return [];
  const lent = mountsIt(scene, before);
  if (lent !== undefined) return [draft(scene, { kind: 'load', material: lent }, 'load: it x machine')];
  const spool = scene.nouns.some((noun) => noun.code === 'spool' || noun.code === 'filament');
  // "switched birch from pla to petg"
  const changed =
    scene.materials.length === 2 &&
    scene.items.some((item, at) => isFn(item, 'from') && hasTag(scene.items[at + 1], 'material'));
  const material = changed ? scene.materials[1] : scene.materials[0];
  if (!spool && material === undefined) return [];
  const deed = deedOf(scene, 'load', 'fit', 'put', 'swap', 'install', 'start');
  const fresh = someFn(scene, 'new', 'another') && spool && (hasMachine(scene) || someFn(scene, 'it'));
  const ran =
    deedOf(scene, 'run', 'print', 'use', 'dry', 'arrive', 'order', 'bin', 'clear', 'remove', 'get') !==
    undefined;
  const shelf = scene.nouns.some((noun) => noun.code === 'shelf' || noun.code === 'dryer');
  const holds =
    !deed &&
    material !== undefined &&
    hasMachine(scene) &&
    !scene.items.some((item) => hasTag(item, 'symptom', 'complaint')) &&
    (said(scene, 'holds').length > 0 || isOnMachine(scene)) &&
    scene.values.length === 0;
  const loads =
    deed !== undefined &&
    !shelf &&
    !deed.code.startsWith('start') &&
    (material !== undefined || spool) &&
    (deed.code !== 'put' || spool || material !== undefined);
  // "rowan now on black asa"
  const runsOn =
    material !== undefined &&
    hasMachine(scene) &&
    scene.verbs.length === 0 &&
    hasTag(scene.items.at(-1), 'material') &&
    scene.items.some((item, at) => isFn(item, 'now', 'back') && isFn(scene.items[at + 1], 'on'));
  // "cedar's on nylon now"
  const isOnIt =
    material !== undefined &&
    scene.values.length === 0 &&
    scene.verbs.length === 0 &&
    hasTag(scene.items[0], 'machine') &&
    isFn(scene.items[1], 'be', 'possessive') &&
    isFn(scene.items[2], 'on') &&
    isFn(scene.items.at(-1), 'now');
  const hangs =
    material !== undefined &&
    hasMachine(scene) &&
    scene.items.some((item) => /^(?:hangs|is hanging|sits)$/u.test(item.text));
  const bare =
    spool && material !== undefined && hasMachine(scene) && scene.verbs.every((verb) => !verb.deed);
  const gets = fresh && hasMachine(scene) && deedOf(scene, 'get') !== undefined;
  if (shelf || (ran && !loads && !gets) || !(loads || fresh || holds || bare || hangs || runsOn || isOnIt))
    return [];
  if (scene.nouns.some((noun) => noun.part !== undefined && noun.part !== 'filament' && !noun.weak))
    return [];
  if (putIn(scene)) return [];
  if (deedOf(scene, 'dry') || (valueOf(scene, 'hours') !== undefined && deed?.code === 'put')) return [];
  const grams = valueOf(scene, 'grams');
  return [
    draft(
      scene,
      {
        kind: 'load',
        ...(material === undefined ? {} : { material }),
        ...(grams === undefined ? {} : { grams }),
      },
      'load: spool x machine',
    ),
  ];
}

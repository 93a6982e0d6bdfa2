/** What is to come: put off to a time, or taken on by the speaker. */
import { isRoomTask, ROOM } from '../../../maintenance/codes.ts';
import type { LocalDate } from '../../act.ts';
import { hasTag, isFn, isThing, isVerb, type Item, sense, type SenseOf } from '../../item.ts';
import { verbForms } from '../../inflect.ts';
import { phraseReader } from '../../phrases.ts';
import { type Draft, draft, hasMachine, type Scene, sceneWith, someFn } from '../../scene.ts';
import {
  APART,
  ENOUGH,
  FIRM_PHRASES,
  FIRM_VERBS,
  WAITING_PHRASES,
  WAITING_VERBS,
  WHOLE_CARE,
} from '../words/put-off.ts';
import { type Named, taskPlanned } from './tasks.ts';

/** "till after the show on the 20th": behind "until" the last day said is meant. */
function dayIn(scene: Scene): SenseOf<'date'> | undefined {
  const until = scene.items.findIndex((item) => isFn(item, 'until'));
  // "not today, friday instead"
  if (someFn(scene, 'instead') || isFromTo(scene))
    return sense(scene.items.findLast((one) => hasTag(one, 'date')), 'date'); // prettier-ignore
  const item =
    until < 0
      ? scene.items.find((one) => hasTag(one, 'date'))
      : scene.items.slice(until).findLast((one) => hasTag(one, 'date') && !sense(one, 'date')?.vague);
  return sense(item ?? scene.items.find((one) => hasTag(one, 'date')), 'date');
}

/** "moved from today to Monday". */
const isFromTo = ({ items }: Scene): boolean =>
  items.some((item, at) => isFn(item, 'from') && hasTag(items[at + 1], 'date')) &&
  items.filter((item) => hasTag(item, 'date')).length > 1;

function when(scene: Scene, today: LocalDate): { until?: LocalDate; days?: number; hours?: number } {
  const day = dayIn(scene);
  if (day && !(day.vague && day.to === undefined) && day.future > today)
    return day.vague
      ? { days: Math.round((Date.parse(day.future) - Date.parse(today)) / 86_400_000) }
      : { until: day.future };
  // "till april": its first day
  const opens = day?.stretch?.ahead[0];
  if (day?.vague && day.to === undefined && opens !== undefined && opens > today && someFn(scene, 'until'))
    return { until: opens };
  const span = scene.values.find((v) => v.code === 'hours' || v.code === 'days' || v.code === 'months');
  if (!span) return {};
  if (span.code === 'months') return { days: Math.round(span.value * 30) };
  return span.code === 'days' ? { days: Math.round(span.value) } : { hours: span.value };
}

const bent = (verbs: string): string =>
  verbs
    .split(', ')
    .flatMap((verb) => verbForms(verb).map(({ words }) => words))
    .join(', ');
const puttingOff = phraseReader({
  firm: `${bent(FIRM_VERBS)}, ${FIRM_PHRASES}`,
  waits: `${bent(WAITING_VERBS)}, ${WAITING_PHRASES}`,
  enough: ENOUGH,
  whole: WHOLE_CARE,
});
/** Of a row of pairs the first word, then the other somewhere behind it. */
const pairs = APART.map(([first, second]) => phraseReader({ first, second }));
const standsApart = (scene: Scene): boolean =>
  pairs.some((read) => {
    const found = read(scene.items);
    // "put a new coupler on its screw on the 2nd": fitted, and not put off
    const opens = found.find(({ code, from }) => code === 'first' && !isVerb(scene.items[from], 'install'));
    return (
      opens !== undefined &&
      // "put oil on the rails": upon them, and not off to another day.
      found.some(
        ({ code, from, to }) =>
          code === 'second' &&
          from >= opens.to &&
          !(scene.items[to - 1]?.text === 'the' && hasTag(scene.items[to], 'part', 'thing')),
      )
    );
  });
interface PutOff {
  readonly firm: boolean;
  readonly waits: boolean;
  readonly enough: boolean;
  readonly whole: boolean;
}
function putOff(scene: Scene): PutOff {
  const found = puttingOff(scene.items);
  const some = (code: keyof PutOff): boolean => found.some((one) => one.code === code);
  // "push" as a noun or of a button is no putting off: the item must be known as such a verb.
  const firm = found.some(
    (one) =>
      one.code === 'firm' &&
      isVerb(scene.items[one.from], 'put-off') &&
      !isNamed(scene, one.from) &&
      // "hence the delay"
      !(isFn(scene.items[one.from - 1], 'article', 'this', 'no') && isBase(scene.items[one.from])) &&
      !isPressed(scene, one.to) &&
      !isPushedIn(scene, one.from),
  );
  return { firm, waits: some('waits') || standsApart(scene), enough: some('enough'), whole: some('whole') };
}

const isBase = (item: Item | undefined): boolean =>
  item?.senses.every((s) => s.tag !== 'verb' || s.form === 'base' || s.form === 's') ?? false;
/** "all over the table", "to the other bench": a thing, whatever else the word may be. */
const isNamed = (scene: Scene, at: number): boolean =>
  hasTag(scene.items[at], 'thing', 'part') &&
  isFn(scene.items[at - 1], 'article', 'other', 'my', 'this', 'its', 'new', 'to');

/** "pushed the test button". */
const isPressed = (scene: Scene, to: number): boolean =>
  scene.items.slice(to, to + 4).some((item) => /\b(?:buttons?|switch|lever|knob|pedal)$/u.test(item.text));

/** "pushed it home", "push the tube back in": into its place, and to no other day. */
function isPushedIn({ items }: Scene, from: number): boolean {
  if (!/^(?:push|pushed|pushing|slide|slid|shove|shoved)(?: back)?$/u.test(items[from]?.text ?? ''))
    return false;
  return items
    .slice(from, from + 8)
    .some(
      (item, i) =>
        /^(?:home|fully home|right home|all the way|fully in|right in|back in|in|into|on|onto|through|thru|out|clear)$/u.test(
          item.text,
        ) && !hasTag(items[from + i + 1], 'value', 'date', 'machine'),
    );
}

const ofRoom = (one: Named | undefined): { machine?: string } =>
  one !== undefined && isRoomTask(one.task) ? { machine: ROOM } : {};
const placeless = (one: Named | undefined): { placeless?: true } =>
  one !== undefined && isRoomTask(one.task) ? { placeless: true } : {};

interface Beside {
  readonly today: LocalDate;
  /** The few clauses before, the nearest last. */
  readonly earlier: readonly Scene[];
  readonly after: Scene | undefined;
}

/** "not doing cedar's rods today, friday instead", "no time for its levelling, monday will do": the day stands alone behind. */
const isDayAlone = (scene: Scene | undefined): scene is Scene =>
  scene !== undefined &&
  scene.items.some((item) => hasTag(item, 'date')) &&
  scene.items.every(
    (item) =>
      hasTag(item, 'date') ||
      isFn(item, 'instead', 'will', 'do', 'on', 'be', 'just', 'maybe') ||
      /^(?:then|do|fine|okay|ok|works|enough|will do|is fine|rather)$/u.test(item.text),
  );
function spanFor(scene: Scene, shared: boolean, { today, earlier, after }: Beside): ReturnType<typeof when> {
  const before = earlier.at(-1);
  if (shared && before) return when(before, today);
  const own = when(scene, today);
  const waits = Object.keys(own).length === 0 && putOff(scene).waits;
  return waits && isDayAlone(after) && after.clause.sentence === scene.clause.sentence
    ? when(after, today)
    : own;
}

export function readDefer(scene: Scene, beside: Beside): Draft[] {
  const { mood } = scene;
  const { earlier } = beside;
  const before = earlier.at(-1);
  if (mood.conditional || mood.reported || (mood.question && !mood.requested)) return [];
  const { firm, waits, enough, whole } = putOff(scene);
  const trouble = scene.items.some(
    (item) =>
      isVerb(item, 'put-off') &&
      hasTag(item, 'complaint') &&
      item.senses.some((s) => s.tag === 'verb' && (s.form === 'ing' || s.form === 's')),
  );
  if (trouble || isRelocation(scene) || isLeftOver(scene)) return [];
  const shared =
    isFn(scene.items[0], 'too') && /^(?:and )?so (?:can|could|may)$/u.test(scene.items[0]?.text ?? '');
  const span = spanFor(scene, shared, beside);
  const timed = Object.keys(span).length > 0;
  if (!firm && !(timed && (waits || endsInDay(scene) || addsDays(scene) || shared)) && !enough) return [];
  // "…, and so can birch's": of the same task, which the place gives
  if (shared && taskPlanned(scene).length === 0) return [];
  if (mood.promised && !firm) return [];
  const said = taskPlanned(withoutPutOff(scene));
  const own = said.length > 0 ? said : oiling(scene);
  const named = own.length === 0 ? spokenOf(scene, earlier) : own.map((one) => theScrew(one, scene, before));
  const unread = named.length > 0 || !(firm || timed) ? undefined : unreadObject(scene);
  if (unread) return [unread];
  if (named.length === 0 && !hasMachine(scene) && !someFn(scene, 'it')) return [];
  if (named.length === 0 && !(firm && hasMachine(scene) && timed) && !(timed && whole)) return [];
  if (
    named.length === 0 &&
    (scene.verbs.some((verb) => verb.code === 'load' && verb.deed) || scene.materials.length > 0)
  )
    return [];
  const tasks: (Named | undefined)[] = named.length > 0 ? named : [undefined];
  return tasks.map((one) =>
    draft(
      scene,
      { kind: 'defer', ...(one === undefined ? {} : { task: one.task }), ...ofRoom(one), ...span },
      `defer: ${firm ? 'put off' : 'can wait'} x ${one?.task ?? 'machine'}`,
      { ...(one?.noun === undefined ? {} : { noun: one.noun.code }), ...placeless(one) },
    ),
  );
}
/** "another 3 h left on this print": still to run, and nothing put off. */
const isLeftOver = ({ items }: Scene): boolean =>
  items.some((item, at) => isFn(item, 'left') && sense(items[at - 1], 'value')?.code === 'hours');
/** "move maple to the window bench tomorrow": the machine itself, to a place. */
const isRelocation = ({ items }: Scene): boolean => {
  const at = items.findIndex((item, i) => isVerb(item, 'move') && hasTag(items[i + 1], 'machine'));
  const to = items.findIndex((item, i) => i > at && isFn(item, 'to'));
  return (
    at >= 0 &&
    to === at + 2 &&
    items[to + 1] !== undefined &&
    !hasTag(items[to + 1], 'date', 'value', 'calendar')
  );
};
/** "tube trim birch: to Friday", "cedar's rods: friday instead": a care and the day that it goes to, and nothing told as done. */
function endsInDay(scene: Scene): boolean {
  const { items } = scene;
  const instead = isFn(items.at(-1), 'instead');
  const at = items.length - (instead ? 2 : 1);
  return (
    hasTag(items[at], 'date') &&
    (instead || isFn(items[at - 1], 'to', 'until')) &&
    !hasTag(items[at - 2], 'date', 'value') &&
    !someFn(scene, 'from', 'i', 'we') &&
    !isBeing(scene) &&
    scene.verbs.every((verb) => !verb.deed && (verb.form === 'base' || verb.form === 'ing')) &&
    scene.values.length === 0
  );
}
/** "another week for hazel's belts". */
const addsDays = (scene: Scene): boolean =>
  scene.nouns.length > 0 &&
  scene.verbs.every((verb) => !verb.deed) &&
  !someFn(scene, 'since', 'every') &&
  !isBeing(scene) &&
  scene.values.some(
    (value) =>
      value.code === 'days' &&
      value.at === 0 &&
      /^another\b/u.test(scene.items[0]?.text ?? '') &&
      isFn(scene.items[1], 'for'),
  );
const isBeing = (scene: Scene): boolean =>
  scene.items.some((item) => isFn(item, 'be', 'have') && item.text !== "'s");
/** "push the oil on alder": what is put off is the oiling; "oil" alone is oil for the rods. */
const oiling = (scene: Scene): Named[] =>
  scene.items.some((item) => /^(?:oil|oiling|lube|lubing|lubrication|lubricating)$/u.test(item.text)) &&
  scene.nouns.every((noun) => noun.part === undefined || noun.code === 'oil' || noun.code === 'grease')
    ? [{ task: 'lubricate-rods' }]
    : [];
/** Words for all there is to do, and for no one task. */
const ANYTHING =
  /^(?:everything|all|stuff|things?|jobs?|tasks?|chores?|work|maintenance|round|rounds|reminders?|service|servicing|it|that|them|this|lot|whole|machine|printer|care|upkeep|rest|list|please|pls|again|bit|while|until|till?|least|now|later)$/u;
const unreadWord = (item: Item): boolean =>
  /^\p{L}{3,}$/u.test(item.text) &&
  !item.text.endsWith('ly') &&
  !ANYTHING.test(item.text) &&
  !isVerb(item, 'put-off') &&
  (item.senses.length === 0 || hasTag(item, 'part', 'thing')) &&
  !isThing(item, 'service', 'machine', 'job', 'entry', 'interval', 'sign');
/** Something is put off and it is not known what: never everything. "the grease" is the screw's or the rails'. */
function unreadObject(scene: Scene): Draft | undefined {
  const at = scene.items.findIndex((item) => isVerb(item, 'put-off'));
  const to = scene.items.findIndex((item, i) => i > at && (hasTag(item, 'value', 'date') || isFn(item, 'until', 'to'))); // prettier-ignore
  const object = scene.items.slice(0, to < 0 ? scene.items.length : to).find(unreadWord);
  if (at < 0 || !object || !hasMachine(scene)) return undefined;
  const greased = object.text.startsWith('greas');
  const why = greased
    ? 'Which grease is put off: the Z screw or the rails?'
    : `What is put off: what task is "${object.text}"?`;
  const options = greased ? ['grease-screw', 'lubricate-rails'] : [];
  return draft(scene, { kind: 'unclear', why }, 'unclear: what is put off', {
    doubt: { field: 'task', said: object.text, options },
  });
}
/** "elm's screw can wait": the one that a machine has; its fasteners are many. */
const theScrew = (one: Named, ...scenes: readonly (Scene | undefined)[]): Named =>
  one.task === 'check-fasteners' &&
  scenes.some((scene) => scene?.items.some((item) => item.text === 'screw' && hasTag(item, 'part')))
    ? { ...one, task: 'grease-screw' }
    : one;
/**
 * "can't be bothered with hazel's screw, kick it to Saturday", "rowan wheel check: not urgent, give it another 40 h",
 * "birch's belts are due. Please push that to Friday": what was spoken of right before, and nobody did.
 */
function spokenOf(scene: Scene, earlier: readonly Scene[]): Named[] {
  if (hasMachine(scene) || !someFn(scene, 'it', 'they', 'this')) return [];
  const near = [...earlier].reverse().slice(0, 2);
  const before = near.find((one) => taskPlanned(withoutPutOff(one)).length > 0);
  if (!before || before.mood.question) return [];
  const same = scene.clause.sentence === before.clause.sentence;
  const undone =
    before.mood.negated ||
    putOff(before).waits ||
    isDue(before) ||
    (same && before.verbs.every((verb) => !verb.deed));
  const goesOn =
    undone &&
    scene.clause.sentence - before.clause.sentence <= 1 &&
    (before.verbs.every((verb) => !verb.deed) || before.mood.negated);
  return goesOn ? taskPlanned(withoutPutOff(before)).map((one) => theScrew(one, before)) : [];
}
const isDue = (scene: Scene): boolean =>
  scene.items.some((item) =>
    item.senses.some((s) => s.tag === 'cue' && (s.code === 'due' || s.code === 'overdue')),
  );
/** The verb of putting off is no deed of care: "skip", "leave", "move". */
const withoutPutOff = (scene: Scene): Scene =>
  sceneWith(scene, {
    // "let the rods slide": no rail
    nouns: scene.nouns.filter(
      (noun) =>
        !(
          scene.items[noun.at]?.text === 'slide' &&
          scene.items.slice(0, noun.at).some((item) => /^(?:let|lets|letting)$/u.test(item.text))
        ),
    ),
    verbs: scene.verbs.filter(
      (verb) =>
        !isVerb(scene.items[verb.at], 'put-off') || isVerb(scene.items[verb.at], 'look', 'clean', 'tighten'),
    ),
  });

const gladly = (scene: Scene): boolean => scene.items.some((item) => /\b(?:happy|want) to$/u.test(item.text));

/** "I'll do birch's belts", "let me look at elm", "dibs on the rods". */
/** "I've got cedar's feeder cover off": told of what is so now. */
const holdsOpen = (scene: Scene): boolean =>
  scene.items.some((item) => isFn(item, 'let-me') && /\bgot$/u.test(item.text)) &&
  (/^(?:off|apart|out)$/u.test(scene.items.at(-1)?.text ?? '') ||
    scene.items.some((item) => item.senses.some((s) => s.tag === 'state' && s.code === 'open')));
export function readClaim(scene: Scene): Draft[] {
  const { mood } = scene;
  if (!mood.promised || mood.conditional || mood.reported || mood.hedged || (mood.wished && !gladly(scene)))
    return [];
  if (holdsOpen(scene)) return [];
  if (mood.negated || (mood.question && (!someFn(scene, 'will') || isFn(scene.items[0], 'do')))) return [];
  const told = scene.verbs.filter(
    (verb) =>
      ![
        'say',
        'run',
        'print',
        'start',
        'load',
        'order',
        'buy',
        'hand',
        'log',
        'plug',
        'undo',
        'amend',
        'use',
        'leave',
        'try',
        'move',
        'read',
        'count',
        'arrive',
        'stop',
      ].includes(verb.code),
  );
  const barred = scene.verbs.some(
    (verb) =>
      ['say', 'run', 'print', 'start', 'load', 'order', 'buy', 'hand', 'log', 'find'].includes(verb.code) &&
      !told.some((one) => one.at === verb.at),
  );
  if (barred || (told.length === 0 && scene.nouns.length === 0 && !hasMachine(scene))) return [];
  const named = taskPlanned(sceneWith(scene, { verbs: told }));
  if (named.length === 0)
    return hasMachine(scene) &&
      told.some((verb) => ['look', 'did', 'take', 'fix', 'clean', 'give'].includes(verb.code))
      ? [draft(scene, { kind: 'claim' }, 'claim: machine')]
      : [];
  return named.map((one) =>
    draft(
      scene,
      { kind: 'claim', task: one.task, ...ofRoom(one) },
      `claim: ${one.verb ?? 'do'} x ${one.noun?.code ?? '-'}`,
      {
        ...placeless(one),
        ...(one.noun === undefined ? {} : { noun: one.noun.code }),
        ...(one.noun?.weak === true ? { weak: true as const } : {}),
      },
    ),
  );
}

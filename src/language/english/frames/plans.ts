/** What is to come: put off to a time, or taken on by the speaker. */
import type { LocalDate } from '../../act.ts';
import { hasTag, isFn, isThing, isVerb, type Item, sense, type SenseOf } from '../../item.ts';
import { type Draft, draft, hasMachine, type Scene, someFn, textOf } from '../../scene.ts';
import { type Named, taskPlanned } from './tasks.ts';

const dayIn = (scene: Scene): SenseOf<'date'> | undefined =>
  sense(
    scene.items.find((item) => hasTag(item, 'date')),
    'date',
  );

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

/** Verbs that put off whatever stands with them; the rest need a time to come. */
const FIRM =
  /^(?:postpone|defer|delay|snooze|put off|put back|push(?:ed)? back|putting off|put(?:ting)? back|hold off|reschedule|postponed|deferred|delayed|snoozed|pushed|push|pushing|bump|bumped|shelve|shelving|shelved|park|skip|skipped|hold off on|put on hold|put on ice|stall|remind me|remind me again|postponing|deferring|snoozing|delaying|pushed back|put aside|suspend|adjourn|hang fire on|hold over|table)/u;
const WAITS =
  /\bcan wait\b|\bwait(?:s)? (?:till|until|for)\b|\bleave\b|\bleaving\b|\bnot until\b|\bgive\b.*\banother\b|\banother\b.*\bbefore\b|\bmov(?:e[sd]?|ing)\b|\bgo(?:es)? another\b|\bon the list for\b|\bdown for\b|\bwill do another\b|\bpark\b|\bnot before\b|\bhas another\b|\bcan go\b|\bcan do another\b|\bgot another\b|\bgets another\b|\bgave\b.*\banother\b|\bscheduled for\b|\bhold\b|\bkeep\b|\bextend(?:ed)?\b|\bstretch\b|\bgood for another\b|\bcan hang on\b|\bshift(?:ed)?\b|\bkick(?:ed)?\b|\bslide\b|\bput\b.*\b(?:back|off|on the)\b|\bpencil(?:led)? in\b|\bstop (?:telling|nagging|reminding)\b|\bignore\b|\bput\b.*\bto\b|\blater\b|\bpush\b/u;

export function readDefer(scene: Scene, today: LocalDate): Draft[] {
  const { mood } = scene;
  if (mood.conditional || mood.reported || (mood.question && !mood.requested)) return [];
  const text = textOf(scene);
  const firm =
    scene.items.some((item) => isVerb(item, 'put-off') && FIRM.test(item.text)) ||
    scene.verbs.some((verb) => verb.code === 'put-off' && FIRM.test(scene.items[verb.at]?.text ?? ''));
  const trouble = scene.items.some(
    (item) =>
      isVerb(item, 'put-off') &&
      hasTag(item, 'complaint') &&
      item.senses.some((s) => s.tag === 'verb' && (s.form === 'ing' || s.form === 's')),
  );
  if (trouble) return [];
  const span = when(scene, today);
  const timed = Object.keys(span).length > 0;
  if (!firm && !(timed && WAITS.test(text)) && !/\bcan wait\b/u.test(text)) return [];
  if (mood.promised && !firm) return [];
  const said = taskPlanned(withoutPutOff(scene));
  const named = said.length > 0 ? said : oiling(scene);
  const unread = named.length > 0 || !(firm || timed) ? undefined : unreadObject(scene);
  if (unread) return [unread];
  if (named.length === 0 && !hasMachine(scene) && !someFn(scene, 'it')) return [];
  if (
    named.length === 0 &&
    !(firm && hasMachine(scene) && timed) &&
    !(timed && /\bcan wait\b|\bput\b|\bpush/u.test(text))
  )
    return [];
  if (
    named.length === 0 &&
    (scene.verbs.some((verb) => verb.code === 'load' && verb.deed) || scene.materials.length > 0)
  )
    return [];
  const tasks: (Named | undefined)[] = named.length > 0 ? named : [undefined];
  return tasks.map((one) =>
    draft(
      scene,
      { kind: 'defer', ...(one === undefined ? {} : { task: one.task }), ...span },
      `defer: ${firm ? 'put off' : 'can wait'} x ${one?.task ?? 'machine'}`,
      one?.noun === undefined ? {} : { noun: one.noun.code },
    ),
  );
}
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
/** The verb of putting off is no deed of care: "skip", "leave", "move". */
const withoutPutOff = (scene: Scene): Scene => ({
  ...scene,
  verbs: scene.verbs.filter(
    (verb) =>
      !isVerb(scene.items[verb.at], 'put-off') || isVerb(scene.items[verb.at], 'look', 'clean', 'tighten'),
  ),
});

/** "I'll do birch's belts", "let me look at elm", "dibs on the rods". */
export function readClaim(scene: Scene): Draft[] {
  const { mood } = scene;
  if (
    !mood.promised ||
    mood.conditional ||
    mood.reported ||
    mood.hedged ||
    (mood.wished && !/\bhappy to\b|\bwant to\b/u.test(textOf(scene)))
  )
    return [];
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
  const named = taskPlanned({ ...scene, verbs: told });
  if (named.length === 0)
    return hasMachine(scene) &&
      told.some((verb) => ['look', 'did', 'take', 'fix', 'clean', 'give'].includes(verb.code))
      ? [draft(scene, { kind: 'claim' }, 'claim: machine')]
      : [];
  return named.map((one) =>
    draft(
      scene,
      { kind: 'claim', task: one.task },
      `claim: ${one.verb ?? 'do'} x ${one.noun?.code ?? '-'}`,
      one.noun === undefined
        ? {}
        : { noun: one.noun.code, ...(one.noun.weak ? { weak: true as const } : {}) },
    ),
  );
}
export const isOwnPlan = (scene: Scene): boolean =>
  scene.mood.promised && isFn(scene.items[0], 'i', 'let-me', 'we');

/** Puts machine and day to what the frames made, clause by clause, carrying both along the message. */
import type { Act, LocalDate } from './act.ts';
import { type Memory, type Place, placeOf, remember, strangerIn } from './discourse.ts';
import { hasTag, isFn, sense, sensesOf, type SenseOf } from './item.ts';
import type { NameBook } from './names.ts';
import type { Placed } from './placed.ts';
import { type Draft, draft, hasMachine, type Scene, someFn } from './scene.ts';

type Assumed = NonNullable<Placed['assumed']>;

/** Kinds that bear no machine, or only one that is said. */
const PLACELESS: ReadonlySet<string> = new Set(['stock', 'undo', 'amend', 'unclear']);
/** Questions that go on about the machine of the clause before. */
const FOLLOWS: ReadonlySet<string> = new Set(['diagnose']);
const DATED: ReadonlySet<string> = new Set([
  'usage',
  'meter',
  'load',
  'done',
  'swap',
  'symptom',
  'gone',
  'down',
  'up',
  'open',
  'close',
  'claim',
  'stock',
]);

function carried(
  scenes: readonly Scene[],
  places: readonly Place[],
  at: number,
  memory: Memory,
): readonly string[] {
  if (memory.last.length > 0) return memory.last;
  for (let i = at + 1; i < Math.min(scenes.length, at + 8); i += 1) {
    const there = places[i];
    if (there?.choice) return [];
    if (there && there.machines.length > 0) return there.machines;
  }
  return [];
}

function machinesFor(
  act: Act,
  scenes: readonly Scene[],
  places: readonly Place[],
  at: number,
  memory: Memory,
): { machines: readonly string[]; how: Place['how'] } {
  const here = places[at];
  const aside = act.kind === 'ask' && here?.machines.length === 0 ? asideOf(scenes, places, at) : [];
  if (aside.length > 0) return { machines: aside, how: 'said' };
  if (act.kind === 'amend' || act.kind === 'undo') return { machines: [], how: 'none' };
  if (act.kind === 'ask' && (here?.machines.length ?? 0) > 3) return { machines: [], how: 'none' };
  if (here && here.machines.length > 0) return { machines: here.machines, how: here.how };
  if (act.kind === 'ask') {
    const pronoun = scenes[at] !== undefined && someFn(scenes[at], 'it', 'its');
    const follows = FOLLOWS.has(act.topic) || pronoun;
    return follows && memory.last.length > 0
      ? { machines: memory.last, how: 'carried' }
      : { machines: [], how: 'none' };
  }
  const machines = carried(scenes, places, at, memory);
  return { machines, how: machines.length > 0 ? 'carried' : 'none' };
}

const CURT = 3;
const ASIDE: ReadonlySet<string> = new Set(['comma', 'colon', 'dash']);
/** "overdue: hazel?", "juniper 24 h, ready?": the name beside a curt question, or alone beside any, is the one asked of. */
function asideOf(scenes: readonly Scene[], places: readonly Place[], at: number): readonly string[] {
  const scene = scenes[at];
  for (const i of [at - 1, at + 1]) {
    const beside = scenes[i];
    if (!scene || !beside || beside.clause.sentence !== scene.clause.sentence) continue;
    if (!ASIDE.has(scenes[Math.max(i, at)]?.clause.joint ?? '')) continue;
    const alone = beside.items.every((item) => hasTag(item, 'machine', 'date') || isFn(item, 'article', 'for', 'on', 'of')); // prettier-ignore
    const curt = scene.items.length <= CURT && !beside.verbs.some((verb) => verb.deed);
    const there = places[i]?.machines ?? [];
    // "how's everything looking, all 8" is of the room
    if (alone || curt) return there.length > 3 ? [] : there;
  }
  return [];
}

/** The day of a clause: its own, or one that opens its sentence or stands at the end of a row of "and"s. */
function dayOf(
  scenes: readonly Scene[],
  drafted: readonly (readonly Draft[])[],
  at: number,
): SenseOf<'date'> | undefined {
  const own = dateIn(scenes[at]);
  if (own && !own.vague) return own;
  // "6 hours on alder yesterday, 4 on birch": the day is said for the row
  const [here, ahead] = [scenes[at], scenes[at - 1]];
  if (
    here &&
    ahead &&
    isBareRow(here) &&
    here.clause.sentence === ahead.clause.sentence &&
    !here.mood.planned
  ) {
    const before = dateIn(ahead);
    if (before && !before.vague) return before;
  }
  // "…, and now it is in use again"
  if (scenes[at]?.items.some((item) => item.text === 'now')) return undefined;
  const sentence = scenes[at]?.clause.sentence;
  for (let i = at - 1; i >= Math.max(0, at - 6) && scenes[i]?.clause.sentence === sentence; i -= 1) {
    const date = dateIn(scenes[i]);
    const scene = scenes[i];
    if (date)
      return scene &&
        (sense(scene.items[0], 'date') ||
          isDatedHead(scene, scenes[i + 1]) ||
          scenes[at]?.clause.joint === 'and' ||
          sense(scene.items[1], 'date')) &&
        scene.mood.planned === scenes[at]?.mood.planned
        ? date
        : undefined;
  }
  return dayBehind(scenes, drafted, at) ?? leading(scenes, at);
}
/** The day said at the end of a row: "greased the screw and oiled the rods on Monday". */
function dayBehind(
  scenes: readonly Scene[],
  drafted: readonly (readonly Draft[])[],
  at: number,
): SenseOf<'date'> | undefined {
  const sentence = scenes[at]?.clause.sentence;
  const promised = drafted[at]?.some((one) => one.act.kind === 'claim') === true;
  for (let i = at + 1; i < Math.min(scenes.length, at + 4); i += 1) {
    const scene = scenes[i];
    if (
      !scene ||
      scene.clause.sentence !== sentence ||
      !['and', 'comma', 'next'].includes(scene.clause.joint) ||
      scene.mood.planned !== scenes[at]?.mood.planned ||
      scene.mood.question ||
      drafted[i]?.some((one) => one.act.kind === 'defer' || (one.act.kind === 'claim' && !promised))
    )
      return undefined;
    const date = dateIn(scene);
    if (date)
      return scene.clause.joint === 'and' || scene.items.length <= 3 || only(scene) ? date : undefined;
  }
  return undefined;
}
/** "…, this was elm last night": names the machine and the day, and nothing else. */
const only = (scene: Scene): boolean =>
  scene.verbs.length === 0 && scene.nouns.length === 0 && scene.values.length === 0 && hasMachine(scene);
/** "yesterday: …", "Monday - …" holds for the whole message. */
function leading(scenes: readonly Scene[], at: number): SenseOf<'date'> | undefined {
  const first = scenes[0];
  if (at === 0 || !first) return undefined;
  const alone = dateIn(first) !== undefined && (first.items.length <= 2 || isHeading(first));
  return alone ? dateIn(first) : undefined;
}
/** "4 on birch", "birch 4": a name and a figure whose unit was said before. */
const isBareRow = (scene: Scene): boolean =>
  scene.items.length <= 3 &&
  hasMachine(scene) &&
  scene.values.length === 1 &&
  scene.values[0]?.code === 'bare' &&
  scene.verbs.length === 0 &&
  scene.nouns.length === 0;
/** "Evening handover for yesterday", "late shift, March 10": what is told, and nothing of it yet. */
const isHeading = (scene: Scene): boolean =>
  scene.items.length <= 8 &&
  !scene.mood.question &&
  !hasMachine(scene) &&
  scene.values.length === 0 &&
  scene.verbs.every((verb) => !verb.deed) &&
  scene.items.some(
    (item) =>
      item.senses.some((s) => s.tag === 'cue' && (s.code === 'handover' || s.code === 'crew')) ||
      /^(?:summary|report|recap|log|notes?|update|round|rundown)$/u.test(item.text),
  );
/** "Operating time 2026-03-10: alder 7.5 h, elm 3 h": a heading's day is of all that it heads. */
const isDatedHead = (scene: Scene, next: Scene | undefined): boolean =>
  next?.clause.joint === 'colon' && hasTag(scene.items.at(-1), 'date');
const dateIn = (scene: Scene | undefined): SenseOf<'date'> | undefined =>
  scene
    ? (sensesOf(scene.items, 'date').find((one) => !one.vague) ??
      sensesOf(scene.items, 'date').find((one) => one.to !== undefined))
    : undefined;

const MONTH =
  /^(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?|last month|last year)$/u;
const UNDATED: ReadonlySet<string> = new Set(['claim', 'usage', 'stock', 'meter']);
/** "last checked in january": about then, never today; its first day, so that what is due again is due sooner. */
function aboutDay(act: Act, scene: Scene): LocalDate | undefined {
  if (!DATED.has(act.kind) || UNDATED.has(act.kind) || scene.mood.planned || 'on' in act) return undefined;
  const at = scene.items.findIndex((item) => hasTag(item, 'date') && MONTH.test(item.text));
  if (ONCE.has(act.kind) && (isFn(scene.items[at - 1], 'since') || LAST_TIME.test(scene.text)))
    return undefined;
  const said = scene.items[at];
  return sense(said, 'date')?.stretch?.back[0];
}

/** Deeds of one moment: they do not last since a day. */
const ONCE: ReadonlySet<string> = new Set(['swap', 'done', 'load', 'stock']);
const isSince = (scene: Scene): boolean =>
  scene.items.some((item, at) => hasTag(item, 'date') && isFn(scene.items[at - 1], 'since'));
/** "first time in months", "the last one was in november": of an earlier one. */
const LAST_TIME =
  /\b(?:first (?:one|time|new one)|last (?:one|time)|previous one) (?:since|in|was|in since)\b/u;

function withDay(act: Act, scene: Scene, day: SenseOf<'date'> | undefined, today: LocalDate): Act {
  if (!day || day.vague || !DATED.has(act.kind) || 'on' in act) return act;
  // "900 g since monday": run up to today; "the first one since monday": of the one before it.
  if ((act.kind === 'usage' || ONCE.has(act.kind)) && someFn(scene, 'since') && isSince(scene)) return act;
  // "off until tomorrow": the day is its end.
  if (act.kind === 'down' && /\b(?:until|till?)\b/u.test(scene.text)) return act;
  const on = act.kind === 'claim' || scene.mood.planned ? day.future : day.past;
  return on === today ? act : ({ ...act, on } as Act);
}

function expand(
  one: Draft,
  scene: Scene,
  scenes: readonly Scene[],
  drafted: readonly (readonly Draft[])[],
  places: readonly Place[],
  memory: Memory,
  today: LocalDate,
): Placed[] {
  const at = scene.index;
  const about = aboutDay(one.act, scene);
  const dated =
    about === undefined
      ? withDay(one.act, scene, dayOf(scenes, drafted, at), today)
      : ({ ...one.act, on: about } as Act);
  const step = { rule: one.rule, span: one.span };
  if (PLACELESS.has(dated.kind) || one.placeless)
    return [{ draft: one, act: withMachine(dated, one, places[at]), trail: [step] }];
  const { machines, how } = one.on
    ? { machines: one.on, how: 'said' as const }
    : machinesFor(dated, scenes, places, at, memory);
  const told = assumption(how, places[at]);
  const assumed = about === undefined ? told : { ...told, on: { from: 'unsure' as const } };
  if (machines.length === 0) return [{ draft: one, act: dated, trail: [step] }];
  return machines.map((machine) => ({
    draft: one,
    act: { ...dated, machine } as Act,
    trail: [step],
    ...(assumed === undefined ? {} : { assumed }),
  }));
}
function withMachine(act: Act, one: Draft, at: Place | undefined): Act {
  const machine = at?.machines[0];
  return act.kind === 'undo' && machine !== undefined && at?.how === 'said' && !one.placeless
    ? { ...act, machine }
    : act;
}
function assumption(how: Place['how'], at: Place | undefined): Assumed | undefined {
  if (how === 'carried') return { machine: { from: 'neighbour' } };
  return at?.said !== undefined && how === 'said'
    ? { machine: { from: 'spelling', said: at.said } }
    : undefined;
}

const unclear = (scene: Scene, why: string, rule: string, doubt: NonNullable<Draft['doubt']>): Draft =>
  draft(scene, { kind: 'unclear', why }, rule, { doubt });

const whichOf = ({ said, options }: NonNullable<Place['choice']>): string =>
  options.length === 0
    ? `Which machines are that (${said})? Name them.`
    : `Which machine: ${options.join(' or ')}?`;

/** A deed on a machine that cannot be told: one question instead of the acts. */
function inDoubt(scene: Scene, at: Place, drafts: readonly Draft[], memory: Memory): Draft | undefined {
  const bound = drafts.some(
    (one) => !PLACELESS.has(one.act.kind) && !one.placeless && one.act.kind !== 'ask',
  );
  if (at.choice && (bound || scene.verbs.some((verb) => verb.deed)))
    return unclear(scene, whichOf(at.choice), 'unclear: names disagree', {
      field: 'machine',
      said: at.choice.said,
      options: at.choice.options,
    });
  // "one of the wheely ones had its belts done, think birch but could have been rowan"
  const guessed =
    bound &&
    memory.last.length === 0 &&
    !hasMachine(scene) &&
    /\bone of (?:the|these|those|our)(?: [a-z]+)? (?:ones|machines|printers)\b/u.test(scene.text) &&
    scene.mood.hedged;
  if (guessed)
    return unclear(scene, whichOf({ said: scene.text, options: [] }), 'unclear: one of several', {
      field: 'machine',
      said: scene.text,
      options: [],
    });
  if (!bound || (hasMachine(scene) && !strangerMarked(scene))) return undefined;
  const stranger = strangerIn(scene);
  if (stranger === undefined || (memory.last.length > 0 && !strangerMarked(scene))) return undefined;
  return unclear(scene, `No machine here is called "${stranger}".`, 'unclear: unknown machine', {
    field: 'machine',
    said: stranger,
    options: [],
  });
}
const strangerMarked = (scene: Scene): boolean =>
  scene.items.some((item) => item.senses.some((s) => s.tag === 'stranger'));

export function place(
  scenes: readonly Scene[],
  drafted: readonly (readonly Draft[])[],
  today: LocalDate,
  book: NameBook,
): { rulings: Placed[]; machineOf: (scene: Scene) => string | undefined } {
  const memory: Memory = { last: [], mentioned: [] };
  const places: Place[] = [];
  // Names are looked up front to back once, so that a clause may look ahead for its machine.
  const scout: Memory = { last: [], mentioned: [] };
  for (const scene of scenes) {
    const at = placeOf(scene, scout, book);
    places.push(at);
    remember(scout, at);
  }
  lendChoices(scenes, places);
  const rulings: Placed[] = [];
  let previous: readonly Draft[] = [];
  scenes.forEach((scene, i) => {
    const at = places[i];
    if (!at) return;
    const own = drafted[i] ?? [];
    const ditto =
      own.length === 0 &&
      (at.ditto || goesOn(scene, scenes[i - 1])) &&
      at.machines.length > 0 &&
      previous.length > 0 &&
      !scene.mood.negated &&
      !scene.mood.question;
    const drafts = ditto
      ? previous.map((one) => ({ ...one, clause: i, span: scene.span, rule: `same again: ${one.rule}` }))
      : own;
    const doubt = inDoubt(scene, at, drafts, memory);
    const settled = doubt
      ? [doubt, ...drafts.filter((one) => one.placeless || one.act.kind === 'ask')]
      : drafts;
    for (const one of settled) rulings.push(...expand(one, scene, scenes, drafted, places, memory, today));
    if (drafts.length > 0)
      previous = drafts.filter((one) => one.act.kind !== 'ask' && one.act.kind !== 'unclear');
    remember(memory, at);
  });
  return {
    rulings: mergeAmends(rulings).map((one) => orphaned(one, rulings, scenes)),
    machineOf: (scene) => places[scene.index]?.machines[0] ?? scoutBack(places, scene.index),
  };
}
/** "did belts on alder. and birch. and 3": the deed goes on over the full stop. */
const goesOn = (scene: Scene, before: Scene | undefined): boolean =>
  before !== undefined &&
  hasMachine(before) &&
  ((scene.clause.joint === 'sentence' &&
    scene.items.every((item) => hasTag(item, 'machine') || isFn(item, 'on', 'in', 'article', 'too'))) ||
    isTheOne(scene));
/** "tightened the belt on 2 and the one on 5". */
const isTheOne = (scene: Scene): boolean =>
  scene.clause.joint === 'and' &&
  /^the ones? (?:on|in|of) /u.test(scene.text) &&
  scene.items.slice(3).every((item) => hasTag(item, 'machine') || isFn(item, 'too'));
function scoutBack(places: readonly Place[], at: number): string | undefined {
  for (let i = at - 1; i >= Math.max(0, at - 4); i -= 1)
    if ((places[i]?.machines.length ?? 0) > 0) return places[i]?.machines[0];
  return undefined;
}

/** "nozzle swapped, cedar or juniper": a choice that stands alone is of the clause before. */
function lendChoices(scenes: readonly Scene[], places: Place[]): void {
  scenes.forEach((scene, i) => {
    const [here, before] = [places[i], places[i - 1]];
    const [one, other] = [before?.machines[0], here?.machines[0]];
    // "did the belts on 4.. or 7?"
    if (
      before &&
      one !== undefined &&
      other !== undefined &&
      one !== other &&
      scene.items.length === 2 &&
      isFn(scene.items[0], 'or')
    )
      places[i - 1] = {
        ...before,
        machines: [],
        choice: { said: `${one} or ${other}`, options: [one, other] },
      };
    // "one of the two, alder or maple, got oil on its rods"
    const next = places[i + 1];
    if (
      here?.choice &&
      next &&
      next.machines.length === 0 &&
      scenes[i + 1]?.clause.sentence === scene.clause.sentence
    )
      places[i + 1] = { ...next, choice: here.choice };
    const alone = scene.items.every(
      (item) => hasTag(item, 'machine') || isFn(item, 'or', 'on', 'maybe', 'if', 'be', 'it', 'unsure', 'not'),
    );
    if (!here?.choice || !before || !alone || before.machines.length > 0) return;
    if (scene.clause.sentence === scenes[i - 1]?.clause.sentence)
      places[i - 1] = { ...before, choice: here.choice };
  });
}

/** A correction in the same message puts right what stands before it: "2 hours... no, make that three". */
function mergeAmends(rulings: readonly Placed[]): Placed[] {
  const out: Placed[] = [];
  for (const one of rulings) {
    const last = out.at(-1);
    const { act } = one;
    if (
      act.kind !== 'amend' ||
      !last ||
      last.act.kind === 'ask' ||
      last.act.kind === 'unclear' ||
      last.act.kind === 'amend' ||
      last.act.kind === 'undo'
    ) {
      if (act.kind === 'amend' && last?.act.kind === 'amend' && last.draft.clause === one.draft.clause - 1)
        out[out.length - 1] = { ...last, act: { ...last.act, ...act } };
      else out.push(one);
      continue;
    }
    out[out.length - 1] = { ...last, act: repaired(last.act, act), trail: [...last.trail, ...one.trail] };
  }
  return out;
}
/** A correction of something in the same message that could not be read corrects no earlier entry. */
function orphaned(one: Placed, all: readonly Placed[], scenes: readonly Scene[]): Placed {
  if (one.act.kind !== 'amend' || all.some((other) => other.draft.clause < one.draft.clause)) return one;
  const said = scenes
    .slice(Math.max(0, one.draft.clause - 3), one.draft.clause)
    .some((scene) => hasMachine(scene) && scene.verbs.some((verb) => verb.deed && verb.code !== 'amend'));
  return said ? { ...one, act: { kind: 'unclear', why: 'What should the figure be of?' } } : one;
}
function repaired(act: Act, set: Extract<Act, { kind: 'amend' }>): Act {
  const { kind: _, value, ...named } = set;
  const known = Object.fromEntries(Object.entries(named));
  const figure = (['hours', 'grams', 'metres', 'count', 'change', 'days'] as const).find(
    (field) => field in act,
  );
  return {
    ...act,
    ...known,
    ...(value !== undefined && figure !== undefined ? { [figure]: value } : {}),
  };
}

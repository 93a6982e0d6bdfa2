/** A question laid open: what it speaks of, and every tag that the rows of the topics are written in. */
import type { StockItem, Symptom, Task } from '../../../maintenance/codes.ts';
import { hasTag, isFn, type Item, sense } from '../../item.ts';
import { hasMachine, hasVerb, type NounAt, objects, type Scene, valueOf } from '../../scene.ts';
import type { AskCue, Fn } from '../../senses.ts';
import { partOf, standsAlone } from '../frames/parts-said.ts';
import { symptomsIn } from '../frames/symptom.ts';
import { taskPlanned, tasksNamed } from '../frames/tasks.ts';

/** What a question may speak of, and how. `past`: a deed is asked after; `swap`: a verb of replacing. */
type About =
  | 'part' | 'task' | 'symptom' | 'machine' | 'it' | 'person' | 'material' | 'date' | 'span' | 'thing'
  | 'spare-time' | 'out' | 'needs' | 'fixes' | 'stands' | 'by-what' | 'past' | 'swap' | 'runs' | 'spent' | 'endures' | 'what-part' | 'finding' | 'asked'; // prettier-ignore
type Asks = Extract<Fn, 'who' | 'what' | 'when' | 'why' | 'how' | 'which' | 'any' | 'all' | 'should' | 'will' | 'i' | 'we' | 'you' | 'last' | 'off' | 'down' | 'not'>; // prettier-ignore
export type Fact = AskCue | About | Asks;

export interface Question {
  readonly scene: Scene;
  readonly facts: ReadonlySet<Fact>;
  readonly part?: StockItem;
  /** A task that replaces nothing. */
  readonly task?: Task;
  readonly symptom?: Symptom;
  /** Of a job that is to be run. */
  readonly hours?: number;
}

const ASKS: ReadonlySet<Fn> = new Set<Fn>(['who', 'what', 'when', 'why', 'how', 'which', 'any', 'all', 'should', 'will', 'i', 'we', 'you', 'last', 'off', 'down', 'not', 'it']); // prettier-ignore

/** Verbs that name no task of their own in a question: "who did …", "does it work", "what fits". */
const NO_TASK: ReadonlySet<string> = new Set(['did', 'work', 'swap', 'fit', 'test', 'run']);
const REPLACING = ['swap', 'fit', 'install'] as const;
/** Parts that are looked after far more often than they are replaced. */
const CARED: ReadonlySet<string> = new Set(['rod', 'rail', 'lead-screw', 'pulley', 'wiring', 'fastener', 'printed-part', 'probe', 'coupler', 'door']); // prettier-ignore
/** Asked of these, a part is the thing itself and not the care of it. */
const OF_THE_PART: readonly AskCue[] = ['old', 'left', 'spare', 'shelf', 'have', 'lifetime', 'in-place', 'order', 'run-out']; // prettier-ignore

export function layOpen(scene: Scene): Question {
  const facts = new Set<Fact>();
  for (const item of scene.items)
    for (const s of item.senses) {
      // A trouble in several words is one thing: its "steps" are no way of doing, its "down" no state.
      if (s.tag === 'cue' && hasTag(item, 'symptom', 'complaint') && item.text.includes(' ')) continue;
      // A "guide tube" guides nobody, and what is "out of order" orders nothing.
      if (
        s.tag === 'cue' &&
        ((hasTag(item, 'part') && (s.code === 'way' || s.code === 'tell')) ||
          (s.code === 'order' && item.text === 'out of order'))
      )
        continue;
      // "e steps" are no way of doing.
      if (s.tag === 'cue' && s.code === 'way' && /^e steps?$|^estep/u.test(item.text)) continue;
      // "I'd like to know" owes nothing.
      if (s.tag === 'fn' && s.code === 'should' && item.text === "i 'd") continue;
      // "the late shift" is people, and nothing is late.
      if (s.tag === 'cue' && s.code === 'overdue' && isFn(item, 'person')) continue;
      if (s.tag === 'cue') facts.add(s.code);
      else if (s.tag === 'fn' && ASKS.has(s.code) && !(s.code === 'when' && startsLater(scene.items, item)))
        facts.add(s.code as Asks);
    }
  const noun = oiledAlone(scene) === undefined ? nounOf(scene) : undefined;
  const part = noun === undefined ? undefined : (partOf(scene, noun) ?? noun.part);
  const named = oiledAlone(scene) ?? taskOf(scene, part, facts);
  // "when did cedar last clog": it did so itself
  const clogs =
    named === 'clear-jam' &&
    scene.items.some((item) => CLOGS.test(item.text)) &&
    !hasVerb(scene, 'clear', 'fix', 'remove');
  const task = clogs ? undefined : named;
  const jams = clogs || task === 'clear-jam';
  const jam: Symptom | undefined = jams && facts.has('trouble') ? 'no-extrusion' : undefined;
  const symptom =
    symptomsIn(scene).find(
      (one) =>
        !isEating(scene, one.at, facts) && !(facts.has('how-tight') && scene.items[one.at]?.text === 'tight'),
    )?.symptom ?? jam;
  const hours = valueOf(scene, 'hours');
  const question = {
    scene, facts,
    ...(part === undefined ? {} : { part }),
    ...(task === undefined ? {} : { task }),
    ...(symptom === undefined ? {} : { symptom }),
    ...(hours === undefined ? {} : { hours }),
  }; // prettier-ignore
  for (const fact of about(question)) facts.add(fact);
  return question;
}

/** "a set of wheels". */
const isSetOf = ({ items }: Scene, at: number): boolean =>
  items[at]?.text === 'set' && items[at + 1]?.text === 'of';
/** "how much pla has it eaten": what went through, and nothing was chewed. */
const isEating = ({ items }: Scene, at: number, facts: ReadonlySet<Fact>): boolean =>
  /^(?:eat|eats|ate|eaten|eating|munched|gobbled|chewed through)\b/u.test(items[at]?.text ?? '') &&
  (facts.has('how-many') || facts.has('most') || facts.has('filament'));

/** "did anyone oil alder", "when was it greased last": the rods are oiled and the screw is greased, where nothing else is named. */
function oiledAlone(scene: Scene): Task | undefined {
  const verb = scene.verbs.find((one) => one.code === 'oil');
  const word = scene.items[verb?.at ?? -1]?.text ?? '';
  const named = scene.nouns.some((noun) => noun.code !== 'machine' && noun.at !== verb?.at);
  const next = scene.items[(verb?.at ?? 0) + 1];
  const used = /^(?:oil|grease|lube)$/u.test(word)
    ? hasTag(next, 'machine') ||
      isFn(next, 'it') ||
      /\b(?:needs?|wants?)$/u.test(scene.items[(verb?.at ?? 0) - 1]?.text ?? '')
    : word.endsWith('ed');
  if (named || !used || !hasMachineOrIt(scene)) return undefined;
  return word.startsWith('greas') || word.startsWith('regreas') ? 'grease-screw' : 'lubricate-rods';
}
const hasMachineOrIt = (scene: Scene): boolean =>
  hasMachine(scene) || scene.items.some((item) => isFn(item, 'it'));

/** "… 22 h when I start at 19:30?": no question after a time. */
const startsLater = (items: readonly Item[], item: Item): boolean => {
  const at = items.indexOf(item);
  return (
    at > 2 &&
    isFn(items[at + 1], 'i', 'we') &&
    items.slice(at + 2, at + 4).some((one) => one.senses.some((s) => s.tag === 'verb' && s.code === 'start'))
  );
};

function nounOf(scene: Scene): NounAt | undefined {
  const nouns = objects(scene).filter(standsAlone);
  const sheet = hasVerb(scene, ...REPLACING) ? nouns.find((one) => one.code === 'bed') : undefined;
  const isPart = (one: NounAt): boolean => one.part !== undefined;
  // "out of nozzles", "expect from a sock": in a question a role does not hide the part.
  return nouns.find(isPart) ?? sheet ?? scene.nouns.find(isPart);
}

function taskOf(scene: Scene, part: StockItem | undefined, facts: ReadonlySet<Fact>): Task | undefined {
  if (hasVerb(scene, ...REPLACING)) return undefined;
  const looksFor = scene.items.some((item) => isFn(item, 'where'));
  const named = tasksNamed(
    scene,
    (verb) => !NO_TASK.has(verb.code) && !isSetOf(scene, verb.at) && !(verb.code === 'look' && looksFor),
  )[0];
  if (named) return named.task;
  const cared = part !== undefined && CARED.has(part) && !OF_THE_PART.some((cue) => facts.has(cue));
  if (part !== undefined && !cared) return undefined;
  const task = taskPlanned(scene)[0]?.task;
  return task !== undefined && !task.startsWith('replace-') ? task : undefined;
}

const LONGEST_SPARE_HOURS = 3;
/** "I've got 20 mins", "what fits into half an hour": time for care, and none that a machine ran. */
export function spareMinutes(scene: Scene): number | undefined {
  const { items, values } = scene;
  const [value, ...more] = values;
  if (value?.code !== 'hours' || more.length > 0 || value.value > LONGEST_SPARE_HOURS) return undefined;
  const idle = scene.verbs.every((verb) => IDLE.has(verb.code) || items[verb.at]?.text === 'free');
  const has = items.slice(0, value.at).some((item) => HAVING.test(item.text));
  const asks = items.some((item) => isFn(item, 'what', 'which'));
  // "what's left to do": the side of nothing
  const care = scene.nouns.every(
    (noun) => noun.code === 'job' || noun.code === 'service' || isFn(items[noun.at], 'left'),
  );
  return idle && has && care && (asks || !hasMachine(scene)) ? Math.round(value.value * 60) : undefined;
}
const HAVING = /^(?:got|have|i 've got|we 've got|'ve got|'ve|with|in|within|into|spare|fits? in(?:to)?)$/u;
const IDLE: ReadonlySet<string> = new Set([
  'get',
  'take',
  'find',
  'make',
  'did',
  'fit',
  'need',
  'say',
  'leave',
  'put-off',
]);

const CLOGS = /^(?:clog|clogged|jam|jammed)$/u;
const SPENDING: ReadonlySet<string> = new Set(['run', 'print', 'use']);
function about({ scene, part, task, symptom }: Omit<Question, 'facts'>): Fact[] {
  const { items } = scene;
  const has = (...tags: Parameters<typeof hasTag>[1][]): boolean =>
    items.some((item) => hasTag(item, ...tags));
  const spent =
    items.some((item) =>
      /^(?:eat|eats|ate|eaten|munched|gobbled|guzzled|swallowed|scoffed|devoured|consumed)\b/u.test(
        item.text,
      ),
    ) || scene.verbs.some((verb) => SPENDING.has(verb.code) && verb.form !== 'ing' && verb.form !== 's');
  const facts: [Fact, boolean][] = [
    ['part', part !== undefined && !(part === 'filament' && (spent || hasMachine(scene) || (has('date') && !hasVerb(scene, 'order', 'buy'))))],
    ['task', task !== undefined],
    ['asked', scene.mood.question],
    ['symptom', symptom !== undefined],
    ['machine', hasMachine(scene)],
    ['person', has('person')],
    ['material', scene.materials.length > 0],
    ['date', has('date')],
    ['span', scene.values.some((v) => ['hours', 'days', 'months', 'grams', 'clock'].includes(v.code))],
    ['finding', has('finding', 'complaint', 'state')],
    ['thing', scene.nouns.some((noun) => noun.part === undefined)],
    ['it', items.some((item) => isFn(item, 'it', 'they', 'this', 'printer'))],
    ['past', isPast(items)],
    ['swap', hasVerb(scene, ...REPLACING)],
    ['runs', hasVerb(scene, 'run', 'print', 'work')],
    ['spent', spent],
    ['spare-time', spareMinutes(scene) !== undefined],
    ['endures', items.some((_, at) => endures(items, at))],
    ['what-part', asksWhich(items)],
    ['out', items.some((item) => OUT_OF_USE.test(item.text))],
    ['needs', hasVerb(scene, 'need') || items.some((item) => /^(?:needs?|wants?)$/u.test(item.text))],
    ['cause', items.at(-1)?.text === 'from' && items.some((item) => isFn(item, 'where'))],
    ['fixes', hasVerb(scene, 'fix')],
    ['stands', isFn(items.at(-1), 'be') || /^(?:doing|going|looking|getting on|keeping|feeling|coping|behaving|holding up)$/u.test(items.at(-1)?.text ?? '')],
    ['by-what', items.at(-1)?.text === 'with' && items.some((item) => isFn(item, 'what'))],
  ]; // prettier-ignore
  return facts.filter(([, holds]) => holds).map(([fact]) => fact);
}

const OUT_OF_USE =
  /(?:^|\s)(?:down|out of action|out of order|out of use|out of service|broken down|offline|idle|standing still|unusable)$/u;
const DID = /^(?:did|didn't|didnt|was|were|wasn't|weren't|had)$/u;
const HAVE = /^(?:has|have|'d|'ve|hasn't|haven't)$/u;
/** After one of these a participle is no deed of the past: "must be greased", "is trimmed", "needs changing". */
const PRESENT =
  /(?:^|\s)(?:is|how 's|are|be|do|does|must|should|can|could|will|would|need|needs|gets|get|to)(?:\s|$)/u;
/** Verbs whose past forms are met in questions about the present: "have we got", "how many left". */
const STANDING: ReadonlySet<string> = new Set(['get', 'take', 'leave', 'find', 'need', 'say']);

const pastVerb = (item: Item, ...forms: readonly string[]): boolean =>
  item.senses.some((s) => s.tag === 'verb' && forms.includes(s.form)) &&
  !item.senses.some((s) => s.tag === 'verb' && STANDING.has(s.code) && forms.includes(s.form)) &&
  // "fit for a 12 h run"
  !isFn(item, 'ready');

/** "did we …", "was it …ed", "has anyone …": the auxiliary, or a past form with none of the present before it. */
function isPast(items: readonly Item[]): boolean {
  let present = false;
  for (const [at, item] of items.entries()) {
    if (DID.test(item.text) && (at < items.length - 1 || isFn(items[at - 1], 'this', 'it'))) return true;
    const rest = items.slice(at + 1);
    if (HAVE.test(item.text)) {
      if (rest.some((one) => one.text === 'been' || pastVerb(one, 'past', 'both') || isFn(one, 'did-it')))
        return true;
    } else if (PRESENT.test(item.text)) present = true;
    else if (!present && pastVerb(item, 'past') && !namedRun(items, at)) return true;
  }
  return false;
}

/** "a 12 h run": a noun, whatever form it could be. */
const namedRun = (items: readonly Item[], at: number): boolean =>
  items[at]?.senses.some((s) => s.tag === 'verb' && s.form === 'base') === true &&
  (hasTag(items[at - 1], 'value') || isFn(items[at - 1], 'article'));

/** "how long does it last": the verb, not "the last time". */
function endures(items: readonly Item[], at: number): boolean {
  const item = items[at];
  if (!item?.senses.some((s) => s.tag === 'verb' && s.code === 'last')) return false;
  if (item.text !== 'last') return true;
  const [before, next] = [items[at - 1], items[at + 1]];
  if (before?.text !== 'they' && isFn(before, 'article', 'be', 'have', 'my', 'we', 'someone', 'who', 'when'))
    return false;
  return next === undefined || hasTag(next, 'machine') || isFn(next, 'on', 'in', 'for', 'with', 'at', 'here', 'now', 'we', 'until', 'i', 'my'); // prettier-ignore
}

/** "what nozzle …", "which size of nozzle …": the part itself is what is asked for. */
function asksWhich(items: readonly Item[]): boolean {
  const at = items.findIndex((item) => isFn(item, 'what', 'which'));
  if (at < 0) return false;
  const part = items.findIndex((item, i) => i > at && hasTag(item, 'part'));
  return part > at && part - at <= 3 && !items.slice(at + 1, part).some((item) => hasTag(item, 'verb') && !hasTag(item, 'spec') || isFn(item, 'be', 'do', 'article')); // prettier-ignore
}

export const personIn = (scene: Scene): string | undefined =>
  sense(scene.items.find((item) => hasTag(item, 'person')), 'person')?.code; // prettier-ignore

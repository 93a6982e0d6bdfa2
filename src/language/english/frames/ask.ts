/** Questions: what they are about, and of which part, task or trouble. */
import type { StockItem, Symptom, Task } from '../../../maintenance/codes.ts';
import { replaceTask } from '../../../maintenance/codes.ts';
import type { AskAct, AskTopic, LocalDate } from '../../act.ts';
import { hasTag, isFn, isThing, sense } from '../../item.ts';
import {
  type Draft,
  draft,
  hasMachine,
  hasVerb,
  objects,
  type Scene,
  someFn,
  textOf,
  valueOf,
} from '../../scene.ts';
import type { AskCue } from '../../senses.ts';
import { partOf, standsAlone } from './parts-said.ts';
import { symptomsIn } from './symptom.ts';
import { taskPlanned, tasksNamed } from './tasks.ts';

interface Question {
  scene: Scene;
  text: string;
  cues: ReadonlySet<AskCue>;
  part: StockItem | undefined;
  /** A task that replaces nothing. */
  task: Task | undefined;
  symptom: Symptom | undefined;
  machine: boolean;
}

interface TopicRule {
  topic: AskTopic;
  /** Why it stands where it stands. */
  why: string;
  holds: (q: Question) => boolean;
}

const cue = (q: Question, ...codes: readonly AskCue[]): boolean => codes.some((code) => q.cues.has(code));
const said = (q: Question, pattern: RegExp): boolean => pattern.test(q.text);

/** In order; the first that holds is the topic. */
const RULES: readonly TopicRule[] = [
  { topic: 'help', why: 'the bot itself', holds: (q) => said(q, /\bhow (?:do|can|should|to|would|might) ?(?:i|we|you|one)? ?(?:log|record|report|enter|note|undo|correct|tell you|delete|use you|ask you|take back)\b/u) || cue(q, 'help') && !q.machine && q.part === undefined && (q.task === undefined || said(q, /\b(?:log|you|bot|undo|record|fettle|commands?)\b/u)) && q.symptom === undefined },
  { topic: 'handover', why: 'a shift is handed on, whatever else stands there', holds: (q) => cue(q, 'handover') && !q.part },
  { topic: 'figure', why: 'a bench figure before how and life', holds: (q) => cue(q, 'figure') && (q.part !== undefined || q.task !== undefined || said(q, /\b(?:torque|tension|turns|newtons|e steps|knobs?)\b/u)) && !said(q, /\bhow (?:do|to|can|should) (?:i|you|we|one)\b/u) && !said(q, /\bmuch .*\b(?:left|stock)\b/u) },
  { topic: 'diagnose', why: 'a trouble and a wish for its cause', holds: (q) => q.symptom !== undefined && (cue(q, 'diagnose', 'idea') || someFn(q.scene, 'why')) && !cue(q, 'trend') },
  { topic: 'trend', why: 'how often trouble came', holds: (q) => said(q, /\bhow (?:many hours|long|many days|much) (?:was|were|has|is) .*\b(?:down|out of|broken|off)\b/u) || (cue(q, 'trend') || said(q, /\bhow (?:often|many times) (?:has|have|did|does|do)\b/u)) && !said(q, /\bhow often (?:should|do (?:i|we|you)|must|ought|does .* need)\b/u) && (q.symptom !== undefined || said(q, /\b(?:downtime|reliab\w*|jam\w*|clog\w*|fail\w*|fault\w*|breakdowns?|trouble|problems?|worse|worst|uptime|availab\w*|trend\w*|more often|stoppages|down the most|break\w* down)\b/u)) && !said(q, /\bin stock\b/u) && !(said(q, /\bavailable\b/u)) },
  { topic: 'life', why: 'parts of a kind, not one of them', holds: (q) => (q.part !== undefined || q.task !== undefined || said(q, /\binterval|\btoo (?:long|short|often)\b.*\b(?:between|for)\b/u)) && (said(q, /\bhow (?:long|many hours|many grams|many months|many weeks) (?:does|do|should|will|would|can|might|could) .*(?:last|hold|live|survive|go|good for|be good|stand|run for)\b/u) || said(q, /\bhow (?:often|frequently|regularly) (?:should|do|does|must|ought|is|are|would|shall|to|can)\b/u) || said(q, /\breally (?:need|have to|necessary)\b|\btoo (?:often|early|late|soon|long|short)\b|\boften enough\b|\binterval\b|\blifetime\b|\blifespan\b|\blife ?span\b|\bservice life\b|\blife (?:of|expectancy)\b|\bexpected life\b|\busually last\b|\bon average\b|\bsoon enough\b|\bget out of (?:a|an|one|our)\b|\b(?:is|are) .*\b(?:right|ok|okay|enough|sensible|reasonable) for\b|\bneed \w+ing every\b|\bevery \d+ \w+ (?:right|enough|ok|sensible|too)\b/u)) },
  { topic: 'age', why: 'one part and how long it has been in', holds: (q) => said(q, /\b(?:which|what) .*\b(?:is|are) (?:in|on|fitted)\b|\b(?:which|what) .*\bdoes\b.*\bhave\b|\bhow old\b|\bage of\b|\boldest\b|\bnewest\b|\byoungest\b|\bhow long (?:has|have|'s|is|was)\b.*\b(?:been|on|in|had|got|run)\b|\bhow long .* been\b|\bhow many (?:hours|grams|days|months|weeks|hrs|h|prints|km) (?:has|have|are|is|does|did|on)\b.*\b(?:on|has|have|done|seen|been|that|got)\b|\bsince when\b|\bhours (?:on|has|are on|does) (?:that|the|this|its|\w+ 's)\b|\bhow worn\b|\bage\b|\bhow many hours (?:on|has)\b/u) && (q.part !== undefined || (q.machine && said(q, /\bhow old\b|\bage of\b/u))) },
  { topic: 'stock', why: 'spares on the shelf', holds: (q) => !(q.machine && !said(q, /\bstock|spare|left|shelf\b/u)) && (cue(q, 'stock') && (q.part !== undefined || anyThing(q) || said(q, /\bstock|shelf|order|spares?\b|\brunning (?:low|out|short)\b|\bshort of\b|\brun out\b|\blow on\b|\bsupplies\b|\binventory\b|\bto buy\b/u)) || (q.part !== undefined && said(q, /\b(?:how many|how much|any|enough|is there|are there|got|have we|do we have|have)\b/u) && said(q, /\b(?:left|spares?|stock|shelf|drawer|have|there|got|more|enough|order|cupboard|remaining)\b/u))) && !said(q, /\b(?:last|lasts) (?:us|here)\b/u) && !said(q, /\bhours\b/u) && !said(q, /\b(?:due|overdue|need (?:doing|replacing|changing))\b/u) },
  { topic: 'ready', why: 'a job of so many hours', holds: (q) => (valueOf(q.scene, 'hours', 'days', 'grams') !== undefined || said(q, /\b(?:overnight|weekend|all night|long (?:print|job|run)|big (?:print|job)|marathon|all weekend)\b/u)) && !said(q, /\bhow (?:many|much|long|often)\b|\bdue\b|\bevery\b/u) && said(q, /\b(?:can|could|will|is|ok|okay|ready|fit|good|safe|able|fine|up to|up for|trust|handle|manage|alright|may)\b/u) && (q.machine || someFn(q.scene, 'it', 'which', 'any', 'who')) && q.symptom === undefined && !said(q, /\bmm\b/u) },
  { topic: 'next', why: 'one task and when it falls due', holds: (q) => (q.part !== undefined || q.task !== undefined || (said(q, /\bwhen\b.*\bnext\b/u) && (q.machine || someFn(q.scene, 'it')))) && (said(q, /\bwhen\b.*\b(?:due|next|need|needs|should|again|will|is|are|must|do)\b|\bnext due\b|\bhow (?:long|soon|many hours|many days|many weeks) (?:until|till|til|before|to go|is it until|do we have until|left until|must|should|does|do|will|are left|have|left)\b|\bwhat (?:day|date)\b|\bdue (?:again|next)\b|\bis .* due\b|\bare .* due\b|\bis it time\b|\btime (?:for|to)\b|\bdue\b|\bnext\b|\bhow much longer\b/u)) && !said(q, /\b(?:last|did|was|were)\b(?! for)/u) && !said(q, /\boverdue\b/u) },
  { topic: 'overdue', why: 'late beats due', holds: (q) => cue(q, 'overdue') && !said(q, /\bhow long\b/u) },
  { topic: 'how', why: 'a way of doing', holds: (q) => said(q, /\bhow (?:do|does|should|can|to|would|did|d'you|shall|ought|is|exactly|best) ?(?:i|you|we|one|to|the|a|an|your)?\b|\bsteps\b|\bprocedure\b|\bway to\b|\bwalk me through\b|\bshow me how\b|\bguide\b|\binstructions\b|\bwhat (?:do i|tools?|do you) (?:need|use)?\b|\btutorial\b|\bteach me\b|\btalk me through\b|\bexplain how\b|\bremind me how\b|\bwhich (?:oil|grease|lubricant|tool|tools)\b|\bwhat (?:kind of |sort of )?(?:oil|grease|lubricant)\b|\bknow how\b|\btell me how\b|\bhow\b/u) && (q.task !== undefined || q.part !== undefined) && (!said(q, /\bhow (?:is|are|many|much|long|often|old)\b|\bhow 's\b|\bhow did\b/u) || said(q, /\bhow (?:is|are) .* done\b/u)) },
  { topic: 'history', why: 'what was done, by whom', holds: (q) => said(q, /\b(?:who|whom)\b|\bwhen (?:did|was|were|has|have|'d)\b|\blast (?:time|done|changed|cleaned|oiled|greased|swapped|replaced|levelled|leveled|checked|tightened|serviced|entries|entry|logged|touched|worked|jam\w*|clear\w*|fitted|renewed|tensioned|trimmed|dried|updated|fix\w*|repair\w*|wash\w*|wiped|dusted|had|did|fail\w*)\b|\bhistory\b|\b(?:log|logs|journal|logbook|records?|timeline|entries|activity|repairs)\b|\bwhat (?:was|has been|did|got|have|'s been|happened|work|were|has)\b|\b(?:did|has|have|had) (?:anyone|anybody|someone|somebody|we|you|i|\w+) (?:\w+ )?(?:\w+ed|done|do|oil|grease|clean|change|swap|replace|check|level|tension|clear|dry|trim|tighten|update|save|dust|wipe|been|cut|put|run|fit|look|wash|test|reset|log|had|ever)\b|\bbeen (?:\w+ed|done|cut|swapped)\b|\b(?:was|were|did|has|have) .*\b(?:done|cleaned|oiled|greased|changed|swapped|replaced|levelled|leveled|checked|tensioned|tightened|dried|trimmed|updated|dusted|wiped|cleared|lubed|serviced|repaired|washed|fixed|renewed)\b/u) && !said(q, /\bhow (?:many|much|long)\b|\bwho (?:are|is) (?:you|fettle)\b|\bwho broke (?:the )?(?:window|chair)\b|\bhow many (?:hours|grams|h)\b/u) && (q.machine || q.part !== undefined || q.task !== undefined || q.symptom !== undefined || cue(q, 'history') && said(q, /\b(?:log|history|entries|done|today|yesterday|week|happened|shift)\b/u)) },
  { topic: 'usage', why: 'hours and filament', holds: (q) => cue(q, 'usage') || said(q, /\bhow (?:many|much) (?:hours|hrs|h|time|filament|grams|kilos?|kg|metres|meters|plastic|material)\b|\b(?:total|tot|sum of) (?:hours|hrs|h|print|run|time|filament)\b|\bhow long (?:did|has|have|was)\b.*\b(?:run|ran|running|print\w*|going|on)\b|\bhours (?:total|so far|this|last|today|yesterday|on|for|of)\b/u) || (q.machine && sense(q.scene.items[0], 'unit')?.code === 'hours') },
  { topic: 'due', why: 'what is to be done', holds: (q) => !said(q, /\bup with\b/u) && (cue(q, 'due') || said(q, /\bneeds? (?:anything|something|any|some)\b/u) || said(q, /\bwhat (?:'s|is|are|should|do|shall|needs?|jobs?|tasks?)\b.*\b(?:next|due|do|doing|done|plan|list|up|today|attention|tomorrow|week)\b|\banything (?:due|to do|needed|on|planned|needs)\b|\bneeds? (?:doing|attention|servicing|work|oiling|cleaning|looking)\b|\b(?:jobs?|tasks?|chores|maintenance) (?:for|on|today|due|this|tomorrow)\b/u)),
  },
  { topic: 'diagnose', why: 'what ails it, with no trouble named', holds: (q) => q.machine && (said(q, /\bwhy\b|\bwhat (?:could|might|can|would)\b|\bany ideas?\b|\bwhat causes\b|\bdiagnose\b|\btroubleshoot\b/u)) && !said(q, /\bwhat (?:could|can) i\b/u) },
  { topic: 'status', why: 'how it stands', holds: (q) => (q.machine || someFn(q.scene, 'it', 'which', 'all', 'any', 'what', 'they') && said(q, /\b(?:machines?|printers?|everything|ones?|it|they|we|all|fleet|anything|down|out of|status|free)\b/u) || cue(q, 'status')) && (cue(q, 'status') || sensesState(q)) && q.part === undefined && !said(q, /\bfor (?:pla|petg|tpu|abs|asa|nylon|pc)\b/u) },
]; // prettier-ignore
const anyThing = (q: Question): boolean =>
  q.scene.items.some((item) => isThing(item, 'fan', 'sensor', 'shelf'));
const sensesState = (q: Question): boolean =>
  q.scene.items.some((item) => hasTag(item, 'state', 'finding', 'complaint'));

function question(scene: Scene): Question {
  const cues = new Set<AskCue>();
  for (const item of scene.items) for (const s of item.senses) if (s.tag === 'cue') cues.add(s.code);
  const nouns = objects(scene).filter(standsAlone);
  const text = textOf(scene).replace(/[’]/gu, "'");
  const symptoms = symptomsIn(scene);
  const named = tasksNamed(
    scene,
    (verb) =>
      !['did', 'work', 'swap', 'fit', 'test'].includes(verb.code) &&
      !(verb.code === 'look' && /\bwhere\b/u.test(text)),
  );
  const swaps = hasVerb(scene, 'swap', 'fit', 'install');
  const noun =
    nouns.find((one) => one.part !== undefined) ?? nouns.find((one) => one.code === 'bed' && swaps);
  const part = noun === undefined ? undefined : (partOf(scene, noun) ?? noun.part);
  const item = part ?? (noun?.part === undefined ? undefined : noun.part);
  const task = swaps ? undefined : (named[0]?.task ?? thingTask(scene));
  const cared =
    !swaps &&
    part !== undefined &&
    CARED.has(part) &&
    task === undefined &&
    !/\b(?:old|age|long|stock|left|spare|spares|have we|do we have|last|lasts)\b/u.test(text)
      ? taskPlanned(scene)[0]?.task
      : undefined;
  if (cared !== undefined)
    return {
      scene,
      text,
      cues,
      part: item,
      task: cared,
      symptom: symptoms[0]?.symptom,
      machine: hasMachine(scene),
    };
  return { scene, text, cues, part: item, task, symptom: symptoms[0]?.symptom, machine: hasMachine(scene) };
}
/** Parts that are looked after far more often than they are replaced. */
const CARED: ReadonlySet<string> = new Set([
  'rod',
  'rail',
  'lead-screw',
  'pulley',
  'wiring',
  'fastener',
  'printed-part',
  'probe',
  'coupler',
  'door',
]);
/** A thing that is no part stands for its task: "the bed", "firmware", "first layer". */
function thingTask(scene: Scene): Task | undefined {
  if (objects(scene).some((noun) => noun.part !== undefined)) return undefined;
  const task = taskPlanned(scene)[0]?.task;
  return task !== undefined && !task.startsWith('replace-') ? task : undefined;
}

const SYMPTOM_TOPICS: ReadonlySet<AskTopic> = new Set(['diagnose', 'trend', 'history']);
const PART_TOPICS: ReadonlySet<AskTopic> = new Set([
  'next',
  'history',
  'age',
  'stock',
  'life',
  'how',
  'figure',
]);

function act(topic: AskTopic, q: Question, today: LocalDate): AskAct {
  const swaps = hasVerb(q.scene, 'swap', 'fit', 'install');
  const task =
    PART_TOPICS.has(topic) && topic !== 'stock' && topic !== 'age' && q.task !== undefined
      ? q.task
      : undefined;
  const part = !PART_TOPICS.has(topic) || (task !== undefined && topic !== 'figure') ? undefined : q.part;
  const figurePart = topic === 'figure' ? q.part : part;
  const how =
    topic === 'how' && swaps && q.part !== undefined && q.part !== 'filament' ? replacing(q.part) : undefined;
  const hours = topic === 'ready' ? valueOf(q.scene, 'hours') : undefined;
  const symptom = SYMPTOM_TOPICS.has(topic) && task === undefined ? q.symptom : undefined;
  const day = sense(
    q.scene.items.find((item) => hasTag(item, 'date')),
    'date',
  );
  const who =
    sense(
      q.scene.items.find((item) => hasTag(item, 'person')),
      'person',
    )?.code ?? (topic === 'history' && someFn(q.scene, 'i') ? 'me' : undefined);
  const material = q.scene.materials[0];
  return {
    kind: 'ask', topic,
    ...(how !== undefined ? { task: how } : figurePart === undefined ? {} : { part: figurePart }),
    ...(task === undefined || how !== undefined || (topic === 'figure' && figurePart !== undefined) ? {} : { task }),
    ...(symptom === undefined ? {} : { symptom }),
    ...(hours === undefined ? {} : { hours }),
    ...(who === undefined ? {} : { who }),
    ...(material === undefined || (topic !== 'usage' && topic !== 'stock') ? {} : { material }),
    ...period(topic, day, today),
  }; // prettier-ignore
}
const replacing = (part: StockItem): Task | undefined =>
  ['oil', 'grease', 'alcohol', 'cloth', 'air-can', 'filament'].includes(part)
    ? undefined
    : replaceTask(part as Parameters<typeof replaceTask>[0]);
function period(
  topic: AskTopic,
  day: ReturnType<typeof sense<'date'>>,
  today: LocalDate,
): { from?: LocalDate; to?: LocalDate } {
  if (!day || (day.vague && day.to === undefined && topic !== 'history' && topic !== 'usage')) return {};
  const ahead = topic === 'due' || topic === 'next' || topic === 'ready' || topic === 'overdue';
  const from = ahead ? day.future : day.past;
  return { from, to: day.to ?? (day.vague ? today : from) };
}

/** "status #2", "overdue elm": few words, a strong cue, no deed. */
function terse(scene: Scene): boolean {
  if (scene.values.some((v) => v.code !== 'days')) return false;
  if (
    scene.items.length > 7 ||
    scene.verbs.some(
      (verb) =>
        verb.deed &&
        !['read', 'get', 'did', 'have', 'show', 'use', 'run', 'print', 'last', 'look', 'log'].includes(
          verb.code,
        ),
    ) ||
    scene.mood.negated
  )
    return false;
  if (
    /^(?:oldest|newest|youngest|status|state|overdue|due|stock|history|handover|hand over|help|usage|hours|total hours|tot hours|sitrep|report|summary|overview|log|age|end of shift|shift|todo|to do|shelf|inventory|spares)\b/u.test(
      scene.text,
    )
  )
    return true;
  return (
    /\b(?:status|overdue|tot hours|total hours|history|handover|stock|due|hours total|print hours|age|shift report|shift summary|end of shift)$/u.test(
      scene.text,
    ) && scene.items.length <= 4
  );
}
const TELLS =
  /^(?:please )?(?:show|list|tell|give|remind|print|display|name|find|check|explain|walk|talk|teach|say|get|bring|fill|catch|brief|any|anything|anyone|got any|diagnose|help|need to know|i need to know|i want to know|wondering|wonder|looking for|does anyone|do you|steps|procedure|instructions|how|guide|best way|what|when|why|who|which|where)\b/u;

/** "alder's extruding too little, what might it be": the trouble, or the part, of the clause before. */
function follow(q: Question, earlier: readonly Scene[]): Question {
  const before = earlier.at(-1);
  if (!before) return q;
  const wants =
    (cue(q, 'diagnose', 'idea') || someFn(q.scene, 'why')) &&
    q.symptom === undefined &&
    q.part === undefined &&
    !q.machine;
  const symptom = wants
    ? earlier.map((scene) => symptomsIn(scene)[0]?.symptom).findLast((one) => one !== undefined)
    : q.symptom;
  const asksPart =
    q.part === undefined &&
    q.task === undefined &&
    (cue(q, 'stock', 'age', 'spare', 'life') || someFn(q.scene, 'it', 'they')) &&
    !q.machine;
  const source = earlier.findLast((scene) => scene.nouns.some((one) => one.part !== undefined));
  const noun = asksPart ? source?.nouns.find((one) => one.part !== undefined) : undefined;
  const part = noun === undefined ? q.part : (partOf(q.scene, noun) ?? noun.part);
  return { ...q, symptom, part };
}

const hasIdea = (scene: Scene): boolean =>
  scene.items.length <= 6 &&
  scene.items.some((item) => item.senses.some((s) => s.tag === 'cue' && s.code === 'idea'));

export function readAsk(scene: Scene, earlier: readonly Scene[], today: LocalDate): Draft[] {
  const { mood } = scene;
  const tells =
    TELLS.test(scene.text) &&
    !mood.promised &&
    !scene.verbs.some((verb) => verb.deed && verb.form === 'past' && scene.verbs[0] === verb);
  if (!mood.question && !tells && !terse(scene) && !hasIdea(scene)) return [];
  const q = follow(question(scene), earlier);
  if (mood.conditional && !mood.question) return [];
  if (
    mood.requested &&
    !terse(scene) &&
    !/\b(?:tell|show|list|give me|explain|remind|say|walk|talk|know|how|what|when|who|why|which|hand over|brief|check if|i need|take|run|do a|i use|i run|i start|i print|handle)\b/u.test(
      q.text,
    )
  )
    return [];
  const rule = RULES.find((one) => one.holds(q));
  if (!rule) return [];
  return [draft(scene, act(rule.topic, q, today), `ask ${rule.topic}: ${rule.why}`)];
}
/** A question that no topic fits, but that speaks of the printers. */
export const isQuestion = (scene: Scene): boolean => scene.mood.question;
export const asksIdea = (scene: Scene): boolean =>
  scene.items.some((item) =>
    item.senses.some((s) => s.tag === 'cue' && (s.code === 'idea' || s.code === 'diagnose')),
  ) || scene.items.some((item) => isFn(item, 'why'));

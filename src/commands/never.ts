/** What is asked for and never given as steps: why in six words and whom to ask, whatever else the words may mean. */
import { hotWorkRefused } from '../maintenance/cautions/hotWork.ts';
import { NEVER, NEVER_TOPICS, type NeverTopic } from '../maintenance/cautions/never.ts';
import { neverSteps, type NeverAnswer } from '../maintenance/cautions/neverSteps.ts';
import { foldName } from '../maintenance/machine.ts';
import { answersTo } from '../maintenance/record/called.ts';
import type { MachineRecord } from '../maintenance/record/record.ts';
import { item, type Reply } from '../replies/reply.ts';
import { machineName } from '../replies/wording/names.ts';
import type { Names } from '../replies/wording/view.ts';
import type { Scene } from './scene.ts';
import type { Played } from './step.ts';

/** Somebody asks, or means to; what is told as done is read as a report and stays one. */
const MEANT =
  /\?|\b(?:how|can|could|may|might|should|shall|would it|is it|what if|let['’]?s|want(?:s|ed)? to|going to|gonna|plan(?:ning)? to|trying to|need to|just this once|i['’]ll|we['’]ll)\b/iu;

const near = (...stretches: readonly string[]): RegExp =>
  new RegExp(`\\b(?:${stretches.join(').{0,40}\\b(?:')})`, 'iu');

const PROTECTION =
  'door switch|lid switch|safety switch|interlocks?|thermal (?:fuse|cut-?out|runaway)|runaway protection|(?:thermal|heater) protection(?! test)|limit switch|emergency stop|e-?stop';
const TOP_HEAT =
  'max(?:imum)?\\.? (?:nozzle |hot ?end |bed |heater )?temp|max ?temp|temp(?:erature)? (?:limit|max)|heat limit';
const WIRES = 'wir(?:e|es|ing)\\b|connectors?|terminals?|leads?\\b|cables?|voltages?|plugs?\\b';
const LIVE =
  '(?:while|with|when) (?:it|the power|the machine|it all|everything|power)?(?:.s| is| are)? ?(?:still )?(?:on\\b|live|powered|running|plugged in|energi[sz]ed)|under power|powered up';

/** The words of each; a row is one way of saying it. */
const SAID: Readonly<Record<NeverTopic, readonly RegExp[]>> = {
  'open-power-supply': [
    near(
      'open|take apart|dismantle|get into|inside|repair|fix|solder',
      'power suppl(?:y|ies)|psu\\b|power brick',
    ),
  ],
  'board-wiring': [near('rewire|wire|wiring', 'control ?board|main ?board|motherboard|controller')],
  'mains-bed-wiring': [
    near('rewire|wire|wiring|splice|solder|connect|repair|fix', 'mains[- ](?:\\w+ )?(?:bed|heated)'),
    near('mains[- ](?:\\w+ )?bed', 'wir(?:e|es|ing)\\b|cables?|leads?\\b|connectors?'),
  ],
  'bridge-protection': [
    near(
      'bridge|bypass|jumper|short|defeat|override|disable|trick|fool|tape|cheat|get a?round|disconnect|deactivate|(?:turn|switch) off',
      PROTECTION,
    ),
  ],
  'raise-maximum': [
    near('raise|increase|lift|push|override|bump|up|remove|exceed|go (?:over|above|past)', TOP_HEAT),
  ],
  'flame-on-nozzle': [
    near('clean|burn|heat|clear|unclog|unblock', 'nozzle', 'flame|lighter|blow ?torch|gas torch|burner'),
    near('flame|lighter|blow ?torch|gas torch|burner', 'nozzle|hot ?end'),
  ],
  'food-oven': [near('dry|drying|bake|cook', 'oven'), near('oven', 'filament|spools?\\b|dry|drying')],
  'lined-too-hot': [],
  'powered-wiring': [
    near('measure|probe|work|unplug|plug|swap|change|touch|check|fix|solder|pull', WIRES, LIVE),
  ],
  'run-bare-or-unguarded': [
    near(
      'run|print|use|start|carry on|keep going|finish',
      'bare (?:wire|cable|lead)|without (?:the |a |its |any )?(?:guards?|covers?)\\b',
    ),
  ],
  'bigger-fuse': [
    near('bigger|larger|higher|stronger', 'fuse'),
    near('fuse', 'bigger|larger|stronger|higher|more amps'),
  ],
};

/** A temperature for hot work: "heat maple to 260", "a cold pull at 255 °C"; not hours, grams or millimetres. */
const HOT_WORK = /\b(?:heat|print|pull|nozzle|hot ?end|temp\w*)\b/iu;
const DEGREES =
  /\b(?:to|at|above|over|past) ([2-4]\d\d)\b(?! ?(?:%|h\b|hours?|hz|g\b|grams?|mm|m\b|parts?|pieces|pcs|days?))|\b([2-4]\d\d) ?(?:°|deg|c\b)/iu;

/** The machine that the message names; none where it names several. */
export function machineNamed({ record, message }: Scene): MachineRecord | undefined {
  const words = ` ${foldName(message.text).replace(/[^\p{L}\p{N}#]+/gu, ' ')} `;
  const named = [...record.machines.values()].filter((machine) =>
    answersTo(machine).some((name) => words.includes(` ${name} `)),
  );
  return named.length === 1 ? named[0] : undefined;
}

function refused(scene: Scene): NeverAnswer | undefined {
  const { text } = scene.message;
  const machine = machineNamed(scene);
  const build = machine?.build ?? {};
  const topic = NEVER_TOPICS.find((each) => SAID[each].some((said) => said.test(text)));
  if (topic === 'open-power-supply') return neverSteps('replace-power-supply', build);
  if (topic !== undefined) return neverSteps(topic, build);
  const [, told, marked] = (HOT_WORK.test(text) && DEGREES.exec(text)) || [];
  const degrees = Number(told ?? marked);
  return machine && degrees > 0 ? hotWorkRefused(degrees, build) : undefined;
}

const reports = ({ reading }: Scene): boolean =>
  reading.injury ||
  reading.safety.some((mention) => mention.asserted) ||
  reading.acts.some(({ act }) => !['ask', 'unclear', 'undo', 'claim', 'defer'].includes(act.kind));

const GUARDS = `(?:door|lid|hood|cover|guard)[- ](?:switch|sensor|interlock)(?:es|s)?|${PROTECTION}`;
const DEFEATED =
  '(?:bridged|bypassed|jumpered|shorted(?: out)?|defeated|overrode|overridden|disabled|tricked|fooled|taped|cheated|disconnected|deactivated|unplugged|wedged|jammed|glued|cable[- ]tied|zip[- ]tied|(?:turned|switched) off)';
/** Told as done: "bridged the thermal fuse", "the door switch is taped over", "it is broken, ran with it anyway". */
const TOLD: readonly RegExp[] = [
  new RegExp(`\\b${DEFEATED} (?:over )?(?:the |its |that |\\S+['’]s )?(?:\\w+ )?(?:${GUARDS})\\b`, 'iu'),
  new RegExp(
    `\\b(?:${GUARDS})(?: (?:on|of) (?:the )?\\S+)?(?: (?:is|was|are|were|has been|got|still|now|just))* ${DEFEATED}\\b`,
    'iu',
  ),
  new RegExp(
    `\\b(?:${GUARDS})\\b.{0,40}\\b(?:broken|dead|faulty|stuck|missing|not working|doesn['’]?t work)\\b.{0,20}\\b(?:ran|run|running|printed|printing|used|using|carried on)\\b.{0,15}\\b(?:any ?way|regardless|all the same|nevertheless|without)\\b`,
    'iu',
  ),
];
/** Denied, put right, or said of a switch that somebody tests. */
const NOT_DEFEATED =
  /\b(?:not|never|nobody|no one|n['’]t|isn['’]?t|wasn['’]?t|haven['’]?t|hasn['’]?t|didn['’]?t|if|don['’]?t|(?:re|un)[- ]?(?:connected|enabled|taped)|no longer|removed the (?:bridge|tape|jumper)|took the (?:bridge|tape|jumper))\b/iu;
const defeated = (text: string): boolean =>
  !text.includes('?') && !NOT_DEFEATED.test(text) && TOLD.some((told) => told.test(text));

/** What is said to somebody who tells that a guard was defeated: before all that he writes down with it. */
export function defeatedLines(scene: Scene): string[] {
  if (!defeated(scene.message.text)) return [];
  const { about, because, ask } = NEVER['bridge-protection'];
  const machine = machineNamed(scene);
  const name = machine === undefined ? 'That machine' : machineName(machine.name, scene);
  return [
    `${name} must not run like that. I never help with ${about}: ${because}.`,
    `Switch it off, put the protection back, and tell ${ask}.`,
  ];
}

/** Undefined when the message asks for nothing of the kind, or reports work or a danger. */
export function playNever(scene: Scene): Played | undefined {
  if (reports(scene)) return undefined;
  const told = defeatedLines(scene);
  if (told.length > 0)
    return toldOf(scene, { sections: [{ items: told.map((line) => item(line)) }], buttons: [] });
  if (!MEANT.test(scene.message.text)) return undefined;
  const answer = refused(scene);
  // a danger that is asked about gets the stop answer; "disable the thermal runaway" names none
  if (!answer || (scene.reading.safety.length > 0 && answer.topic !== 'bridge-protection')) return undefined;
  const machine = machineNamed(scene);
  return toldOf(scene, neverReply(answer, scene, machine));
}

function toldOf(scene: Scene, reply: Reply): Played {
  const machine = machineNamed(scene);
  const about = machine ? { machine: machine.name } : {};
  return {
    steps: [{ act: { kind: 'ask', topic: 'how', ...about }, outcome: 'answered', entries: [], reply }],
    caution: [],
    grave: false,
  };
}

function neverReply(
  { about, because, ask, notStated, before, after }: NeverAnswer,
  scene: Names,
  machine?: MachineRecord,
): Reply {
  const sheet =
    notStated === undefined || !machine
      ? []
      : [`${machineName(machine.name, scene)}’s sheet does not state ${notStated}.`];
  const lines = [
    `I won’t give steps for ${about}: ${because}.`,
    `Ask ${ask}.`,
    ...sheet,
    ...(before ?? []).map((text) => `Before: ${text}`),
    ...(after ?? []).map((text) => `After: ${text}`),
    'The machine’s manual, local rules and licensed practice come first.',
  ];
  return { sections: [{ items: lines.map((line) => item(line)) }], buttons: [] };
}

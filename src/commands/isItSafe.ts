/** "Is it safe to …": nothing is called safe; the hazard's own line, and what the records say of the machine. */
import { CAUTION_LINES, type CautionKey } from '../maintenance/cautions/keys.ts';
import { item, type Reply } from '../replies/reply.ts';
import { answerAsk } from './ask/ask.ts';
import { machineNamed } from './never.ts';
import type { Scene } from './scene.ts';
import type { Played } from './step.ts';

const ASKED =
  /\b(?:(?:is|would|was) (?:it|that|this|\p{L}+) (?:be )?(?:safe|dangerous|ok(?:ay)?|alright|all right)|(?:safe|dangerous|ok(?:ay)?|alright|all right) to|can (?:i|we|you) safely|how (?:safe|dangerous))\b/iu;

/** What the words are about; more than one may hold. */
const ABOUT: readonly (readonly [CautionKey, RegExp])[] = [
  ['MAINS', /\b(?:mains|power supply|psu|fuses?|sockets?|earth(?:ing)?)\b/iu],
  ['UNPLUG', /\b(?:wir(?:es?|ing)|connectors?|terminals?|cables?|unplugged|plugged in)\b/iu],
  ['SOLV', /\b(?:alcohol|ipa|isopropyl|acetone|solvents?|spray)\b/iu],
  ['HOT', /\b(?:hot ?end|nozzle|heated|hot|burn)\b/iu],
  ['FUME', /\b(?:fumes?|smells?|ptfe|breathe|burnt)\b/iu],
  ['DUST', /\b(?:dust|carbon|glass|compressed air|air can|blow)\b/iu],
  ['DROP', /\b(?:gantry|z axis|motors? off)\b/iu],
  ['MOVE', /\b(?:belts?|wheels?|pulleys?|fingers?|hands? in|reach in|moving)\b/iu],
  ['KNIFE', /\b(?:knife|blade|scalpel|razor)\b/iu],
  ['OVEN', /\b(?:oven|dryer|drying)\b/iu],
];
const MOST_LINES = 2;
const NOT_MINE =
  'I can’t call anything safe; that is for the manual, your local rules and whoever is responsible.';

/** Undefined when it is no such question, or about nothing here ("is it safe to say that …"). */
export async function playIsItSafe(scene: Scene): Promise<Played | undefined> {
  const { reading, message } = scene;
  const works = reading.acts.some(({ act }) => !['ask', 'unclear'].includes(act.kind));
  if (works || reading.injury || reading.safety.length > 0) return undefined;
  if (!ASKED.test(message.text) || reading.acts.some(({ act }) => act.kind === 'ask')) return undefined;
  const hazards = ABOUT.filter(([, words]) => words.test(message.text)).slice(0, MOST_LINES);
  const machine = machineNamed(scene);
  if (hazards.length === 0 && !machine) return undefined;
  const records = machine
    ? await answerAsk(scene, { kind: 'ask', topic: 'ready', machine: machine.name })
    : undefined;
  const lines = [NOT_MINE, ...hazards.map(([key]) => CAUTION_LINES[key])];
  const reply: Reply = {
    sections: [
      { items: lines.map((line) => item(line)) },
      ...(records?.title ? [{ items: [{ text: records.title }] }] : []),
      ...(records?.sections ?? []),
    ],
    buttons: records?.buttons ?? [],
  };
  const about = machine ? { machine: machine.name } : {};
  return {
    steps: [{ act: { kind: 'ask', topic: 'ready', ...about }, outcome: 'answered', entries: [], reply }],
    caution: [],
    grave: false,
  };
}

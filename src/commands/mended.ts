/** A keeper tells what was found on a held machine and what was done about it: that lifts the hold, it sets no new one. */
import type { MachineRecord } from '../maintenance/record/record.ts';
import { isMend } from './answering.ts';
import { inContext } from './context.ts';
import { namedIn } from './namedIn.ts';
import { playAsk } from './play.ts';
import { foundConfirm } from './questions.ts';
import type { Scene } from './scene.ts';
import { deedsOf, type Played } from './step.ts';

const LIFTS =
  /^(?:please\s+|ok(?:ay)?,?\s+)?(?:lift|release|clear|remove|take off|end)\s+(?:the\s+|its\s+)?hold\b(?:\s+(?:on|of|from)\s+(?:the\s+)?[\p{L}\p{N}-]+)?[\s:;,.–—-]*/iu;

/** Undefined where the message lifts nothing: nobody mended, another machine is spoken of too, or no keeper speaks. */
export function mendTold(scene: Scene): Played | undefined {
  const { message, person, reading } = scene;
  const text = message.text.trim();
  if (person.role !== 'keeper' || text.endsWith('?') || reading.injury) return undefined;
  const machine = heldMachine(scene);
  if (!machine) return undefined;
  const lift = LIFTS.exec(text);
  const found = (lift ? text.slice(lift[0].length) : withoutHead(text, machine.name)).trim();
  if (lift && found === '') return playAsk(scene, { kind: 'release', machine: machine.name }, 'found');
  const danger =
    reading.safety.some(({ asserted }) => asserted) ||
    // the reader sees a danger that is told as mended
    (reading.safety.length > 0 && reading.orders.some(({ order }) => order.kind === 'lift'));
  if (!lift && (!danger || !isMend(text))) return undefined;
  const acts = reading.acts.map((each) => inContext(each, machine.name).act);
  if (acts.some(({ kind }) => kind === 'ask' || kind === 'undo' || kind === 'amend')) return undefined;
  // a symptom told here is what was found, over by now
  const also = deedsOf(acts).filter(({ kind }) => kind !== 'gone' && kind !== 'symptom');
  const question = foundConfirm(scene, { kind: 'release', machine: machine.name, found }, also);
  const step = { act: { kind: 'release', machine: machine.name, found }, outcome: 'asked', entries: [], text: question.text } as const; // prettier-ignore
  return { steps: [step], asking: { about: 0, question }, caution: [], grave: false };
}

/** "Alder: …": the machine is said by the question already. */
const withoutHead = (text: string, name: string): string =>
  text.toLowerCase().startsWith(`${name}:`) ? text.slice(name.length + 1) : text;

/** The one machine that is named, or else spoken of; undefined unless it is held. */
function heldMachine({ message, record, conversation }: Scene): MachineRecord | undefined {
  const named = namedIn(message.text, record);
  const name = named.length === 0 ? conversation.lastMachine : named.length === 1 ? named[0] : undefined;
  const machine = name === undefined ? undefined : record.machines.get(name);
  return machine?.hold ? machine : undefined;
}

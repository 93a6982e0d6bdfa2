/** What a conversation lends to a message: the machine spoken of, where the message names none. */
import type { Act, ActReading, AskAct, AskTopic } from '../language/act.ts';
import { isRoomTask, isSafetySymptom, ROOM } from '../maintenance/codes.ts';

/** Questions about one machine; the others mean the whole room when they name none. */
const ABOUT_ONE: ReadonlySet<AskTopic> = new Set<AskTopic>([
  'next',
  'age',
  'how',
  'diagnose',
  'ready',
  'figure',
]);

/** Acts that cannot be written without a machine. */
const NEED_MACHINE = [
  'usage', 'meter', 'load', 'done', 'swap', 'symptom', 'gone', 'down', 'up', 'open', 'close', 'defer', 'claim',
] as const; // prettier-ignore
type OnMachine = Extract<Act, { kind: (typeof NEED_MACHINE)[number] }>;
const needing: ReadonlySet<string> = new Set(NEED_MACHINE);
const isOnMachine = (act: Act): act is OnMachine => needing.has(act.kind);

const takesMachine = (act: Act): act is OnMachine | AskAct =>
  isOnMachine(act) || (act.kind === 'ask' && ABOUT_ONE.has(act.topic));

/** It cannot be written before somebody says which machine. */
export const lacksMachine = (act: Act): boolean => isOnMachine(act) && act.machine === undefined;

/** What a message's own words leave to the conversation. */
export interface Surrounding {
  lastMachine?: string | undefined;
  /** Machines that stand in the words, whether or not an act took them up. */
  named: readonly string[];
  /** A word where a name would stand that is no name here: then a danger is asked about, never placed. */
  stranger: boolean;
}

/**
 * The machine for an act that names none. The only one that stands in the message goes before the one spoken of before
 * it; of several none is picked, and it is asked.
 */
export function inMessage(reading: ActReading, { lastMachine, named, stranger }: Surrounding): ActReading {
  const { act } = reading;
  if (!takesMachine(act) || act.machine !== undefined) return inContext(reading, lastMachine);
  const [only, ...others] = named;
  if (only !== undefined && others.length === 0) return { ...reading, act: { ...act, machine: only } };
  const danger = act.kind === 'symptom' && isSafetySymptom(act.symptom);
  const open = (others.length > 0 && act.kind !== 'ask') || (danger && stranger);
  return inContext(reading, open ? undefined : lastMachine);
}

/** The act with the machine that the conversation supplies, marked as assumed. */
export function inContext(reading: ActReading, lastMachine: string | undefined): ActReading {
  const { act } = reading;
  if (act.kind === 'done' && act.machine === undefined && isRoomTask(act.task))
    return { ...reading, act: { ...act, machine: ROOM } };
  if (lastMachine === undefined || lastMachine === ROOM) return reading;
  if (!takesMachine(act) || act.machine !== undefined) return reading;
  return {
    ...reading,
    act: { ...act, machine: lastMachine },
    assumed: { ...reading.assumed, machine: { from: 'conversation' } },
  };
}

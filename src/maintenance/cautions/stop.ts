/**
 * The one answer to a safety symptom. It stands before everything else, and beside it a reply has
 * room for the hold and its buttons only: no diagnosis, no question about parts, no list of tasks.
 */
import type { SafetySymptom } from '../codes.ts';

export interface StopAnswer {
  /** The first words, set strong. */
  first: string;
  /** What to do if it burns. */
  fire: string;
  /** What holds for this symptom only. */
  also?: string;
  /** The named machine is held at once, unconfirmed. */
  hold: true;
}

const FIRST =
  'Stop. Cut the power at the wall if you can reach it without passing smoke or fire; do not touch the machine.';
const FIRE =
  'Flames, or smoke that does not stop: warn the others, get out, shut the door, call the fire service. ' +
  'Extinguisher only if you are trained and your way out is behind you.';

const stopAnswer = (also?: string): StopAnswer => ({
  first: FIRST,
  fire: FIRE,
  hold: true,
  ...(also === undefined ? {} : { also }),
});

/** The stop answer of every safety symptom; all of them begin alike. */
export const STOP_LIST: Readonly<Record<SafetySymptom, StopAnswer>> = {
  'burning-smell': stopAnswer(),
  smoke: stopAnswer(),
  runaway: stopAnswer(),
  shock: stopAnswer(
    'Nobody touches it again until a qualified person has tested it. After more than a tingle: get medical advice.',
  ),
  'bare-wire': stopAnswer(
    'It is not run again, not even once, before a qualified person has put the wire right.',
  ),
  'hot-connector': stopAnswer('It is not run again before a qualified person has found out why.'),
};

/** Who is told and which machine is held, as the workshop names them; both may be unknown. */
export interface StopContext {
  /** The person responsible. */
  tell?: string;
  /** The machine's name as it is printed. */
  machine?: string;
}

/** The stop answer's lines in their order; the hold's own line is last, and only where a machine was named. */
export function stopLines(symptom: SafetySymptom, context: StopContext = {}): readonly string[] {
  const { first, fire, also } = STOP_LIST[symptom];
  const tell = `Tell ${context.tell ?? 'the person responsible for the machines'}.`;
  const held = context.machine === undefined ? [] : [`${context.machine} is now held.`];
  return [first, fire, ...(also === undefined ? [] : [also]), tell, ...held];
}

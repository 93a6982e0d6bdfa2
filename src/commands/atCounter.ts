/** "Put off until 4150 h on the counter": a figure of the counter, where a put-off counts the hours from now. */
import type { DeferAct } from '../language/act.ts';
import { canonicalName } from '../maintenance/decide/scene.ts';
import { hours as hoursWords } from '../replies/format/number.ts';
import { machineName } from '../replies/wording/names.ts';
import type { OpenQuestion } from './conversation.ts';
import { untilQuestion } from './questions.ts';
import type { Scene } from './scene.ts';

const COUNTER = '(?:hour )?(?:counter|meter|clock)';
/** The counter is named with the figure, on either side of it; "for 50 h on the counter" is a span. */
const AT_COUNTER = new RegExp(
  `\\b(?:until|till|til|up to)\\b.{0,40}\\b${COUNTER}\\b|\\bwhen\\b.{0,20}\\b${COUNTER}\\b.{0,20}\\d`,
  'iu',
);

/** More than the counter shows can only be a figure of it. */
const UNTIL_FIGURE = /\b(?:until|till|til)\b.{0,12}\d/iu;

interface AtCounter {
  act: DeferAct;
  /** The counter now; absent where nobody knows it. */
  now?: number;
  /** Running hours from now; absent where the figure is passed, or the counter is not known. */
  left?: number;
}

/** Undefined where the hours are a span, or which machine it is about is not known yet. */
export function atCounter({ message, record }: Scene, act: DeferAct): AtCounter | undefined {
  if (act.hours === undefined || act.machine === undefined) return undefined;
  const machine = record.machines.get(canonicalName(act.machine, record));
  if (!machine) return undefined;
  const beyond = machine.counterKnown && act.hours > machine.totals.hours;
  if (!AT_COUNTER.test(message.text) && !(beyond && UNTIL_FIGURE.test(message.text))) return undefined;
  if (!machine.counterKnown) return { act };
  const now = machine.totals.hours;
  return act.hours > now ? { act, now, left: act.hours - now } : { act, now };
}

/** Nothing is put off to a figure that is passed: until when, then? */
export function belowCounter(scene: Scene, { act, now }: AtCounter): OpenQuestion {
  const { hours = 0, ...rest } = act;
  const question = untilQuestion(scene, rest, 'until');
  const name = machineName(act.machine ?? '', scene);
  const why =
    now === undefined
      ? `What ${name}’s counter shows is not known, so ${hoursWords(hours)} on it is no date.`
      : `${name}’s counter is at ${hoursWords(now)} already, past ${hoursWords(hours)}.`;
  return { ...question, text: `${why} ${question.text}` };
}

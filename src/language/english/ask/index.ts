/** Questions: the topics in the order in which they are tried, and the act that the first fitting one makes. */
import type { LocalDate } from '../../act.ts';
import { isFn } from '../../item.ts';
import { type Draft, draft, type Scene } from '../../scene.ts';
import { askAct } from './act.ts';
import { AGE } from './age.ts';
import { DIAGNOSE } from './diagnose.ts';
import { DIAGNOSE_UNNAMED } from './diagnose-bare.ts';
import { DUE } from './due.ts';
import { FIGURE } from './figure.ts';
import { follow } from './follow.ts';
import { HANDOVER } from './handover.ts';
import { HELP } from './help.ts';
import { HISTORY } from './history.ts';
import { HOW } from './how.ts';
import { LIFE } from './life.ts';
import { NEXT } from './next.ts';
import { opens } from './opens.ts';
import { OVERDUE } from './overdue.ts';
import { layOpen } from './question.ts';
import { READY } from './ready.ts';
import { STATUS } from './status.ts';
import { STOCK } from './stock.ts';
import { holds, type Topic } from './topic.ts';
import { TREND } from './trend.ts';
import { USAGE } from './usage.ts';

/** In order; the first that holds is the topic. Each says why it stands where it stands. */
export const TOPICS: readonly Topic[] = [
  HELP, HANDOVER, FIGURE, DIAGNOSE, TREND, LIFE, AGE, STOCK, READY, NEXT, OVERDUE, HOW, HISTORY, USAGE, DUE, DIAGNOSE_UNNAMED, STATUS,
]; // prettier-ignore

export function readAsk(scene: Scene, earlier: readonly Scene[], today: LocalDate): Draft[] {
  // "who had the grease gun at it last, and when": asked for already.
  if (earlier.length > 0 && scene.items.length === 1 && isFn(scene.items[0], 'when')) return [];
  if (!opens(scene)) return [];
  const question = follow(layOpen(scene), earlier);
  const topic = TOPICS.find((one) => holds(one, question.facts));
  if (!topic) return [];
  return [draft(scene, askAct(topic.topic, question, today), `ask ${topic.topic}: ${topic.why}`)];
}

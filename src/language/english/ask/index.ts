/** Questions: the topics in the order in which they are tried, and the act that the first fitting one makes. */
import type { StockItem } from '../../../maintenance/codes.ts';
import type { LocalDate } from '../../act.ts';
import { hasTag, isFn } from '../../item.ts';
import { type Draft, draft, hasMachine, type Scene } from '../../scene.ts';
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
import { layOpen, type Question } from './question.ts';
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
  if (earlier.length > 0 && asksOn(scene)) return [];
  const same = sameAsked(scene, earlier);
  if (same) return [draft(scene, askAct(same.topic.topic, same.question, today), `ask ${same.topic.topic}: the same of another`)]; // prettier-ignore
  if (!opens(scene)) return [];
  const question = follow(layOpen(scene), earlier);
  const topic = TOPICS.find((one) => holds(one, question.facts));
  if (!topic) return [];
  const rule = `ask ${topic.topic}: ${topic.why}`;
  const listed = topic.topic === 'stock' ? listedParts(scene) : [];
  if (listed.length > 1) return listed.map((part) => draft(scene, { ...askAct(topic.topic, question, today), part }, rule)); // prettier-ignore
  return [draft(scene, askAct(topic.topic, question, today), rule)];
}

/** "…, and when", "…, and when was it": asked for already. */
const asksOn = (scene: Scene): boolean =>
  /^when(?: (?:was|were|did|is) (?:it|that|this|they)(?: done)?)?$/u.test(scene.text);

const LONGEST_SAME = 6;
/** "… and what on Juniper?": the question before it, of another machine. */
function sameAsked(
  scene: Scene,
  earlier: readonly Scene[],
): { topic: Topic; question: Question } | undefined {
  const before = earlier.at(-1);
  const bare =
    scene.items.length <= LONGEST_SAME &&
    hasMachine(scene) &&
    scene.items.every(
      (item) =>
        hasTag(item, 'machine') ||
        isFn(item, 'what', 'how', 'on', 'for', 'with', 'article', 'too', 'of', 'in') ||
        /^(?:about|and|what about|how about)$/u.test(item.text),
    ) &&
    scene.items.some((item) => isFn(item, 'what', 'how'));
  if (!bare || !before || !hasMachine(before) || !opens(before)) return undefined;
  const question = follow(layOpen(before), earlier.slice(0, -1));
  const topic = TOPICS.find((one) => holds(one, question.facts));
  return topic === undefined ? undefined : { topic, question };
}

/** "how many couplers and lead screws": each by itself; "grease for the screw" is one thing. */
function listedParts(scene: Scene): StockItem[] {
  const nouns = scene.nouns.filter((noun) => noun.part !== undefined && noun.at >= 0);
  const [first, last] = [nouns[0], nouns.at(-1)];
  if (!first || !last || first === last) return [];
  const listed = scene.items
    .slice(first.at, last.at + 1)
    .every((item) => hasTag(item, 'part', 'spec') || isFn(item, 'or', 'article', 'any', 'some', 'new'));
  return listed ? [...new Set(nouns.flatMap((noun) => (noun.part === undefined ? [] : [noun.part])))] : [];
}

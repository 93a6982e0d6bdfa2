/** Orders: the kinds in the order in which they are tried on each sentence, and what becomes of its acts. */
import type { ActReading, LocalDate, OrderReading } from '../../act.ts';
import type { Item } from '../../item.ts';
import { ADD } from './add.ts';
import { BASELINE } from './baseline.ts';
import { BLAME, MAYBE_JOKE } from './blame.ts';
import { CONVERT } from './convert.ts';
import { FALSE_ALARM } from './false-alarm.ts';
import { INTERVAL } from './interval.ts';
import { LIFT } from './lift.ts';
import { type Passage, passagesOf } from './passage.ts';
import { QUIET } from './quiet.ts';
import { RENAME } from './rename.ts';
import { RETIRE } from './retire.ts';
import { HAND_OVER, NOTE, TAKE_OVER } from './shift.ts';
import { START } from './start.ts';
import { holds, type OrderTopic } from './topic.ts';
import { whichAll } from './which-all.ts';

/** In order; the first that holds is the order of the sentence. Each says why it stands where it stands. */
export const ORDER_TOPICS: readonly OrderTopic[] = [
  BLAME, QUIET, HAND_OVER, TAKE_OVER, ADD, RENAME, RETIRE, LIFT, FALSE_ALARM, BASELINE, INTERVAL, CONVERT, START,
  MAYBE_JOKE, NOTE,
]; // prettier-ignore

export interface Ordered {
  readonly orders: readonly OrderReading[];
  /** Places in the acts that an order says: they are no acts. */
  readonly dropped: ReadonlySet<number>;
}

/** A message is as long as a list sometimes; an order stands in the first sentences of it. */
const MOST_PASSAGES = 12;

export function readOrders(
  items: readonly Item[],
  message: string,
  acts: readonly ActReading[],
  { today, machines }: { today: LocalDate; machines: readonly string[] },
): Ordered {
  const passages = passagesOf(items, message, machines).slice(0, MOST_PASSAGES);
  const found: { topic: OrderTopic; passage: Passage; reading: Omit<OrderReading, 'covers'> }[] = [];
  passages.forEach((passage, at) => {
    const topic = ORDER_TOPICS.find((one) => holds(one, passage.facts));
    const order = topic?.make(passage, { today, next: passages[at + 1] });
    if (!topic || !order) return;
    // kept as written only where nothing was understood
    if (order.kind === 'note' && acts.length > 0) return;
    const trail = [{ rule: `order ${topic.kind}: ${topic.why}`, span: passage.span }];
    found.push({ topic, passage, reading: { order, trail } });
  });
  const within = (passage: Passage, kinds: readonly string[] = []): number[] =>
    acts.flatMap(({ act, trail }, i) => (kinds.includes(act.kind) && isIn(passage, trail) ? [i] : []));
  const swapsWithin = (passage: Passage, parts: readonly string[] = []): number[] =>
    within(passage, ['swap']).filter((i) => {
      const act = acts[i]?.act;
      return act?.kind === 'swap' && parts.includes(act.part);
    });
  const dropped = new Set(found.flatMap(({ topic, passage }) => within(passage, topic.drops)));
  const place = (i: number): number => i - [...dropped].filter((gone) => gone < i).length;
  const orders = found.map(({ topic, passage, reading }) => ({
    ...reading,
    covers: [...within(passage, topic.covers), ...swapsWithin(passage, topic.coversSwapOf)].filter((i) => !dropped.has(i)).map(place),
  })); // prettier-ignore
  const kept = acts.filter((_, i) => !dropped.has(i));
  return { orders: [...orders, ...whichAll(passages, kept, machines)], dropped };
}

const isIn = ({ span }: Passage, trail: ActReading['trail']): boolean => {
  const last = trail.at(-1);
  return last !== undefined && last.span[0] >= span[0] && last.span[0] < span[1];
};

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
import { type OrderFact, type Passage, sentencesOf } from './passage.ts';
import { QUIET } from './quiet.ts';
import { RENAME } from './rename.ts';
import { RETIRE } from './retire.ts';
import { HAND_OVER, NOTE, TAKE_OVER } from './shift.ts';
import { START } from './start.ts';
import { holds, type OrderRow, type OrderTopic } from './topic.ts';
import { whichAll } from './which-all.ts';

/** In order; the first that holds is the order of the sentence. Each says why it stands where it stands. */
export const ORDER_TOPICS: readonly OrderTopic[] = [
  BLAME, QUIET, HAND_OVER, TAKE_OVER, ADD, RENAME, RETIRE, LIFT, FALSE_ALARM, BASELINE, INTERVAL, CONVERT, START,
  MAYBE_JOKE, NOTE,
]; // prettier-ignore

/** Facts that any sentence may have; a row with none but these would have to be tried on every message. */
const PLAIN: ReadonlySet<string> = new Set<OrderFact>(['machine', 'machine-twin', 'person', 'part', 'thing', 'task', 'span', 'date', 'material', 'trouble', 'question', 'negated', 'planned', 'wished', 'conditional', 'requested', 'reported', 'hedged', 'worked', 'mended', 'ran', 'it', 'nobody', 'asked', 'me', 'all', 'i', 'who', 'now', 'have', 'goes', 'curt', 'colon']); // prettier-ignore
const seenAs = (fact: OrderFact): OrderFact => fact.replace(/^opens:/u, '') as OrderFact;
/** What a glance must show for the row to hold at all: every rare fact of its `all`, and one of a choice of rare ones. */
interface Seed {
  readonly all: readonly OrderFact[];
  readonly choices: readonly (readonly OrderFact[])[];
}
function seedOf(row: OrderRow): Seed {
  const isRare = (fact: OrderFact): boolean => !PLAIN.has(fact);
  const all = (row.all ?? []).filter(isRare).map(seenAs);
  const choices = [row.any, row.with].flatMap((one) => (one?.every(isRare) ? [one.map(seenAs)] : []));
  if (all.length === 0 && choices.length === 0)
    throw new Error(`An order's row needs a rare fact: ${JSON.stringify(row)}`);
  return { all, choices };
}
/** "the lot" is asked about whatever orders there are. */
const SEEDS: readonly Seed[] = [
  { all: ['the-lot'], choices: [] },
  ...ORDER_TOPICS.flatMap(({ rows }) => rows.map(seedOf)),
];
const isLikely = (glance: ReadonlySet<OrderFact>): boolean =>
  glance.size > 0 &&
  SEEDS.some(
    ({ all, choices }) =>
      all.every((fact) => glance.has(fact)) &&
      choices.every((choice) => choice.some((fact) => glance.has(fact))),
  );

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
  const sentences = sentencesOf(items, message, machines).slice(0, MOST_PASSAGES);
  const likely = sentences.flatMap((one, at) => (isLikely(one.glance) ? [at] : []));
  if (likely.length === 0) return { orders: [], dropped: new Set() };
  const found: { topic: OrderTopic; passage: Passage; reading: Omit<OrderReading, 'covers'> }[] = [];
  const passages = likely.flatMap((at) => sentences[at]?.laidOpen() ?? []);
  passages.forEach((passage, nth) => {
    const topic = ORDER_TOPICS.find((one) => holds(one, passage.facts));
    const order = topic?.make(passage, { today, next: sentences[(likely[nth] ?? 0) + 1]?.laidOpen() });
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

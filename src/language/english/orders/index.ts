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
/** What must be there for the row to hold at all: a rare fact of its `all`, else those of `any` or `with`. */
function seedsOf(row: OrderRow): readonly OrderFact[] {
  const rare = (facts: readonly OrderFact[] | undefined): readonly OrderFact[] => (facts ?? []).filter((one) => !PLAIN.has(one)); // prettier-ignore
  const [must] = rare(row.all);
  if (must !== undefined) return [must];
  const choice = [row.any, row.with].find((one) => one !== undefined && rare(one).length === one.length);
  if (!choice) throw new Error(`An order's row needs a rare fact: ${JSON.stringify(row)}`);
  return choice;
}
const SEEDS: ReadonlySet<OrderFact> = new Set([
  'the-lot' as const,
  ...ORDER_TOPICS.flatMap(({ rows }) =>
    rows.flatMap((row) => seedsOf(row).map((fact) => fact.replace(/^opens:/u, '') as OrderFact)),
  ),
]);

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
  const likely = sentences.flatMap((one, at) =>
    [...one.glance].some((fact) => SEEDS.has(fact)) ? [at] : [],
  );
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

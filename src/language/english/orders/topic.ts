/** What a kind of order is made of: rows over the facts of a sentence, and the order that a fitting one makes. */
import type { ActKind, LocalDate, Order } from '../../act.ts';
import type { OrderFact, Passage } from './passage.ts';

export interface OrderRow {
  /** All of these are there. */
  readonly all?: readonly OrderFact[];
  /** And one of these. */
  readonly any?: readonly OrderFact[];
  /** And one of these too. */
  readonly with?: readonly OrderFact[];
  /** And none of these. */
  readonly none?: readonly OrderFact[];
}

export interface OrderTopic {
  readonly kind: Order['kind'];
  /** Why it stands where it stands in the list. */
  readonly why: string;
  /** None of these in any row. */
  readonly never?: readonly OrderFact[];
  readonly rows: readonly OrderRow[];
  /** What was read of the same sentence and is this order: it is no act. */
  readonly drops?: readonly ActKind[];
  /** Acts of the same sentence that are not played when the order is carried out. */
  readonly covers?: readonly ActKind[];
  /** Of a swap, only those of parts that have no interval and are told as what was mended. */
  readonly coversSwapOf?: readonly string[];
  /** Undefined where it turns out to be none. `next`: the sentence after it. */
  make(passage: Passage, around: { today: LocalDate; next: Passage | undefined }): Order | undefined;
}

export function holds(
  { never, rows }: Pick<OrderTopic, 'never' | 'rows'>,
  facts: ReadonlySet<OrderFact>,
): boolean {
  const has = (fact: OrderFact): boolean => facts.has(fact);
  if (never?.some(has)) return false;
  return rows.some(
    (row) =>
      (row.all?.every(has) ?? true) &&
      (row.any?.some(has) ?? true) &&
      (row.with?.some(has) ?? true) &&
      !row.none?.some(has),
  );
}

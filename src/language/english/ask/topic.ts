/** What a topic is made of: rows over the tags of a question. */
import type { AskTopic } from '../../act.ts';
import type { Fact } from './question.ts';

export interface Row {
  /** All of these are there. */
  readonly all?: readonly Fact[];
  /** And one of these. */
  readonly any?: readonly Fact[];
  /** And one of these too: a second choice beside the first. */
  readonly with?: readonly Fact[];
  /** And none of these. */
  readonly none?: readonly Fact[];
}
export interface Topic {
  readonly topic: AskTopic;
  /** Why it stands where it stands in the list. */
  readonly why: string;
  /** None of these in any row. */
  readonly never?: readonly Fact[];
  readonly rows: readonly Row[];
}

export function holds({ never, rows }: Topic, facts: ReadonlySet<Fact>): boolean {
  const has = (fact: Fact): boolean => facts.has(fact);
  if (never?.some(has)) return false;
  return rows.some(
    (row) =>
      (row.all?.every(has) ?? true) &&
      (row.any?.some(has) ?? true) &&
      (row.with?.some(has) ?? true) &&
      !row.none?.some(has),
  );
}

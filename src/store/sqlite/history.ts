/** Questions about the past: only the conditions that are asked for, so that an index can serve them. */
import type { HistoryFilter, PersonFilter } from '../journal.ts';
import { Query, type Session, type Value } from './query.ts';

interface Json {
  json: string;
}
type Condition = readonly [sql: string, value: Value | undefined];

/** One query for each combination that was ever asked for: at most a few hundred. */
const queries = new Map<string, Query<Json>>();

function queryFor(sql: string): Query<Json> {
  const known = queries.get(sql);
  if (known !== undefined) return known;
  const made = new Query<Json>(sql);
  queries.set(sql, made);
  return made;
}

function select(
  session: Session,
  conditions: readonly Condition[],
  order: string,
  limit: number,
): readonly Json[] {
  const asked = conditions.flatMap(([sql, value]) => (value === undefined ? [] : [{ sql, value }]));
  const where = asked.length === 0 ? '' : `WHERE ${asked.map(({ sql }) => sql).join(' AND ')}`;
  const query = queryFor(`SELECT json FROM entries ${where} ORDER BY ${order} LIMIT ?`);
  return session.all(query, ...asked.map(({ value }) => value), Math.max(0, limit));
}

const asOf = (instant: number | undefined): readonly Condition[] => [
  ['at <= ?', instant],
  ['written_at <= ?', instant],
];

export function personHistory(session: Session, by: string, filter: PersonFilter): readonly Json[] {
  const conditions: readonly Condition[] = [
    ['by = ?', by],
    ['written_at <= ?', filter.writtenAsOf],
  ];
  return select(session, conditions, 'position DESC', filter.limit);
}

export function recentHistory(session: Session, filter: HistoryFilter): readonly Json[] {
  const conditions: readonly Condition[] = [
    ['machine = ?', filter.machine],
    ['task = ?', filter.task],
    ['part = ?', filter.part],
    ['by = ?', filter.by],
    ['at >= ?', filter.from],
    ['at < ?', filter.to],
    ...asOf(filter.asOf),
  ];
  return select(session, conditions, 'at DESC, said_at DESC, act DESC, id DESC', filter.limit);
}

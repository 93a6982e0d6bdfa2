/** How late: beyond its grace or not, and by how much of its own interval. */
import { HAIR } from './standing.ts';
import type { Standing } from './standing.ts';
import { graceOf } from './measure.ts';

/** What a raised task without a calendar of its own is held against, in days. */
const USUAL_DAYS = 30;

function ownDays(standing: Standing): number | undefined {
  const days = standing.terms.flatMap((term) => (term.trigger === 'days' ? [term.interval] : []));
  return days.length > 0 ? Math.min(...days) : undefined;
}

/** Days that a raised task may wait; a safety task none. */
export const raisedGraceDays = (standing: Standing): number =>
  standing.class === 'safety' ? 0 : graceOf(ownDays(standing) ?? 0, 'days');

export function isOverdue(standing: Standing): boolean {
  const { uses, raised } = standing;
  if (raised && raised.daysAgo > raisedGraceDays(standing)) return true;
  return uses.some((use) => use.trigger !== 'raised' && use.used > use.interval + use.grace + HAIR);
}

/** In units of the task's own interval: 0 is due now, 0.1 a tenth of it late, -1 just done. */
export function latenessOf(standing: Standing): number {
  const { uses, raised } = standing;
  let late = -1;
  for (const { share } of uses) late = Math.max(late, share - 1);
  return raised ? Math.max(late, raised.daysAgo / (ownDays(standing) ?? USUAL_DAYS)) : late;
}

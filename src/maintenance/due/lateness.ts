/** How late: beyond its grace or not, and by how much of its own interval. */
import type { Rule } from '../care/rule.ts';
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
  const byShare = uses.map(({ share }) => share - 1);
  const byWaiting = raised ? [raised.daysAgo / (ownDays(standing) ?? USUAL_DAYS)] : [];
  return Math.max(-1, ...byShare, ...byWaiting);
}

export const hasInterval = (rule: Rule): boolean => typeof rule.every === 'function' || rule.every.length > 0;

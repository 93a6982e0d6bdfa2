/** Deciding in tests: a workshop of a few entries, and a deed said in it. */
import { openCalendar } from '../../src/maintenance/calendar.ts';
import type { DecideContext } from '../../src/maintenance/decide/context.ts';
import { decide } from '../../src/maintenance/decide/decide.ts';
import type { Decision } from '../../src/maintenance/decide/decision.ts';
import type { Deed } from '../../src/maintenance/decide/deed.ts';
import { momentOf } from '../../src/maintenance/decide/moment.ts';
import type { Entry } from '../../src/maintenance/entry/entry.ts';
import { foldShop } from '../../src/maintenance/record/fold.ts';
import { NOW, ZONE } from './entries.ts';

const calendar = openCalendar(ZONE);

/** Said by ines, a member, on Wednesday 2026-03-11 at 15:40; everything is planned and nothing is a safety task. */
export function saying(entries: readonly Entry[], deed: Deed, given: Partial<DecideContext> = {}): Decision {
  const context: DecideContext = {
    now: NOW,
    saidAt: given.now ?? NOW,
    by: 'ines',
    role: 'member',
    calendar,
    lastBatch: [],
    latestPutOff: () => undefined,
    planned: () => true,
    ...given,
  };
  const { at } = momentOf(deed, context.saidAt, calendar);
  const shops = { asOf: foldShop(entries, calendar, at), latest: foldShop(entries, calendar) };
  return decide(deed, shops, context);
}

/** "written usage", "refused counter-back", "asked hours": what came of it, in two words. */
export function outcomeOf(decision: Decision): string {
  if (decision.outcome === 'refused') return `refused ${decision.code}`;
  if (decision.outcome === 'asked') return `asked ${decision.field}`;
  return `written ${decision.drafts.map((draft) => draft.kind).join(' ')}`;
}

export const flagsOf = (decision: Decision): readonly string[] =>
  decision.outcome === 'written' ? decision.flags : [];

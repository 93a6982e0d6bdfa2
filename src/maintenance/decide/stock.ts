/**
 * The shelf: counted, or more and fewer. A count that is said wins; what was taken is written even where the
 * shelf was believed empty.
 */
import { isDate } from '../calendar.ts';
import type { Draft } from '../entry/entry.ts';
import type { ShelfItem } from '../record/record.ts';
import { findItem, findToTake } from '../record/shelf.ts';
import type { DecideContext, Shops } from './context.ts';
import type { StockDeed } from './deed.ts';
import { asked, refused, written, type Asked, type Decision, type Facts, type Refused } from './decision.ts';
import { BORDERS, impossible } from './figures.ts';
import { momentOf, type Moment } from './moment.ts';

export function decideStock(deed: StockDeed, shops: Shops, context: DecideContext): Decision {
  const facts: Facts = { act: 'stock', part: deed.part, ...(deed.fitted ? { fitted: deed.fitted } : {}) };
  const moment = momentOf(deed, context.saidAt, context.calendar);
  const problem = doubtStock(deed, facts, moment, context) ?? doubtItem(deed, facts, shops.latest.shelf);
  if (problem) return problem;
  const { shelf } = shops.latest;
  const item = shelf[findToTake(shelf, deed.part, deed.fitted)];
  const taken = deed.count === undefined ? Math.max(0, -(deed.change ?? 0)) : 0;
  const draft = stockDraft(deed, { ...moment, at: Math.min(moment.at, context.now) });
  const about = deed.about ? (['about-that-day'] as const) : [];
  if (taken <= (item?.count ?? 0)) return written([draft], about);
  const before = {
    part: deed.part,
    before: item?.count ?? 0,
    ...(item?.fitted ? { fitted: item.fitted } : {}),
  };
  return written([draft], [...about, 'conflict'], { shelf: before });
}

function doubtStock(
  deed: StockDeed,
  facts: Facts,
  moment: Moment,
  { now, calendar }: DecideContext,
): Refused | Asked | undefined {
  const { count, change, on } = deed;
  if (on !== undefined && !isDate(on)) return refused('invalid-number', { ...facts, field: 'on' });
  if (on !== undefined && moment.at > now)
    return refused('in-future', { ...facts, on: calendar.dateOf(moment.at) });
  if (count === undefined && change === undefined) return asked('value', facts);
  return (
    impossible('count', count, BORDERS.count, facts) ??
    impossible('change', change === undefined ? undefined : Math.abs(change), BORDERS.pieces, facts)
  );
}

/** "7 nozzles", where the shelf keeps two sorts of them: which? */
function doubtItem(deed: StockDeed, facts: Facts, shelf: readonly ShelfItem[]): Asked | undefined {
  if (deed.fitted !== undefined) return undefined;
  const sorts = shelf.filter((item) => item.part === deed.part && item.fitted !== undefined);
  if (sorts.length < 2 || findItem(shelf, deed.part, undefined) >= 0) return undefined;
  return asked(
    'fitted',
    facts,
    sorts.map((item) => ({ value: item.fitted ?? '' })),
  );
}

function stockDraft(deed: StockDeed, moment: Moment): Draft {
  const { part, count, change = 0, fitted, deliveryDays, price } = deed;
  const which = { part, ...(fitted === undefined ? {} : { fitted }) };
  if (count === undefined) return { kind: 'stockMoved', ...which, change, ...moment };
  return {
    kind: 'stockCounted',
    ...which,
    count,
    ...(deliveryDays === undefined ? {} : { deliveryDays }),
    ...(price === undefined ? {} : { price }),
    ...moment,
  };
}

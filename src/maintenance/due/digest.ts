/** The morning's digest: what the room needs today, as facts; its sentences are made elsewhere. */
import { dateOfDay } from '../calendar.ts';
import type { LocalDate } from '../entry/entry.ts';
import type { ShopRecord } from '../record/record.ts';
import { condensed, isOfInterest, isOwed } from './condensed.ts';
import { closedBefore, todayOf } from './context.ts';
import type { DueContext } from './context.ts';
import { fetchFor, onShelf, shortages, wantedSpare } from './fetch.ts';
import type { FetchItem, Shortage } from './fetch.ts';
import { cutToMinutes, mayComeForward, roundOf } from './round.ts';
import { inListOrder } from './order.ts';
import { placesOf } from './places.ts';
import type { RoundStop } from './round.ts';
import { roundCautions } from './roundCautions.ts';
import type { CautionAt } from './roundCautions.ts';
import type { DueRow } from './row.ts';
import { rowsByMachine } from './rows.ts';
import { statesOf } from './states.ts';
import type { HeldLine, OpenLine, OutOfUseLine } from './states.ts';

export interface DigestContext extends DueContext {
  minutesADay?: number;
  hourlyRate?: number;
}

export interface NoRecord {
  /** Tasks without a record, safety tasks apart: those are listed until a first check. */
  tasks: number;
  machines: number;
  safety: readonly DueRow[];
}

export interface Digest {
  date: LocalDate;
  /** Closed days just before: nobody read a digest on them, so this one speaks for them too. */
  closedBefore: number;
  held: readonly HeldLine[];
  outOfUse: readonly OutOfUseLine[];
  open: readonly OpenLine[];
  overdue: readonly DueRow[];
  due: readonly DueRow[];
  comingUp: readonly DueRow[];
  noRecord: NoRecord;
  round: readonly RoundStop[];
  fetch: readonly FetchItem[];
  shelf: readonly Shortage[];
  cautions: readonly CautionAt[];
  /** Hands-on minutes of the round. */
  minutes: number;
  /** What the day has no minutes for. */
  left: readonly DueRow[];
}

function noRecordOf(rows: readonly DueRow[]): NoRecord {
  const unknown = rows.filter(({ state }) => state === 'no-record');
  const plain = unknown.filter((row) => row.class !== 'safety');
  return {
    tasks: plain.length,
    machines: new Set(plain.map(({ machine }) => machine)).size,
    safety: unknown.filter((row) => row.class === 'safety' && !row.idle),
  };
}

/** Machines that stand still have a line of their own; their tasks are in none of the lists. */
export function digestOf(shop: ShopRecord, context: DigestContext): Digest {
  const all = rowsByMachine(shop, context, 'near').filter(isOfInterest).sort(inListOrder);
  const active = condensed(all.filter((row) => !row.idle && !waitsForHold(row, shop)));
  const owed = active.filter(isOwed);
  const { kept, left } = cutToMinutes(owed, context.minutesADay);
  const costs = {
    today: todayOf(context),
    calendarDayOf: (at: number) => context.calendar.dayOf(at),
    ...(context.hourlyRate !== undefined && { hourlyRate: context.hourlyRate }),
    priceOf: (row: DueRow) => priceOf(shop, row),
  };
  const soon = active.filter((row) => !row.rule.oneLine && mayComeForward(row));
  const round = roundOf(kept, soon, costs, context.minutesADay);
  const rows = round.flatMap((stop) => stop.rows);
  const places = placesOf(rows, shop);
  const fetch = fetchFor(places, shop);
  return {
    date: dateOfDay(todayOf(context)),
    closedBefore: closedBefore(context),
    ...statesOf([...shop.machines.values()], all),
    overdue: active.filter(({ state }) => state === 'overdue'),
    due: active.filter(({ state }) => state === 'due'),
    comingUp: active.filter(({ state }) => state === 'coming-up'),
    noRecord: noRecordOf(all),
    round,
    fetch,
    shelf: shortages(fetch, shop.shelf),
    cautions: roundCautions(places),
    minutes: round.reduce((sum, stop) => sum + stop.minutes, 0),
    left,
  };
}

/** Nobody greases what nobody may touch: of a held machine its safety tasks alone are called for. */
const waitsForHold = ({ machine, class: of }: DueRow, { machines }: ShopRecord): boolean =>
  of !== 'safety' && machines.get(machine)?.hold !== undefined;

function priceOf(shop: ShopRecord, row: DueRow): number | undefined {
  const spare = wantedSpare(shop, row);
  return spare && onShelf(shop.shelf, spare.item, spare.fitted)?.price;
}

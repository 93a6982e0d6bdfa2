/** The morning's digest: what the room needs today, as facts; its sentences are made elsewhere. */
import { RUN_IN_PARTS } from '../care/bundles.ts';
import { dateOfDay } from '../calendar.ts';
import { ROOM } from '../codes.ts';
import type { Symptom, Task } from '../codes.ts';
import type { Instant, LocalDate } from '../entry/entry.ts';
import type { MachineRecord, ShopRecord } from '../record/record.ts';
import { todayOf } from './context.ts';
import type { DueContext } from './context.ts';
import { cautionsFor, fetchFor, onShelf, shortages, wantedSpare } from './fetch.ts';
import type { CautionAt, FetchItem, Shortage } from './fetch.ts';
import { cutToMinutes, mayComeForward, roundOf } from './round.ts';
import { inListOrder } from './order.ts';
import type { RoundStop } from './round.ts';
import type { DueRow } from './row.ts';
import { rowsByMachine } from './rows.ts';

export interface DigestContext extends DueContext {
  minutesADay?: number;
  hourlyRate?: number;
}

export interface HeldLine {
  machine: string;
  symptom: Symptom;
  also: readonly Symptom[];
  since: Instant;
  by: string;
  entry: string;
}
export interface OutOfUseLine {
  machine: string;
  since: Instant;
  by: string;
  /** What is owed before it starts again. */
  before: readonly Task[];
  /** What was seen on it and not cleared, oldest first. */
  because: readonly Symptom[];
}
export interface OpenLine {
  machine: string;
  since: Instant;
  by: string;
}
export interface NoRecord {
  /** Tasks without a record, safety tasks apart: those are listed until a first check. */
  tasks: number;
  machines: number;
  safety: readonly DueRow[];
}

export interface Digest {
  date: LocalDate;
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

const runInParts: ReadonlySet<string> = new Set(RUN_IN_PARTS);
const isOwed = ({ state }: DueRow): boolean => state === 'overdue' || state === 'due';
/** What is fine and stays so, and what waits, is in none of the lists. */
const isOfInterest = (row: DueRow): boolean =>
  isOwed(row) || row.state === 'no-record' || mayComeForward(row);
const rank = ({ state }: DueRow): number => ['overdue', 'due', 'coming-up'].indexOf(state);

/** Several machines, one line: under the room's name where there is more than one. */
function asOneLine(rows: readonly DueRow[]): DueRow[] {
  const [worst] = rows.toSorted((a, b) => rank(a) - rank(b) || b.lateness - a.lateness);
  if (!worst || rows.length === 1) return [...rows];
  return [{ ...worst, machine: ROOM, machines: rows.map(({ machine }) => machine).toSorted() }];
}

/** The list as it is read: one line for the room where a task says so, and the run-in instead of its parts. */
function condensed(rows: readonly DueRow[]): DueRow[] {
  const inRunIn = new Set(
    rows.filter((row) => row.task === 'run-in' && isOwed(row)).map((row) => row.machine),
  );
  const shown = rows.filter((row) => !(inRunIn.has(row.machine) && runInParts.has(row.task) && !row.raised));
  const lines = new Map<string, DueRow[]>();
  for (const row of shown.filter(isOneLine)) {
    const together = lines.get(lineOf(row));
    if (together) together.push(row);
    else lines.set(lineOf(row), [row]);
  }
  return shown.flatMap((row) => {
    if (!isOneLine(row)) return [row];
    const together = lines.get(lineOf(row)) ?? [];
    return together[0] === row ? asOneLine(together) : [];
  });
}
const isOneLine = ({ rule, state }: DueRow): boolean => rule.oneLine === true && state !== 'no-record';
/** What is owed and what is coming up stand in different lists. */
const lineOf = (row: DueRow): string => `${row.task} ${isOwed(row) ? 'owed' : row.state}`;

function noRecordOf(rows: readonly DueRow[]): NoRecord {
  const unknown = rows.filter(({ state }) => state === 'no-record');
  const plain = unknown.filter((row) => row.class !== 'safety');
  return {
    tasks: plain.length,
    machines: new Set(plain.map(({ machine }) => machine)).size,
    safety: unknown.filter((row) => row.class === 'safety' && !row.idle),
  };
}

const openSymptoms = (record: MachineRecord): Symptom[] =>
  Object.entries(record.symptoms)
    .flatMap(([symptom, known]) => (known.open ? [{ symptom: symptom as Symptom, at: known.open.at }] : []))
    .toSorted((a, b) => a.at - b.at)
    .map(({ symptom }) => symptom);

const owedBeforeStart = (row: DueRow): boolean =>
  isOwed(row) || (row.state === 'no-record' && row.class === 'safety');

function statesOf(machines: readonly MachineRecord[], rows: readonly DueRow[]) {
  const mine = machines.filter(({ retired }) => !retired);
  return {
    held: mine.flatMap(({ name, hold }): HeldLine[] =>
      hold
        ? [
            {
              machine: name,
              symptom: hold.symptom,
              also: hold.also,
              since: hold.since.at,
              by: hold.since.by,
              entry: hold.since.entry,
            },
          ]
        : [],
    ),
    outOfUse: mine.flatMap((record): OutOfUseLine[] => {
      if (!record.down) return [];
      const before = rows.filter((row) => row.machine === record.name && owedBeforeStart(row));
      return [
        {
          machine: record.name,
          since: record.down.at,
          by: record.down.by,
          before: before.map(({ task }) => task),
          because: openSymptoms(record),
        },
      ];
    }),
    open: mine.flatMap(({ name, opened }): OpenLine[] =>
      opened ? [{ machine: name, since: opened.at, by: opened.by }] : [],
    ),
  };
}

/** Machines that stand still have a line of their own; their tasks are in none of the lists. */
export function digestOf(shop: ShopRecord, context: DigestContext): Digest {
  const all = rowsByMachine(shop, context).filter(isOfInterest).sort(inListOrder);
  const active = condensed(all.filter(({ idle }) => !idle));
  const owed = active.filter(isOwed);
  const { kept, left } = cutToMinutes(owed, context.minutesADay);
  const costs = {
    today: todayOf(context),
    calendarDayOf: context.calendar.dayOf,
    ...(context.hourlyRate !== undefined && { hourlyRate: context.hourlyRate }),
    priceOf: (row: DueRow) => priceOf(shop, row),
  };
  const soon = active.filter((row) => !row.rule.oneLine && mayComeForward(row));
  const round = roundOf(kept, soon, costs, context.minutesADay);
  const rows = round.flatMap((stop) => stop.rows);
  const fetch = fetchFor(rows, shop);
  return {
    date: dateOfDay(todayOf(context)),
    ...statesOf([...shop.machines.values()], all),
    overdue: active.filter(({ state }) => state === 'overdue'),
    due: active.filter(({ state }) => state === 'due'),
    comingUp: active.filter(({ state }) => state === 'coming-up'),
    noRecord: noRecordOf(all),
    round,
    fetch,
    shelf: shortages(fetch, shop.shelf),
    cautions: cautionsFor(rows),
    minutes: round.reduce((sum, stop) => sum + stop.minutes, 0),
    left,
  };
}

function priceOf(shop: ShopRecord, row: DueRow): number | undefined {
  const spare = wantedSpare(shop, row);
  return spare && onShelf(shop.shelf, spare.item, spare.fitted)?.price;
}

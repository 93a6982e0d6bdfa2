/**
 * The record: what follows from the entries, machine by machine. It holds facts and running totals, no care
 * rules, so that a changed rule needs no new fold. Plain JSON throughout: a checkpoint is its serialised form.
 */
import type { Day } from '../calendar.ts';
import type { Finding, Material, Part, Reason, StockItem, Symptom, Task } from '../codes.ts';
import type { Instant, Interval, LocalDate, Precision } from '../entry/entry.ts';
import type { Build, Nozzle } from '../machine.ts';

/** Running totals at a moment. The difference of two is what was used in between. */
export interface Totals {
  /** The machine's hour counter as far as it is known: last reading + hours logged since. */
  hours: number;
  /** Local days on which it ran. */
  runDays: number;
  /** Logged hours by material (said, or that of the spool loaded). */
  hoursOf: Readonly<Partial<Record<Material, number>>>;
  /** Grams said, or worked out from metres. */
  gramsOf: Readonly<Partial<Record<Material, number>>>;
  /** Hours of usage whose filament nobody weighed; the dose takes a usual rate for them. */
  unweighedHoursOf: Readonly<Partial<Record<Material, number>>>;
}

/** A moment on a machine: when, by which entry, and the totals then. */
export interface Mark {
  at: Instant;
  day: Day;
  precision: Precision;
  entry: string;
  by: string;
  totals: Totals;
}

/** Why a task counts from where it counts. */
export type SinceWhy = 'done' | 'swapped' | 'started' | 'stated';

export interface TaskDone extends Mark {
  why: SinceWhy;
  finding?: Finding;
  /** A stated baseline without an hour figure: its hours are unknown, days count. */
  hoursUnknown?: true;
  /** A counter figure that was stated before the counter was known: it counts once that is. */
  statedHours?: number;
}

export interface FittedPart extends Mark {
  why: 'swapped' | 'stated' | 'started';
  /** What went in, in the words that were said. */
  text?: string;
  /** False: it was in at enrolment and nobody knows since when (delayed entry, never "new"). */
  ageKnown: boolean;
  /** As in TaskDone. */
  hoursUnknown?: true;
  statedHours?: number;
}

/** One part's life, ended by a swap. */
export interface PartLife {
  part: Part;
  /** Hours and local days in use (from enrolment when the age is not known). */
  hours: number;
  days: number;
  /** Totals when it went in and when it came out. */
  from: Mark;
  to: Mark;
  /** `worn` and `broken` end a life by failure; `planned` and no reason censor it. */
  reason?: Reason;
  ageKnown: boolean;
  text?: string;
  /** How many came out together ("four new wheels"), when it was said. */
  count?: number;
}

export interface SymptomRecord {
  /** Seen and not cleared since. */
  open?: Mark;
  /** The last ten occurrences, oldest first. */
  recent: readonly Mark[];
  count: number;
  /** The last occurrence at each part that was named with it. */
  byPart?: Readonly<Partial<Record<Part, Mark>>>;
}

export interface Hold {
  symptom: Symptom;
  /** Other safety symptoms told while held. */
  also: readonly Symptom[];
  since: Mark;
  /** The entry that first told each of these, in their order: none of them goes without a reason and a name. */
  told: readonly string[];
  /** When one of them was last told. */
  last: Instant;
}

export interface PutOff {
  until?: LocalDate;
  atHours?: number;
  reason?: string;
  mark: Mark;
}
export interface Claim {
  on?: LocalDate;
  mark: Mark;
}
export interface OwnInterval {
  interval: Interval;
  source: 'manual' | 'workshop';
  mark: Mark;
}

/** Facts that do not fit together; shown, never repaired by guess. */
export interface Conflict {
  entry: string;
  at: Instant;
  what:
    | 'logged-more-than-counter' // usage between two readings exceeds their difference
    | 'not-enrolled' // an entry for a machine that no entry enrols
    | 'enrolled-twice'
    | 'after-retirement'
    | 'before-enrolment'
    | 'shelf-empty' // a part was fitted that the shelf did not have
    | 'counter-back'; // a reading below the counter that was not said to be a new counter
  /** The figures that disagree, where there are any. */
  figures?: { logged?: number; counter?: number; expected?: number };
}

/** Hours by local day, newest last; `hours[hours.length - 1]` is `lastDay`. At most RUN_WINDOW long. */
export interface RunByDay {
  lastDay: Day;
  hours: readonly number[];
}
/** Half a year: the forecast looks at the last twelve weeks, a late entry refolds the machine. */
export const RUN_WINDOW_DAYS = 182;

export interface MachineRecord {
  /** Canonical name, lower case; or `room`. */
  name: string;
  /** What it is called now, in people's writing, where somebody said so. */
  calledAs?: string;
  aliases: readonly string[];
  build: Build;
  /** What is in the hot end now: the build's nozzle, then what swaps said. */
  nozzle: Nozzle;
  enrolled?: Mark;
  /** Earliest local date that its entries may have. */
  inUseSince: Day;
  /** Started new at counter 0: every trigger counts from `inUseSince`. */
  startedNew: boolean;
  retired?: Mark;

  totals: Totals;
  /** False until a reading, a start counter or `new` fixed it; then `totals.hours` counts from 0. */
  counterKnown: boolean;
  /** The last reading, and what was logged since. */
  anchor?: { mark: Mark; hours: number };
  loggedSinceAnchor: number;
  /** All hours that were logged, ever. */
  loggedHours: number;
  /** Hours between readings that nobody logged. */
  unloggedHours: number;
  lastUsage?: Mark;
  runByDay: RunByDay;
  /** The last day counted as a run day for usage of which only the filament was said. */
  unmeasuredDay?: Day;
  /** First local day with usage on record. */
  firstRunDay?: Day;
  loaded?: { material?: Material; grams?: number; mark: Mark };

  /** Latest of each task, by done, swap, start or statement. */
  tasks: Readonly<Partial<Record<Task, TaskDone>>>;
  /** All tasks were stated fine here ("start now"): the baseline for tasks without a later one. */
  baseline?: TaskDone;
  parts: Readonly<Partial<Record<Part, FittedPart>>>;
  lives: readonly PartLife[];
  /** Trims of the guide tube since it was fitted; each takes length off. */
  tubeTrims?: number;
  symptoms: Readonly<Partial<Record<Symptom, SymptomRecord>>>;
  hold?: Hold;
  down?: Mark;
  /** Ended down spells, oldest first. */
  downSpells: readonly { from: Instant; to: Instant }[];
  /** The last time it came back, and how many local days it had stood still. */
  back?: Mark & { idleDays: number };
  opened?: Mark;
  putOffs: Readonly<Partial<Record<Task, PutOff>>>;
  /** A put-off or a claim of the machine as a whole. */
  putOffAll?: PutOff;
  claims: Readonly<Partial<Record<Task, Claim>>>;
  claimAll?: Claim;
  intervals: Readonly<Partial<Record<Task, OwnInterval>>>;
  /** The last ten, oldest first. */
  notes: readonly { text: string; mark: Mark }[];
  found: readonly { text: string; part?: Part; mark: Mark }[];
  /** What swaps took from the shelf, in order. */
  draws: readonly Draw[];
  conflicts: readonly Conflict[];
  /** Sort position of the last fact folded in; an entry that sorts before it needs a refold. */
  position?: Position;
}

/** An entry's place in the order of the fold. */
export interface Position {
  at: Instant;
  saidAt: Instant;
  act: number;
  id: string;
}

/** One swap's draw on the shelf. `want`: what was said or, said nothing, what was in before. */
export interface Draw {
  part: Part;
  count: number;
  want?: string;
  position: Position;
  machine: string;
  by: string;
}

export interface ShelfItem {
  part: StockItem;
  fitted?: string;
  count: number;
  deliveryDays?: number;
  price?: number;
}

export interface ShopRecord {
  /** By canonical name; retired machines stay. Does not hold the room. */
  machines: ReadonlyMap<string, MachineRecord>;
  room: MachineRecord;
  shelf: readonly ShelfItem[];
  /** Notes and handovers that belong to no machine: the last ten. */
  notes: readonly { text: string; at: Instant; by: string }[];
  handedOver?: { at: Instant; by: string; to?: string };
  /** Who said last that the shift is theirs. */
  tookOver?: { at: Instant; by: string; from?: string };
  conflicts: readonly Conflict[];
}

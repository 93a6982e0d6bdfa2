/**
 * Entries: past-tense facts, what was said (plus corrections), never conclusions.
 * Last-done, holds, stock drawn by a swap, unlogged hours: all of that is derived in the fold.
 */
import type { Finding, Material, Part, Reason, StockItem, Symptom, Task } from '../codes.ts';
import type { Build } from '../machine.ts';

/** Milliseconds since 1970-01-01T00:00Z. */
export type Instant = number;
/** A local calendar date, YYYY-MM-DD. */
export type LocalDate = string;

/** `instant`: known to the minute; `day`: only the date was said, 12:00 local; `about`: the date itself is unsure. */
export type Precision = 'instant' | 'day' | 'about';

/** An interval in the units of its triggers; whichever comes first. */
export interface Interval {
  hours?: number;
  days?: number;
  runDays?: number;
  /** Share of a wear limit: 1 is worn. */
  dose?: number;
}

/** A machine's own particulars, as its workshop file or a later change states them. */
export interface MachineFacts {
  /** What people call it and lists say, in their writing; `machine` stays the name that its record began with. */
  calledAs?: string;
  aliases?: readonly string[];
  build?: Build;
}

/** What an entry says, kind by kind. `machine` is the machine's canonical name in lower case, or `room`. */
export type EntryFields =
  | ({
      kind: 'enrolled';
      machine: string;
      build: Build;
      /** Counter at enrolment. */
      startHours?: number;
      /** Earliest local date that its entries may have. */
      inUseSince: LocalDate;
      /** Started at counter 0 on `inUseSince`: every trigger counts from there. */
      new?: true;
    } & Omit<MachineFacts, 'build'>)
  | { kind: 'changed'; machine: string; set: MachineFacts }
  | { kind: 'retired'; machine: string }
  | { kind: 'usage'; machine: string; hours?: number; grams?: number; metres?: number; material?: Material }
  | { kind: 'meter'; machine: string; hours: number; newCounter?: true }
  | { kind: 'loaded'; machine: string; material?: Material; grams?: number }
  | { kind: 'done'; machine: string; task: Task; finding?: Finding }
  | { kind: 'swapped'; machine: string; part: Part; fitted?: string; reason?: Reason; count?: number }
  | { kind: 'seen'; machine: string; symptom: Symptom; part?: Part }
  | { kind: 'cleared'; machine: string; symptom?: Symptom }
  | { kind: 'down'; machine: string }
  | { kind: 'up'; machine: string }
  | { kind: 'opened'; machine: string }
  | { kind: 'closed'; machine: string }
  | { kind: 'putOff'; machine: string; task?: Task; until?: LocalDate; atHours?: number; reason?: string }
  | { kind: 'claimed'; machine: string; task?: Task; on?: LocalDate }
  | { kind: 'stockMoved'; part: StockItem; change: number; fitted?: string }
  | {
      kind: 'stockCounted';
      part: StockItem;
      count: number;
      fitted?: string;
      deliveryDays?: number;
      price?: number;
    }
  | { kind: 'intervalSet'; machine: string; task: Task; interval: Interval; source: 'manual' | 'workshop' }
  /** A baseline: nobody saw it done here, but it was stated. `task` or `part`; neither: all tasks of the machine. */
  | {
      kind: 'stated';
      machine: string;
      task?: Task;
      part?: Part;
      fitted?: string;
      on?: LocalDate;
      hours?: number;
      /** Of all its tasks these alone. */
      tasks?: readonly Task[];
    }
  | { kind: 'noted'; machine?: string; text: string }
  | { kind: 'handedOver'; to?: string }
  /** The answer to a hand-over, by the one who takes it; `from`: from whom, as it was said. */
  | { kind: 'tookOver'; from?: string }
  | { kind: 'found'; machine: string; text: string; part?: Part }
  | { kind: 'released'; machine: string; found?: string; falseAlarm?: true }
  | { kind: 'amended'; target: string; set: Amendment }
  | { kind: 'takenBack'; target: string };
export type EntryKind = EntryFields['kind'];

/** Only the fields that change; `at` moves the deed to another day. */
export interface Amendment {
  at?: Instant;
  precision?: Precision;
  machine?: string;
  hours?: number;
  grams?: number;
  metres?: number;
  material?: Material;
  part?: StockItem;
  task?: Task;
  symptom?: Symptom;
  finding?: Finding;
  reason?: Reason;
  fitted?: string;
  change?: number;
  count?: number;
  until?: LocalDate;
}

/** What every entry has besides its fields. */
export interface Stamp {
  /** Derived from message key and place in the message, so that the same delivery makes the same id. */
  id: string;
  /** Version of this kind's shape. */
  v: number;
  /** When it happened. Usage ends at its `at`. */
  at: Instant;
  precision: Precision;
  /** When it was said (the message's own time). */
  saidAt: Instant;
  /** When it reached the journal. */
  writtenAt: Instant;
  /** Opaque person id; names live beside the journal. */
  by: string;
  platform: string;
  /** Key of the message that said it. */
  message: string;
  /** Which act of that message, from 0. */
  act: number;
  /** The earlier message whose open question this one answered. */
  because?: string;
}

export type Entry = Stamp & EntryFields;
/** The entry of one kind. */
export type EntryOf<K extends EntryKind> = Stamp & Extract<EntryFields, { kind: K }>;

/** An entry decided but not yet stamped with its id and its author. */
export type Draft = EntryFields & Pick<Stamp, 'at' | 'precision'>;

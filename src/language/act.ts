/**
 * What one message says, as data. An act holds only what was *said*; what a later layer *assumes*
 * stands beside it (see `ActReading.assumed`), so that the two can never be mistaken for each other.
 */
import type { Finding, Material, Part, Reason, StockItem, Symptom, Task } from '../maintenance/codes.ts';
import type { Build, Guide } from '../maintenance/machine.ts';

/** A local calendar date, YYYY-MM-DD. */
export type LocalDate = string;

/** `on`: the local date of the deed when the message puts it on another day than that of saying. */
interface Dated {
  on?: LocalDate;
}
/** `machine`: canonical name in lower case, or `room`; absent when nobody named one. */
interface OnMachine extends Dated {
  machine?: string;
}

export interface UsageAct extends OnMachine {
  kind: 'usage';
  hours?: number;
  grams?: number;
  metres?: number;
  material?: Material;
}
export interface MeterAct extends OnMachine {
  kind: 'meter';
  hours: number;
  /** Said in so many words: the counter itself was changed or set back. */
  newCounter?: true;
}
export interface LoadAct extends OnMachine {
  kind: 'load';
  material?: Material;
  grams?: number;
}
export interface DoneAct extends OnMachine {
  kind: 'done';
  task: Task;
  finding?: Finding;
}
export interface SwapAct extends OnMachine {
  kind: 'swap';
  part: Part;
  fitted?: string;
  reason?: Reason;
  count?: number;
}
export interface SymptomAct extends OnMachine {
  kind: 'symptom';
  symptom: Symptom;
  part?: Part;
}
export interface GoneAct extends OnMachine {
  kind: 'gone';
  symptom?: Symptom;
}
export interface StateAct extends OnMachine {
  kind: 'down' | 'up' | 'open' | 'close';
}
export interface DeferAct extends OnMachine {
  kind: 'defer';
  task?: Task;
  until?: LocalDate;
  days?: number;
  hours?: number;
}
export interface ClaimAct extends OnMachine {
  kind: 'claim';
  task?: Task;
}
export interface StockAct extends Dated {
  kind: 'stock';
  part: StockItem;
  change?: number;
  count?: number;
  fitted?: string;
}

export const ASK_TOPICS = [
  'overdue', 'due', 'next', 'history', 'age', 'stock', 'diagnose', 'usage', 'status', 'ready', 'life', 'trend',
  'handover', 'help', 'how', 'figure',
] as const; // prettier-ignore
export type AskTopic = (typeof ASK_TOPICS)[number];

export interface AskAct {
  kind: 'ask';
  topic: AskTopic;
  machine?: string;
  part?: StockItem;
  task?: Task;
  symptom?: Symptom;
  material?: Material;
  hours?: number;
  /** What a job that is asked about would use. */
  grams?: number;
  /** So much time whoever asks has for it. */
  minutes?: number;
  /** A person's name in lower case, or `me`. */
  who?: string;
  /** Both inclusive. */
  from?: LocalDate;
  to?: LocalDate;
}
export interface UndoAct {
  kind: 'undo';
  machine?: string;
  part?: Part;
  task?: Task;
}
export interface AmendAct {
  kind: 'amend';
  machine?: string;
  hours?: number;
  grams?: number;
  metres?: number;
  material?: Material;
  part?: StockItem;
  task?: Task;
  symptom?: Symptom;
  reason?: Reason;
  fitted?: string;
  on?: LocalDate;
  change?: number;
  count?: number;
  until?: LocalDate;
  days?: number;
  /** A bare number without a unit; the command layer fits it to the entry. */
  value?: number;
}
export interface UnclearAct {
  kind: 'unclear';
  /** A short sentence in plain words: what could not be told. */
  why: string;
}

export type Act =
  | UsageAct | MeterAct | LoadAct | DoneAct | SwapAct | SymptomAct | GoneAct | StateAct | DeferAct | ClaimAct
  | StockAct | AskAct | UndoAct | AmendAct | UnclearAct; // prettier-ignore
export type ActKind = Act['kind'];

/** Which rule made a thing, from which stretch of the message (UTF-16 offsets into what was sent). */
export interface TrailStep {
  rule: string;
  span: readonly [from: number, to: number];
}

/** Where a value came from that nobody said in so many words. */
export type Assumption =
  | { from: 'spelling'; said: string } // "Hazle" read as hazel
  | { from: 'neighbour' } // the machine of the clause before
  /** "Thursday, I think": the day itself is not sure. */
  | { from: 'unsure' }
  | { from: 'conversation' }; // the machine spoken of before this message

export interface ActReading {
  act: Act;
  trail: readonly TrailStep[];
  /** By field of the act; only those that were not said plainly. */
  assumed?: Readonly<Partial<Record<string, Assumption>>>;
}

/**
 * What is said about the workshop itself, beside the acts: a machine comes, changes or goes, a rule is set, a hold is
 * explained, a shift ends. `fettle read` does not print them. A machine that nobody named is absent.
 */
export type Order =
  /** Everything counts as done here: on that day, or now. `machines` empty: not said. */
  | { kind: 'baseline'; machines: readonly string[]; on?: LocalDate }
  | {
      kind: 'interval'; machines: readonly string[]; tasks: readonly Task[]; hours?: number; days?: number;
      source: 'manual' | 'workshop';
    }
  | { kind: 'add'; like?: string; name?: string; condition?: 'new' | 'used'; hours?: number; nozzle?: string }
  /** Only the features that were said. `guide`: what it runs on, where no axis was said. */
  | { kind: 'convert'; machines: readonly string[]; build: Build; guide?: Guide }
  | { kind: 'rename'; machine?: string; name?: string }
  | { kind: 'retire'; machines: readonly string[]; on?: LocalDate }
  /** `certain`: said as so, not as what may be. `text`: the words, for the record. */
  | { kind: 'falseAlarm'; machines: readonly string[]; certain: boolean; said: boolean; text: string }
  /** Back in use, with what was found or mended: means something only of a held machine. */
  | { kind: 'lift'; machines: readonly string[]; mended: boolean; text: string }
  | { kind: 'handOver'; to?: string; text?: string }
  | { kind: 'takeOver'; from?: string }
  | { kind: 'note'; machines: readonly string[]; text: string }
  /** No more reminders: a put-off without an end. */
  | { kind: 'quiet'; machines: readonly string[]; tasks: readonly Task[] }
  | { kind: 'start'; machines: readonly string[]; hours?: number }
  /** Trouble counted or blamed by person. */
  | { kind: 'blame'; machines: readonly string[]; who?: string; counts: boolean }
  /** Words of alarm that are also a joke: "on fire". */
  | { kind: 'maybeJoke'; machines: readonly string[] }
  /** "the lot", after some machines were named: those, or all. */
  | { kind: 'whichAll'; named: readonly string[] }; // prettier-ignore
export type OrderKind = Order['kind'];
export interface OrderReading {
  order: Order;
  /** Places in `acts` that say the same: not played when the order is. */
  covers: readonly number[];
  trail: readonly TrailStep[];
}

export type InjuryKind = 'burn' | 'cut' | 'eye' | 'fumes';

/** A safety symptom in any mood ("is that smoke?", "if it smells burnt"): warn, whether or not it writes. */
export interface SafetyMention {
  symptom: Symptom;
  machine?: string;
  asserted: boolean;
}

/** What was in doubt, so that one question with few answers can be asked. */
export type Doubt =
  /** `options` empty: any machine. `acts`: what would be read once the machine is known. */
  | { field: 'machine'; said?: string; options: readonly string[]; acts?: readonly Act[] }
  | { field: 'task' | 'part' | 'value' | 'date' | 'name'; said: string; options: readonly string[] };

/**
 * A message that can be an answer to an open question and says nothing else: "alder", "5", "yes",
 * "the first one", "worn". Read without regard to whether a question is open.
 */
export interface BareAnswer {
  text: string;
  number?: number;
  machine?: string;
  yes?: boolean;
  reason?: Reason;
  /** The day in the past, for deeds; `dateAhead` the same words looking forward, where they differ. */
  date?: LocalDate;
  dateAhead?: LocalDate;
  /** The unit said with the number; absent for a bare one. */
  unit?:
    | 'hours'
    | 'minutes'
    | 'seconds'
    | 'days'
    | 'weeks'
    | 'months'
    | 'years'
    | 'grams'
    | 'kilograms'
    | 'ounces'
    | 'pounds'
    | 'metres'
    | 'count'
    | 'clock';
  /** Every machine named; `machine` is there when it is one. */
  machines?: readonly string[];
  /** "the first one": 1; "the last one": -1. */
  ordinal?: number;
  choice?: 'these' | 'both' | 'all' | 'none';
  part?: StockItem;
}

export interface Reading {
  acts: readonly ActReading[];
  orders: readonly OrderReading[];
  safety: readonly SafetyMention[];
  /** Somebody was hurt: first aid stands before everything, and nothing is written. */
  injury: boolean;
  /** Which first aid, as far as the words say. */
  injuryKind?: InjuryKind;
  /** For each `unclear` act, what it was about, in the order of the acts. */
  doubts: readonly Doubt[];
  bare?: BareAnswer;
  /** Where a question would name a machine, a word that is none here: "what's due on oak". */
  askedOf?: string;
  /** Words near a known one that were offered, not taken: "nozle guard" -> nozzle. */
  nearMisses: readonly { said: string; meant: string }[];
  /** The whole trail, stage by stage, also of what came to nothing. */
  trail: readonly TrailStep[];
}

/** The names that exist in this workshop; everything else is ordinary English. */
export interface KnownNames {
  machines: readonly { name: string; aliases: readonly string[] }[];
  people: readonly string[];
}

/** When and where a message was said; the language layer reads no clock. */
export interface SaidAt {
  /** Local date of saying, YYYY-MM-DD. */
  date: LocalDate;
  /** Minutes since local midnight. */
  minute: number;
}

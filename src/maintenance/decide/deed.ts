/**
 * What can be decided: the acts of the vocabulary that write, and a few deeds that come from forms, buttons
 * and the workshop file instead of a sentence. The language layer's acts fit these shapes; this layer does
 * not know that layer.
 */
import type { Finding, Material, Part, Reason, StockItem, Symptom, Task } from '../codes.ts';
import type { Interval, LocalDate, MachineFacts } from '../entry/entry.ts';
import type { Build } from '../machine.ts';

interface Dated {
  on?: LocalDate;
  /** The date itself is unsure ("Thursday, I think"). */
  about?: true;
}
interface OnMachine extends Dated {
  machine?: string;
}

export interface UsageDeed extends OnMachine {
  kind: 'usage';
  hours?: number;
  grams?: number;
  metres?: number;
  material?: Material;
}
export interface MeterDeed extends OnMachine {
  kind: 'meter';
  hours: number;
  newCounter?: true;
}
export interface LoadDeed extends OnMachine {
  kind: 'load';
  material?: Material;
  grams?: number;
}
export interface DoneDeed extends OnMachine {
  kind: 'done';
  task: Task;
  finding?: Finding;
}
export interface SwapDeed extends OnMachine {
  kind: 'swap';
  part: Part;
  fitted?: string;
  reason?: Reason;
  count?: number;
}
export interface SymptomDeed extends OnMachine {
  kind: 'symptom';
  symptom: Symptom;
  part?: Part;
}
export interface GoneDeed extends OnMachine {
  kind: 'gone';
  symptom?: Symptom;
}
export interface StateDeed extends OnMachine {
  kind: 'down' | 'up' | 'open' | 'close';
}
export interface DeferDeed extends OnMachine {
  kind: 'defer';
  task?: Task;
  until?: LocalDate;
  days?: number;
  hours?: number;
  reason?: string;
}
export interface ClaimDeed extends OnMachine {
  kind: 'claim';
  task?: Task;
}
export interface StockDeed extends Dated {
  kind: 'stock';
  part: StockItem;
  change?: number;
  count?: number;
  fitted?: string;
  deliveryDays?: number;
  price?: number;
}
export interface UndoDeed {
  kind: 'undo';
  machine?: string;
  part?: StockItem;
  task?: Task;
}
export interface AmendDeed {
  kind: 'amend';
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
  on?: LocalDate;
  about?: true;
  change?: number;
  count?: number;
  until?: LocalDate;
  days?: number;
  value?: number;
  /** The entry that is meant, once a question about it has been answered. */
  target?: string;
}

/** Only a keeper lifts a hold with what was found; "false alarm" may be said by anyone. */
export interface ReleaseDeed {
  kind: 'release';
  machine?: string;
  found?: string;
  falseAlarm?: true;
}
export interface FindDeed extends OnMachine {
  kind: 'find';
  text: string;
  part?: Part;
}
export interface NoteDeed extends OnMachine {
  kind: 'note';
  text: string;
}
export interface HandOverDeed {
  kind: 'handOver';
  to?: string;
}
export interface TakeOverDeed {
  kind: 'takeOver';
  from?: string;
}
/** A baseline: `task`, `part`, or neither for all tasks of the machine. */
export interface StateOfDeed {
  kind: 'state';
  machine?: string;
  task?: Task;
  part?: Part;
  fitted?: string;
  on?: LocalDate;
  hours?: number;
  /** Of all its tasks these alone. */
  tasks?: readonly Task[];
}
export interface SetIntervalDeed {
  kind: 'setInterval';
  machine?: string;
  task: Task;
  interval: Interval;
  source: 'manual' | 'workshop';
}
export interface EnrolDeed {
  kind: 'enrol';
  machine: string;
  build: Build;
  aliases?: readonly string[];
  startHours?: number;
  /** Default: the local date of saying. */
  inUseSince?: LocalDate;
  new?: true;
}
export interface ChangeDeed {
  kind: 'change';
  machine?: string;
  set: MachineFacts;
}
export interface RetireDeed extends OnMachine {
  kind: 'retire';
}

export type Deed =
  | UsageDeed | MeterDeed | LoadDeed | DoneDeed | SwapDeed | SymptomDeed | GoneDeed | StateDeed | DeferDeed
  | ClaimDeed | StockDeed | UndoDeed | AmendDeed | ReleaseDeed | FindDeed | NoteDeed | HandOverDeed | TakeOverDeed
  | StateOfDeed | SetIntervalDeed | EnrolDeed | ChangeDeed | RetireDeed; // prettier-ignore
export type DeedKind = Deed['kind'];
export type DeedOf<K extends DeedKind> = Extract<Deed, { kind: K }>;

/** One task of one machine, as it stands: facts and figures, no wording. */
import type { BundleName } from '../care/bundles.ts';
import type { ConsequenceClass, Event, Rule, Trigger } from '../care/rule.ts';
import type { Day } from '../calendar.ts';
import type { Task } from '../codes.ts';
import type { Instant, LocalDate } from '../entry/entry.ts';
import type { Mark, SinceWhy } from '../record/record.ts';

export const STATES = ['no-record', 'put-off', 'overdue', 'due', 'coming-up', 'fine'] as const;
export type State = (typeof STATES)[number];
/** `runDays`: local days on which it ran; `dose`: share of a wear limit; `times`: an event. */
export type Unit = 'h' | 'days' | 'runDays' | 'dose' | 'g' | 'times';
export type IntervalSource = 'common practice' | 'manual' | 'workshop';

/** How far one trigger has come. share = used / interval. */
export interface TriggerUse {
  trigger: Trigger;
  used: number;
  interval: number;
  share: number;
  unit: Unit;
  /** What may be used beyond the interval before it is overdue. */
  grace: number;
}

/** From where a task counts. */
export interface Since {
  at: Instant;
  /** The machine's hour counter then; absent where nobody knows it. */
  hours?: number;
  why: SinceWhy;
}

/** What made a task due out of its turn. */
export interface Raised {
  event: Event;
  /** The first entry that raised it and still stands, and the last. */
  mark: Mark;
  last: Mark;
  /** Local days since. */
  daysAgo: number;
  class?: ConsequenceClass;
  bundle?: BundleName;
}

/** Local days on which a share reaches 1, with 10, 50 and 90 % chance; null beyond two years. */
export interface ForecastDays {
  p10: Day | null;
  p50: Day | null;
  p90: Day | null;
}

export interface PutOffShown {
  until?: LocalDate;
  atHours?: number;
  by: string;
  reason?: string;
}

export interface DueRow {
  machine: string;
  task: Task;
  state: State;
  /** The machine is down: hours, dose and run-days stand, days run. */
  idle: boolean;
  class: ConsequenceClass;
  share: number | null;
  trigger: Trigger | null;
  used: number | null;
  interval: number | null;
  unit: Unit | null;
  grace: number | null;
  since: Since | null;
  all: readonly TriggerUse[];
  source: IntervalSource;
  /** Entry that raised it. */
  raisedBy: string | null;
  putOff: PutOffShown | null;
  minutes: number;
  forecast: ForecastDays | null;

  // what follows is for lists, rounds and wording
  rule: Rule;
  /** Lateness in units of its own interval: 0.1 is a tenth of an interval late; below 0 not yet due. */
  lateness: number;
  raised?: Raised;
  /** What an unstated feature was treated as. */
  assumed?: string;
  /** The last look said `watch`: the interval is halved. */
  watched?: true;
  /** A look pays from now on, long before it is due. */
  lookPays?: true;
  /** One line for the room: the machines that it stands for. */
  machines?: readonly string[];
  /** The faster interval holds, for what ran since. */
  faster?: true;
}

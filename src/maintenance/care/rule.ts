/**
 * What a care rule is: data that says which machines a task belongs to, when it falls due, what raises it,
 * and how long it takes. Evaluation lives in `due/`, tools and steps in `how/`, hazards in `cautions/`; sentences
 * about it live in the replies.
 */
import type { Finding, Material, Part, Symptom, Task } from '../codes.ts';
import type { Build, Nozzle } from '../machine.ts';

/** Consequence classes after the reliability-centred maintenance standard SAE JA1011, gravest first. */
export const CLASSES = ['safety', 'print failure', 'print quality', 'housekeeping'] as const;
export type ConsequenceClass = (typeof CLASSES)[number];

export type Trigger = 'hours' | 'days' | 'runDays' | 'dose' | 'once' | 'raised';

/** `assumed`: the feature is not stated; the sentence says what it is treated as, and the reply repeats it. */
export type Applies = 'yes' | 'no' | { assumed: string };

/** Parts whose wear is counted in abrasive filament. */
export type DoseItem = 'nozzle' | 'feeder-gear' | 'guide-tube' | 'liner';

/** One repeating trigger; a rule with several falls due by whichever comes first. */
export type Term =
  | { trigger: 'hours'; interval: number; of?: readonly Material[] }
  | { trigger: 'days'; interval: number }
  /** Local days on which it ran; `fromNextDay`: a day counts once it is over. */
  | { trigger: 'runDays'; interval: number; fromNextDay?: true }
  | { trigger: 'dose'; interval: number; item: DoseItem }
  /** Grams of these materials, unweighed hours at the usual rate. */
  | { trigger: 'dose'; interval: number; gramsOf: readonly Material[] };

/** What can happen to a machine that a rule takes notice of. */
export type Event =
  | {
      symptom: Symptom;
      part?: Part;
      /** The n-th within the window, or since the task was last done. */
      times?: number;
      withinHours?: number;
      withinDays?: number;
      /** Only where this task had been done before (and within the window, if there is one). */
      afterTask?: Task;
      /** Only when the task itself was last done longer ago than this. */
      ifOlderThanDays?: number;
    }
  | { done: Task; finding?: Finding }
  | { swapped: Part }
  /** Started new, at counter 0. */
  | { started: true }
  /** Back in use after at least so many days of standing still. */
  | { backAfterDays: number }
  /** A spool of these is mounted now. */
  | { loaded: readonly Material[] }
  /** These ran since the task was last done, and another spool is mounted now. */
  | { spoolEnded: readonly Material[] };

export interface Raise {
  when: Event;
  /** Where this event makes the task graver than it is. */
  class?: ConsequenceClass;
  /** Only where this holds. */
  only?: (facts: RuleFacts) => boolean;
}

/** A single look, some time after an event; done early (before three quarters of the delay) it still comes. */
export interface Once {
  after: Event;
  hours?: number;
  days?: number;
  /** The run-in stands for it: one line instead of seven. */
  inRunIn?: true;
}

/** What an interval may depend on. */
export interface RuleFacts {
  build: Build;
  nozzle: Nozzle;
  /** Trims of the guide tube since it was fitted. */
  tubeTrims: number;
}

/**
 * How a machine stands while the task is done, in the order in which a round goes through it: it is cold in the
 * morning, and hot work comes last. `beside`: nothing is opened (a plate off its machine, a dryer).
 */
export const OPENINGS = ['beside', 'cold-unplugged', 'powered-hands-clear', 'hot'] as const;
export type Opening = (typeof OPENINGS)[number];

export interface Rule {
  task: Task;
  /** Whose own thing it is: a machine's, or the room's. */
  place: 'machine' | 'room';
  /** Shown as one line for the whole room, whichever machines it is due on. */
  oneLine?: true;
  /** The part that it fits anew or looks at: fitting that part starts the count again. */
  part?: Part;
  applies: (build: Build) => Applies;
  every: readonly Term[] | ((facts: RuleFacts) => readonly Term[]);
  /** A second, shorter interval while one of these ran since it was last done, or is mounted. */
  faster?: { while: readonly Material[]; every: readonly Term[]; only?: (build: Build) => boolean };
  once: readonly Once[];
  raisedBy: readonly Raise[];
  /** From here on a look pays, long before it is due ("oil only if dry"). */
  lookFromHours?: number;
  /** What a `bad` finding of this look calls for; without one the look stays open until something is mended. */
  remedies: readonly Task[];
  /** Fitting one of these mends what a `bad` finding without a remedy left open. */
  mendedBy: readonly Part[];
  class: ConsequenceClass | ((build: Build) => ConsequenceClass);
  /** Hands-on, our own estimate. */
  minutes: number | ((build: Build) => number);
  spare?: Part;
  opening: Opening;
  /** `manual`: the manual sets it, the figure is a cautious default of our own. */
  source: 'common practice, no single source' | 'manual' | 'local rules';
  note?: string;
}

type Needed = 'task' | 'applies' | 'class' | 'minutes' | 'opening';
/** A rule as its table writes it: what is usual is left out. */
export type RuleRow = Pick<Rule, Needed> & Partial<Omit<Rule, Needed>>;

export const rule = (row: RuleRow): Rule => ({
  place: 'machine',
  every: [],
  once: [],
  raisedBy: [],
  remedies: [],
  mendedBy: [],
  source: 'common practice, no single source',
  ...row,
});

export const termsOf = (of: Rule, facts: RuleFacts): readonly Term[] =>
  typeof of.every === 'function' ? of.every(facts) : of.every;
export const classOf = (of: Rule, build: Build): ConsequenceClass =>
  typeof of.class === 'function' ? of.class(build) : of.class;
export const minutesOf = (of: Rule, build: Build): number =>
  typeof of.minutes === 'function' ? of.minutes(build) : of.minutes;
const RANK: Readonly<Record<ConsequenceClass, number>> = {
  safety: 0,
  'print failure': 1,
  'print quality': 2,
  housekeeping: 3,
};
export const rankOf = (of: ConsequenceClass): number => RANK[of];
export const graver = (a: ConsequenceClass, b: ConsequenceClass): ConsequenceClass =>
  rankOf(a) <= rankOf(b) ? a : b;

/**
 * What comes of an act: entries to write, a refusal, or a question. Facts only; how they are said is
 * wording's business, so that chat, import and HTTP refuse alike in their own words.
 */
import type { Part, StockItem, Symptom, Task } from '../codes.ts';
import type { Draft, EntryKind, Instant, LocalDate } from '../entry/entry.ts';
import type { Fact } from '../record/standing.ts';

export const REFUSAL_CODES = [
  'too-many-hours', 'counter-back', 'before-start', 'in-future', 'unknown-machine', 'not-yours',
  'nothing-to-undo', 'safety-cannot-wait', 'safety-hold', 'invalid-number', 'not-planned-here',
] as const; // prettier-ignore
export type RefusalCode = (typeof REFUSAL_CODES)[number];

export const FLAGS = [
  'not-on-this-build', 'plastic-nut', 'assumed-fitted', 'assumed-machine', 'about-that-day',
  'possible-duplicate', 'conflict', 'hold-stays', 'claimed-by-other',
] as const; // prettier-ignore
export type Flag = (typeof FLAGS)[number];

/** What a question is about; the answer fills this field, or names the entry that was meant. */
export type AskedField =
  'machine' | 'hours' | 'until' | 'task' | 'part' | 'fitted' | 'entry' | 'value' | 'other';

/** The facts that a sentence about a decision may need. Which are there depends on what it was about. */
export interface Facts {
  /** What kind of act it was about. */
  act?: string;
  machine?: string;
  task?: Task;
  part?: StockItem;
  symptom?: Symptom;
  /** What else it is held for. */
  also?: readonly Symptom[];
  /** The moment that was spoken of, where what stands in the way came after it. */
  before?: Instant;
  fitted?: string;
  /** It is out of use already. */
  down?: true;
  /** Which field of the act is at fault. */
  field?: string;
  /** The figure that was said. */
  given?: number;
  /** The border that it breaks. */
  limit?: number;
  /** The last known figure: counter in hours, count on the shelf. */
  known?: number;
  /** When that was, or since when something stands. */
  at?: Instant;
  /** A date that was said. */
  on?: LocalDate;
  /** The earliest or latest date that is allowed. */
  date?: LocalDate;
  /** Who set the thing that stands in the way. */
  by?: string;
  /** Entries that it is about. */
  entries?: readonly string[];
  kind?: EntryKind;
  /** Which border was broken, where a code has more than one. */
  border?: 'day' | 'today' | 'clock' | 'absurd';
  /** A name that another machine has. */
  taken?: string;
  /** Only a keeper decides it. */
  keeper?: true;
  /** Retired machines are known but take no entries. */
  retired?: true;
}

/** What a reply may mention about what was written. */
export interface WrittenNotes {
  /** For a swap: what was taken as fitted because nobody said. */
  assumedFitted?: string;
  /** Part that the build has not. */
  missing?: Part;
  /** The hold that an entry sets or lifts. */
  hold?: Symptom;
  /** The machine that stays held although the rest of a message was taken back. */
  stays?: string;
  /** Who has taken the task on already, and for which day. */
  claim?: { by: string; on?: LocalDate };
  /** Symptoms that a bare "it's gone" cleared. */
  cleared?: readonly Symptom[];
  /** Somebody's hands are in the machine. */
  openedBy?: { by: string; at: Instant };
  /** Shelf count before, where a count or a draw disagrees with it. */
  shelf?: { part: StockItem; fitted?: string; before: number };
  /** The entry that this one seems to repeat. */
  duplicateOf?: string;
  /** A later reading or log that does not fit any more. */
  conflictsWith?: { entry: string; at: Instant; figure: number; logged?: number };
}

export interface Option {
  value: string;
  label?: string;
  /** The entry that it stands for: it is named in the reader's words. */
  fact?: Fact;
}

export interface Written {
  outcome: 'written';
  drafts: readonly Draft[];
  flags: readonly Flag[];
  notes: WrittenNotes;
}
export interface Refused {
  outcome: 'refused';
  code: RefusalCode;
  facts: Facts;
}
export interface Asked {
  outcome: 'asked';
  field: AskedField;
  facts: Facts;
  options: readonly Option[];
}
export type Decision = Written | Refused | Asked;

export const written = (
  drafts: readonly Draft[],
  flags: readonly Flag[] = [],
  notes: WrittenNotes = {},
): Written => ({ outcome: 'written', drafts, flags, notes });
export const refused = (code: RefusalCode, facts: Facts = {}): Refused => ({
  outcome: 'refused',
  code,
  facts,
});
export const asked = (field: AskedField, facts: Facts, options: readonly Option[] = []): Asked => ({
  outcome: 'asked',
  field,
  facts,
  options,
});

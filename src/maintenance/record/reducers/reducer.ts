/**
 * What every reducer is: one fact folded into one machine's record. Total.
 *
 * The record is the fold's own copy: a reducer sets its fields, and replaces what a field holds, never changing
 * it in place, so that earlier copies keep what they had. (A new record of forty fields for each of a million
 * entries would be most of the time of a fold: 13 against 2 microseconds an entry.)
 */
import type { LocalCalendar } from '../../calendar.ts';
import type { EntryKind, EntryOf } from '../../entry/entry.ts';
import type { MachineRecord } from '../record.ts';

export type Reducer<K extends EntryKind> = (
  machine: MachineRecord,
  entry: EntryOf<K>,
  calendar: LocalCalendar,
) => void;

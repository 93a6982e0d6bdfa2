/** What every reducer is: one fact folded into one machine's record. Pure and total. */
import type { LocalCalendar } from '../../calendar.ts';
import type { EntryKind, EntryOf } from '../../entry/entry.ts';
import type { MachineRecord } from '../record.ts';

export type Reducer<K extends EntryKind> = (
  machine: MachineRecord,
  entry: EntryOf<K>,
  calendar: LocalCalendar,
) => MachineRecord;

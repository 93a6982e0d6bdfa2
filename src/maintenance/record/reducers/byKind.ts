/** One reducer a kind of entry about a machine; a kind without one does not compile. */
import type { LocalCalendar } from '../../calendar.ts';
import type { EntryKind, EntryOf } from '../../entry/entry.ts';
import type { MachineRecord } from '../record.ts';
import { done } from './done.ts';
import { changed, enrolled, retired } from './enrolment.ts';
import { meter } from './meter.ts';
import { claimed, intervalSet, putOff } from './plans.ts';
import type { Reducer } from './reducer.ts';
import { released } from './released.ts';
import { found, loaded, noted } from './reports.ts';
import { stated } from './stated.ts';
import { closed, down, opened, up } from './states.ts';
import { swapped } from './swapped.ts';
import { cleared, seen } from './symptoms.ts';
import { usage } from './usage.ts';

/** What a correction comes to is worked out before the fold; the shelf has a fold of its own. */
export type NotOfAMachine =
  'amended' | 'takenBack' | 'stockMoved' | 'stockCounted' | 'handedOver' | 'tookOver';
export type MachineKind = Exclude<EntryKind, NotOfAMachine>;
export type MachineFact = { [K in MachineKind]: EntryOf<K> & { machine: string } }[MachineKind];

const REDUCERS: { readonly [K in MachineKind]: Reducer<K> } = {
  enrolled, changed, retired, usage, meter, loaded, done, swapped, seen, cleared, down, up, opened, closed,
  putOff, claimed, intervalSet, stated, noted, found, released,
}; // prettier-ignore

/** Sets the fields of `machine`, which the caller owns. */
export function reduce(machine: MachineRecord, fact: MachineFact, calendar: LocalCalendar): void {
  const reducer = REDUCERS[fact.kind] as Reducer<MachineKind>;
  reducer(machine, fact, calendar);
}

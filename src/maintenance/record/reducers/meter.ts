/** Readings are anchors: between two of them the total is their difference, whatever was logged. */
import type { LocalCalendar } from '../../calendar.ts';
import type { EntryOf } from '../../entry/entry.ts';
import { noteConflict } from '../conflict.ts';
import { markOf } from '../mark.ts';
import { rebase } from '../rebase.ts';
import type { MachineRecord } from '../record.ts';
import { addHours } from '../runs.ts';
import { tidy } from '../tidy.ts';
import { spreadUnlogged } from '../unlogged.ts';
import type { Reducer } from './reducer.ts';

/** Counters show whole hours: the difference of two readings may be short by less than one. */
const COUNTER_STEP_HOURS = 1;

export const meter: Reducer<'meter'> = (machine, entry, calendar) => {
  const { anchor, loggedSinceAnchor: logged } = machine;
  const stamp = { entry: entry.id, at: entry.at };
  if (!machine.counterKnown || !anchor || entry.newCounter) {
    setCounter(machine, entry.hours);
  } else if (entry.hours < anchor.hours) {
    const figures = { counter: entry.hours, expected: machine.totals.hours };
    noteConflict(machine, { ...stamp, what: 'counter-back', figures });
    return;
  } else {
    const difference = tidy(entry.hours - anchor.hours);
    if (difference > logged) bookUnlogged(machine, entry, tidy(difference - logged), calendar);
    // the counter is believed: what was marked since the last reading cannot lie beyond this one
    if (difference < logged) rebase(machine, (hours) => Math.min(hours, entry.hours));
    const figures = { logged, counter: difference };
    if (logged - difference >= COUNTER_STEP_HOURS)
      noteConflict(machine, { ...stamp, what: 'logged-more-than-counter', figures });
  }
  setAnchor(machine, entry, calendar);
};

/** The first reading, or one on a new counter: it says where the figures stand and books nothing. */
function setCounter(machine: MachineRecord, reading: number): void {
  const by = reading - machine.totals.hours;
  rebase(machine, (hours) => tidy(hours + by));
  machine.counterKnown = true;
}

function bookUnlogged(
  machine: MachineRecord,
  entry: EntryOf<'meter'>,
  unlogged: number,
  calendar: LocalCalendar,
): void {
  const day = calendar.dayOf(entry.at);
  const after = machine.anchor?.mark.day ?? day;
  const spread = spreadUnlogged(machine, unlogged, after, day);
  const oldest = Math.min(day, after + 1);
  machine.totals = { ...machine.totals, runDays: machine.totals.runDays + spread.runDays };
  machine.unloggedHours = tidy(machine.unloggedHours + unlogged);
  machine.runByDay = addHours(machine.runByDay, spread.shares);
  machine.firstRunDay = Math.min(machine.firstRunDay ?? oldest, oldest);
}

function setAnchor(machine: MachineRecord, entry: EntryOf<'meter'>, calendar: LocalCalendar): void {
  machine.totals = { ...machine.totals, hours: entry.hours };
  machine.loggedSinceAnchor = 0;
  machine.anchor = { mark: markOf(entry, machine.totals, calendar), hours: entry.hours };
}

/** Readings are anchors: between two of them the total is their difference, whatever was logged. */
import type { LocalCalendar } from '../../calendar.ts';
import type { EntryOf } from '../../entry/entry.ts';
import { withConflict } from '../conflict.ts';
import { markOf } from '../mark.ts';
import { rebase } from '../rebase.ts';
import type { MachineRecord } from '../record.ts';
import { addHours } from '../runs.ts';
import { spreadUnlogged } from '../unlogged.ts';
import type { Reducer } from './reducer.ts';

/** Counters show whole hours: the difference of two readings may be short by less than one. */
const COUNTER_STEP_HOURS = 1;

export const meter: Reducer<'meter'> = (machine, entry, calendar) => {
  if (!machine.counterKnown || !machine.anchor || entry.newCounter)
    return setCounter(machine, entry, calendar);
  const difference = entry.hours - machine.anchor.hours;
  if (difference < 0) {
    const figures = { counter: entry.hours, expected: machine.totals.hours };
    return withConflict(machine, { entry: entry.id, at: entry.at, what: 'counter-back', figures });
  }
  const unlogged = difference - machine.loggedSinceAnchor;
  if (unlogged < 0) return overLogged(machine, entry, difference, calendar);
  return anchored(bookUnlogged(machine, entry, unlogged, calendar), entry, calendar);
};

/** The first reading, or one on a new counter: it says where the figures stand and books nothing. */
function setCounter(machine: MachineRecord, entry: EntryOf<'meter'>, calendar: LocalCalendar): MachineRecord {
  const by = entry.hours - machine.totals.hours;
  const known = { ...rebase(machine, (hours) => hours + by), counterKnown: true };
  return anchored(known, entry, calendar);
}

/** The counter is believed. What was marked since the last reading cannot lie beyond this one. */
function overLogged(
  machine: MachineRecord,
  entry: EntryOf<'meter'>,
  difference: number,
  calendar: LocalCalendar,
): MachineRecord {
  const followed = anchored(
    rebase(machine, (hours) => Math.min(hours, entry.hours)),
    entry,
    calendar,
  );
  const logged = machine.loggedSinceAnchor;
  if (logged - difference < COUNTER_STEP_HOURS) return followed;
  return withConflict(followed, {
    entry: entry.id,
    at: entry.at,
    what: 'logged-more-than-counter',
    figures: { logged, counter: difference },
  });
}

function bookUnlogged(
  machine: MachineRecord,
  entry: EntryOf<'meter'>,
  unlogged: number,
  calendar: LocalCalendar,
): MachineRecord {
  const { anchor, runByDay, totals } = machine;
  if (!anchor || unlogged === 0) return machine;
  const day = calendar.dayOf(entry.at);
  const spread = spreadUnlogged(machine, unlogged, anchor.mark.day, day);
  const oldest = Math.min(day, anchor.mark.day + 1);
  return {
    ...machine,
    totals: { ...totals, runDays: totals.runDays + spread.runDays },
    unloggedHours: machine.unloggedHours + unlogged,
    runByDay: addHours(runByDay, spread.shares),
    firstRunDay: Math.min(machine.firstRunDay ?? oldest, oldest),
  };
}

function anchored(machine: MachineRecord, entry: EntryOf<'meter'>, calendar: LocalCalendar): MachineRecord {
  const totals = { ...machine.totals, hours: entry.hours };
  return {
    ...machine,
    totals,
    loggedSinceAnchor: 0,
    anchor: { mark: markOf(entry, totals, calendar), hours: entry.hours },
  };
}

/** Out of use and back, open and closed. */
import { markOf } from '../mark.ts';
import type { MachineRecord, Mark } from '../record.ts';
import type { Reducer } from './reducer.ts';

export const down: Reducer<'down'> = (machine, entry, calendar) => {
  machine.down ??= markOf(entry, machine.totals, calendar);
};

export const up: Reducer<'up'> = (machine, entry, calendar) => {
  const mark = markOf(entry, machine.totals, calendar);
  machine.back = { idleDays: idleDays(machine, mark), ...mark };
  if (machine.down) machine.downSpells = [...machine.downSpells, { from: machine.down.at, to: entry.at }];
  delete machine.down;
};

/** Local days since it last ran, or since it went out of use, whichever was later. */
function idleDays(machine: MachineRecord, back: Mark): number {
  const stood = [machine.lastUsage?.day, machine.down?.day].filter((day) => day !== undefined);
  if (machine.runByDay.hours.length > 0) stood.push(machine.runByDay.lastDay);
  return stood.length === 0 ? 0 : Math.max(0, back.day - Math.max(...stood));
}

export const opened: Reducer<'opened'> = (machine, entry, calendar) => {
  machine.opened = markOf(entry, machine.totals, calendar);
};

export const closed: Reducer<'closed'> = (machine) => {
  delete machine.opened;
};

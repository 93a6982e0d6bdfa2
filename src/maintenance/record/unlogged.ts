/**
 * Hours between two readings that nobody logged. When they ran is not known, so they are laid evenly over
 * the local days after the earlier reading up to the later one: that keeps the daily average, which is all
 * that a forecast asks of them.
 *
 * For run days, every one of those days would be too many (a monthly reading would make an idle machine run
 * all month) and the fewest possible, 24 h a day, too few. Taken is the number of days that the hours fill at
 * the pace of a usual day of this machine, and never more than the days on which nothing was logged.
 */
import type { Day } from '../calendar.ts';
import { hoursOn, type DayShare } from './runs.ts';
import { RUN_WINDOW_DAYS, type MachineRecord } from './record.ts';

/** One shift: common practice, no source. Used until the machine has days of its own. */
const USUAL_HOURS_A_DAY = 8;

export interface Spread {
  shares: readonly DayShare[];
  runDays: number;
}

/** `after`: local day of the earlier reading; `upTo`: that of the later one. */
export function spreadUnlogged(machine: MachineRecord, hours: number, after: Day, upTo: Day): Spread {
  const days = Math.max(1, upTo - after);
  const shown = Math.min(days, RUN_WINDOW_DAYS);
  const shares: DayShare[] = [];
  let ran = 0;
  for (let day = upTo; day > upTo - shown; day -= 1) {
    shares.push({ day, hours: hours / days });
    if (hoursOn(machine.runByDay, day) > 0) ran += 1;
  }
  return { shares, runDays: Math.min(days - ran, Math.ceil(hours / usualDay(machine))) };
}

/** Hours of a usual day on which this machine ran. */
function usualDay(machine: MachineRecord): number {
  const booked = machine.loggedHours + machine.unloggedHours;
  return machine.totals.runDays > 0 && booked > 0 ? booked / machine.totals.runDays : USUAL_HOURS_A_DAY;
}

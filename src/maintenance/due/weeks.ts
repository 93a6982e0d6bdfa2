/**
 * A machine's last weeks, as the forecast draws on them: the last twelve, whole weeks, which keep their
 * weekdays and, where there are any, their streaks. Days on which it could not have run are not held against it.
 */
import { dayOfDate, weekdayOf } from '../calendar.ts';
import type { Day } from '../calendar.ts';
import type { MachineRecord } from '../record/record.ts';
import { todayOf } from './context.ts';
import type { DueContext } from './context.ts';
import { DAYS_AHEAD, drawPaths } from './paths.ts';
import type { Paths } from './paths.ts';
import { atLevelOfNow } from './trend.ts';
import { alikeWeekdays } from './weekdays.ts';
import { variance } from './variance.ts';

/** Longer and a change of habit is seen too late, shorter and the band is mostly chance; see tests/calibration. */
const LOOK_BACK_WEEKS = 12;
/** Weekly totals that vary so much more than single days by themselves would make them: busy and quiet weeks. */
const STREAKY = 2.2;
const WEEKS_TO_TELL_STREAKS = 4;
/** Fewer days of usage than this carry no forecast. */
const DAYS_OF_USAGE_NEEDED = 14;

interface Closings {
  /** By days from the first day of the horizon. */
  closed: Uint8Array;
  isHoliday: (day: Day) => boolean;
}

const keptClosings = new WeakMap<DueContext, Map<Day, Closings>>();
function closingsFrom(first: Day, context: DueContext): Closings {
  const kept = keptClosings.get(context) ?? new Map<Day, Closings>();
  keptClosings.set(context, kept);
  const known = kept.get(first);
  if (known) return known;
  const holidays = new Set(context.holidays.map(dayOfDate));
  const open = new Set(context.workingDays);
  const isClosed = (day: Day): boolean => holidays.has(day) || !open.has(weekdayOf(day));
  const closed = Uint8Array.from({ length: DAYS_AHEAD }, (_, ahead) => (isClosed(first + ahead) ? 1 : 0));
  const closings = { closed, isHoliday: (day: Day) => holidays.has(day) };
  kept.set(first, closings);
  return closings;
}

/** Hours on one local day of the record; 0 where nothing is on record. */
export function hoursOn(record: MachineRecord, day: Day): number {
  const { hours, lastDay } = record.runByDay;
  return hours[hours.length - 1 - (lastDay - day)] ?? 0;
}

/**
 * The past weeks, youngest first, seven days each. A day on which it could not have run (a holiday, a down
 * spell) takes the mean of the same weekday in the other weeks.
 */
function pastWeeks(
  record: MachineRecord,
  first: Day,
  weeksBack: number,
  lost: (day: Day) => boolean,
): Float64Array {
  const hours = new Float64Array(weeksBack * 7);
  for (let weekday = 0; weekday < 7; weekday += 1) {
    const days = Array.from({ length: weeksBack }, (_, week) => first - 7 * (week + 1) + weekday);
    const ran = days.filter((day) => !lost(day)).map((day) => hoursOn(record, day));
    const mean = ran.length > 0 ? ran.reduce((sum, h) => sum + h, 0) / ran.length : 0;
    days.forEach((day, week) => (hours[week * 7 + weekday] = lost(day) ? mean : hoursOn(record, day)));
  }
  return hours;
}

function downOn(record: MachineRecord, context: DueContext): (day: Day) => boolean {
  const spells = record.downSpells.map(({ from, to }) => [
    context.calendar.dayOf(from),
    context.calendar.dayOf(to),
  ]);
  return (day) =>
    spells.some(([from, to]) => from !== undefined && to !== undefined && from < day && day < to);
}

/** Undefined with fewer than 14 days of usage on record. */
export function pathsOf(record: MachineRecord, context: DueContext): Paths | undefined {
  const today = todayOf(context);
  if (record.totals.runDays < DAYS_OF_USAGE_NEEDED || record.firstRunDay === undefined) return undefined;
  const first = hoursOn(record, today) > 0 ? today + 1 : today;
  const weeksBack = Math.min(LOOK_BACK_WEEKS, Math.max(1, Math.floor((first - record.firstRunDay) / 7)));
  const { closed, isHoliday } = closingsFrom(first, context);
  const isDown = downOn(record, context);
  const hours = pastWeeks(record, first, weeksBack, (day) => isHoliday(day) || isDown(day));
  const trend = atLevelOfNow(hours);
  return drawPaths(first, {
    ...trend,
    weeksBack,
    inWeeks: comesInWeeks(trend.hours),
    closed,
    alike: alikeWeekdays(trend.hours),
  });
}

/** Do its prints come in busy and quiet weeks? Were days independent, a week would vary by the sum of its days. */
function comesInWeeks(hours: Float64Array): boolean {
  const weeks = Array.from({ length: hours.length / 7 }, (_, week) => [
    ...hours.subarray(week * 7, week * 7 + 7),
  ]);
  if (weeks.length < WEEKS_TO_TELL_STREAKS) return false;
  const ofDays = Array.from({ length: 7 }, (_, day) => variance(weeks.map((week) => week[day] ?? 0)));
  const ofWeeks = variance(weeks.map((week) => week.reduce((sum, h) => sum + h, 0)));
  return ofWeeks > STREAKY * ofDays.reduce((sum, v) => sum + v, 0);
}

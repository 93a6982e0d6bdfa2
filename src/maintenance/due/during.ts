/** What a long job would run into: tasks that fall due before it is over. */
import type { Day } from '../calendar.ts';
import type { MachineRecord } from '../record/record.ts';
import type { DueRow, TriggerUse } from './row.ts';
import { hoursOn } from './weeks.ts';

/** A job as it was asked about: `hours` 0 where nobody said how long. */
export interface Job {
  today: Day;
  /** The local day on which it starts, and the last on which it may still run. */
  from: Day;
  to: Day;
  hours: number;
  /** What the machine usually runs between now and then. */
  hoursBefore: number;
  runDaysBefore: number;
}

const USUAL_OVER_DAYS = 28;

/** Its start and end; a job whose hour is not said may start at any hour of its day. */
export function jobOf(record: MachineRecord, today: Day, from: Day, hours: number, startsAt?: number): Job {
  const wait = Math.max(0, from - today);
  const recent = Array.from({ length: USUAL_OVER_DAYS }, (_, back) => hoursOn(record, today - 1 - back));
  const share = wait / USUAL_OVER_DAYS;
  const last = startsAt === undefined ? Math.ceil(hours / 24) : Math.floor((startsAt / 60 + hours) / 24);
  return {
    today,
    from,
    to: from + last,
    hours,
    hoursBefore: recent.reduce((sum, h) => sum + h, 0) * share,
    runDaysBefore: recent.filter((h) => h > 0).length * share,
  };
}

/** When a trigger is reached: now, on a day, after so many hours of the job; undefined when not by its end. */
export type Reached = { when: 'now' } | { when: 'day'; day: Day } | { when: 'hours'; into: number };

function useReached(use: TriggerUse, job: Job): Reached | undefined {
  const left = use.interval - use.used;
  if (left <= 0) return { when: 'now' };
  switch (use.unit) {
    case 'h': {
      const into = left - job.hoursBefore;
      return into <= job.hours ? { when: 'hours', into: Math.max(0, into) } : undefined;
    }
    case 'days':
      return dayReached(job.today + Math.ceil(left), job);
    case 'runDays':
      return dayReached(Math.max(job.today, job.from + Math.ceil(left - job.runDaysBefore) - 1), job);
    case 'dose':
    case 'g':
    case 'times':
      return undefined;
  }
}
const dayReached = (day: Day, { to }: Job): Reached | undefined =>
  day <= to ? { when: 'day', day } : undefined;

/** Of several triggers the one that comes first. */
const SOONEST: Readonly<Record<Reached['when'], number>> = { now: 0, day: 1, hours: 2 };

/** When the task falls due, if it does before the job is over. */
export function reachedDuring(row: DueRow, job: Job): Reached | undefined {
  if (row.state === 'overdue' || row.state === 'due') return { when: 'now' };
  if (row.state === 'no-record' || row.state === 'put-off') return undefined;
  return row.all
    .flatMap((use) => useReached(use, job) ?? [])
    .toSorted((a, b) => SOONEST[a.when] - SOONEST[b.when])[0];
}

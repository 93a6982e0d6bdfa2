/** The rows in the shapes of `fettle due`: rounded to 4 decimals, dates and instants as text. */
import { dateOfDay } from '../calendar.ts';
import type { LocalCalendar } from '../calendar.ts';
import type { LocalDate } from '../entry/entry.ts';
import type { DueRow, ForecastDays, PutOffShown, TriggerUse } from './row.ts';

export interface DueJson {
  machine: string;
  task: string;
  state: string;
  idle: boolean;
  class: string;
  share: number | null;
  trigger: string | null;
  used: number | null;
  interval: number | null;
  unit: string | null;
  grace: number | null;
  since: { at: string; hours?: number; why: string } | null;
  all: readonly { trigger: string; used: number; interval: number; share: number }[];
  source: string;
  raisedBy: string | null;
  putOff: PutOffShown | null;
  minutes: number;
  forecast: { p10: LocalDate | null; p50: LocalDate | null; p90: LocalDate | null } | null;
  assumed?: string;
}

export const rounded = (figure: number): number => Math.round(figure * 1e4) / 1e4;
const orNull = (figure: number | null): number | null => (figure === null ? null : rounded(figure));
const dateOrNull = (day: number | null): LocalDate | null => (day === null ? null : dateOfDay(day));

const useJson = ({ trigger, used, interval, share }: TriggerUse) => ({
  trigger,
  used: rounded(used),
  interval: rounded(interval),
  share: rounded(share),
});
const forecastJson = ({ p10, p50, p90 }: ForecastDays) => ({
  p10: dateOrNull(p10),
  p50: dateOrNull(p50),
  p90: dateOrNull(p90),
});

export const dueJson = (row: DueRow, calendar: LocalCalendar): DueJson => ({
  machine: row.machine,
  task: row.task,
  state: row.state,
  idle: row.idle,
  class: row.class,
  share: orNull(row.share),
  trigger: row.trigger,
  used: orNull(row.used),
  interval: orNull(row.interval),
  unit: row.unit,
  grace: orNull(row.grace),
  since: row.since && {
    at: calendar.format(row.since.at),
    ...(row.since.hours !== undefined && { hours: rounded(row.since.hours) }),
    why: row.since.why,
  },
  all: row.all.map(useJson),
  source: row.source,
  raisedBy: row.raisedBy,
  putOff: row.putOff,
  minutes: row.minutes,
  forecast: row.forecast && forecastJson(row.forecast),
  ...(row.assumed !== undefined && { assumed: row.assumed }),
});

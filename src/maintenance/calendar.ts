/**
 * Local days and wall times in one IANA zone. temporal-polyfill knows the rules; its answers are kept per
 * stretch of constant offset, because one call costs 10 to 35 microseconds and a fold asks a million times.
 */
import { Temporal } from 'temporal-polyfill';
import type { Instant, LocalDate } from './entry/entry.ts';

/** A local calendar day: days since 1970-01-01. Differences of days are differences of dates. */
export type Day = number;

const MS_A_MINUTE = 60_000;
const MS_A_DAY = 86_400_000;
/** Wider than the largest jump on record (a whole skipped day), so that both sides of it are looked at. */
const MS_ROUND_A_JUMP = 2 * MS_A_DAY;

interface Stretch {
  from: Instant;
  /** Exclusive. */
  to: Instant;
  offsetMs: number;
}

export interface LocalCalendar {
  readonly zone: string;
  dayOf(instant: Instant): Day;
  /** Minutes since local midnight. */
  minuteOf(instant: Instant): number;
  /**
   * The instant of a wall time. In an overlap the first of the two; in a gap the first instant after it
   * (a digest in a skipped hour is posted as soon as the hour has been skipped).
   */
  at(day: Day, minuteOfDay: number): Instant;
  /** Where a date without a clock time is put: 12:00 local. */
  noon(day: Day): Instant;
  /** RFC 3339 with the zone's offset; milliseconds only where there are some. */
  format(instant: Instant): string;
  dateOf(instant: Instant): LocalDate;
}

export const isZone = (zone: string): boolean => {
  try {
    Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(zone);
    return true;
  } catch {
    return false;
  }
};

/** 'YYYY-MM-DD' -> day. The caller has checked the shape (see `isDate`). */
export const dayOfDate = (date: LocalDate): Day => Math.round(Date.parse(`${date}T00:00:00Z`) / MS_A_DAY);
export const dateOfDay = (day: Day): LocalDate => new Date(day * MS_A_DAY).toISOString().slice(0, 10);
export const isDate = (text: string): boolean =>
  /^\d{4}-\d{2}-\d{2}$/u.test(text) &&
  !Number.isNaN(Date.parse(`${text}T00:00:00Z`)) &&
  dateOfDay(dayOfDate(text)) === text;
/** 0 is Monday. 1970-01-01 was a Thursday. */
export const weekdayOf = (day: Day): number => (((day + 3) % 7) + 7) % 7;

export function openCalendar(zone: string): LocalCalendar {
  const stretches: Stretch[] = [];
  let latest: Stretch | undefined;

  const stretchAt = (instant: Instant): Stretch => {
    if (latest && instant >= latest.from && instant < latest.to) return latest;
    latest = stretches.find((s) => instant >= s.from && instant < s.to) ?? learn(instant);
    return latest;
  };
  const learn = (instant: Instant): Stretch => {
    const here = Temporal.Instant.fromEpochMilliseconds(Math.floor(instant)).toZonedDateTimeISO(zone);
    const next = here.getTimeZoneTransition('next');
    // 'previous' excludes the moment itself, which may be the transition that this stretch starts with
    const before = here.add({ nanoseconds: 1 }).getTimeZoneTransition('previous');
    const stretch = {
      from: before?.epochMilliseconds ?? -Infinity,
      to: next?.epochMilliseconds ?? Infinity,
      offsetMs: here.offsetNanoseconds / 1e6,
    };
    stretches.push(stretch);
    return stretch;
  };
  const local = (instant: Instant): number => instant + stretchAt(instant).offsetMs;

  const at = (day: Day, minuteOfDay: number): Instant => {
    const wall = day * MS_A_DAY + minuteOfDay * MS_A_MINUTE;
    const before = stretchAt(wall - MS_ROUND_A_JUMP);
    const after = stretchAt(wall + MS_ROUND_A_JUMP);
    for (const side of [before, after]) {
      const instant = wall - side.offsetMs;
      if (stretchAt(instant).offsetMs === side.offsetMs) return instant;
    }
    return stretchAt(wall - after.offsetMs).to;
  };

  const format = (instant: Instant): string => {
    const offset = stretchAt(instant).offsetMs;
    const wall = new Date(local(instant)).toISOString().replace(/(?:\.000)?Z$/u, '');
    const minutes = Math.round(Math.abs(offset) / MS_A_MINUTE);
    const two = (n: number): string => String(n).padStart(2, '0');
    return `${wall}${offset < 0 ? '-' : '+'}${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
  };

  return {
    zone,
    dayOf: (instant) => Math.floor(local(instant) / MS_A_DAY),
    minuteOf: (instant) => Math.floor((((local(instant) % MS_A_DAY) + MS_A_DAY) % MS_A_DAY) / MS_A_MINUTE),
    at,
    noon: (day) => at(day, 12 * 60),
    format,
    dateOf: (instant) => dateOfDay(Math.floor(local(instant) / MS_A_DAY)),
  };
}

import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  dateOfDay,
  dayOfDate,
  isDate,
  isZone,
  openCalendar,
  weekdayOf,
} from '../../src/maintenance/calendar.ts';

const ZONES = [
  'Europe/Copenhagen',
  'America/New_York',
  'Australia/Lord_Howe',
  'Asia/Kolkata',
  'UTC',
] as const;

describe('a local day', () => {
  it('is told by its date', () => {
    expect(dayOfDate('1970-01-01')).toBe(0);
    expect(dateOfDay(dayOfDate('2026-03-11'))).toBe('2026-03-11');
    expect(dayOfDate('2026-03-11') - dayOfDate('2026-03-04')).toBe(7);
  });

  it('knows its weekday', () => {
    expect(weekdayOf(dayOfDate('2026-03-11'))).toBe(2); // a Wednesday
    expect(weekdayOf(dayOfDate('1969-12-29'))).toBe(0); // a Monday, before the count begins
  });

  it.each(['2026-02-29', '2026-13-01', '2026-3-1', '11.03.2026', '', '2026-03-11T00:00'])(
    'is not %j',
    (text) => expect(isDate(text)).toBe(false),
  );

  it('may be a leap day', () => expect(isDate('2028-02-29')).toBe(true));
});

describe('a zone', () => {
  it('is a name of the time zone database', () => expect(isZone('Europe/Copenhagen')).toBe(true));
  it.each(['Europe/Nowhere', '', 'Central'])('is not %j', (name) => expect(isZone(name)).toBe(false));
});

describe('the calendar of a workshop', () => {
  const calendar = openCalendar('Europe/Copenhagen');

  it('writes an instant with the offset that holds then', () => {
    expect(calendar.format(Date.parse('2026-03-11T14:40:00Z'))).toBe('2026-03-11T15:40:00+01:00');
    expect(calendar.format(Date.parse('2026-07-11T14:40:00Z'))).toBe('2026-07-11T16:40:00+02:00');
  });

  it('puts a date without a clock time at noon, also when the clocks change that day', () => {
    expect(calendar.format(calendar.noon(dayOfDate('2026-03-29')))).toBe('2026-03-29T12:00:00+02:00');
  });

  it('counts the evening before a UTC midnight to its own day', () => {
    expect(calendar.dateOf(Date.parse('2026-03-11T23:30:00Z'))).toBe('2026-03-12');
  });

  it('gives for the wall time of any instant an instant of that wall time', () => {
    fc.assert(
      fc.property(fc.constantFrom(...ZONES), fc.integer({ min: 0, max: 4_000_000_000 }), (zone, seconds) => {
        const local = openCalendar(zone);
        const minute = Math.floor(seconds / 60) * 60_000;
        const again = local.at(local.dayOf(minute), local.minuteOf(minute));
        expect([local.dayOf(again), local.minuteOf(again)]).toEqual([
          local.dayOf(minute),
          local.minuteOf(minute),
        ]);
      }),
      { numRuns: 500 },
    );
  });
});

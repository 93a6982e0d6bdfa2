/**
 * Local wall times against the IANA time zone database (reference D-O1 to D-O3, exact).
 * Source: computed with Python zoneinfo (tzdata 2025b) and, independently, Node 20.20.2 Intl (2025c, ICU 78.2);
 * both agree on every row. An empty list is a gap, two instants are an overlap.
 */
import { describe, expect, it } from 'vitest';
import { dateOfDay, dayOfDate, openCalendar } from '../../src/maintenance/calendar.ts';
import { nextDigest, owedDigest } from '../../src/schedule/digest.ts';

const WALL_TIMES: readonly (readonly [zone: string, local: string, utc: readonly string[]])[] = [
  ['America/New_York', '2026-03-07 07:30', ['2026-03-07T12:30:00.000Z']],
  ['America/New_York', '2026-03-08 07:30', ['2026-03-08T11:30:00.000Z']],
  ['America/New_York', '2026-03-08 02:30', []],
  ['America/New_York', '2026-11-01 01:30', ['2026-11-01T05:30:00.000Z', '2026-11-01T06:30:00.000Z']],
  ['America/New_York', '2026-11-01 07:30', ['2026-11-01T12:30:00.000Z']],
  ['Europe/London', '2026-03-28 07:30', ['2026-03-28T07:30:00.000Z']],
  ['Europe/London', '2026-03-29 07:30', ['2026-03-29T06:30:00.000Z']],
  ['Europe/London', '2026-10-25 01:30', ['2026-10-25T00:30:00.000Z', '2026-10-25T01:30:00.000Z']],
  ['Europe/London', '2026-10-25 07:30', ['2026-10-25T07:30:00.000Z']],
  ['Australia/Lord_Howe', '2026-04-05 01:45', ['2026-04-04T14:45:00.000Z', '2026-04-04T15:15:00.000Z']],
  ['Australia/Lord_Howe', '2026-04-05 07:30', ['2026-04-04T21:00:00.000Z']],
  ['Australia/Lord_Howe', '2026-04-04 07:30', ['2026-04-03T20:30:00.000Z']],
  ['Australia/Lord_Howe', '2026-10-04 02:15', []],
  ['Australia/Lord_Howe', '2026-10-04 07:30', ['2026-10-03T20:30:00.000Z']],
  ['Australia/Lord_Howe', '2026-10-03 07:30', ['2026-10-02T21:00:00.000Z']],
  ['Pacific/Apia', '2011-12-29 07:30', ['2011-12-29T17:30:00.000Z']],
  ['Pacific/Apia', '2011-12-30 07:30', []],
  ['Pacific/Apia', '2011-12-31 07:30', ['2011-12-30T17:30:00.000Z']],
  ['America/Sao_Paulo', '2018-11-04 00:00', []],
  ['America/Sao_Paulo', '2018-11-04 07:30', ['2018-11-04T09:30:00.000Z']],
  ['America/Sao_Paulo', '2018-02-17 23:30', ['2018-02-18T01:30:00.000Z', '2018-02-18T02:30:00.000Z']],
  ['Africa/Cairo', '2026-04-24 00:00', []],
  ['Africa/Cairo', '2026-04-24 07:30', ['2026-04-24T04:30:00.000Z']],
  ['Africa/Cairo', '2026-10-29 23:30', ['2026-10-29T20:30:00.000Z', '2026-10-29T21:30:00.000Z']],
  ['Antarctica/Casey', '2018-10-07 06:30', []],
  ['Antarctica/Casey', '2018-10-07 07:30', ['2018-10-06T20:30:00.000Z']],
  ['Antarctica/Casey', '2018-10-07 07:00', ['2018-10-06T20:00:00.000Z']],
  ['Asia/Kolkata', '2026-06-01 07:30', ['2026-06-01T02:00:00.000Z']],
];

const split = (local: string): { date: string; minute: number } => {
  const [date = '', time = ''] = local.split(' ');
  const [hours = 0, minutes = 0] = time.split(':').map(Number);
  return { date, minute: hours * 60 + minutes };
};

const EXISTING = WALL_TIMES.filter(([, , utc]) => utc.length > 0);
const SKIPPED = WALL_TIMES.filter(([, , utc]) => utc.length === 0);

describe.each(EXISTING)('D-O1: %s at %s', (zone, local, utc) => {
  const calendar = openCalendar(zone);
  const { date, minute } = split(local);

  it('is the instant that the database says, the first of two in an overlap', () => {
    expect(new Date(calendar.at(dayOfDate(date), minute)).toISOString()).toBe(utc[0]);
  });

  it('reads back as the same wall time', () => {
    for (const iso of utc) {
      expect(calendar.dateOf(Date.parse(iso))).toBe(date);
      expect(calendar.minuteOf(Date.parse(iso))).toBe(minute);
    }
  });
});

describe.each(SKIPPED)('D-O1: %s at %s', (zone, local) => {
  // common practice, no source: a time that is skipped is due at the first instant after it
  it('does not exist, and is put to the first instant after the gap', () => {
    const calendar = openCalendar(zone);
    const { date, minute } = split(local);
    const instant = calendar.at(dayOfDate(date), minute);
    const before = calendar.format(instant - 1000).slice(0, 16);
    const after = calendar.format(instant).slice(0, 16);
    const wanted = local.replace(' ', 'T');
    expect(before < wanted && wanted < after).toBe(true);
  });
});

describe('a digest at 07:30', () => {
  // D-O2, source: scan of all area/city zones from 1970 to 2037, tzdata 2025b
  it.each([
    ['Pacific/Apia', '2011-12-30'],
    ['Pacific/Fakaofo', '2011-12-30'],
    ['Pacific/Kiritimati', '1994-12-31'],
    ['Pacific/Kanton', '1994-12-31'],
    ['Pacific/Kwajalein', '1993-08-21'],
  ])('never comes in %s on %s, because that whole day was skipped', (zone, date) => {
    const calendar = openCalendar(zone);
    const instant = calendar.at(dayOfDate(date), 7 * 60 + 30);
    expect(calendar.dateOf(instant)).not.toBe(date);
    expect(calendar.dateOf(instant) > date).toBe(true);
    expect(calendar.minuteOf(instant)).toBe(0);
  });

  it('comes right after the nearest ordinary gap, which ends at 07:00 in Casey', () => {
    const calendar = openCalendar('Antarctica/Casey');
    const day = dayOfDate('2018-10-07');
    expect(calendar.at(day, 7 * 60 + 30) - calendar.at(day, 4 * 60)).toBe(30 * 60_000);
  });

  // D-O3, source: from the wall times above
  it.each([
    ['America/New_York', '2026-03-07', '2026-03-08', 23],
    ['America/New_York', '2026-10-31', '2026-11-01', 25],
    ['Australia/Lord_Howe', '2026-04-04', '2026-04-05', 24.5],
    ['Australia/Lord_Howe', '2026-10-03', '2026-10-04', 23.5],
    ['Pacific/Apia', '2011-12-29', '2011-12-31', 24],
  ])('is followed in %s, %s to %s, after %d h', (zone, from, to, hours) => {
    const calendar = openCalendar(zone);
    const at = (date: string): number => calendar.at(dayOfDate(date), 7 * 60 + 30);
    expect((at(to) - at(from)) / 3_600_000).toBe(hours);
  });
});

describe('digest days through every change of the clock above', () => {
  const ZONES = [...new Set(WALL_TIMES.map(([zone, local]) => `${zone} ${local.slice(0, 10)}`))];
  it.each(ZONES.map((each) => each.split(' ') as [string, string]))(
    '%s round %s: one a day, in order, on its own date, none doubled',
    (zone, date) => {
      const calendar = openCalendar(zone);
      const middle = dayOfDate(date);
      const days = Array.from({ length: 9 }, (_, i) => middle - 4 + i);
      const posted = days.map((day) => ({ day, at: calendar.at(day, 7 * 60 + 30) }));
      const own = posted.filter(({ day, at }) => calendar.dayOf(at) === day);
      // only a day that was skipped whole has none of its own
      expect(own.length).toBe(zone === 'Pacific/Apia' ? 8 : 9);
      for (const { at } of own) expect(calendar.minuteOf(at)).toBe(7 * 60 + 30);
      for (const [i, { at }] of own.entries()) {
        const before = own[i - 1];
        const hours = before ? (at - before.at) / 3_600_000 : 24;
        expect(hours).toBeGreaterThanOrEqual(20);
        expect(hours).toBeLessThanOrEqual(28);
      }
    },
  );
});

describe('the digest’s own clock through every change above', () => {
  const EVERY_DAY = { workingDays: [0, 1, 2, 3, 4, 5, 6], holidays: [] };
  const QUARTER = 15 * 60_000;
  const around = [...new Set(WALL_TIMES.map(([zone, local]) => `${zone} ${local.slice(0, 10)}`))].map(
    (each) => each.split(' ') as [string, string],
  );

  // 07:30 as most have it; the others lie in the gaps and overlaps of the table, or at its midnights
  it.each(['07:30', '00:00', '01:30', '01:45', '02:15', '02:30', '06:30', '23:30'])(
    'posts at %s once for each date that there was, in order',
    (digestAt) => {
      for (const [zone, date] of around) {
        const calendar = openCalendar(zone);
        const middle = dayOfDate(date);
        const [from, to] = [calendar.at(middle - 4, 0), calendar.at(middle + 5, 0)];
        const owed: string[] = [];
        for (let now = from; now < to; now += QUARTER) {
          const day = owedDigest({ ...EVERY_DAY, digestAt }, calendar, now);
          if (day !== undefined && owed.at(-1) !== day) owed.push(day);
        }
        const dates = Array.from({ length: 9 }, (_, i) => dateOfDay(middle - 4 + i));
        const there = dates.filter((each) => !(zone === 'Pacific/Apia' && each === '2011-12-30'));
        expect([zone, date, owed]).toEqual([zone, date, there]);
      }
    },
  );
  it('at 07:30 comes at the instant of the table, and the next one after it at that of the next day', () => {
    for (const [zone, local, utc] of EXISTING.filter(([, at]) => at.endsWith('07:30'))) {
      const calendar = openCalendar(zone);
      const at = Date.parse(utc[0] ?? '');
      const times = { ...EVERY_DAY, digestAt: '07:30' };
      expect(owedDigest(times, calendar, at)).toBe(local.slice(0, 10));
      expect(owedDigest(times, calendar, at - 1)).toBeUndefined();
      expect(nextDigest(times, calendar, at - 1)).toBe(at);
      expect(nextDigest(times, calendar, at)).toBeGreaterThan(at + 20 * 3_600_000);
    }
  });
});

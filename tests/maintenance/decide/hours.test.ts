import { describe, expect, it } from 'vitest';
import { enrolment, entry, NOW } from '../../support/entries.ts';
import { flagsOf, outcomeOf, saying } from '../../support/deciding.ts';

const alder = enrolment('alder', {}, 4000);
const ran = (when: string, hours: number, more = {}) =>
  entry({ kind: 'usage', machine: 'alder', hours }, { when, ...more });
const yesterday = ran('2026-03-10T14:40:00Z', 5);

describe('hours that ran', () => {
  it('are written', () => {
    const decision = saying([alder, yesterday], {
      kind: 'usage',
      machine: 'Alder',
      hours: 6.5,
      material: 'petg',
    });
    expect(decision).toMatchObject({
      outcome: 'written',
      flags: [],
      drafts: [
        { kind: 'usage', machine: 'alder', hours: 6.5, material: 'petg', at: NOW, precision: 'instant' },
      ],
    });
  });

  it.each([0, -3, Number.NaN, Number.POSITIVE_INFINITY])('cannot be %d', (hours) => {
    expect(outcomeOf(saying([alder], { kind: 'usage', machine: 'alder', hours }))).toBe(
      'refused invalid-number',
    );
  });

  it('are asked for where no figure was said at all', () => {
    expect(outcomeOf(saying([alder], { kind: 'usage', machine: 'alder' }))).toBe('asked hours');
  });

  it('are asked about when the clock does not allow them since its last usage, with the limit', () => {
    const decision = saying([alder, yesterday], { kind: 'usage', machine: 'alder', hours: 27.5 });
    // 24 h have passed: 24 x 1.1 + 1
    expect(decision).toMatchObject({
      outcome: 'asked',
      field: 'hours',
      facts: { border: 'clock', limit: expect.closeTo(27.4) },
    });
  });

  it('told in the evening are the day’s, whenever its last log was; what the day has not had is asked about', () => {
    const afternoon = ran('2026-03-11T14:10:00Z', 1);
    expect(outcomeOf(saying([alder, afternoon], { kind: 'usage', machine: 'alder', hours: 17 }))).toBe(
      'written usage',
    );
    expect(saying([alder, afternoon], { kind: 'usage', machine: 'alder', hours: 17.4 })).toMatchObject({
      outcome: 'asked',
      facts: { border: 'today' },
    });
  });

  it('of more than a day at once are asked about, and written when they are meant', () => {
    const thirty = { kind: 'usage', machine: 'alder', hours: 30 } as const;
    expect(saying([alder], thirty)).toMatchObject({ outcome: 'asked', facts: { border: 'day' } });
    expect(outcomeOf(saying([alder], thirty, { confirmed: true }))).toBe('written usage');
  });

  it('that fill a day over its length are asked about', () => {
    const day = { precision: 'day' as const };
    const before = [alder, ran('2026-03-09T11:00:00Z', 14, day)];
    const more = { kind: 'usage', machine: 'alder', on: '2026-03-09' } as const;
    expect(saying(before, { ...more, hours: 11 })).toMatchObject({
      outcome: 'asked',
      facts: { border: 'day', limit: 10, on: '2026-03-09' },
    });
    expect(outcomeOf(saying(before, { ...more, hours: 10 }))).toBe('written usage');
  });

  it('that no clock could ever hold are refused, whatever is answered', () => {
    const absurd = { kind: 'usage', machine: 'alder', hours: 500 } as const;
    expect(outcomeOf(saying([alder, yesterday], absurd, { confirmed: true }))).toBe('refused too-many-hours');
    const tooOld = { kind: 'usage', machine: 'alder', hours: 3000 } as const;
    expect(outcomeOf(saying([alder], tooOld, { confirmed: true }))).toBe('refused too-many-hours');
  });

  it('told of a day before later usage are held against the usage before that day only', () => {
    const late = { kind: 'usage', machine: 'alder', hours: 9, on: '2026-03-08' } as const;
    expect(outcomeOf(saying([alder, yesterday], late))).toBe('written usage');
  });

  it('told for two spools in one message are two', () => {
    const first = ran('2026-03-11T14:40:00Z', 3);
    expect(outcomeOf(saying([alder, first], { kind: 'usage', machine: 'alder', hours: 2 }))).toBe(
      'written usage',
    );
  });

  it('told twice within two minutes are written and pointed out', () => {
    const first = ran('2026-03-11T14:39:00Z', 3);
    const again = { kind: 'usage', machine: 'alder', hours: 3 } as const;
    expect(flagsOf(saying([alder, first], again, { recent: [first] }))).toEqual(['possible-duplicate']);
    expect(flagsOf(saying([alder], { ...again, hours: 4 }, { recent: [first] }))).toEqual([]);
  });

  it('that just fit the clock since another day are written', () => {
    const yesterday = ran('2026-03-10T22:40:00Z', 1);
    const hours = (figure: number) =>
      outcomeOf(saying([alder, yesterday], { kind: 'usage', machine: 'alder', hours: figure }));
    expect([hours(17), hours(19)]).toEqual(['written usage', 'asked hours']);
  });

  it('told twice in three minutes are not a repetition', () => {
    const first = ran('2026-03-11T14:37:00Z', 3);
    const again = { kind: 'usage', machine: 'alder', hours: 3 } as const;
    expect(outcomeOf(saying([alder, first], again, { recent: [first] }))).toBe('asked hours');
  });

  it('mention whose hands are in the machine', () => {
    const opened = entry({ kind: 'opened', machine: 'alder' }, { when: '2026-03-11T13:10:00Z', by: 'odd' });
    expect(saying([alder, opened], { kind: 'usage', machine: 'alder', hours: 1 })).toMatchObject({
      notes: { openedBy: { by: 'odd' } },
    });
  });
});

describe('a reading', () => {
  const read = (hours: number, more = {}) => ({ kind: 'meter', machine: 'alder', hours, ...more }) as const;

  it('below the last one is refused with the last known figure', () => {
    expect(saying([alder, yesterday], read(3990))).toMatchObject({
      outcome: 'refused',
      code: 'counter-back',
      facts: { known: 4005, given: 3990 },
    });
  });

  it('on a new counter is written, however low', () => {
    expect(outcomeOf(saying([alder, yesterday], read(0, { newCounter: true })))).toBe('written meter');
  });

  it('below what was logged is written and does not fit', () => {
    expect(flagsOf(saying([alder, yesterday], read(4002)))).toEqual(['conflict']);
  });

  it('of a day before a lower reading does not fit either', () => {
    const later = entry({ kind: 'meter', machine: 'alder', hours: 4100 }, { when: '2026-03-10T11:00:00Z' });
    const decision = saying([alder, later], read(4200, { on: '2026-03-08' }));
    expect(decision).toMatchObject({ flags: ['conflict'], notes: { conflictsWith: { figure: 4100 } } });
  });

  it('with a digit too many is asked about', () => {
    expect(saying([alder], read(41_000))).toMatchObject({ outcome: 'asked', field: 'hours' });
  });

  it('is the first one where the counter was never known, of any height', () => {
    expect(outcomeOf(saying([enrolment('alder')], read(41_000)))).toBe('written meter');
  });
});

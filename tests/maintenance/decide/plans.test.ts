import { describe, expect, it } from 'vitest';
import { enrolment, entry } from '../../support/entries.ts';
import { outcomeOf, saying } from '../../support/deciding.ts';

const alder = enrolment('alder', {}, 4000);
const defer = (more: object) => ({ kind: 'defer', machine: 'alder', task: 'check-wiring', ...more }) as const;
const safety = { latestPutOff: () => '2026-03-14' };

describe('a put-off', () => {
  it.each([
    [{ until: '2026-03-20' }, { until: '2026-03-20' }],
    [{ days: 7 }, { until: '2026-03-18' }],
    [{ hours: 50 }, { atHours: 4050 }],
  ])('names a later time: %j', (term, written) => {
    expect(saying([alder], defer(term))).toMatchObject({
      drafts: [{ kind: 'putOff', task: 'check-wiring', ...written }],
    });
  });

  it.each([
    { until: '2026-03-11' },
    { until: '2026-03-01' },
    { days: 0 },
    { days: -3 },
    { days: 1.5 },
    { hours: 0 },
  ])('to no later time is refused: %j', (term) =>
    expect(outcomeOf(saying([alder], defer(term)))).toBe('refused invalid-number'),
  );

  it('without a time is asked about, with the last date that is allowed', () => {
    expect(saying([alder], defer({}), safety)).toMatchObject({
      outcome: 'asked',
      field: 'until',
      facts: { date: '2026-03-14' },
    });
  });

  it('of a safety task waits no longer than its grace, and never for running hours', () => {
    expect(outcomeOf(saying([alder], defer({ until: '2026-03-14' }), safety))).toBe('written putOff');
    expect(saying([alder], defer({ until: '2026-03-15' }), safety)).toMatchObject({
      code: 'safety-cannot-wait',
      facts: { date: '2026-03-14', task: 'check-wiring' },
    });
    expect(outcomeOf(saying([alder], defer({ hours: 5 }), safety))).toBe('refused safety-cannot-wait');
  });

  it('of what the machine has not is refused', () => {
    const without = { planned: () => false };
    expect(outcomeOf(saying([alder], defer({ days: 7 }), without))).toBe('refused not-planned-here');
    expect(outcomeOf(saying([alder], { kind: 'claim', machine: 'alder', task: 'trim-tube' }, without))).toBe(
      'refused not-planned-here',
    );
  });

  it('of the room is kept by the room', () => {
    const room = { kind: 'defer', task: 'check-solvents', days: 2 } as const;
    expect(saying([alder], room)).toMatchObject({ drafts: [{ machine: 'room' }] });
  });
});

describe('a claim', () => {
  it('may be for a day to come', () => {
    expect(
      saying([alder], { kind: 'claim', machine: 'alder', task: 'dust-off', on: '2026-03-13' }),
    ).toMatchObject({
      drafts: [{ kind: 'claimed', task: 'dust-off', on: '2026-03-13', precision: 'instant' }],
    });
  });

  it('may be for the machine as a whole', () => {
    expect(outcomeOf(saying([alder], { kind: 'claim', machine: 'alder' }))).toBe('written claimed');
  });
});

describe('the shelf', () => {
  const nozzles = [
    entry({ kind: 'stockCounted', part: 'nozzle', count: 3, fitted: 'brass 0.4' }),
    entry({ kind: 'stockCounted', part: 'nozzle', count: 2, fitted: 'hardened 0.6' }),
  ];

  it('believes a count, and takes what arrives', () => {
    expect(outcomeOf(saying([], { kind: 'stock', part: 'oil', count: 1 }))).toBe('written stockCounted');
    expect(outcomeOf(saying([], { kind: 'stock', part: 'cloth', change: 5 }))).toBe('written stockMoved');
  });

  it('that gives more than it was believed to hold does not fit', () => {
    const one = entry({ kind: 'stockCounted', part: 'sock', count: 1 });
    expect(saying([one], { kind: 'stock', part: 'sock', change: -2 })).toMatchObject({
      flags: ['conflict'],
      notes: { shelf: { before: 1 } },
    });
  });

  it('asks which sort is meant where it keeps two', () => {
    expect(saying(nozzles, { kind: 'stock', part: 'nozzle', count: 7 })).toMatchObject({
      outcome: 'asked',
      field: 'fitted',
      options: [{ value: 'brass 0.4' }, { value: 'hardened 0.6' }],
    });
    const said = { kind: 'stock', part: 'nozzle', count: 7, fitted: '0.6 hardened' } as const;
    expect(outcomeOf(saying(nozzles, said))).toBe('written stockCounted');
  });

  it.each([{ count: -1 }, { count: 1.5 }, { change: 0 }, { change: 0.5 }])('refuses %j', (figure) => {
    expect(outcomeOf(saying([], { kind: 'stock', part: 'sock', ...figure }))).toBe('refused invalid-number');
  });

  it('asks how many where nobody said', () => {
    expect(outcomeOf(saying([], { kind: 'stock', part: 'sock' }))).toBe('asked value');
  });
});

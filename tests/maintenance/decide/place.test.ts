import { describe, expect, it } from 'vitest';
import type { Act } from '../../../src/language/act.ts';
import type { Deed } from '../../../src/maintenance/decide/deed.ts';
import { enrolment, entry, NOW } from '../../support/entries.ts';
import { flagsOf, outcomeOf, saying } from '../../support/deciding.ts';

const alder = enrolment('alder');
const dusted = (more: object): Deed => ({ kind: 'done', task: 'dust-off', ...more });

describe('the machine of a deed', () => {
  it('is asked for where nobody named one', () => {
    expect(outcomeOf(saying([alder], dusted({})))).toBe('asked machine');
  });

  it('must be one of the workshop', () => {
    expect(outcomeOf(saying([alder], dusted({ machine: 'willow' })))).toBe('refused unknown-machine');
  });

  it('is known however its name is written', () => {
    expect(outcomeOf(saying([alder], dusted({ machine: ' ALDER ' })))).toBe('written done');
  });

  it('is known by its other names too', () => {
    const rowan = { ...enrolment('rowan'), aliases: ['#8', 'the new one'] };
    expect(saying([alder, rowan], dusted({ machine: 'The New One' }))).toMatchObject({
      drafts: [{ machine: 'rowan' }],
    });
  });

  it('that has left takes nothing new, but a late word of the time before', () => {
    const left = entry({ kind: 'retired', machine: 'alder' }, { when: '2026-03-09T11:00:00Z' });
    expect(saying([alder, left], dusted({ machine: 'alder' }))).toMatchObject({
      code: 'unknown-machine',
      facts: { retired: true },
    });
    expect(outcomeOf(saying([alder, left], dusted({ machine: 'alder', on: '2026-03-08' })))).toBe(
      'written done',
    );
  });

  it('is the room for what only the room has', () => {
    const checked = saying([alder], { kind: 'done', task: 'check-extinguisher', machine: 'alder' });
    expect(checked).toMatchObject({ drafts: [{ machine: 'room' }] });
    expect(outcomeOf(saying([], { kind: 'done', task: 'check-solvents' }))).toBe('written done');
  });

  it('is not the room for running hours, parts and hands', () => {
    const deeds: Deed[] = [
      { kind: 'usage', machine: 'room', hours: 3 },
      { kind: 'swap', machine: 'room', part: 'nozzle' },
      { kind: 'open', machine: 'room' },
    ];
    for (const deed of deeds) expect(outcomeOf(saying([alder], deed))).toBe('asked machine');
  });
});

describe('the day of a deed', () => {
  it('is noon where only the date was said', () => {
    expect(saying([alder], dusted({ machine: 'alder', on: '2026-03-09' }))).toMatchObject({
      drafts: [{ at: Date.parse('2026-03-09T11:00:00Z'), precision: 'day' }],
    });
  });

  it('is not later than now when it is today and still morning', () => {
    const morning = Date.parse('2026-03-11T07:00:00Z');
    const decision = saying([alder], dusted({ machine: 'alder', on: '2026-03-11' }), { now: morning });
    expect(decision).toMatchObject({ drafts: [{ at: morning, precision: 'day' }] });
  });

  it('may be unsure, which is said', () => {
    const decision = saying([alder], dusted({ machine: 'alder', on: '2026-03-05', about: true }));
    expect(decision).toMatchObject({ flags: ['about-that-day'], drafts: [{ precision: 'about' }] });
  });

  it('cannot be to come', () => {
    expect(outcomeOf(saying([alder], dusted({ machine: 'alder', on: '2026-03-12' })))).toBe(
      'refused in-future',
    );
  });

  it('cannot be told from the future; a clock a little ahead is forgiven', () => {
    const deed = dusted({ machine: 'alder' });
    expect(outcomeOf(saying([alder], deed, { saidAt: NOW + 10 * 60_000 }))).toBe('refused in-future');
    expect(saying([alder], deed, { saidAt: NOW + 30_000 })).toMatchObject({ drafts: [{ at: NOW }] });
  });

  it('cannot be before the machine was in use, and the first day is told', () => {
    expect(saying([alder], dusted({ machine: 'alder', on: '2025-12-31' }))).toMatchObject({
      code: 'before-start',
      facts: { date: '2026-01-01', on: '2025-12-31' },
    });
    expect(outcomeOf(saying([alder], dusted({ machine: 'alder', on: '2026-01-01' })))).toBe('written done');
  });

  it('must be a date', () => {
    expect(outcomeOf(saying([alder], dusted({ machine: 'alder', on: '2026-02-30' })))).toBe(
      'refused invalid-number',
    );
  });
});

describe('a deed that does not fit the build', () => {
  const birch = enrolment('birch', {
    feed: 'direct',
    x: 'wheels',
    y: 'wheels',
    z: 'wheels',
    screwNut: 'plastic',
    zDrive: 'lead-screw',
  });

  it.each<[Deed, string[]]>([
    [{ kind: 'swap', machine: 'birch', part: 'guide-tube' }, ['not-on-this-build']],
    [{ kind: 'done', machine: 'birch', task: 'lubricate-rods' }, ['not-on-this-build']],
    [{ kind: 'done', machine: 'birch', task: 'grease-screw' }, ['plastic-nut']],
    [{ kind: 'done', machine: 'birch', task: 'clean-screw' }, []],
    [{ kind: 'swap', machine: 'birch', part: 'wheel' }, []],
    // not stated is not "not fitted"
    [{ kind: 'swap', machine: 'birch', part: 'liner' }, []],
    [{ kind: 'done', machine: 'birch', task: 'check-probe' }, []],
  ])('is written with what it is: %j', (deed, flags) => {
    expect(flagsOf(saying([birch], deed))).toEqual(flags);
  });

  it('is none where the maker of the nut names a grease', () => {
    const named = enrolment('birch', { screwNut: 'plastic', screwNutLubricant: 'PTFE grease' });
    expect(flagsOf(saying([named], { kind: 'done', machine: 'birch', task: 'grease-screw' }))).toEqual([]);
  });
});

describe('a swap', () => {
  const cedar = enrolment('cedar', { nozzle: { material: 'hardened', boreMm: 0.6 } });

  it('without a word of what went in takes the same as before, and says so', () => {
    expect(saying([cedar], { kind: 'swap', machine: 'cedar', part: 'nozzle' })).toMatchObject({
      flags: ['assumed-fitted'],
      notes: { assumedFitted: 'hardened 0.6' },
    });
  });

  it('assumes nothing where it was said, or where nobody knows what was in', () => {
    expect(
      flagsOf(saying([cedar], { kind: 'swap', machine: 'cedar', part: 'nozzle', fitted: 'brass 0.4' })),
    ).toEqual([]);
    expect(flagsOf(saying([cedar], { kind: 'swap', machine: 'cedar', part: 'heater' }))).toEqual([]);
  });

  it('told as a task is a swap', () => {
    expect(outcomeOf(saying([cedar], { kind: 'done', machine: 'cedar', task: 'replace-sock' }))).toBe(
      'written swapped',
    );
  });

  it('from an empty shelf is written and does not fit', () => {
    const none = entry({ kind: 'stockCounted', part: 'sock', count: 0 });
    expect(saying([cedar, none], { kind: 'swap', machine: 'cedar', part: 'sock' })).toMatchObject({
      outcome: 'written',
      flags: ['conflict'],
      notes: { shelf: { part: 'sock', before: 0 } },
    });
  });

  it.each([0, -1, 1.5])('of %d parts cannot be', (count) => {
    const deed: Deed = { kind: 'swap', machine: 'cedar', part: 'wheel', count };
    expect(outcomeOf(saying([cedar], deed))).toBe('refused invalid-number');
  });
});

describe('the acts of the language layer', () => {
  it('that write are deeds as they are', () => {
    const act: Exclude<Act, { kind: 'ask' | 'unclear' }> = {
      kind: 'load',
      machine: 'alder',
      material: 'pla',
      grams: 750,
    };
    const deed: Deed = act;
    expect(saying([alder], deed)).toMatchObject({
      drafts: [{ kind: 'loaded', material: 'pla', grams: 750 }],
    });
  });
});

import { describe, expect, it } from 'vitest';
import type { Deed } from '../../../src/maintenance/decide/deed.ts';
import { enrolment, entry } from '../../support/entries.ts';
import { outcomeOf, saying } from '../../support/deciding.ts';

const juniper = enrolment('juniper');
const smell = entry(
  { kind: 'seen', machine: 'juniper', symptom: 'burning-smell' },
  { when: '2026-03-10T21:40:00Z', by: 'priya' },
);
const held = [juniper, smell];
const keeper = { role: 'keeper' } as const;

describe('a safety symptom', () => {
  it('is written, and the hold is told', () => {
    expect(saying([juniper], { kind: 'symptom', machine: 'juniper', symptom: 'smoke' })).toMatchObject({
      drafts: [{ kind: 'seen', symptom: 'smoke' }],
      notes: { hold: 'smoke' },
    });
  });
});

describe('a held machine', () => {
  it.each<Deed>([
    { kind: 'up', machine: 'juniper' },
    { kind: 'gone', machine: 'juniper', symptom: 'burning-smell' },
    { kind: 'gone', machine: 'juniper' },
    { kind: 'release', machine: 'juniper', found: 'loose plug' },
  ])('is not freed by a member: %j', (deed) => {
    expect(saying(held, deed)).toMatchObject({
      code: 'safety-hold',
      facts: { machine: 'juniper', symptom: 'burning-smell', by: 'priya', at: smell.at },
    });
  });

  it.each<Deed>([
    { kind: 'down', machine: 'juniper' },
    { kind: 'close', machine: 'juniper' },
    { kind: 'done', machine: 'juniper', task: 'check-wiring' },
    { kind: 'gone', machine: 'juniper', symptom: 'squeak' },
  ])('takes what was done to it all the same: %j', (deed) => {
    expect(saying(held, deed).outcome).toBe('written');
  });

  it('is freed by a keeper with what was found, and by anyone as a false alarm', () => {
    const found: Deed = { kind: 'release', machine: 'juniper', found: 'loose plug, replaced' };
    expect(saying(held, found, keeper)).toMatchObject({
      drafts: [{ kind: 'released', found: 'loose plug, replaced' }],
    });
    const toaster: Deed = { kind: 'release', machine: 'juniper', falseAlarm: true };
    expect(saying(held, toaster)).toMatchObject({ drafts: [{ kind: 'released', falseAlarm: true }] });
  });

  it('is not freed by a keeper who says nothing of what was found', () => {
    expect(outcomeOf(saying(held, { kind: 'release', machine: 'juniper', found: '  ' }, keeper))).toBe(
      'asked other',
    );
  });
});

describe('a machine that is not held', () => {
  it('has nothing to lift', () => {
    expect(outcomeOf(saying([juniper], { kind: 'release', machine: 'juniper', found: 'dust' }, keeper))).toBe(
      'refused nothing-to-undo',
    );
  });

  it('comes back by saying so', () => {
    expect(outcomeOf(saying([juniper], { kind: 'up', machine: 'juniper' }))).toBe('written up');
  });
});

describe('a machine held for a smell and a shock', () => {
  const shock = entry(
    { kind: 'seen', machine: 'juniper', symptom: 'shock' },
    { when: '2026-03-10T21:50:00Z', by: 'ines' },
  );
  const both = [juniper, enrolment('maple'), smell, shock];
  const mine = { lastBatch: [shock] };

  it.each<Deed>([
    { kind: 'undo' },
    { kind: 'amend', machine: 'maple' },
    { kind: 'amend', symptom: 'burning-smell' },
    { kind: 'amend', symptom: 'squeak' },
  ])('keeps the shock, whoever told it: %j', (deed) => {
    expect(saying(both, deed, mine)).toMatchObject({
      code: 'safety-hold',
      facts: { machine: 'juniper', symptom: 'burning-smell', also: ['shock'] },
    });
  });

  it('takes a correction that leaves it as grave', () => {
    expect(outcomeOf(saying(both, { kind: 'amend', symptom: 'bare-wire' }, mine))).toBe('written amended');
  });
});

describe('a word from before the hold', () => {
  const early = { now: Date.parse('2026-03-12T09:00:00Z'), saidAt: smell.at - 60_000 };
  it.each<[Deed, object]>([
    [{ kind: 'release', machine: 'juniper', falseAlarm: true }, early],
    [
      { kind: 'release', machine: 'juniper', found: 'loose plug, replaced' },
      { ...early, ...keeper },
    ],
  ])('lifts nothing: %j', (deed, given) => {
    expect(saying(held, deed, given)).toMatchObject({
      code: 'safety-hold',
      facts: { machine: 'juniper', before: early.saidAt },
    });
  });

  it('at the very moment of the hold it is about that hold', () => {
    const at = { ...early, saidAt: smell.at };
    expect(outcomeOf(saying(held, { kind: 'release', machine: 'juniper', falseAlarm: true }, at))).toBe(
      'written released',
    );
  });
});

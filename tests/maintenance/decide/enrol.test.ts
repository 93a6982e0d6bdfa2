import { describe, expect, it } from 'vitest';
import type { Deed } from '../../../src/maintenance/decide/deed.ts';
import { enrolment } from '../../support/entries.ts';
import { outcomeOf, saying } from '../../support/deciding.ts';

const alder = enrolment('alder');

describe('a machine', () => {
  it('comes with its build and is in use from the day of saying', () => {
    expect(
      saying([], { kind: 'enrol', machine: 'Willow', build: { feed: 'direct' }, startHours: 20 }),
    ).toMatchObject({
      drafts: [{ kind: 'enrolled', machine: 'willow', inUseSince: '2026-03-11', startHours: 20 }],
    });
  });

  it('that is there already is described anew', () => {
    expect(outcomeOf(saying([alder], { kind: 'enrol', machine: 'alder', build: {} }))).toBe(
      'written changed',
    );
  });

  it.each<[Deed, string]>([
    [{ kind: 'enrol', machine: 'room', build: {} }, 'refused unknown-machine'],
    [{ kind: 'enrol', machine: 'willow', build: {}, inUseSince: '2026-04-01' }, 'refused in-future'],
    [{ kind: 'enrol', machine: 'willow', build: {}, startHours: -1 }, 'refused invalid-number'],
    [{ kind: 'retire', machine: 'willow' }, 'refused unknown-machine'],
    [{ kind: 'change', machine: 'willow', set: {} }, 'refused unknown-machine'],
  ])('does not come or go like this: %j', (deed, outcome) => {
    expect(outcomeOf(saying([alder], deed))).toBe(outcome);
  });

  it('leaves', () =>
    expect(outcomeOf(saying([alder], { kind: 'retire', machine: 'alder' }))).toBe('written retired'));
});

describe('what is stated', () => {
  it.each<[Deed, string]>([
    [{ kind: 'state', machine: 'alder' }, 'written stated'],
    [{ kind: 'state', machine: 'alder', task: 'dust-off', on: '2025-06-01' }, 'written stated'],
    [{ kind: 'state', machine: 'alder', task: 'dust-off', on: '2026-06-01' }, 'refused in-future'],
    [{ kind: 'state', machine: 'alder', task: 'dust-off', hours: -1 }, 'refused invalid-number'],
    [
      { kind: 'setInterval', machine: 'alder', task: 'dust-off', interval: { days: 14 }, source: 'workshop' },
      'written intervalSet',
    ],
    [
      { kind: 'setInterval', machine: 'alder', task: 'dust-off', interval: {}, source: 'workshop' },
      'refused invalid-number',
    ],
    [
      { kind: 'setInterval', machine: 'alder', task: 'dust-off', interval: { days: 0 }, source: 'manual' },
      'refused invalid-number',
    ],
  ])('%j is %s', (deed, outcome) => expect(outcomeOf(saying([alder], deed))).toBe(outcome));
});

describe('words to keep', () => {
  it.each<[Deed, string]>([
    [{ kind: 'note', text: 'the door sticks' }, 'written noted'],
    [{ kind: 'note', machine: 'alder', text: 'runs hot' }, 'written noted'],
    [{ kind: 'note', machine: 'willow', text: 'runs hot' }, 'refused unknown-machine'],
    [{ kind: 'note', text: '   ' }, 'asked other'],
    [{ kind: 'find', machine: 'alder', text: 'brown plug', part: 'wiring' }, 'written found'],
    [{ kind: 'handOver', to: 'odd' }, 'written handedOver'],
  ])('%j is %s', (deed, outcome) => expect(outcomeOf(saying([alder], deed))).toBe(outcome));
});

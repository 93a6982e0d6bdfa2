import { describe, expect, it } from 'vitest';
import type { Deed } from '../../../src/maintenance/decide/deed.ts';
import { enrolment, NOW } from '../../support/entries.ts';
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
    expect(outcomeOf(saying([alder], deed, { role: 'keeper' }))).toBe(outcome);
  });

  it('leaves, when a keeper says so', () => {
    const deed: Deed = { kind: 'retire', machine: 'alder' };
    expect(outcomeOf(saying([alder], deed, { role: 'keeper' }))).toBe('written retired');
    expect(outcomeOf(saying([alder], deed))).toBe('refused not-yours');
  });

  it('leaves on a day to come: the entry holds from that day on', () => {
    const leaves = saying(
      [alder],
      { kind: 'retire', machine: 'alder', on: '2026-03-13' },
      { role: 'keeper' },
    );
    expect(leaves).toMatchObject({ drafts: [{ kind: 'retired', precision: 'day' }] });
    expect(leaves.outcome === 'written' && leaves.drafts[0]?.at).toBeGreaterThan(NOW);
  });

  it('takes no name that another one has', () => {
    const elm = enrolment('elm');
    const deed: Deed = { kind: 'change', machine: 'alder', set: { aliases: ['Elm'] } };
    expect(outcomeOf(saying([alder, elm], deed, { role: 'keeper' }))).toBe('refused unknown-machine');
  });
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
  ])('%j is %s', (deed, outcome) =>
    expect(outcomeOf(saying([alder], deed, { role: 'keeper' }))).toBe(outcome),
  );

  it('for all tasks at once, or of a safety task’s interval, by a keeper alone', () => {
    const all: Deed = { kind: 'state', machine: 'alder' };
    const rare: Deed = {
      kind: 'setInterval',
      machine: 'alder',
      task: 'check-wiring',
      interval: { days: 300 },
      source: 'workshop',
    };
    expect(outcomeOf(saying([alder], all))).toBe('refused not-yours');
    expect(outcomeOf(saying([alder], rare, { latestPutOff: () => '2026-03-20' }))).toBe('refused not-yours');
    expect(outcomeOf(saying([alder], rare))).toBe('written intervalSet');
  });
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

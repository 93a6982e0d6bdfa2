import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openCalendar } from '../../../src/maintenance/calendar.ts';
import type { Decision } from '../../../src/maintenance/decide/decision.ts';
import type { Entry } from '../../../src/maintenance/entry/entry.ts';
import { entryId } from '../../../src/maintenance/entry/id.ts';
import { VERSIONS } from '../../../src/maintenance/entry/upcast.ts';
import { foldShop } from '../../../src/maintenance/record/fold.ts';
import { anyEntries, enrolment, entry, NOW, ZONE } from '../../support/entries.ts';
import { outcomeOf, saying } from '../../support/deciding.ts';

const calendar = openCalendar(ZONE);
const alder = enrolment('alder');
const maple = enrolment('maple');
const earlier = { when: '2026-03-11T14:30:00Z', message: 'm' };
const ran = entry({ kind: 'usage', machine: 'alder', hours: 5 }, earlier);
const swapped = entry({ kind: 'swapped', machine: 'alder', part: 'nozzle' }, { ...earlier, act: 1 });
const cleaned = entry({ kind: 'done', machine: 'maple', task: 'clean-plate' }, { ...earlier, act: 2 });
const shop = [alder, maple, ran, swapped, cleaned];
const lastBatch = [ran, swapped, cleaned];

const stamped = (decision: Decision, message: string): Entry[] =>
  (decision.outcome === 'written' ? decision.drafts : []).map((draft, i) => ({
    ...draft,
    id: entryId(message, 0, i),
    v: VERSIONS[draft.kind],
    saidAt: NOW,
    writtenAt: NOW,
    by: 'ines',
    platform: 'test',
    message,
    act: 0,
  }));
const setOf = (decision: Decision): unknown =>
  decision.outcome === 'written' && decision.drafts[0]?.kind === 'amended'
    ? decision.drafts[0].set
    : undefined;

describe('undo', () => {
  it('takes back all that the last message wrote', () => {
    const decision = saying(shop, { kind: 'undo' }, { lastBatch });
    expect(decision).toMatchObject({
      drafts: lastBatch.map(({ id }) => ({ kind: 'takenBack', target: id })),
    });
  });

  it.each([
    [{ machine: 'maple' }, cleaned],
    [{ part: 'nozzle' }, swapped],
    [{ task: 'clean-plate' }, cleaned],
    [{ task: 'replace-nozzle' }, swapped],
  ] as const)('takes back only what was named: %j', (named, meant) => {
    const decision = saying(shop, { kind: 'undo', ...named }, { lastBatch });
    expect(decision).toMatchObject({ drafts: [{ target: meant.id }] });
    expect(decision.outcome === 'written' && decision.drafts.length).toBe(1);
  });

  it('has nothing to do where nothing was written, or nothing of that', () => {
    expect(outcomeOf(saying(shop, { kind: 'undo' }))).toBe('refused nothing-to-undo');
    expect(outcomeOf(saying(shop, { kind: 'undo', part: 'sock' }, { lastBatch }))).toBe(
      'refused nothing-to-undo',
    );
  });

  it("leaves another's entries alone, unless a keeper says it", () => {
    const stranger = { lastBatch, by: 'odd' };
    expect(saying(shop, { kind: 'undo' }, stranger)).toMatchObject({
      code: 'not-yours',
      facts: { by: 'ines' },
    });
    expect(saying(shop, { kind: 'undo' }, { ...stranger, role: 'keeper' }).outcome).toBe('written');
  });

  it('leaves the record as if the message had never been said, and undone itself as it was', () => {
    const back = stamped(saying(shop, { kind: 'undo' }, { lastBatch }), 'undo');
    const again = stamped(saying([...shop, ...back], { kind: 'undo' }, { lastBatch: back }), 'redo');
    expect(again).toHaveLength(3);
    expect(foldShop([...shop, ...back], calendar)).toEqual(foldShop([alder, maple], calendar));
    expect(foldShop([...shop, ...back, ...again], calendar)).toEqual(foldShop(shop, calendar));
  });
});

describe('an amendment', () => {
  it('sets only what changes, on the entry that has such a field', () => {
    const decision = saying(shop, { kind: 'amend', hours: 12 }, { lastBatch });
    expect(decision).toMatchObject({ drafts: [{ kind: 'amended', target: ran.id, set: { hours: 12 } }] });
    expect(setOf(decision)).toEqual({ hours: 12 });
  });

  it('adds what was not said before', () => {
    expect(saying(shop, { kind: 'amend', reason: 'worn' }, { lastBatch })).toMatchObject({
      drafts: [{ target: swapped.id, set: { reason: 'worn' } }],
    });
  });

  it('fits a bare number to the one figure that was said', () => {
    expect(setOf(saying(shop, { kind: 'amend', value: 12 }, { lastBatch }))).toEqual({ hours: 12 });
    const taken = entry({ kind: 'stockMoved', part: 'sock', change: -1 }, earlier);
    expect(setOf(saying([taken], { kind: 'amend', value: 2 }, { lastBatch: [taken] }))).toEqual({
      change: -2,
    });
  });

  it('moves the whole message to another machine where all of it was on one', () => {
    const both = { lastBatch: [ran, swapped] };
    const decision = saying(shop, { kind: 'amend', machine: 'Maple' }, both);
    expect(decision).toMatchObject({
      drafts: [
        { target: ran.id, set: { machine: 'maple' } },
        { target: swapped.id, set: { machine: 'maple' } },
      ],
    });
  });

  it('asks which, where two entries could be meant', () => {
    const second = entry({ kind: 'usage', machine: 'maple', hours: 4 }, { ...earlier, act: 3 });
    const decision = saying([...shop, second], { kind: 'amend', hours: 6 }, { lastBatch: [ran, second] });
    expect(decision).toMatchObject({
      outcome: 'asked',
      field: 'entry',
      options: [
        { value: ran.id, label: 'alder 5' },
        { value: second.id, label: 'maple 4' },
      ],
    });
    const answered = saying(
      [...shop, second],
      { kind: 'amend', hours: 6, target: second.id },
      { lastBatch: [ran, second] },
    );
    expect(answered).toMatchObject({ drafts: [{ target: second.id }] });
  });

  it('takes a machine of the message as which entry, not as the change', () => {
    const second = entry({ kind: 'usage', machine: 'maple', hours: 4 }, { ...earlier, act: 3 });
    const decision = saying(
      [...shop, second],
      { kind: 'amend', machine: 'maple', hours: 6 },
      { lastBatch: [ran, second] },
    );
    expect(setOf(decision)).toEqual({ hours: 6 });
    expect(decision).toMatchObject({ drafts: [{ target: second.id }] });
  });

  it('of an amendment goes to what that was about', () => {
    const first = entry(
      { kind: 'amended', target: ran.id, set: { hours: 12 } },
      { when: '2026-03-11T14:35:00Z' },
    );
    const decision = saying(
      [...shop, first],
      { kind: 'amend', value: 13 },
      { lastBatch: [first], corrected: [ran, first] },
    );
    expect(decision).toMatchObject({ drafts: [{ target: ran.id, set: { hours: 13 } }] });
  });

  it('moves the day', () => {
    expect(setOf(saying(shop, { kind: 'amend', on: '2026-03-10' }, { lastBatch: [cleaned] }))).toEqual({
      at: Date.parse('2026-03-10T11:00:00Z'),
      precision: 'day',
    });
  });

  it.each([
    [{ machine: 'willow' }, 'refused unknown-machine'],
    [{ hours: -2 }, 'refused invalid-number'],
    [{ on: '2026-03-12' }, 'refused in-future'],
    [{ on: '2025-12-30' }, 'refused before-start'],
    [{ hours: 2000 }, 'refused too-many-hours'],
    [{ hours: 30 }, 'asked hours'],
    [{ symptom: 'smoke' }, 'refused nothing-to-undo'],
    [{}, 'refused nothing-to-undo'],
  ] as const)('must be as possible as the entry itself: %j is %s', (change, outcome) => {
    expect(outcomeOf(saying(shop, { kind: 'amend', ...change }, { lastBatch: [ran] }))).toBe(outcome);
  });

  it("of another's entry is not yours to make", () => {
    expect(outcomeOf(saying(shop, { kind: 'amend', hours: 3 }, { lastBatch, by: 'odd' }))).toBe(
      'refused not-yours',
    );
  });
});

describe('whatever the workshop and the last message held', () => {
  it('undo and amend decide without failing', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const batch = entries.slice(0, 5);
        for (const deed of [
          { kind: 'undo' },
          { kind: 'amend', value: 3 },
          { kind: 'amend', machine: 'birch' },
        ] as const)
          expect(saying(entries, deed, { lastBatch: batch, role: 'keeper' }).outcome).toMatch(
            /written|refused|asked/u,
          );
      }),
    );
  });
});

import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../src/maintenance/entry/entry.ts';
import { standing, takenBack } from '../../../src/maintenance/record/standing.ts';
import { entry } from '../../support/entries.ts';

const ran = entry({ kind: 'usage', machine: 'alder', hours: 5 }, { id: 'ran' });
const back = (target: string, id: string): Entry => entry({ kind: 'takenBack', target }, { id });
const hoursOf = (...entries: Entry[]): unknown[] =>
  standing(entries).map((fact) => (fact.kind === 'usage' ? fact.hours : fact.kind));

describe('an entry', () => {
  it('is gone once it is taken back, there again once that is, and gone once more', () => {
    expect(hoursOf(ran)).toEqual([5]);
    expect(hoursOf(ran, back('ran', 'b1'))).toEqual([]);
    expect(hoursOf(ran, back('ran', 'b1'), back('b1', 'b2'))).toEqual([5]);
    expect(hoursOf(ran, back('ran', 'b1'), back('b1', 'b2'), back('b2', 'b3'))).toEqual([]);
  });

  it('that was taken back twice needs both taken back', () => {
    const twice = [ran, back('ran', 'b1'), back('ran', 'b2')];
    expect(hoursOf(...twice, back('b1', 'b3'))).toEqual([]);
    expect(hoursOf(...twice, back('b1', 'b3'), back('b2', 'b4'))).toEqual([5]);
  });

  it('is what its latest amendment says, by when that was said', () => {
    const late = entry(
      { kind: 'amended', target: 'ran', set: { hours: 7 } },
      { when: '2026-03-11T12:00:00Z' },
    );
    const early = entry(
      { kind: 'amended', target: 'ran', set: { hours: 6 } },
      { when: '2026-03-11T11:00:00Z' },
    );
    expect(hoursOf(ran, late, early)).toEqual([7]);
    expect(hoursOf(ran, early, late)).toEqual([7]);
  });

  it('is what it was before an amendment that was taken back', () => {
    const amended = entry({ kind: 'amended', target: 'ran', set: { hours: 7 } }, { id: 'a' });
    expect(hoursOf(ran, amended, back('a', 'b'))).toEqual([5]);
  });

  it('never takes on a field of another kind', () => {
    const amended = entry({ kind: 'amended', target: 'ran', set: { task: 'dust-off', part: 'oil' } });
    expect(standing([ran, amended])).toEqual([ran]);
  });

  it('of a part is not amended to a consumable', () => {
    const swapped = entry({ kind: 'swapped', machine: 'alder', part: 'sock' }, { id: 's' });
    expect(standing([swapped, entry({ kind: 'amended', target: 's', set: { part: 'oil' } })])).toEqual([
      swapped,
    ]);
  });
});

describe('corrections that make no sense', () => {
  it('of nothing change nothing', () => {
    const amended = entry({ kind: 'amended', target: 'nowhere', set: { hours: 1 } });
    expect(hoursOf(ran, back('nowhere', 'b'), amended)).toEqual([5]);
  });

  it('in a ring take nothing back', () => {
    expect([...takenBack([ran, back('b2', 'b1'), back('b1', 'b2'), back('b3', 'b3')])]).toEqual([]);
  });

  it('in a ring that is broken from outside are settled', () => {
    const ring = [back('b2', 'b1'), back('b1', 'b2'), back('b1', 'b3')];
    expect([...takenBack(ring)]).toEqual(['b1']);
  });

  it('in a chain of thousands are followed to the end', () => {
    const chain = Array.from({ length: 20_001 }, (_, n) => back(n === 0 ? 'ran' : `c${n - 1}`, `c${n}`));
    expect(hoursOf(ran, ...chain)).toEqual([]);
    expect(hoursOf(ran, ...chain.slice(1))).toEqual([5]);
  });
});

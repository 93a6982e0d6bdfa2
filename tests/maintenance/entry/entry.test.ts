import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { entryId } from '../../../src/maintenance/entry/id.ts';
import { parse, serialise } from '../../../src/maintenance/entry/line.ts';
import { PRESENT, upcast, VERSIONS, type Shapes } from '../../../src/maintenance/entry/upcast.ts';
import { anyEntries, entry, KINDS } from '../../support/entries.ts';

const usage = entry({ kind: 'usage', machine: 'alder', hours: 3.5, material: 'petg' });
const raw = (change: object): unknown => ({ ...usage, ...change });
const said = (value: unknown): string => {
  try {
    upcast(value);
    return 'nothing';
  } catch (error) {
    return error instanceof Error ? error.message : '';
  }
};

describe('a line of the journal', () => {
  it('reads back as the entry that was written, of whatever kind', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        for (const one of entries) expect(parse(serialise(one))).toEqual(one);
      }),
    );
  });

  it('has a version for every kind', () =>
    expect(Object.keys(VERSIONS).toSorted()).toEqual(KINDS.toSorted()));

  it.each(['', '{', 'null', '[]', '"usage"', '3'])('is not %j', (line) => {
    expect(() => parse(line)).toThrow();
  });
});

describe('an entry that this build cannot understand stops the start with a sentence', () => {
  it('that names a kind it does not know', () => {
    expect(said(raw({ kind: 'teleported' }))).toContain('"teleported"');
    expect(said(raw({ kind: 'toString' }))).toContain('"toString"');
  });

  it('that names a newer version', () => {
    expect(said(raw({ v: 7 }))).toMatch(/version 7.*update/u);
  });

  it.each([
    ['a field that nobody knows', { spins: 3 }, 'spins'],
    ['a negative figure', { hours: -1 }, 'hours'],
    ['a figure as text', { hours: '3' }, 'hours'],
    ['a material of no list', { material: 'cheese' }, 'material'],
    ['a missing machine', { machine: undefined }, 'machine'],
    ['no version', { v: undefined }, 'version'],
    ['an instant beyond the calendar', { at: 1e18 }, 'at'],
  ])('that points at %s', (_what, change, field) => expect(said(raw(change))).toContain(field));

  it('but not one that is as it should be', () => expect(said(raw({}))).toBe('nothing'));
});

describe('an old version', () => {
  /** As if hours had once been minutes, and before that seconds under another name. */
  const shapes: Shapes = {
    versions: { ...PRESENT.versions, usage: 3 },
    upcasts: {
      usage: {
        1: ({ seconds, ...rest }) => ({ ...rest, minutes: Number(seconds) / 60 }),
        2: ({ minutes, ...rest }) => ({ ...rest, hours: Number(minutes) / 60 }),
      },
    },
  };
  const { hours: _hours, ...without } = usage;

  it('is lifted step by step to the present one', () => {
    expect(upcast({ ...without, v: 1, seconds: 12_600 }, shapes)).toEqual({ ...usage, v: 3 });
    expect(upcast({ ...without, v: 2, minutes: 210 }, shapes)).toEqual({ ...usage, v: 3 });
  });

  it('leaves the line that was read untouched', () => {
    const line = Object.freeze({ ...without, v: 1, seconds: 60 });
    upcast(line, shapes);
    expect(line).toEqual({ ...without, v: 1, seconds: 60 });
  });

  it('that nobody can lift any more stops the start too', () => {
    const gap: Shapes = { ...shapes, upcasts: {} };
    expect(() => upcast({ ...usage, v: 1 }, gap)).toThrow(/version 1/u);
  });
});

describe('an entry id', () => {
  it('is the same for the same place in the same message', () => {
    expect(entryId('slack:C1:17.3', 0, 1)).toBe(entryId('slack:C1:17.3', 0, 1));
  });

  it('differs by message, act and index, also where their text runs together', () => {
    const ids = [
      entryId('m', 1, 11),
      entryId('m', 11, 1),
      entryId('m1', 1, 1),
      entryId('m', 1, 1),
      entryId('n', 1, 1),
    ];
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('is short and plain', () => expect(entryId('any', 0, 0)).toMatch(/^e[a-z2-7]{15}$/u));
});

/** Entries for the store's tests: whole and valid, each a minute after the one before. */
import type { Entry, EntryFields, Stamp } from '../../src/maintenance/entry/entry.ts';

/** 2026-03-11T08:00Z. */
export const MORNING = Date.UTC(2026, 2, 11, 8);
const MINUTE = 60_000;

/** The `n`th entry says `fields`; by default each is a message of its own. */
export function entry(n: number, fields: EntryFields, stamp: Partial<Stamp> = {}): Entry {
  const at = MORNING + n * MINUTE;
  return {
    id: `e${n}`,
    v: 1,
    at,
    precision: 'instant',
    saidAt: at,
    writtenAt: at,
    by: 'p-ines',
    platform: 'terminal',
    message: `m${n}`,
    act: 0,
    ...stamp,
    ...fields,
  };
}

export const usage = (n: number, machine: string, stamp: Partial<Stamp> = {}): Entry =>
  entry(n, { kind: 'usage', machine, hours: 1.5 }, stamp);

export const idsOf = (entries: readonly Entry[]): readonly string[] => entries.map(({ id }) => id);

export async function everything<T>(
  batches: AsyncIterable<{ entries: readonly T[] }>,
): Promise<readonly T[]> {
  const all: T[] = [];
  for await (const { entries } of batches) all.push(...entries);
  return all;
}

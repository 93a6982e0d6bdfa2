/** Paging: batches of entries with room for others in between. */
import { setImmediate as restOfTheLoop } from 'node:timers/promises';
import type { Entry } from '../maintenance/entry/entry.ts';
import { decodeEntry } from './codec.ts';
import type { Batch, Position } from './journal.ts';

/** Large enough that paging costs little, small enough that a batch takes a few milliseconds. */
export const BATCH_SIZE = 2000;

export interface Kept {
  position: Position;
  json: string;
}

export const batchOf = (rows: readonly Kept[]): Batch => ({
  entries: entriesOf(rows),
  upTo: rows.reduce((largest, row) => Math.max(largest, row.position), 0),
});

export const entriesOf = (rows: readonly { json: string }[]): readonly Entry[] =>
  rows.map(({ json }) => decodeEntry(json));

/** `next` gives the rows after the last one that it was given, or after nothing; none: the end. */
export async function* batches<R extends Kept>(
  next: (last: R | undefined) => readonly R[],
): AsyncGenerator<Batch> {
  let rows = next(undefined);
  while (rows.length > 0) {
    yield batchOf(rows);
    await restOfTheLoop();
    rows = rows.length < BATCH_SIZE ? [] : next(rows.at(-1));
  }
}

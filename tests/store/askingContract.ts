/** What every journal answers to questions. */
import { expect, it } from 'vitest';
import type { Entry } from '../../src/maintenance/entry/entry.ts';
import type { Journal, JournalReader } from '../../src/store/journal.ts';
import { entry, idsOf, MORNING, usage } from './entries.ts';

export interface Desk {
  write(work: (journal: Journal) => Promise<unknown>): Promise<unknown>;
  append(...entries: Entry[]): Promise<unknown>;
  ask<T>(question: (journal: JournalReader) => Promise<T>): Promise<T>;
}

export function finding(desk: Desk): void {
  it('finds by message in the order of its acts, and what an answer added', async () => {
    await desk.append(
      usage(1, 'birch', { message: 'k', act: 1 }),
      usage(2, 'birch', { message: 'k', act: 0 }),
      usage(3, 'birch', { message: 'k2', because: 'k' }),
      usage(4, 'birch', { message: 'other' }),
    );
    expect(idsOf(await desk.ask(async (journal) => journal.byMessage('k')))).toEqual(['e2', 'e1']);
    expect(idsOf(await desk.ask(async (journal) => journal.answersTo('k')))).toEqual(['e3']);
    expect(await desk.ask(async (journal) => journal.byMessage('K'))).toEqual([]);
  });

  it('finds by ids those that exist, each once', async () => {
    await desk.append(usage(1, 'birch'), usage(2, 'birch'), usage(3, 'birch'));
    const found = await desk.ask(async (journal) => journal.byIds(['e3', 'nowhere', 'e1', 'e3']));
    expect(idsOf(found)).toEqual(['e1', 'e3']);
    expect(await desk.ask(async (journal) => journal.byIds([]))).toEqual([]);
  });

  it('finds the family of an entry from any of its members', async () => {
    await desk.append(
      usage(1, 'birch'),
      usage(2, 'birch'),
      entry(3, { kind: 'amended', target: 'e1', set: { hours: 3 } }),
      entry(4, { kind: 'takenBack', target: 'e3' }),
      entry(5, { kind: 'takenBack', target: 'e4' }),
    );
    for (const id of ['e1', 'e3', 'e5'])
      expect(idsOf(await desk.ask(async (journal) => journal.familyOf([id])))).toEqual([
        'e1',
        'e3',
        'e4',
        'e5',
      ]);
    expect(idsOf(await desk.ask(async (journal) => journal.familyOf(['e2'])))).toEqual(['e2']);
  });
}

export function touching(desk: Desk): void {
  const moved = [
    usage(1, 'birch'),
    usage(2, 'alder'),
    entry(3, { kind: 'amended', target: 'e1', set: { machine: 'alder' } }),
    entry(4, { kind: 'takenBack', target: 'e3' }),
    usage(5, 'hazel'),
    entry(6, { kind: 'takenBack', target: 'e5' }),
    entry(7, { kind: 'stockCounted', part: 'nozzle', count: 4 }),
    entry(8, { kind: 'amended', target: 'e7', set: { count: 5 } }),
    entry(9, { kind: 'takenBack', target: 'e4' }),
  ];

  it('takes in entries that were moved to it, with all that hangs on them', async () => {
    await desk.append(...moved);
    const given = await desk.ask(async (journal) => journal.ofMachine('alder'));
    expect(idsOf(given)).toEqual(['e1', 'e2', 'e3', 'e4', 'e9']);
  });

  it('takes in what moved an entry away from it', async () => {
    await desk.append(...moved);
    expect(idsOf(await desk.ask(async (journal) => journal.ofMachine('birch')))).toEqual([
      'e1',
      'e3',
      'e4',
      'e9',
    ]);
  });

  it('leaves out other machines, and names are taken as they are', async () => {
    await desk.append(...moved);
    expect(idsOf(await desk.ask(async (journal) => journal.ofMachine('hazel')))).toEqual(['e5', 'e6']);
    expect(await desk.ask(async (journal) => journal.ofMachine('Hazel'))).toEqual([]);
    expect(await desk.ask(async (journal) => journal.ofMachine('e1'))).toEqual([]);
  });

  it('does not depend on the order of arrival', async () => {
    await desk.append(...moved.toReversed());
    const given = await desk.ask(async (journal) => journal.ofMachine('alder'));
    expect(idsOf(given).toSorted()).toEqual(['e1', 'e2', 'e3', 'e4', 'e9']);
  });

  it('gives what names no machine for itself', async () => {
    await desk.append(...moved);
    expect(idsOf(await desk.ask(async (journal) => journal.ofNoMachine()))).toEqual(['e7', 'e8']);
  });
}

export function history(desk: Desk): void {
  const past = [
    usage(1, 'birch'),
    entry(2, { kind: 'done', machine: 'birch', task: 'lubricate-rods' }),
    entry(3, { kind: 'swapped', machine: 'alder', part: 'nozzle' }, { by: 'p-tom' }),
    entry(4, { kind: 'amended', target: 'e2', set: { task: 'wipe-rods' } }),
    usage(5, 'birch', { at: MORNING - 60_000 }),
    usage(6, 'birch', { writtenAt: MORNING + 99 * 60_000 }),
  ];
  const minute = (n: number): number => MORNING + n * 60_000;

  it('is told latest first by when it happened', async () => {
    await desk.append(...past);
    const given = await desk.ask(async (journal) => journal.recent({ limit: 3 }));
    expect(idsOf(given)).toEqual(['e6', 'e4', 'e3']);
    expect(idsOf(await desk.ask(async (journal) => journal.recent({ limit: 99 })))).toHaveLength(6);
    expect(await desk.ask(async (journal) => journal.recent({ limit: 0 }))).toEqual([]);
  });

  it.each([
    [{ machine: 'birch' }, ['e6', 'e2', 'e1', 'e5']],
    [{ task: 'lubricate-rods' }, ['e2']],
    [{ task: 'wipe-rods' }, ['e4']],
    [{ part: 'nozzle' }, ['e3']],
    [{ part: 'nozzle', machine: 'birch' }, []],
    [{ by: 'p-tom' }, ['e3']],
    [{ from: minute(2), to: minute(4) }, ['e3', 'e2']],
    [{ asOf: minute(6), machine: 'birch' }, ['e2', 'e1', 'e5']],
    [{ asOf: minute(2) }, ['e2', 'e1']],
  ] as const)('answers %j', async (filter, ids) => {
    await desk.append(...past);
    expect(idsOf(await desk.ask(async (journal) => journal.recent({ ...filter, limit: 10 })))).toEqual(ids);
  });

  it('of one person is told latest arrival first, for undo, and knows only what was written by then', async () => {
    await desk.append(...past);
    const ines = async (filter: { limit: number; writtenAsOf?: number }): Promise<readonly string[]> =>
      idsOf(await desk.ask(async (journal) => journal.ofPerson('p-ines', filter)));
    expect(await ines({ limit: 2 })).toEqual(['e6', 'e5']);
    expect(await ines({ limit: 2, writtenAsOf: minute(5) })).toEqual(['e5', 'e4']);
    expect(idsOf(await desk.ask(async (journal) => journal.ofPerson('p-nobody', { limit: 5 })))).toEqual([]);
  });
}

/** What every journal does, whatever stands behind it. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Entry } from '../../src/maintenance/entry/entry.ts';
import type { Journal, JournalReader } from '../../src/store/journal.ts';
import type { Store } from '../../src/store/store.ts';
import type { OpenStore } from './contract.ts';
import { entry, everything, idsOf, MORNING, usage } from './entries.ts';

interface Desk {
  write(work: (journal: Journal) => Promise<unknown>): Promise<unknown>;
  append(...entries: Entry[]): Promise<unknown>;
  ask<T>(question: (journal: JournalReader) => Promise<T>): Promise<T>;
}

export function journalContract(name: string, open: OpenStore): void {
  describe(`${name}: the journal`, () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
    });
    afterEach(async () => store.close());
    const desk: Desk = {
      write: async (work) => store.transact(async ({ journal }) => work(journal)),
      append: async (...entries) => store.transact(async ({ journal }) => journal.append(entries)),
      ask: async (question) => store.read(async ({ journal }) => question(journal)),
    };

    describe('keeping', () => keeping(desk));
    describe('finding', () => finding(desk));
    describe('what touches a machine', () => touching(desk));
    describe('history', () => history(desk));
    describe('import', () => importing(desk));
  });
}

function keeping(desk: Desk): void {
  it('starts empty', async () => {
    expect(await desk.ask(async (journal) => journal.position())).toBe(0);
    expect(await desk.ask(async (journal) => everything(journal.since(0)))).toEqual([]);
  });

  it('gives back what was written, letter for letter', async () => {
    const texts = [
      'Ünïcode – naïve façade',
      '打印机 🖨️👩🏽‍🔧',
      '\u202Ertl',
      'e\u0301 is not é',
      'line\nbreak "quoted" \\',
      '\uD800',
    ];
    const notes = texts.map((text, n) => entry(n, { kind: 'noted', machine: 'bírch 二', text }));
    await desk.append(...notes);
    expect(await desk.ask(async (journal) => journal.ofMachine('bírch 二'))).toEqual(notes);
  });

  it('refuses an id that is there already, and writes nothing of that batch', async () => {
    await desk.append(usage(1, 'birch'));
    await expect(desk.append(usage(2, 'birch'), usage(1, 'alder'))).rejects.toMatchObject({
      code: 'duplicate',
    });
    expect(await desk.ask(async (journal) => journal.position())).toBe(1);
  });

  it('refuses what it could not read again', async () => {
    await expect(desk.append(usage(1, 'birch', { at: 0.5 }))).rejects.toMatchObject({ code: 'unreadable' });
    await expect(desk.append(usage(1, 'birch', { v: 99 }))).rejects.toMatchObject({ code: 'unreadable' });
    expect(await desk.ask(async (journal) => journal.position())).toBe(0);
  });

  it('gives 10,000 entries in order of arrival, in batches, from any position', async () => {
    const many = Array.from({ length: 10_000 }, (_, n) => usage(n + 1, `m${n % 40}`));
    await desk.append(...many);
    await desk.ask(async (journal) => {
      let upTo = 0;
      const ids: string[] = [];
      for await (const batch of journal.since(0)) {
        ids.push(...idsOf(batch.entries));
        expect(batch.upTo).toBe(ids.length);
        expect(batch.upTo).toBeGreaterThan(upTo);
        upTo = batch.upTo;
      }
      expect(ids).toEqual(idsOf(many));
      expect(idsOf(await everything(journal.since(9_997)))).toEqual(['e9998', 'e9999', 'e10000']);
      expect(await everything(journal.since(10_000))).toEqual([]);
      expect(await journal.ofMachine('m7')).toHaveLength(250);
    });
  });

  it('gives the whole in fold order: when it happened, when it was said, which act, which id', async () => {
    const same = { at: MORNING, saidAt: MORNING };
    const wanted = [
      usage(1, 'birch', { ...same, at: MORNING - 1, saidAt: MORNING + 9 }),
      usage(2, 'birch', { ...same, id: 'a', act: 0 }),
      usage(3, 'birch', { ...same, id: 'b', act: 0 }),
      usage(4, 'birch', { ...same, id: 'é', act: 0 }),
      usage(5, 'birch', { ...same, id: '0', act: 1 }),
      usage(6, 'birch', { ...same, saidAt: MORNING + 1 }),
    ];
    await desk.append(...wanted.toReversed());
    const given = await desk.ask(async (journal) => everything(journal.all('fold')));
    expect(idsOf(given)).toEqual(idsOf(wanted));
  });

  it('loses nothing between the batches of fold order, even when times are all the same', async () => {
    const at = { at: MORNING, saidAt: MORNING };
    const many = Array.from({ length: 4_500 }, (_, n) =>
      usage(n, 'birch', { ...at, id: `e${(n * 7) % 4_500}` }),
    );
    await desk.append(...many);
    const given = idsOf(await desk.ask(async (journal) => everything(journal.all('fold'))));
    expect(given).toEqual(idsOf(many).toSorted());
  });
}

function finding(desk: Desk): void {
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

function touching(desk: Desk): void {
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

function history(desk: Desk): void {
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
    const ines = async (filter: { limit: number; asOf?: number }): Promise<readonly string[]> =>
      idsOf(await desk.ask(async (journal) => journal.ofPerson('p-ines', filter)));
    expect(await ines({ limit: 2 })).toEqual(['e6', 'e5']);
    expect(await ines({ limit: 2, asOf: minute(5) })).toEqual(['e5', 'e4']);
    expect(idsOf(await desk.ask(async (journal) => journal.ofPerson('p-nobody', { limit: 5 })))).toEqual([]);
  });
}

function importing(desk: Desk): void {
  it('writes what is new, skips the same, and tells what differs', async () => {
    const given = usage(1, 'birch');
    await desk.write(async (journal) => {
      expect(await journal.insertRaw(given)).toBe('written');
      const { id, ...rest } = given;
      expect(await journal.insertRaw({ ...rest, id })).toBe('same');
      expect(await journal.insertRaw(usage(1, 'alder'))).toBe('different');
    });
    expect(await desk.ask(async (journal) => everything(journal.since(0)))).toEqual([given]);
  });
}

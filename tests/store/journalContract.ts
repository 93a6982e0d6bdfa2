/** What every journal does, whatever stands behind it. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '../../src/store/store.ts';
import { type Desk, finding, history, touching } from './askingContract.ts';
import type { OpenStore } from './contract.ts';
import { entry, everything, idsOf, MORNING, usage } from './entries.ts';

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

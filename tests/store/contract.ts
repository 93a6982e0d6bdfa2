/** What every store does, whatever stands behind it. */
import { setTimeout as pause } from 'node:timers/promises';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '../../src/store/store.ts';
import { everything, idsOf, MORNING, usage } from './entries.ts';
import { keeping, messages } from './postContract.ts';

export type OpenStore = () => Promise<Store>;

export function storeContract(name: string, open: OpenStore): void {
  describe(name, () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
    });
    afterEach(async () => store.close());
    const get = (): Store => store;

    describe('transactions', () => transactions(get));
    describe('handled messages and said words', () => messages(get));
    describe('people, settings, conversations, checkpoints', () => keeping(get));
  });
}

function transactions(get: () => Store): void {
  it('keep everything that their work wrote', async () => {
    const count = await get().transact(async ({ journal, post }) => {
      await post.recordHandled('m1', { reply: 'noted' }, MORNING);
      return journal.append([usage(1, 'birch'), usage(2, 'alder')]);
    });
    expect(count).toBe(2);
    const [entries, answer] = await get().read(async ({ journal, post }) => [
      await everything(journal.since(0)),
      await post.handled('m1'),
    ]);
    expect(entries).toEqual([usage(1, 'birch'), usage(2, 'alder')]);
    expect(answer).toEqual({ answer: { reply: 'noted' }, at: MORNING });
  });

  it('leave nothing of work that threw, in any table', async () => {
    await get().transact(async ({ journal, post }) => {
      await journal.append([usage(1, 'birch')]);
      await post.savePerson({ id: 'p1', name: 'Ines', foldedName: 'ines' });
      await post.saveWords({ message: 'm1', person: 'p1', text: 'birch 1.5 h', at: MORNING });
      await post.saveCheckpoints([{ machine: 'birch', foldVersion: 1, position: 1, json: '{}' }]);
      await post.saveConversation({ place: 'here', person: 'p1', state: { machine: 'birch' }, expiresAt: 5 });
    });
    const work = get().transact(async ({ journal, post }) => {
      await journal.append([usage(2, 'birch', { message: 'm2' })]);
      await post.recordHandled('m2', {}, MORNING);
      await post.savePerson({ id: 'p1', name: 'Other', foldedName: 'other', role: 'keeper' });
      await post.deleteWords({ person: 'p1' });
      await post.dropCheckpoints();
      await post.dropExpiredConversations(10);
      await post.linkAccount({ platform: 'chat', account: 'U1', person: 'p1' });
      await post.saveWorkshop('{}', MORNING);
      throw new Error('no');
    });
    await expect(work).rejects.toThrow('no');
    await get().read(async ({ journal, post }) => {
      expect(await journal.position()).toBe(1);
      expect(idsOf(await journal.ofMachine('birch'))).toEqual(['e1']);
      expect(await journal.byMessage('m2')).toEqual([]);
      expect(await post.handled('m2')).toBeUndefined();
      expect(await post.people()).toEqual([{ id: 'p1', name: 'Ines', foldedName: 'ines' }]);
      expect((await post.words('m1'))?.text).toBe('birch 1.5 h');
      expect((await post.checkpoint('birch'))?.position).toBe(1);
      expect((await post.conversation('here', 'p1'))?.state).toEqual({ machine: 'birch' });
      expect(await post.accountsOf('p1')).toEqual([]);
      expect(await post.workshop()).toBeUndefined();
    });
    await get().transact(async ({ journal }) => journal.append([usage(2, 'birch')]));
    expect(await get().read(async ({ journal }) => journal.position())).toBe(2);
  });

  it('can go on after a fault that their work handled itself', async () => {
    await get().transact(async ({ journal }) => {
      await journal.append([usage(1, 'birch')]);
      await journal.append([usage(1, 'birch')]).catch(() => undefined);
      await journal.append([usage(2, 'birch')]);
    });
    expect(await get().read(async ({ journal }) => journal.position())).toBe(2);
  });

  it('run one after the other: what one reads stays true until it has written', async () => {
    const addOne = async (): Promise<unknown> =>
      get().transact(async ({ journal }) => {
        const before = await journal.position();
        await pause(1);
        return journal.append([usage(before + 1, 'birch')]);
      });
    await Promise.all(Array.from({ length: 40 }, addOne));
    const entries = await get().read(async ({ journal }) => everything(journal.since(0)));
    expect(new Set(idsOf(entries)).size).toBe(40);
  });

  it('show a reader nothing before they are committed', async () => {
    const seen: number[] = [];
    const writing = get().transact(async ({ journal }) => {
      await journal.append([usage(1, 'birch')]);
      await pause(30);
      await journal.append([usage(2, 'birch')]);
    });
    const reading = get().read(async ({ journal }) => seen.push(await journal.position()));
    await Promise.all([writing, reading]);
    expect(seen).not.toContain(1);
  });

  it('cannot be opened inside one another, nor the store be closed inside one', async () => {
    const nested = get().transact(async () => get().transact(async () => 1));
    await expect(nested).rejects.toMatchObject({ code: 'misused' });
    const read = get().read(async () => get().read(async () => 1));
    await expect(read).rejects.toMatchObject({ code: 'misused' });
    const closing = get().transact(async () => get().close());
    await expect(closing).rejects.toMatchObject({ code: 'misused' });
    expect(await get().transact(async () => 2)).toBe(2);
  });

  it('may be followed by another from a task that the first one started', async () => {
    let later: Promise<number> | undefined;
    await get().transact(async () => {
      later = pause(5).then(async () =>
        get().transact(async ({ journal }) => journal.append([usage(1, 'birch')])),
      );
    });
    expect(await later).toBe(1);
  });

  it('are of no use after their end', async () => {
    const kept = await get().transact(async (transaction) => [transaction]);
    await expect(kept[0]?.journal.append([usage(1, 'birch')])).rejects.toMatchObject({ code: 'misused' });
    await expect(kept[0]?.post.handled('m1')).rejects.toMatchObject({ code: 'misused' });
    const batches = kept[0]?.journal.since(0) ?? [];
    await expect(everything({ [Symbol.asyncIterator]: () => iterate(batches) })).rejects.toMatchObject({
      code: 'misused',
    });
  });

  it('are refused once the store is closed, and closing waits for what is under way', async () => {
    const writing = get().transact(async ({ journal }) => {
      await pause(10);
      return journal.append([usage(1, 'birch')]);
    });
    await get().close();
    expect(await writing).toBe(1);
    await expect(get().read(async () => 1)).rejects.toMatchObject({ code: 'closed' });
    await expect(get().transact(async () => 1)).rejects.toMatchObject({ code: 'closed' });
  });
}

async function* iterate<T>(batches: AsyncIterable<T> | readonly T[]): AsyncGenerator<T> {
  yield* batches;
}

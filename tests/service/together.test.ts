/** Messages that wait one behind the other share a commit, and so do their answers; one that fails takes none along. */
import { describe, expect, it } from 'vitest';
import { StoreFault, type Received, type Store } from '../../src/index.ts';
import type { StoreFaultCode } from '../../src/store/fault.ts';
import type { Transaction } from '../../src/store/store.ts';
import { CHANNEL } from '../support/fakePlatform.ts';
import { placeIn, read, serveDemo, AFTERNOON, type Served } from '../support/served.ts';

const SECOND = 1_000;

const message = (n: number, more: Partial<Received> = {}): Received => ({
  key: `slack:Ev${n}`, platform: 'slack', account: 'U1', accountName: 'Ines', audience: 'place', saidAt: AFTERNOON + n,
  place: placeIn(CHANNEL), what: { kind: 'said', text: `ran ${n} min on birch`, message: `h${n}` }, ...more,
}); // prettier-ignore

async function burst(shop: Served, messages: readonly Received[]): Promise<void> {
  await Promise.all(messages.map((one) => shop.platform.deliver(one)));
  await shop.settle();
}

/** Counts transactions, and lets `change` stand between the service and each. */
function through(change: (transaction: Transaction) => Transaction = (transaction) => transaction) {
  const counted = { commits: 0 };
  const around = (inner: Store): Store => ({
    read: (work) => inner.read(work),
    close: () => inner.close(),
    async transact(work) {
      const done = await inner.transact((transaction) => work(change(transaction)));
      counted.commits += 1;
      return done;
    },
  });
  return { counted, through: (store: Store, platforms: Served['platforms']) => ({ store: around(store), platforms }) };
} // prettier-ignore

/** Finishing this one fails so often. */
const failing =
  (key: string, times: number) =>
  (transaction: Transaction): Transaction => ({
    ...transaction,
    traffic: {
      ...transaction.traffic,
      finish: async (finished, at) => {
        if (finished === key && times > 0) {
          times -= 1;
          throw new TypeError('something of this one');
        }
        return transaction.traffic.finish(finished, at);
      },
    },
  });

describe('eight messages at once in one channel', () => {
  it('are stored, handled, claimed and confirmed in a commit each, and answered in order', async () => {
    const { counted, ...wrap } = through();
    const shop = await serveDemo(wrap);
    counted.commits = 0;
    await burst(
      shop,
      [1, 2, 3, 4, 5, 6, 7, 8].map((n) => message(n)),
    );
    expect(counted.commits).toBe(4);
    const below = shop.platform.posts().map(({ below: it }) => it);
    expect(below).toEqual(['h1', 'h2', 'h3', 'h4', 'h5', 'h6', 'h7', 'h8']);
    expect(await shop.written()).toHaveLength(8);
  });

  it('know of each other: “undo” takes back what was said just before it', async () => {
    const shop = await serveDemo();
    const undo = message(2, { what: { kind: 'said', text: 'undo', message: 'h2' } });
    await burst(shop, [message(1), undo]);
    expect(await shop.written()).toEqual([]);
    expect(read(shop.last())).toMatch(/taken back/iu);
  });

  it('of which one cannot be handled are all noted once, that one when its time comes', async () => {
    const shop = await serveDemo(through(failing('slack:Ev2', 3)));
    await burst(
      shop,
      [1, 2, 3].map((n) => message(n)),
    );
    expect(shop.logged.map(({ event }) => event)).toContain('inbox.apart');
    for (let n = 0; n < 6; n += 1) await shop.pass(10 * SECOND);
    expect(await shop.written()).toEqual(['usage', 'usage', 'usage']);
    expect(shop.platform.posts().map(({ below }) => below)).toEqual(['h1', 'h2', 'h3']);
  });

  it('of which one was said where nobody listens are answered each as it should be', async () => {
    const shop = await serveDemo();
    const elsewhere = message(2, { place: placeIn('C0KITCHEN') });
    await burst(shop, [message(1), elsewhere, message(3)]);
    expect(await shop.written()).toEqual(['usage', 'usage']);
    expect(read(shop.platform.posts('C0KITCHEN')[0])).toMatch(/does not listen/u);
  });
});

/** Noting anything fails so. */
const unwritable =
  (code: StoreFaultCode) =>
  (transaction: Transaction): Transaction => ({
    ...transaction,
    journal: {
      ...transaction.journal,
      append: async () => {
        throw new StoreFault(code, 'Not this one.');
      },
    },
  });

describe('a message that the database does not take', () => {
  const tried = async (code: StoreFaultCode): Promise<Served> => {
    const shop = await serveDemo(through(unwritable(code)));
    await burst(shop, [message(1), message(2, { what: { kind: 'said', text: 'help', message: 'h2' } })]);
    for (let n = 0; n < 8; n += 1) await shop.pass(60 * SECOND);
    return shop;
  };

  it.each(['unreadable', 'duplicate', 'failed', 'damaged', 'misused'] as const)(
    'for a reason that stays (%s) is given up, its author hears so, and the next one is answered',
    async (code) => {
      const shop = await tried(code);
      expect(read(shop.platform.posts()[0])).toMatch(/^Not noted: something went wrong on my side/u);
      expect(shop.platform.posts().map(({ below }) => below)).toEqual(['h1', 'h2']);
      expect(shop.platform.posts()[0]?.outgoing).toMatchObject({ audience: 'asker', asker: 'U1' });
      expect(await shop.service.state()).toMatchObject({ waiting: 0 });
    },
  );

  it.each(['busy', 'disk-full', 'disk-error', 'read-only'] as const)(
    'for a reason that passes (%s) waits, and those behind it do too',
    async (code) => {
      const shop = await tried(code);
      expect(shop.platform.posts()).toEqual([]);
      expect(await shop.service.state()).toMatchObject({ waiting: 2 });
    },
  );
});

describe('a message that cannot even be given up', () => {
  it('keeps its own channel waiting, and no other', async () => {
    const shop = await serveDemo(through(failing('slack:Ev1', Infinity)));
    await burst(shop, [message(1, { place: placeIn('C0STAGE') })]);
    for (let n = 0; n < 8; n += 1) await shop.pass(60 * SECOND);
    await burst(shop, [message(2)]);
    expect(shop.platform.posts().map(({ below }) => below)).toEqual(['h2']);
    expect(shop.logged.map(({ event }) => event)).toContain('inbox.fault');
  });
});

describe('a run of answers', () => {
  it('ends with the one that may not go: nothing overtakes it', async () => {
    const shop = await serveDemo();
    shop.platform.sends = [{ slow: 0 }, { later: 5 * SECOND }];
    await burst(
      shop,
      [1, 2, 3, 4].map((n) => message(n)),
    );
    expect(shop.platform.posts().map(({ below }) => below)).toEqual(['h1']);
    for (let n = 0; n < 8; n += 1) await shop.pass(2 * SECOND);
    expect(shop.platform.posts().map(({ below }) => below)).toEqual(['h1', 'h2', 'h3', 'h4']);
  });

  it('of which the process dies in the middle is looked up, and each is shown once', async () => {
    const shop = await serveDemo();
    shop.platform.sends = [{ slow: 0 }, 'hangs'];
    await Promise.all([1, 2, 3].map((n) => shop.platform.deliver(message(n))));
    await expect.poll(() => shop.platform.posts().length).toBe(1);
    await shop.restart('crashed');
    for (let n = 0; n < 4; n += 1) await shop.pass(40 * SECOND);
    expect(shop.platform.posts().map(({ below }) => below)).toEqual(['h1', 'h2', 'h3']);
  });
});

/** Who holds the lease sends; whoever lost it sends no more, even before it has noticed. */
import { describe, expect, it } from 'vitest';
import { takeLease } from '../../src/index.ts';
import { read, serveDemo, type Served } from '../support/served.ts';

const SECOND = 1_000;
const leaseOf = (shop: Served) => shop.store.read(({ traffic }) => traffic.lease('serve'));

describe('a process that slept through the end of its lease', () => {
  it('sends nothing of what waits, leaves it as it was, and says that it must end', async () => {
    const shop = await serveDemo();
    await takeLease(shop.store, 'test', shop.now);
    shop.platform.sends = [{ later: 5 * SECOND }];
    await shop.say('ran 2h on birch');
    let lost = false;
    shop.service.onLost(() => void (lost = true));
    shop.now += 120 * SECOND;
    await takeLease(shop.store, 'another', shop.now);
    const before = shop.platform.calls.length;
    await shop.settle();
    expect(shop.platform.calls.slice(before)).toEqual([]);
    expect(lost).toBe(true);
    expect(await shop.store.read(({ traffic }) => traffic.openPosts())).toBe(1);
    // the other one sends it
    await shop.store.transact(({ traffic }) => traffic.dropLease('serve'));
    await shop.restart('crashed');
    for (let n = 0; n < 3; n += 1) await shop.pass(60 * SECOND);
    expect(shop.platform.posts().map(read)).toEqual([expect.stringMatching(/^Birch: noted/u)]);
  });

  it('stops in the middle of a run of answers, and gives back what it had not begun', async () => {
    const shop = await serveDemo();
    shop.platform.sends = ['hangs'];
    const said = [1, 2, 3].map((n) =>
      shop.deliver({ kind: 'said', text: `ran ${n}h on birch`, message: `h${n}` }),
    );
    await expect.poll(() => shop.platform.calls.length).toBe(1);
    const stopping = shop.service.stop({ drain: false });
    shop.platform.release();
    await Promise.all([stopping, ...said]);
    expect(shop.platform.calls).toHaveLength(1);
    await shop.restart('crashed');
    for (let n = 0; n < 3; n += 1) await shop.pass(60 * SECOND);
    expect(shop.platform.posts().map(({ below }) => below)).toEqual(['h1', 'h2', 'h3']);
  });
});

describe('a lease while the process comes to its end', () => {
  it('is renewed as long as an answer is on its way, and given back afterwards', async () => {
    const shop = await serveDemo();
    await takeLease(shop.store, 'test', shop.now);
    const taken = await leaseOf(shop);
    shop.platform.sends = ['hangs'];
    const said = shop.deliver({ kind: 'said', text: 'ran 2h on birch', message: 'h1' });
    await expect.poll(() => shop.platform.calls.length).toBe(1);
    const stopping = shop.service.stop();
    await shop.ring(30 * SECOND);
    await expect.poll(async () => (await leaseOf(shop))?.until).toBeGreaterThan(taken?.until ?? Infinity);
    shop.platform.release();
    await Promise.all([stopping, said]);
    expect(await leaseOf(shop)).toBeUndefined();
    expect(shop.platform.posts()).toHaveLength(1);
  });
});

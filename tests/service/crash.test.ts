/**
 * The process ends at each step in turn: before or after a commit, before or after the platform did what it was asked.
 * Then another begins on the same store. Nothing acknowledged is lost, nothing is written or posted twice.
 */
import { describe, expect, it } from 'vitest';
import type { Platform, Store } from '../../src/index.ts';
import type { FakePlatform } from '../support/fakePlatform.ts';
import { demoStore, serveDemo, AFTERNOON, type Served } from '../support/served.ts';

class Ended extends Error {}

/** Counts the steps of a life and ends it at one of them; afterwards nothing of it works any more. */
function mortal(endsAt: number) {
  let steps = 0;
  const life = { ended: false, steps: () => steps };
  const step = (): void => {
    if (life.ended) throw new Ended();
    steps += 1;
    if (steps === endsAt) {
      life.ended = true;
      throw new Ended();
    }
  };
  const around = async <T>(work: () => Promise<T>): Promise<T> => {
    step();
    const done = await work();
    step();
    return done;
  };
  const store = (inner: Store): Store => ({
    transact: (work) => around(() => inner.transact(work)),
    read: async (work) => {
      if (life.ended) throw new Ended();
      return inner.read(work);
    },
    close: () => inner.close(),
  });
  const platform = (inner: FakePlatform): FakePlatform => {
    const through: Pick<Platform, 'send' | 'edit' | 'find'> = {
      send: (outgoing) => around(() => inner.send(outgoing)),
      edit: (ref, outgoing) => around(() => inner.edit(ref, outgoing)),
      find: (outgoing, since) => around(() => inner.find(outgoing, since)),
    };
    return { ...inner, ...through };
  };
  return { life, store, platform };
}

interface Trial {
  now: number;
  /** Gives whether it was acknowledged. */
  act: (shop: Served) => Promise<boolean>;
  after: (shop: Served) => Promise<void>;
}

/** Every third step in the ordinary run; FETTLE_EACH_STEP=1: all of them. */
const STRIDE = process.env['FETTLE_EACH_STEP'] === '1' ? 1 : 3;

/** Plays it once for each step that its life has; gives how many there were. */
async function endAtEachStep({ now, act, after }: Trial): Promise<number> {
  for (let endsAt = 1; ; endsAt += STRIDE) {
    const store = await demoStore(now);
    const { life, ...wrap } = mortal(endsAt);
    let first = true;
    const shop = await serveDemo({
      now,
      store,
      through: (inner, platforms) => {
        if (!first) return { store: inner, platforms };
        first = false;
        return { store: wrap.store(inner), platforms: platforms.map(wrap.platform) };
      },
    });
    const acknowledged = await act(shop).catch(() => false);
    await shop.restart('crashed');
    // a platform delivers again what was not acknowledged
    if (!acknowledged) expect(await act(shop)).toBe(true);
    for (let n = 0; n < 4; n += 1) await shop.pass(60_000);
    await after(shop);
    if (!life.ended) return endsAt - 1;
  }
}

const said = async (shop: Served): Promise<boolean> => {
  await shop.deliver(
    { kind: 'said', text: 'cleared a jam on birch. ran 6.5h', message: 'h1' },
    { key: 'slack:Ev1' },
  );
  return true;
};

describe('a process that ends at any step', () => {
  it('between the receipt of a log and its answer: noted once, answered once', async () => {
    const steps = await endAtEachStep({
      now: AFTERNOON,
      act: said,
      async after(shop) {
        expect(await shop.written()).toEqual(['done', 'usage']);
        expect(shop.platform.posts()).toHaveLength(1);
        expect(await shop.service.state()).toMatchObject({ waiting: 0, unsent: 0 });
      },
    });
    // receipt, the answer with its facts, the claim, the post, the confirmation: each from both sides
    expect(steps).toBeGreaterThanOrEqual(10);
  }, 240_000);

  it('between a press and its mark: done once, marked once', async () => {
    await endAtEachStep({
      now: AFTERNOON,
      async act(shop) {
        await said(shop);
        // what the process before had claimed is looked up after a while
        await shop.pass(60_000);
        const [noted] = shop.platform.posts();
        await shop.deliver(
          {
            kind: 'pressed',
            token: noted?.outgoing.tokens[0] ?? '',
            on: { platform: 'slack', channel: 'C0PROPSHOP', id: noted?.id ?? '' },
          },
          { key: 'slack:press' },
        );
        return noted !== undefined;
      },
      async after(shop) {
        expect(await shop.written()).toEqual([]);
        expect(shop.platform.posts()).toHaveLength(2);
        expect(JSON.stringify(shop.platform.posts()[0]?.outgoing.reply)).toContain('Taken back: Ines');
      },
    });
  }, 240_000);

  it('between the claim of a digest and its confirmation: posted once', async () => {
    await endAtEachStep({
      now: Date.parse('2026-03-11T07:29:59+01:00'),
      async act(shop) {
        await shop.pass(2_000);
        return true;
      },
      async after(shop) {
        expect(shop.platform.posts()).toHaveLength(1);
        expect(shop.platform.posts()[0]?.below).toBeUndefined();
      },
    });
  }, 240_000);
});

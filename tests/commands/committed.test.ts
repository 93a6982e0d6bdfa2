/** Who reads sees what is committed, also while messages are being handled that will not be. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { openSqliteStore } from '../../src/index.ts';
import { fillWithDemo } from '../../demo-data/fill.ts';
import { NOW, talkOn } from '../support/talk.ts';

const folder = mkdtempSync(join(tmpdir(), 'fettle-committed-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const message = (n: number, text: string) => ({
  key: `test:${n}`, platform: 'test', place: 'test', direct: false, speaker: 'Ines', text, saidAt: NOW + n, now: NOW + n,
}); // prettier-ignore

describe('two messages in one commit', () => {
  it('show nothing to a reader before it, and nothing at all when the second fails', async () => {
    const store = await openSqliteStore(join(folder, 'shop.db'));
    await fillWithDemo(store, NOW);
    const { bot } = await talkOn(store, NOW);
    const held = async (): Promise<boolean> =>
      JSON.stringify((await bot.digest({ now: NOW + 5 })).digest).includes('"smoke"');
    expect(await held()).toBe(false);
    const gate = (): { open: () => void; opened: Promise<void> } => {
      let open = (): void => undefined;
      const opened = new Promise<void>((resolve) => (open = resolve));
      return { open, opened };
    };
    const [reached, looked] = [gate(), gate()];
    const both = bot.sayTogether([
      { message: message(1, 'there is smoke coming out of rowan') },
      {
        message: message(2, 'ran 2 h on birch'),
        also: async () => {
          reached.open();
          await looked.opened;
          throw new TypeError('the second cannot be handled');
        },
      },
    ]);
    const failed = expect(both).rejects.toThrow('cannot be handled');
    await reached.opened;
    expect(await held()).toBe(false);
    looked.open();
    await failed;
    expect(await held()).toBe(false);
    await bot.say(message(3, 'there is smoke coming out of rowan'));
    expect(await held()).toBe(true);
    await store.close();
  });
});

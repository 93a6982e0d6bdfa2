/** What only the asker sees cannot be looked up: it is shown once more at the most, and says that it may be a second time. */
import { describe, expect, it } from 'vitest';
import { CHANNEL } from '../support/fakePlatform.ts';
import { placeIn, read, serveDemo, type Served } from '../support/served.ts';

const MINUTE = 60_000;

/** A command: its answer is for the asker. */
async function ask(shop: Served, fates: Served['platform']['sends']): Promise<string[]> {
  shop.platform.sends = fates;
  await shop.platform.deliver({
    key: 'slack:command', platform: 'slack', account: 'U1', accountName: 'Ines', audience: 'asker', saidAt: shop.now,
    place: placeIn(CHANNEL), what: { kind: 'command', text: 'what is overdue on alder?' },
  }); // prettier-ignore
  await shop.settle();
  for (let n = 0; n < 6; n += 1) await shop.pass(MINUTE);
  return shop.platform.posts().map(read);
}

describe('a private answer', () => {
  it('of which nobody knows whether it arrived is shown once more, with a word on that', async () => {
    const [first, second, ...more] = await ask(await serveDemo(), ['lost']);
    expect(first).toMatch(/^Alder: 1 overdue/u);
    expect(second).toMatch(/^Alder: 1 overdue.*Sent once more, as the first try may not have reached you/u);
    expect(more).toEqual([]);
  });

  it('of which nobody knows twice is left', async () => {
    const shop = await serveDemo();
    expect(await ask(shop, ['lost', 'lost', 'lost'])).toHaveLength(2);
    expect(await shop.service.state()).toMatchObject({ unsent: 0 });
  });

  it('that surely was not shown comes without that word', async () => {
    const shown = await ask(await serveDemo(), [{ later: 2_000 }]);
    expect(shown).toEqual([expect.stringMatching(/^Alder: 1 overdue/u)]);
  });
});

describe('an answer in the direct conversation that a home view opens', () => {
  it('is changed where it stands, also when it was posted to the person', async () => {
    const shop = await serveDemo();
    const home = { channel: 'U1', space: '', direct: true };
    const noted = await shop.say('ran 2h on birch', { place: home });
    expect(noted?.channel).toBe('DU1');
    await shop.press(noted, 'Undo', { place: home });
    expect(shop.platform.posts('DU1')[0]?.edits).toBe(1);
    expect(read(shop.platform.posts('DU1')[0])).toContain('Taken back: Ines');
  });
});

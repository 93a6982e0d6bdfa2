/** One person on two platforms, as the workshop file says; a name that looks the same lends nothing. */
import { describe, expect, it } from 'vitest';
import { fakePlatform, wallInMemory } from '../support/fakePlatform.ts';
import { AFTERNOON, demoStore, read, serveDemo, type Served } from '../support/served.ts';

const ON_DISCORD = '400000000000000001';
const THERE = { platform: 'discord', space: 'G1', channel: '100000000000000001' };

/** Odd, a member, has given both accounts. */
async function twoPlatforms(): Promise<Served> {
  const link = (json: string): string => {
    const workshop = JSON.parse(json);
    for (const person of workshop.people)
      if (person.name === 'Odd') person.accounts = { slack: 'U4', discord: ON_DISCORD };
    return JSON.stringify(workshop);
  };
  const store = await demoStore(AFTERNOON, link);
  const discord = fakePlatform({ name: 'discord', space: 'G1', wall: wallInMemory() });
  return serveDemo({ store, platforms: [fakePlatform(), discord] });
}

const onDiscord = (shop: Served, account: string) => ({
  as: 'Odd', account, place: THERE, ...(shop.platforms[1] ? { on: shop.platforms[1] } : {}),
}); // prettier-ignore

async function writers(shop: Served): Promise<string[]> {
  const lines: string[] = [];
  await shop.bot.exportLines((line) => void lines.push(line));
  const entries = lines.map((line) => JSON.parse(line) as { by: string; message?: string });
  return entries.filter(({ message }) => /^(slack|discord):/u.test(message ?? '')).map(({ by }) => by);
}

describe('a person with accounts on both platforms', () => {
  it('is one: what was logged here is undone there', async () => {
    const shop = await twoPlatforms();
    const noted = await shop.say('ran 2h on birch', { as: 'Odd' });
    await shop.say('ran 1h on maple', onDiscord(shop, ON_DISCORD));
    const [here, there] = await writers(shop);
    expect(there).toBe(here);
    const token = noted?.outgoing.tokens[0] ?? '';
    await shop.deliver({ kind: 'pressed', token }, onDiscord(shop, ON_DISCORD));
    expect(await shop.written()).toEqual(['usage']);
  });

  it('is not whoever calls themselves so', async () => {
    const shop = await twoPlatforms();
    const noted = await shop.say('ran 2h on birch', { as: 'Odd' });
    await shop.say('ran 1h on maple', onDiscord(shop, '499999999999999999'));
    const [here, there] = await writers(shop);
    expect(there).not.toBe(here);
    await shop.deliver({ kind: 'pressed', token: noted?.outgoing.tokens[0] ?? '' }, onDiscord(shop, '499999999999999999')); // prettier-ignore
    expect(await shop.written()).toEqual(['usage', 'usage']);
    expect(read(shop.platforms[1]?.posts().at(-1))).not.toMatch(/taken back/iu);
  });
});

/** Platforms stand apart, another process may take over, and a form answers its own question only. */
import { describe, expect, it } from 'vitest';
import { PlatformFault } from '../../src/index.ts';
import { fakePlatform, wallInMemory } from '../support/fakePlatform.ts';
import { AFTERNOON, read, serveDemo } from '../support/served.ts';

const MINUTE = 60_000;

/** Cannot be reached until `mend`. */
function unreachable(name: string) {
  const platform = fakePlatform({ name, wall: wallInMemory() });
  const start = platform.start.bind(platform);
  let broken = true;
  platform.start = async (desk) => {
    if (broken) throw new PlatformFault(name, `${name} does not answer.`);
    await start(desk);
  };
  return { platform, mend: () => void (broken = false) };
}

describe('two platforms', () => {
  it('one that is down keeps the other from nothing, and is connected when it is back', async () => {
    const discord = unreachable('discord');
    const shop = await serveDemo({ platforms: [fakePlatform(), discord.platform] });
    expect(read(await shop.say('ran 2h on birch'))).toMatch(/^Birch: noted/u);
    expect(shop.logged.map(({ event }) => event)).toContain('platform.notConnected');
    discord.mend();
    await shop.pass(MINUTE);
    expect(shop.logged.map(({ event }) => event)).toContain('platform.connected');
    expect(() => discord.platform.desk()).not.toThrow();
    await shop.stop();
  });

  it('one that neither connects nor fails keeps the other from nothing', async () => {
    const discord = fakePlatform({ name: 'discord', wall: wallInMemory() });
    discord.start = () => new Promise(() => undefined);
    const shop = await serveDemo({ platforms: [discord, fakePlatform()] });
    const slack = shop.platforms[1];
    await shop.say('ran 2h on birch', slack ? { on: slack } : {});
    expect(read(slack?.posts().at(-1))).toMatch(/^Birch: noted/u);
    await shop.pass(MINUTE);
    expect(shop.logged.map(({ event }) => event)).not.toContain('platform.notConnected');
    await shop.stop();
  });

  it('what came by the one that is down waits for it, with the digest', async () => {
    const discord = unreachable('discord');
    const connected = fakePlatform({ name: 'discord', wall: wallInMemory() });
    const now = Date.parse('2026-03-11T07:29:59+01:00');
    const shop = await serveDemo({ now, platforms: [connected, fakePlatform()] });
    const there = { platform: 'discord', space: 'T1', channel: '100000000000000001' };
    // stored, and then the process ends
    const { service } = shop;
    const hangs = connected.deliver({
      key: 'discord:1', platform: 'discord', account: '4', accountName: 'Odd', audience: 'place', saidAt: now,
      place: { ...there, direct: false }, what: { kind: 'said', text: 'ran 2h on birch', message: '1' },
    }); // prettier-ignore
    await service.stop({ drain: false });
    await hangs;
    const after = await serveDemo({ now, store: shop.store, platforms: [discord.platform, fakePlatform()] });
    await after.pass(MINUTE);
    expect(await after.written()).toEqual([]);
    expect(after.platforms.map((platform) => platform.posts().length)).toEqual([0, 1]);
    discord.mend();
    await after.pass(MINUTE);
    await after.pass(MINUTE);
    expect(await after.written()).toEqual(['usage']);
    const shown = discord.platform.posts().map(read);
    expect(shown).toHaveLength(2);
    expect(shown).toContainEqual(expect.stringMatching(/^Birch: noted/u));
    expect(shown).toContainEqual(expect.stringMatching(/^Wednesday 11 March/u));
    await after.stop();
  });

  it('when none can be reached the start fails with its sentence', async () => {
    await expect(serveDemo({ platforms: [unreachable('slack').platform] })).rejects.toThrow(
      'slack does not answer.',
    );
  });
});

describe('a lease that was lost', () => {
  it('ends the process without another word: what waits is the other’s to send', async () => {
    const shop = await serveDemo();
    shop.platform.sends = [{ later: 5 * MINUTE }];
    await shop.say('ran 2h on birch');
    const before = shop.platform.calls.length;
    shop.now = AFTERNOON + 10 * MINUTE;
    await shop.service.stop({ drain: false });
    expect(shop.platform.calls.slice(before)).toEqual([]);
    expect(await shop.store.read(({ traffic }) => traffic.openPosts())).toBe(1);
  });
});

describe('a form whose button cannot do what it stands for', () => {
  it('is told why, and what stands in it answers no other question', async () => {
    const shop = await serveDemo();
    const asked = await shop.say('when is the wiring check due on cedar?');
    const token = asked?.outgoing.tokens[
      asked.outgoing.reply.sections.flatMap((s) => s.items.flatMap((i) => i.buttons ?? [])).findIndex((b) => b.label === 'Put off')
    ] ?? ''; // prettier-ignore
    await shop.deliver({ kind: 'form', form: 'until', token, fields: { until: 'in 3 weeks' } });
    expect(read(shop.last())).not.toBe('(nothing)');
    expect(read(shop.last())).toMatch(/wiring/iu);
    expect(await shop.written()).not.toContain('putOff');
  });
});

/** What platforms do to deliveries: twice, out of order, late, and to places where the bot does not listen. */
import { describe, expect, it } from 'vitest';
import { read, serveDemo, AFTERNOON } from '../support/served.ts';

const HOUR = 3_600_000;

describe('deliveries', () => {
  it('the same delivery twice is noted and answered once', async () => {
    const shop = await serveDemo();
    expect(
      await shop.deliver({ kind: 'said', text: 'ran 6.5h on birch', message: 'h1' }, { key: 'slack:Ev1' }),
    ).toBe('stored');
    expect(
      await shop.deliver({ kind: 'said', text: 'ran 6.5h on birch', message: 'h1' }, { key: 'slack:Ev1' }),
    ).toBe('known');
    expect(shop.platform.posts()).toHaveLength(1);
    expect(await shop.written()).toEqual(['usage']);
  });

  it('one message under two keys is one, also when both arrive at once', async () => {
    const shop = await serveDemo();
    const both = ['slack:Ev1', 'slack:Ev2'].map((key) =>
      shop.deliver({ kind: 'said', text: 'ran 6.5h on birch', message: 'h1' }, { key }),
    );
    expect((await Promise.all(both)).toSorted()).toEqual(['known', 'stored']);
    expect(shop.platform.posts()).toHaveLength(1);
    expect(await shop.written()).toEqual(['usage']);
  });

  it('two messages of the same words are two', async () => {
    const shop = await serveDemo();
    await shop.say('ran 2h on birch');
    await shop.say('ran 2h on birch');
    expect(await shop.written()).toEqual(['usage', 'usage']);
    expect(shop.platform.posts()).toHaveLength(2);
  });

  it('a message that comes 26 hours late is noted at its own time', async () => {
    const shop = await serveDemo();
    const late = await shop.say('swapped the nozzle on birch, worn', { saidAt: AFTERNOON - 26 * HOUR });
    expect(read(late)).toMatch(/^Birch: noted.*nozzle replaced, worn/u);
    const lines: string[] = [];
    await shop.bot.exportLines((line) => void lines.push(line));
    const entry = JSON.parse(lines.findLast((line) => line.includes('slack:')) ?? '{}');
    expect(JSON.stringify(entry)).toContain('2026-03-10');
    expect(JSON.stringify(entry)).not.toContain('"at":"2026-03-11');
  });

  it('messages out of order are noted at their own times, whichever came first', async () => {
    const [told, swapped] = [await serveDemo(), await serveDemo()];
    const say = (shop: typeof told, text: string, hoursAgo: number) =>
      shop.say(text, { saidAt: AFTERNOON - hoursAgo * HOUR });
    await say(told, 'swapped the nozzle on birch, worn', 5);
    await say(told, 'ran 3h on birch', 1);
    await say(swapped, 'ran 3h on birch', 1);
    await say(swapped, 'swapped the nozzle on birch, worn', 5);
    const due = async (shop: typeof told) =>
      (await shop.bot.due({ now: AFTERNOON + HOUR, machine: 'birch' })).find(
        (r) => r.task === 'replace-nozzle',
      );
    expect(await due(swapped)).toEqual(await due(told));
  });

  it('small talk is met with silence, and its message is finished', async () => {
    const shop = await serveDemo();
    expect(await shop.say('morning all, nice weather')).toBeUndefined();
    expect(shop.platform.calls).toEqual([]);
    expect(await shop.service.state()).toMatchObject({ waiting: 0, unsent: 0 });
  });

  it('a deleted message changes nothing', async () => {
    const shop = await serveDemo();
    await shop.say('ran 6.5h on birch', { message: 'h1' });
    await shop.deliver({ kind: 'deleted', message: 'h1' });
    expect(await shop.written()).toEqual(['usage']);
    expect(shop.platform.posts()).toHaveLength(1);
  });

  it('a slow channel holds up no other', async () => {
    const shop = await serveDemo();
    shop.platform.sends = ['hangs'];
    const slow = shop.deliver({ kind: 'said', text: 'ran 1h on birch', message: 'h1' });
    void shop.deliver(
      { kind: 'said', text: 'ran 2h on maple', message: 'h2' },
      { place: { channel: 'C0STAGE' } },
    );
    await expect.poll(() => shop.platform.posts('C0STAGE').length).toBe(1);
    expect(shop.platform.posts('C0PROPSHOP')).toEqual([]);
    shop.platform.release();
    await slow;
    expect(shop.platform.posts('C0PROPSHOP')).toHaveLength(1);
  });
});

describe('who may', () => {
  it('another channel is told where to turn, and nothing is noted', async () => {
    const shop = await serveDemo();
    const answer = await shop.say('ran 6.5h on birch', { place: { channel: 'C0KITCHEN' } });
    expect(read(answer)).toMatch(/^Fettle does not listen in this channel: nothing was noted/u);
    expect(answer?.outgoing).toMatchObject({ audience: 'asker', asker: 'U1' });
    expect(await shop.written()).toEqual([]);
  });

  it('another space is told so too', async () => {
    const shop = await serveDemo();
    const answer = await shop.say('ran 6.5h on birch', { place: { space: 'T2' } });
    expect(read(answer)).toMatch(/serves another workspace/u);
    expect(await shop.written()).toEqual([]);
  });

  it('a thread that is a channel of its own belongs to the channel above it', async () => {
    const shop = await serveDemo();
    await shop.say('ran 6.5h on birch', { place: { channel: 'C0THREAD', parent: 'C0PROPSHOP' } });
    expect(await shop.written()).toEqual(['usage']);
  });

  it('a stranger in direct is not served until met in the channel', async () => {
    const shop = await serveDemo();
    const direct = { place: { channel: 'D7', space: '', direct: true } };
    const refused = await shop.say("what's overdue on alder?", { as: 'Odd', ...direct });
    expect(read(refused)).toMatch(/^We have not met/u);
    await shop.say('ran 1h on birch', { as: 'Odd' });
    expect(read(await shop.say("what's overdue on alder?", { as: 'Odd', ...direct }))).toMatch(
      /^Alder: 1 overdue/u,
    );
  });

  it('who wrote where the bot does not listen was not met by it', async () => {
    const shop = await serveDemo();
    await shop.say('ran 1h on birch', { as: 'Odd', place: { channel: 'C0KITCHEN' } });
    const answer = await shop.say('ran 1h on birch', {
      as: 'Odd',
      place: { channel: 'D7', space: '', direct: true },
    });
    expect(read(answer)).toMatch(/^We have not met/u);
  });

  it('whose account is in the workshop file needs no meeting', async () => {
    const shop = await serveDemo();
    const answer = await shop.say("what's overdue on alder?", {
      place: { channel: 'D1', space: '', direct: true },
    });
    expect(read(answer)).toMatch(/^Alder/u);
  });

  it('tidying up where the bot does not listen is answered by nobody', async () => {
    const shop = await serveDemo();
    await shop.deliver({ kind: 'deleted', message: 'h1' }, { place: { channel: 'C0KITCHEN' } });
    await shop.deliver(
      { kind: 'edited', message: 'h1', text: 'ran 2h on birch' },
      { place: { channel: 'C0KITCHEN' } },
    );
    expect(shop.platform.posts()).toEqual([]);
    expect(await shop.written()).toEqual([]);
  });
});

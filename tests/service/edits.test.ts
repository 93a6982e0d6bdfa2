/** Messages that their author changed. */
import { describe, expect, it } from 'vitest';
import { read, serveDemo, type Served } from '../support/served.ts';

const edit = (shop: Served, text: string, as = 'Ines') =>
  shop.deliver({ kind: 'edited', message: 'h1', text }, { as });
async function hours(shop: Served): Promise<number[]> {
  const lines: string[] = [];
  await shop.bot.exportLines((line) => void lines.push(line));
  const entries = lines.map((line) => JSON.parse(line));
  const gone = new Set(entries.filter((e) => e.kind === 'takenBack').map((e) => e.target));
  return entries.filter((e) => e.kind === 'usage' && !gone.has(e.id) && String(e.message).startsWith('slack:')).map((e) => e.hours);
} // prettier-ignore

describe('an edited message', () => {
  it('that says something else is asked about, and changed by its button', async () => {
    const shop = await serveDemo();
    await shop.say('ran 6.5h on birch', { message: 'h1' });
    await edit(shop, 'ran 16.5h on birch');
    const offer = shop.last();
    expect(read(offer)).toMatch(/^You changed that message after I noted it.*\[Change\] \[Leave\]$/u);
    expect(await hours(shop)).toEqual([6.5]);
    await shop.press(offer, 'Change');
    expect(await hours(shop)).toEqual([16.5]);
    await shop.press(offer, 'Change');
    expect(await hours(shop)).toEqual([16.5]);
  });

  it('changed, and then changed again, leaves one log', async () => {
    const shop = await serveDemo();
    await shop.say('ran 6.5h on birch', { message: 'h1' });
    await edit(shop, 'ran 16.5h on birch');
    await shop.press(shop.last(), 'Change');
    await edit(shop, 'ran 16h on birch');
    await shop.press(shop.last(), 'Change');
    expect(await hours(shop)).toEqual([16]);
    const before = shop.last();
    await edit(shop, 'ran 16 hours on birch');
    expect(shop.last()).toBe(before);
  });

  it('changed twice before anybody pressed is not changed by the older button', async () => {
    const shop = await serveDemo();
    await shop.say('ran 6.5h on birch', { message: 'h1' });
    await edit(shop, 'ran 16.5h on birch');
    const older = shop.last();
    await edit(shop, 'ran 16h on birch');
    const newer = shop.last();
    expect(read(shop.platform.posts().find(({ id }) => id === older?.id))).toMatch(
      /stands\. Changed again: Ines, 15:40$/u,
    );
    const token = older?.outgoing.tokens[0] ?? '';
    await shop.deliver({ kind: 'pressed', token });
    expect(read(shop.last())).toMatch(
      /^Changed again: Ines, 15:40\. This button stands for what .* said before/u,
    );
    expect(await hours(shop)).toEqual([6.5]);
    await shop.press(newer, 'Change');
    expect(await hours(shop)).toEqual([16]);
  });

  it('changed back to what was noted is not changed by the button in between', async () => {
    const shop = await serveDemo();
    await shop.say('ran 6.5h on birch', { message: 'h1' });
    await edit(shop, 'ran 16.5h on birch');
    const token = shop.last()?.outgoing.tokens[0] ?? '';
    await edit(shop, 'ran 6.5h on birch');
    await shop.deliver({ kind: 'pressed', token });
    expect(await hours(shop)).toEqual([6.5]);
  });

  it('of which all was taken back is not said to stand, and noted only when asked to', async () => {
    const shop = await serveDemo();
    await shop.press(await shop.say('ran 6.5h on birch', { message: 'h1' }), 'Undo');
    expect(await hours(shop)).toEqual([]);
    await edit(shop, 'ran 7h on birch');
    expect(read(shop.last())).toMatch(/taken back: nothing of it stands\. \[Note it\] \[Leave\]$/u);
    expect(await hours(shop)).toEqual([]);
    await shop.press(shop.last(), 'Note it');
    expect(await hours(shop)).toEqual([7]);
    await edit(shop, 'ran 8h on birch');
    expect(read(shop.last())).toMatch(/What I noted stands/u);
  });

  it('of which all was taken back and which says nothing now is met with silence', async () => {
    const shop = await serveDemo();
    await shop.press(await shop.say('ran 6.5h on birch', { message: 'h1' }), 'Undo');
    const before = shop.last();
    await edit(shop, 'lovely weather');
    expect(shop.last()).toBe(before);
  });

  it('may be left as it was noted', async () => {
    const shop = await serveDemo();
    await shop.say('ran 6.5h on birch', { message: 'h1' });
    await edit(shop, 'ran 7h on birch');
    const offer = shop.last();
    expect(read(await shop.press(offer, 'Leave'))).toMatch(/Left as it is/u);
    expect(await hours(shop)).toEqual([6.5]);
    expect(read(shop.platform.posts().find((p) => p.id === offer?.id))).toMatch(
      /Left as it is: Ines, 15:40$/u,
    );
  });

  it('that says the same in other words is met with silence', async () => {
    const shop = await serveDemo();
    await shop.say('ran 6.5h on birch', { message: 'h1' });
    await edit(shop, 'Ran 6.5 h on Birch!');
    expect(shop.platform.posts()).toHaveLength(1);
  });

  it('of which nothing was noted is said now, once, and changed after that', async () => {
    const shop = await serveDemo();
    await shop.say('lovely weather', { message: 'h1' });
    await edit(shop, 'ran 3h on birch');
    expect(await hours(shop)).toEqual([3]);
    await edit(shop, 'ran 4h on birch');
    expect(await hours(shop)).toEqual([3]);
    await shop.press(shop.last(), 'Change');
    expect(await hours(shop)).toEqual([4]);
  });

  it('that arrives before the message itself is noted once', async () => {
    const shop = await serveDemo();
    await edit(shop, 'ran 3h on birch');
    await shop.say('ran 2h on birch', { message: 'h1' });
    expect(await hours(shop)).toEqual([3]);
    expect(shop.platform.posts()).toHaveLength(1);
  });

  it('whose question was answered in the meantime is not noted a second time', async () => {
    const shop = await serveDemo();
    const asked = await shop.say('ran 6.5h', { message: 'h1' });
    await shop.press(asked, 'Birch');
    expect(await hours(shop)).toEqual([6.5]);
    await edit(shop, 'ran 6.5h on birch');
    expect(await hours(shop)).toEqual([6.5]);
  });

  it('is not changed by somebody else who is no keeper', async () => {
    const shop = await serveDemo();
    await shop.say('ran 6.5h on birch', { message: 'h1', as: 'Priya' });
    await edit(shop, 'ran 7h on birch', 'Priya');
    await shop.press(shop.last(), 'Change', { as: 'Odd' });
    expect(await hours(shop)).toEqual([6.5]);
  });
});

/** The morning digest: once a platform and local day, whatever happens in between. */
import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { openCalendar } from '../../src/index.ts';
import { nextDigest, owedDigest } from '../../src/schedule/digest.ts';
import { demoStore, read, serveDemo } from '../support/served.ts';
import { fakePlatform } from '../support/fakePlatform.ts';

const at = (time: string) => Date.parse(`2026-03-11T${time}+01:00`);
const MINUTE = 60_000;

describe('the digest', () => {
  it('is posted once through restarts, crashes and hours', async () => {
    const shop = await serveDemo({ now: at('07:29:59') });
    await shop.pass(2_000);
    await shop.restart();
    await shop.restart('crashed');
    for (let hour = 0; hour < 4; hour += 1) await shop.pass(60 * MINUTE);
    expect(shop.platform.posts()).toHaveLength(1);
  });

  it('is posted once by two services on one store', async () => {
    const store = await demoStore(at('07:31:00'));
    const platform = fakePlatform();
    const shops = await Promise.all(
      [0, 1].map(() => serveDemo({ now: at('07:31:00'), store, platforms: [platform] })),
    );
    await Promise.all(shops.map((shop) => shop.pass(5_000)));
    expect(platform.posts()).toHaveLength(1);
  });

  it('goes once to each platform', async () => {
    const platforms = [fakePlatform(), fakePlatform({ name: 'discord' })];
    const shop = await serveDemo({ now: at('07:31:00'), platforms });
    await shop.pass(5_000);
    expect(platforms.map((platform) => platform.posts().length)).toEqual([1, 1]);
    expect(platforms[1]?.posts()[0]?.channel).toBe('100000000000000001');
  });

  it.each(['lost', 'throws'] as const)(
    'whose confirmation is lost (%s) is looked up and not sent again',
    async (fate) => {
      const shop = await serveDemo({ now: at('07:29:00') });
      shop.platform.sends = [fate];
      shop.platform.blind = 1;
      for (let n = 0; n < 6; n += 1) await shop.pass(MINUTE);
      expect(shop.platform.posts()).toHaveLength(1);
      expect(shop.platform.calls.map(({ did }) => did)).toEqual(['send', 'find', 'find']);
      expect(await shop.service.state()).toMatchObject({ unsent: 0 });
    },
  );

  it('is looked for from when it was sent, also by the one who starts after a crash', async () => {
    const shop = await serveDemo({ now: at('07:29:00') });
    const { platform } = shop;
    platform.sends = ['lost'];
    const from: number[] = [];
    const find = platform.find.bind(platform);
    platform.find = (outgoing, since) => {
      from.push(since);
      if (from.length > 1) return find(outgoing, since);
      return new Promise(() => undefined);
    };
    for (let n = 0; n < 12 && from.length === 0; n += 1) {
      await shop.ring(MINUTE);
      await pause(20);
    }
    expect(from).toHaveLength(1);
    await shop.restart('crashed');
    for (let n = 0; n < 4; n += 1) await shop.pass(MINUTE);
    expect(from).toEqual([from[0], from[0]]);
    expect(platform.posts()).toHaveLength(1);
  });

  it('that surely was not posted is sent again', async () => {
    const shop = await serveDemo({ now: at('07:29:00') });
    shop.platform.sends = ['unknown', { later: 5_000 }];
    for (let n = 0; n < 6; n += 1) await shop.pass(MINUTE);
    expect(shop.platform.posts()).toHaveLength(1);
    expect(shop.platform.calls.map(({ did }) => did)).toEqual(['send', 'find', 'send', 'send']);
  });

  it('that is refused waits some minutes, as it then is, and keeps no answer in its channel waiting', async () => {
    const shop = await serveDemo({ now: at('07:29:00') });
    shop.platform.sends = ['refused'];
    await shop.pass(2 * MINUTE);
    await shop.say('oiled the rods on alder');
    await shop.pass(MINUTE);
    expect(shop.platform.posts().map(read)).toEqual([expect.stringMatching(/^Alder: noted/u)]);
    // by now somebody has let the bot in
    await shop.pass(4 * MINUTE);
    const [, digest, ...more] = shop.platform.posts();
    expect(read(digest)).toMatch(
      /^Wednesday 11 March\. 2 overdue.*Done or put off since: Alder: oil the rods/u,
    );
    await shop.pass(10 * MINUTE);
    expect(more).toEqual([]);
    expect(shop.platform.posts()).toHaveLength(2);
  });

  it('whose channel is not there is missed once a morning in the log, and posted when the channel is made', async () => {
    const shop = await serveDemo({ now: at('07:29:00') });
    const missed = () => shop.logged.filter(({ event }) => event === 'digest.noChannel').length;
    const channels = [...shop.platform.channels];
    shop.platform.channels.clear();
    for (let n = 0; n < 20; n += 1) await shop.pass(MINUTE);
    expect(missed()).toBe(1);
    for (let hour = 0; hour < 24; hour += 1) await shop.pass(60 * MINUTE);
    expect(missed()).toBe(2);
    for (const [named, id] of channels) shop.platform.channels.set(named, id);
    await shop.pass(MINUTE);
    expect(shop.platform.posts()).toHaveLength(1);
  });

  it('that is refused all morning is left at noon', async () => {
    const shop = await serveDemo({ now: at('07:29:00') });
    shop.platform.sends = Array.from({ length: 400 }, () => 'refused' as const);
    for (let n = 0; n < 30; n += 1) await shop.pass(10 * MINUTE);
    const tried = shop.platform.calls.length;
    expect(tried).toBeGreaterThan(20);
    shop.platform.sends = [];
    await shop.pass(10 * MINUTE);
    expect(shop.platform.calls).toHaveLength(tried);
    expect(shop.platform.posts()).toEqual([]);
    expect(await shop.service.state()).toMatchObject({ unsent: 0 });
  });

  it('is owed until noon after a downtime, and then left', async () => {
    const late = await serveDemo({ now: at('11:59:30') });
    expect(late.platform.posts()).toHaveLength(1);
    const later = await serveDemo({ now: at('12:00:00') });
    await later.pass(MINUTE);
    expect(later.platform.posts()).toEqual([]);
  });

  it('that was planned in the morning and could not be sent is not sent in the afternoon', async () => {
    const shop = await serveDemo({ now: at('07:29:00') });
    shop.platform.sends = Array.from({ length: 400 }, () => 'unknown' as const);
    await shop.pass(2 * MINUTE);
    await shop.pass(20 * MINUTE);
    shop.platform.sends = [];
    await shop.restart('crashed');
    await shop.pass(5 * 60 * MINUTE);
    expect(shop.platform.posts()).toEqual([]);
    expect(await shop.service.state()).toMatchObject({ unsent: 0 });
  });

  it('keeps to working days and holidays', async () => {
    const sunday = await serveDemo({ now: Date.parse('2026-03-15T08:00:00+01:00') });
    expect(sunday.platform.posts()).toEqual([]);
    const store = await demoStore(at('08:00:00'), (json) => {
      const workshop = JSON.parse(json);
      workshop.workshop.holidays = ['2026-03-11'];
      return JSON.stringify(workshop);
    });
    const holiday = await serveDemo({ now: at('08:00:00'), store });
    expect(holiday.platform.posts()).toEqual([]);
    expect((await holiday.service.state()).nextDigest).toBe(Date.parse('2026-03-12T07:30:00+01:00'));
  });

  it('is brought up to date in place, once for what comes close together, and says who did what', async () => {
    const shop = await serveDemo({ now: at('07:31:00') });
    const [digest] = shop.platform.posts();
    expect(read(digest)).toMatch(/Overdue .*Maple: replace the nozzle .*Due today/u);
    await shop.press(digest, 'Done', { as: 'Priya' });
    expect(read(shop.platform.posts()[0])).toMatch(/\(Done: Priya, 07:31\)/u);
    await shop.say('oiled the rods on alder');
    await shop.say('levelled the bed on maple');
    const edits = shop.platform.posts()[0]?.edits ?? 0;
    await shop.pass(10_000);
    expect(shop.platform.posts()[0]?.edits).toBe(edits);
    await shop.pass(20_000);
    expect(shop.platform.posts()[0]?.edits).toBe(edits + 1);
    const shown = read(shop.platform.posts()[0]);
    expect(shown).toMatch(/Done or put off since: .*\(Done: Priya, 07:31\)/u);
    expect(shown).toMatch(/Done or put off since: .*Alder: oil the rods/u);
    for (let n = 0; n < 3; n += 1) await shop.pass(MINUTE);
    expect(shop.platform.posts()[0]?.edits).toBe(edits + 1);
  });

  it('is brought up to date after a crash that came between', async () => {
    const shop = await serveDemo({ now: at('07:31:00') });
    await shop.say('oiled the rods on alder');
    await shop.restart('crashed');
    await shop.pass(MINUTE);
    expect(read(shop.platform.posts()[0])).toMatch(/Done or put off since: .*Alder: oil the rods/u);
  });
});

describe('when it is owed', () => {
  const times = { workingDays: [0, 1, 2, 3, 4, 5, 6], holidays: [], digestAt: '07:30' };
  const owedDates = (zone: string, digestAt: string, from: string, hours: number): string[] => {
    const calendar = openCalendar(zone);
    const owed = Array.from({ length: hours * 12 }, (_, n) =>
      owedDigest({ ...times, digestAt }, calendar, Date.parse(from) + n * 5 * MINUTE),
    );
    return owed.filter((date, n) => date !== undefined && date !== owed[n - 1]).map(String);
  };

  it('begins at half past seven of the wall clock on both days of the change', () => {
    const copenhagen = openCalendar('Europe/Copenhagen');
    const spring = Date.parse('2026-03-29T05:30:00Z');
    expect(owedDigest(times, copenhagen, spring - 1)).toBeUndefined();
    expect(owedDigest(times, copenhagen, spring)).toBe('2026-03-29');
    const autumn = Date.parse('2026-10-25T06:30:00Z');
    expect(owedDigest(times, copenhagen, autumn - 1)).toBeUndefined();
    expect(owedDigest(times, copenhagen, autumn)).toBe('2026-10-25');
    expect(nextDigest(times, copenhagen, Date.parse('2026-03-28T12:00:00Z'))).toBe(spring);
    expect(nextDigest(times, copenhagen, Date.parse('2026-10-24T12:00:00Z'))).toBe(autumn);
  });

  it('is one a day where the wished time is left out or comes twice', () => {
    expect(owedDates('Europe/Copenhagen', '02:30', '2026-03-28T23:00:00Z', 30)).toEqual([
      '2026-03-29',
      '2026-03-30',
    ]);
    expect(owedDates('Europe/Copenhagen', '02:30', '2026-10-24T22:00:00Z', 30)).toEqual([
      '2026-10-25',
      '2026-10-26',
    ]);
  });

  // Africa/Cairo puts the clock forward at 00:00 on the last Friday of April and back at 24:00 on the last Thursday of
  // October (tz database, rule "Egypt")
  it('is one a day where the clock changes at midnight', () => {
    expect(owedDates('Africa/Cairo', '00:00', '2026-04-23T12:00:00Z', 48)).toEqual([
      '2026-04-24',
      '2026-04-25',
    ]);
    expect(owedDates('Africa/Cairo', '00:00', '2026-10-29T12:00:00Z', 48)).toEqual([
      '2026-10-30',
      '2026-10-31',
    ]);
    expect(owedDates('Africa/Cairo', '07:30', '2026-10-29T12:00:00Z', 48)).toEqual([
      '2026-10-30',
      '2026-10-31',
    ]);
  });
});

/** The three moments by which the bot is judged, through the service. */
import { describe, expect, it } from 'vitest';
import { read, serveDemo } from '../support/served.ts';
import { CHANNEL } from '../support/fakePlatform.ts';

const LOG =
  'cleared a jam on birch, feeder gear was packed so cleaned that too. swapped the nozzle, worn. ran 6.5h';

describe('the three moments', () => {
  it('a log is noted below its message, once, with what was taken for granted', async () => {
    const shop = await serveDemo();
    const noted = await shop.say(LOG, { message: 'h1' });
    expect(read(noted)).toMatch(
      /^Birch: noted\. jam cleared · feeder cleaned · nozzle replaced, worn: lasted \d+ h .*6\.5 h run, now at [\d,]+ h/u,
    );
    expect(read(noted)).toMatch(/\[Undo\] \[Change something\]$/u);
    expect(noted?.below).toBe('h1');
    expect(shop.platform.posts()).toHaveLength(1);
    expect(await shop.written()).toEqual(['done', 'done', 'swapped', 'usage']);
  });

  it('the digest is posted in the channel of the digest at half past seven', async () => {
    const shop = await serveDemo({ now: Date.parse('2026-03-11T07:29:50+01:00') });
    expect(shop.platform.posts()).toEqual([]);
    await shop.pass(10_000);
    const digest = shop.last();
    expect(digest?.channel).toBe(CHANNEL);
    expect(read(digest)).toMatch(/^Wednesday 11 March\. 3 overdue, 4 due, .*\[Done\] \[Put off\] \[How\?\]/u);
    expect(shop.platform.posts()).toHaveLength(1);
  });

  it('what is overdue on one machine is answered where it was asked', async () => {
    const shop = await serveDemo();
    const answer = await shop.say("what's overdue on alder?", { as: 'Odd', message: 'h7' });
    expect(read(answer)).toMatch(
      /^Alder: 1 overdue.*oil the rods: \d+ h over its 300 h.*\[Done\] \[Put off\] \[How\?\]/u,
    );
    expect(answer?.below).toBe('h7');
    expect(await shop.written()).toEqual([]);
  });
});

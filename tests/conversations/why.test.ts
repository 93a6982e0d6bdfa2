/** "Why?": every line that calls for work says what it rests on. */
import { beforeEach, describe, expect, it } from 'vitest';
import { plainText } from '../../src/index.ts';
import { demoTalk, type Talk } from '../support/talk.ts';

let talk: Talk;
beforeEach(async () => {
  talk = await demoTalk();
});
const RODS = /^Alder: oil the rods \(332 of 300 h\)\. Every 300 h by common practice; last done 2 December 2025 at 3,768 h\.$/mu; // prettier-ignore

describe('why', () => {
  it('after a list is about the lines that it showed first', async () => {
    await talk.say("what's overdue on alder?");
    const why = await talk.say('why?');
    expect(why).toMatchObject({ outcome: 'answered', entries: [] });
    expect(plainText(why.reply)).toMatch(RODS);
    expect(plainText(why.reply).split('\n')).toHaveLength(3);
    // the list is still open: its buttons do what they did
    expect((await talk.say('1')).entries).toMatchObject([{ kind: 'done', task: 'lubricate-rods' }]);
  });

  it.each([
    ['why the rods on alder?', RODS],
    ['why is alder overdue?', RODS],
    ['why alder?', RODS],
    ['so why do I have to check the wiring on cedar', /^Cedar: check the wiring\. Raised by “no heat”, Monday; last done 3 February/u],
    ['why is maple’s nozzle overdue', /^Maple: replace the nozzle \(201 of 180 days in use\)\. Every 180 days in use[^\n]*$/u],
    ['why check the guards on elm', /^Elm: check door switch and guards \(no record\)\. No record of when it was last done\.$/u],
  ])('%s', async (question, expected) => {
    expect(await talk.hear(question)).toMatch(expected);
  }); // prettier-ignore

  it('says whose interval it is', async () => {
    await talk.say('rods every 250 h on alder, says its manual');
    expect(await talk.hear('why the rods on alder?')).toMatch(/Every 250 h by its manual/u);
  });

  it('of trouble asks for its cause, and with nothing to be about it says nothing', async () => {
    expect(await talk.hear('why is elm clicking?')).toMatch(/look in this order/u);
    expect((await (await demoTalk()).say('why?')).outcome).toBe('silent');
    expect((await (await demoTalk()).say('why me')).outcome).toBe('silent');
  });
});

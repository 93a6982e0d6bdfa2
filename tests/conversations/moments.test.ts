/** The three moments by which the bot is judged: the same facts in the same order, in its own words. */
import { beforeEach, describe, expect, it } from 'vitest';
import { plainText } from '../../src/index.ts';
import { demoTalk, NOW, type Talk } from '../support/talk.ts';

/** Each of the patterns is found, and each after the one before. */
function expectInOrder(text: string, patterns: readonly RegExp[]): void {
  let from = 0;
  for (const pattern of patterns) {
    const found = text.slice(from).search(pattern);
    expect(
      found,
      `${String(pattern)} after ${JSON.stringify(text.slice(0, from))} in\n${text}`,
    ).toBeGreaterThanOrEqual(0);
    from += found;
  }
}

let talk: Talk;
beforeEach(async () => {
  talk = await demoTalk();
});

describe('a quick log after clearing a jam', () => {
  const LOG =
    'cleared a jam on birch, feeder gear was packed so cleaned that too. swapped the nozzle, worn. ran 6.5h';

  it('notes all four things, what the nozzle lasted, what was taken for granted, and what to look at now', async () => {
    const answer = await talk.say(LOG);
    expect(answer.outcome).toBe('written');
    expect(answer.entries.map((e) => e.kind)).toEqual(['done', 'done', 'swapped', 'usage']);
    expectInOrder(plainText(answer.reply), [
      /Birch: noted/u,
      /jam cleared/u,
      /feeder cleaned/u,
      /nozzle replaced, worn: lasted [\d,.]+ h over \d+ days/u,
      /6\.5 h run, now at [\d,]+ h/u,
      /Taken as brass 0\.4/u,
      /After a jam.*check the tube \(about \d+ min\)/u,
    ]);
    expect(answer.buttons.map((b) => b.label)).toEqual(['Undo', 'Change something']);
    expect(answer.question).toBeNull();
  });

  it('takes the whole message back with one word', async () => {
    const before = await talk.bot.due({ now: talk.now, machine: 'birch' });
    await talk.say(LOG);
    const undone = await talk.say('undo');
    expect(undone.entries.map((e) => e.kind)).toEqual(['takenBack', 'takenBack', 'takenBack', 'takenBack']);
    expect(plainText(undone.reply)).toMatch(/Birch: taken back/u);
    const after = await talk.bot.due({ now: talk.now, machine: 'birch' });
    expect(after.map((r) => [r.task, r.state, r.used])).toEqual(before.map((r) => [r.task, r.state, r.used]));
  });
});

describe('the morning digest in the team channel', () => {
  it('says day, counts and minutes; then what is late, due, coming, out of use, to fetch and to mind', async () => {
    const { reply, digest } = await talk.bot.digest({ now: NOW });
    const text = plainText(reply);
    expect(text.split('\n')[0]).toMatch(
      /^Wednesday 11 March\. \d+ overdue, \d+ due, about (\d+ h )?\d+ min of work$/u,
    );
    expectInOrder(text, [
      /Fetch:/u,
      /Out of use/u,
      /Cedar since/u,
      /Overdue/u,
      /Due today/u,
      /This week/u,
      /Care/u,
    ]);
    expect(digest.overdue.length).toBeGreaterThan(0);
    expect(digest.due.length).toBeGreaterThan(0);
    expect(digest.comingUp.length).toBeGreaterThan(0);
    expect(digest.noRecord.tasks).toBeGreaterThan(0);
  });

  it('is short enough for a phone', async () => {
    const { reply } = await talk.bot.digest({ now: NOW });
    expect(plainText(reply).length).toBeLessThan(3000);
  });
});

describe('asking what is overdue on one machine', () => {
  it('names what is late by how much, then what comes next, with the buttons beside it', async () => {
    const answer = await talk.say("what's overdue on alder?", { as: 'Odd' });
    expect(answer.outcome).toBe('answered');
    expect(answer.entries).toEqual([]);
    expectInOrder(plainText(answer.reply), [
      /Alder: \d+ overdue, (\d+ due, )?\d+ coming up/u,
      /oil the rods: \d+ h over its 300 h/u,
      /next: /u,
    ]);
    expect(answer.buttons.slice(0, 3).map((b) => b.label)).toEqual(['Done', 'Put off', 'How?']);
  });
});

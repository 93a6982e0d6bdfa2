/** Questions, buttons and corrections: nothing vanishes, nothing is pressed by accident, nothing old goes unseen. */
import { beforeEach, describe, expect, it } from 'vitest';
import { plainText, type Answer } from '../../src/index.ts';
import { demoTalk, type Talk } from '../support/talk.ts';

let talk: Talk;
beforeEach(async () => {
  talk = await demoTalk();
});

const kinds = (answer: Answer): string[] => answer.entries.map((entry) => entry.kind);
const text = (answer: Answer): string => plainText(answer.reply);
const labels = (answer: Answer): string[] => answer.buttons.map((button) => button.label);

describe('two doubts in one message', () => {
  it('are asked one after the other, and the second is named at once', async () => {
    const first = await talk.say('30h on elm today, 40h on birch today');
    expect(first.question).toMatchObject({ field: 'hours', about: 0 });
    expect(text(first)).toMatch(/Not noted yet either: Birch, 40 h run\./u);
    const second = await talk.say('3');
    expect(second.entries).toMatchObject([{ machine: 'elm', hours: 3 }]);
    expect(text(second)).toMatch(/Birch: 40 h\?/u);
    expect((await talk.say('4')).entries).toMatchObject([{ machine: 'birch', hours: 4 }]);
  });

  it('the hours come before the reason, and the reason is not lost', async () => {
    const first = await talk.say('swapped the nozzle on birch. 30h on elm today');
    expect(first.question?.field).toBe('hours');
    expect((await talk.say('5')).question?.field).toBe('reason');
    expect((await talk.say('planned')).entries).toMatchObject([
      { kind: 'amended', set: { reason: 'planned' } },
    ]);
  });

  it('waiting for a machine: the hours’ doubt that the answer raises comes before its reason', async () => {
    await talk.say('swapped a nozzle and ran 30h today');
    expect(await talk.say('elm')).toMatchObject({ question: { field: 'hours' } });
    expect((await talk.say('5')).question?.field).toBe('reason');
  });

  it('two swaps: each old part has its own reason', async () => {
    const both = await talk.say('swapped the nozzle on birch and the nozzle on elm');
    expect(both.question?.text).toBe('Why did the old nozzle on Birch come out?');
    expect((await talk.say('worn')).question?.text).toBe('Why did the old nozzle on Elm come out?');
    expect((await talk.say('broken')).entries).toMatchObject([{ set: { reason: 'broken' } }]);
  });

  it('the open one and the buttons survive a “thanks”', async () => {
    await talk.say('swapped the nozzle on birch');
    await talk.say('thanks', { direct: true });
    expect((await talk.say('worn')).entries).toMatchObject([{ set: { reason: 'worn' } }]);
  });
});

describe('a figure that was asked about', () => {
  it('said again stands', async () => {
    await talk.say('30h on elm today');
    expect((await talk.say('30')).entries).toMatchObject([{ machine: 'elm', hours: 30 }]);
  });

  it('is not the number of an answer: that is asked', async () => {
    await talk.say('30h on elm today');
    expect(await talk.say('1')).toMatchObject({ entries: [] });
    expect((await talk.say('1 h')).entries).toMatchObject([{ machine: 'elm', hours: 1 }]);
  });

  it('“yes” after first aid does not stand by hours that nobody asked about yet', async () => {
    await talk.say("burnt my thumb on cedar's nozzle, ran 30h on cedar today");
    expect(await talk.say('yes')).toMatchObject({ entries: [], question: { field: 'hours' } });
  });
});

describe('a typed button', () => {
  it('whose words stand on several lines is asked about', async () => {
    await talk.say("what's overdue on alder?");
    const which = await talk.say('done');
    expect(which.entries).toEqual([]);
    expect(labels(which)).toContain('Done: level the bed on Alder');
    expect((await talk.say('done: level the bed on alder')).entries).toMatchObject([
      { kind: 'done', task: 'level-bed' },
    ]);
  });

  it('by its number counts right after the list, and in a channel not half an hour later', async () => {
    await talk.say("what's overdue on alder?");
    talk.later(20);
    expect((await talk.say('1')).entries).toEqual([]);
    expect((await talk.say('1', { direct: true })).entries).toMatchObject([
      { kind: 'done', machine: 'alder' },
    ]);
  });
});

describe('a counter reading put right', () => {
  it('is judged like a new one', async () => {
    await talk.say('counter on alder shows 4150');
    expect(await talk.say('make that 41500')).toMatchObject({ entries: [], question: { field: 'hours' } });
    expect(await talk.say('make that 3000')).toMatchObject({
      entries: [],
      results: [{ code: 'counter-back' }],
    });
    expect((await talk.say('make that 4140')).entries).toMatchObject([
      { kind: 'amended', set: { hours: 4140 } },
    ]);
  });
});

describe('a correction that reaches far back', () => {
  it('asks first, showing what it would take', async () => {
    const asked = await talk.say('undo');
    expect(asked).toMatchObject({ outcome: 'asked', entries: [], question: { field: 'far' } });
    expect(text(asked)).toMatch(/not of today’s talk \(Yesterday, Alder: 3\.5 h run/u);
    expect(kinds(await talk.say('yes'))).toEqual(['takenBack']);
  });

  it('“make that 4” of yesterday’s entry is asked about too', async () => {
    await talk.say('ran birch 3h');
    talk.later(13 * 60);
    expect(await talk.say('make that 4')).toMatchObject({ entries: [], question: { field: 'far' } });
    expect((await talk.say('yes')).entries).toMatchObject([{ kind: 'amended', set: { hours: 4 } }]);
  });

  it('of several messages shows them, and takes both, one or none', async () => {
    await talk.say('ran alder 2h');
    await talk.say('ran birch 3h');
    const asked = await talk.say('undo both');
    expect(labels(asked)).toEqual(['Both', 'Only the last', 'Leave it']);
    expect(kinds(await talk.say('both'))).toEqual(['takenBack', 'takenBack']);
  });

  it('“both” of one message that wrote two needs no question', async () => {
    await talk.say('ran alder 2h, ran birch 3h');
    expect(kinds(await talk.say('undo both'))).toEqual(['takenBack', 'takenBack']);
  });
});

describe('“change something”', () => {
  it('takes a bare day, then a machine, then a figure, and speaks of the entry as it stands', async () => {
    await talk.say('ran alder 5h');
    await talk.say('change something');
    expect(text(await talk.say('yesterday'))).toMatch(/5 h run \(was today, now yesterday\)/u);
    expect(text(await talk.say('it was maple, not alder'))).toMatch(
      /Maple: put right\.\n5 h run \(was on Alder\)/u,
    );
    expect(text(await talk.say('make that 4'))).toMatch(/Maple: put right\.\n4 h run \(was: 5 h run\)/u);
  });

  it('does not lose the question that was open', async () => {
    await talk.say('swapped the nozzle on birch');
    await talk.say('change something');
    expect((await talk.say('leave it')).question?.field).toBe('reason');
  });
});

describe('hours told one after the other', () => {
  it('in the evening are the day’s: no doubt', async () => {
    await talk.say('ran alder 3h');
    expect(kinds(await talk.say('ran alder 5h'))).toEqual(['usage']);
  });

  it('that were taken back and are said again are no repetition', async () => {
    await talk.say('ran alder 3h');
    await talk.say('undo');
    expect((await talk.say('ran alder 3h')).results[0]?.flags).toEqual([]);
  });
});

describe('putting off a safety check', () => {
  it('offers no day beyond its limit', async () => {
    const asked = await talk.say('put off the wiring check on cedar');
    const limit = /At the latest ([^.:]+)/u.exec(text(asked))?.[1];
    const days = asked.question?.options.map((option) => option.value) ?? [];
    expect(asked.question?.field === 'until' ? limit : asked.results[0]?.code).toBeDefined();
    for (const day of days)
      expect(
        (await talk.say(`put off the wiring check on cedar to ${day}`)).results[0]?.code,
      ).toBeUndefined();
  });

  it('by the button on one that cannot wait is refused at once, with the other way', async () => {
    await talk.say('smells like burning near juniper');
    await talk.say("what's due on juniper?");
    const refused = await talk.say('2');
    expect(refused).toMatchObject({ entries: [], results: [{ code: 'safety-cannot-wait' }] });
    expect(labels(refused)).toContain('Take it out of use');
  });
});

describe('a list of one machine', () => {
  it('says how to lift a hold that stands over it', async () => {
    await talk.say('smells like burning near juniper');
    expect(text(await talk.say("what's overdue on juniper?"))).toMatch(
      /To lift it: .*“false alarm on Juniper”/u,
    );
  });
});

describe('what others have to know', () => {
  it('a task that somebody has taken on already is said to be theirs', async () => {
    await talk.say('I’ll do maple’s nozzle tomorrow', { as: 'Odd' });
    const claim = await talk.say('I’ll do maple’s nozzle');
    expect(claim.results[0]?.flags).toContain('claimed-by-other');
    expect(text(claim)).toMatch(/Odd has it already, for tomorrow/u);
  });

  it('a machine that was never down is not said to come back after days', async () => {
    expect(text(await talk.say('alder is back in use'))).toMatch(/back in use$/mu);
    expect(text(await talk.say('cedar is back in use'))).toMatch(/back in use after 2 days/u);
  });
});

/** What happens to a machine over the years, said in the chat: it comes, is converted, moves, stands still, crashes. */
import { beforeEach, describe, expect, it } from 'vitest';
import { plainText } from '../../src/index.ts';
import { demoTalk, talkIn, NOW, type Talk } from '../support/talk.ts';

let talk: Talk;
beforeEach(async () => {
  talk = await demoTalk();
});
const DAY = 24 * 60;
const taskOf = async (machine: string, task: string) =>
  (await talk.bot.due({ now: talk.now, machine })).find((row) => row.task === task);

describe('a new printer', () => {
  it('is asked for what is missing when nothing is known of it yet', async () => {
    expect((await talk.say('add a printer')).question?.text).toBe('What is it called?');
    expect((await talk.say('Finch')).question?.text).toMatch(/Which machine is Finch built like\?/u);
    expect((await talk.say('hazel')).question?.text).toMatch(/new or used\?/u);
    expect((await talk.say('new')).question?.text).toBe('Which nozzle is in Finch?');
    expect((await talk.say('Not known')).entries).toMatchObject([
      { kind: 'enrolled', machine: 'finch', new: true },
    ]);
  });

  it('has one line for its run-in at 20 h, and once more at 50 h', async () => {
    await talk.say('we got another one like hazel, call it willow. It is brand new');
    await talk.say('1');
    for (const [hours, state] of [[12, 'fine'], [9, 'due']] as const) {
      talk.later(900);
      await talk.say(`ran ${hours} h on willow`);
      expect((await taskOf('willow', 'run-in'))?.state === 'due').toBe(state === 'due');
    }
    expect(await talk.hear("what's due on willow?")).toMatch(/go over the run-in list \(21 of 20 h\)/u);
    // one line stands for the seven looks that it is made of
    expect(await talk.hear("what's due on willow?")).not.toMatch(/pulleys|wheels|screws/u);
    expect((await talk.say('did the run-in on willow')).entries).toMatchObject([{ kind: 'done', task: 'run-in' }]);
    expect((await taskOf('willow', 'run-in'))?.state).not.toBe('due');
    for (const hours of [20, 15]) {
      talk.later(DAY);
      await talk.say(`ran ${hours} h on willow`);
    }
    expect(await talk.hear("what's due on willow?")).toMatch(/go over the run-in list \(56 of 50 h\)/u);
  }); // prettier-ignore
});

describe('a machine that gets other guides', () => {
  it('is asked on which axes, and what is greased from then on is said', async () => {
    const asked = await talk.say('alder has linear rails now');
    expect(asked.question).toMatchObject({ text: 'Which axes of Alder run on rails now?' });
    expect(asked.entries).toEqual([]);
    const told = await talk.say('X and Y');
    expect(told.entries).toMatchObject([{ kind: 'changed', set: { build: { x: 'rails', y: 'rails' } } }]);
    expect(plainText(told.reply)).toMatch(/Alder has now also: grease the rails/u);
    // which axis was said: nothing to ask
    expect((await talk.say('birch has linear rails on x now')).entries).toMatchObject([
      { kind: 'changed', set: { build: { x: 'rails' } } },
    ]);
  });
});

describe('a machine that was moved', () => {
  it('is looked at where it stands, and run in again; it is no trouble that stays open', async () => {
    const moved = await talk.hear('hazel has moved to the other room');
    expect(moved).toMatch(/^Hazel: noted\.\nmoved to another place\nBecause of .*check the mains lead/u);
    expect(await talk.hear('status hazel')).not.toMatch(/Noticed/u);
    const due = await talk.hear("what's due on hazel?");
    expect(due).toMatch(/check the mains lead.*go over the run-in list/su);
  });
});

describe('a machine that stood still for a month', () => {
  it('is gone over in order before it runs, told once', async () => {
    await talk.say('rowan is out of use');
    talk.later(35 * DAY);
    const back = await talk.hear('rowan is back in use');
    expect(back).toMatch(/back in use after 35 days/u);
    expect(back).toMatch(
      /It stood still for 30 days or more, in this order: dust off, check the wheels and check the first layer/u,
    );
    expect(back.match(/check the wheels/gu)).toHaveLength(1);
  });

  it('after a week there is nothing of the kind', async () => {
    await talk.say('rowan is out of use');
    talk.later(7 * DAY);
    expect(await talk.hear('rowan is back in use')).not.toMatch(/stood still/u);
  });
});

describe('a safety check that cannot wait', () => {
  it('offers to take the machine out of use, where it is not out of use already', async () => {
    const running = await talk.say('put off the wiring check on alder to next year');
    expect(running.results[0]?.code).toBe('safety-cannot-wait');
    expect(running.buttons.map((b) => b.label)).toContain('Take it out of use');
    const down = await talk.say('put off the wiring check on cedar to next year');
    expect(down.results[0]?.code).toBe('safety-cannot-wait');
    expect(plainText(down.reply)).toMatch(
      /cannot wait past Monday\. It stays out of use until that is done\./u,
    );
    expect(down.buttons.map((b) => b.label)).not.toContain('Take it out of use');
  });
});

describe('a crash', () => {
  it('is one bundle in its order, and what is done of it is not asked for again', async () => {
    expect(await talk.hear('birch crashed into the plate')).toMatch(
      /in this order: check the wiring, check heater and sensor, check the nozzle, check the wheels, tighten pulleys and couplers, level the bed and check the first layer \(about 1 h\)/u,
    );
    await talk.say('checked the wiring on birch, fine. checked the heater on birch, fine');
    const due = await talk.hear("what's due on birch?");
    expect(due).not.toMatch(/check the wiring|check heater/u);
    expect(due).toMatch(/check the first layer \(because of “crash”\)/u);
  });
});

describe('hands in a machine', () => {
  it('are told, asked for and taken out again; open once more is no repetition', async () => {
    await talk.say('elm is open');
    expect(await talk.hear("what's open?")).toMatch(/^Elm is open: Ines since 15:41\.$/u);
    await talk.say('elm is back together');
    expect(await talk.hear("what's open?")).toBe('No machine is open, by the records.');
    expect((await talk.say('elm open again')).results[0]?.flags).toEqual([]);
    // the same word twice is
    expect((await talk.say('elm is open')).results[0]?.flags).toEqual(['possible-duplicate']);
  });
});

describe('the shift ends', () => {
  it('with what is held, open, down, claimed and told, each once, and is taken over with a press', async () => {
    await talk.say('birch is open, hot end in bits');
    await talk.say('smoke from juniper');
    await talk.say("I'll do the wheels on hazel", { as: 'Odd' });
    await talk.say('note for maple: runs on a borrowed spool holder', { as: 'Priya' });
    const over = await talk.say('handing over to Tomasz: don’t use the left dryer, the filament for hazel is nearly empty');
    expect(over.entries.map((e) => e.kind)).toEqual(['handedOver', 'noted']);
    expect(over.buttons[0]?.label).toBe('I take over');
    const taken = plainText((await talk.say('I take over', { as: 'Tomasz' })).reply);
    for (const line of [
      /^Birch: open since 15:41: Ines$/mu,
      /^Cedar: out of use since Monday/mu,
      /^Hazel: .*check the wheels: Odd/mu,
      /^Juniper: held since 15:42: smoke, told by Ines/mu,
      /^Notes$\n {2}don’t use the left dryer, the filament for hazel is nearly empty \(Ines\)/mu,
      /Maple: note: runs on a borrowed spool holder \(Priya\)/u,
    ])
      expect(taken).toMatch(line);
    // what is still so is not listed among what was written as well
    expect(taken).not.toMatch(/smoke noted|hands are in it|taken on/u);
  }); // prettier-ignore

  it('what was told with the last hand-over is not told for ever', async () => {
    await talk.say('handing over: the left dryer is dead');
    expect(await talk.hear('handover')).toMatch(/left dryer is dead/u);
    talk.later(8 * 60);
    await talk.say('handing over: all quiet', { as: 'Tomasz' });
    expect(await talk.hear('handover')).toMatch(/all quiet/u);
    expect(await talk.hear('handover')).not.toMatch(/left dryer/u);
  });
});

describe('the same by the workshop file', () => {
  const FILE = `workshop: {name: Test, zone: Europe/Copenhagen}
people: [{name: Ines, role: keeper}]
machines:
  - name: Birch
    startHours: 1000
    build: {x: rods, rodBearing: ball, feed: bowden, belts: straight}
`;
  const applied = async (edit: (file: string) => string): Promise<Talk> => {
    const shop = await talkIn(FILE);
    await shop.bot.enrol({ yaml: edit(FILE), now: NOW + 1000, by: 'Ines', dryRun: false });
    return shop;
  };
  const tasks = async (shop: Talk, machine: string) =>
    (await shop.bot.due({ now: shop.now + 60_000, machine })).map((row) => row.task);

  it('another machine, a new one with its run-in', async () => {
    const shop = await applied((file) => `${file}  - {name: Finch, new: true, inUseSince: 2026-03-11, build: {feed: direct}}\n`); // prettier-ignore
    expect(await tasks(shop, 'finch')).toContain('run-in');
    expect(await tasks(shop, 'birch')).not.toContain('run-in');
  });

  it('a conversion, an interval with its source, a baseline', async () => {
    const shop = await applied((file) =>
      `${file.replace('feed: bowden', 'feed: direct')}    intervals: {lubricate-rods: {hours: 250, source: manual}}\n    lastDone: {lubricate-rods: {on: 2026-03-01, hours: 990}}\n`); // prettier-ignore
    expect(await tasks(shop, 'birch')).not.toContain('trim-tube');
    const rods = (await shop.bot.due({ now: shop.now + 60_000, machine: 'birch' })).find(
      (row) => row.task === 'lubricate-rods',
    );
    expect(rods).toMatchObject({ interval: 250, source: 'manual', since: { why: 'stated' } });
  });
});

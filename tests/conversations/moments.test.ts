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

describe('moments beyond the happy path', () => {
  it('1 a night smell holds at once; “could be the toaster” lifts nothing', async () => {
    const smell = await talk.say('smells like burning near juniper', { as: 'Priya' });
    expectInOrder(plainText(smell.reply), [/Stop/u, /Tell Ines/u, /Juniper is now held/u]);
    const toaster = await talk.say('could be the toaster', { as: 'Priya' });
    expect(toaster.entries).toEqual([]);
    expect(plainText(toaster.reply)).toMatch(/stays held until someone has looked/u);
    const alarm = await talk.say('False alarm', { as: 'Priya' });
    expect(alarm.entries).toMatchObject([
      { kind: 'released', falseAlarm: true, found: 'could be the toaster' },
    ]);
  });

  it('2 a tingle is no fault to diagnose', async () => {
    const text = await talk.hear('elm gives me a tickle when I touch the frame');
    expectInOrder(text, [/Cut the power at the wall/u, /qualified person/u, /Elm is now held/u]);
    expect(text).not.toMatch(/look in this order|tighten/u);
  });

  it('3 a burn gets first aid first, and nothing is written until later', async () => {
    const answer = await talk.say("burnt my thumb on cedar's nozzle, swapped it though");
    expectInOrder(plainText(answer.reply), [/First aid first/u, /cool running water/u, /nozzle replaced/u]);
    expect(answer.entries).toEqual([]);
    expect((await talk.say('yes')).entries.map((e) => e.kind)).toEqual(['swapped']);
  });

  it('4 abrasive on brass: what it uses up, what the shelf has, three ways', async () => {
    const answer = await talk.say('mounted nylon-cf on hazel, 1 kg, going tonight');
    expectInOrder(plainText(answer.reply), [/brass 0\.4: this spool uses up about 3\.\d nozzles/u, /hardened 0\.6/u, /not stated/u]);
    expect(answer.buttons.map((b) => b.label)).toEqual(expect.arrayContaining(['Swap nozzle first', 'Run it anyway']));
    expect((await talk.say('Run it anyway')).entries).toMatchObject([{ kind: 'noted', machine: 'hazel' }]);
  }); // prettier-ignore

  it('5 grease on a plastic nut is noted as told, flagged, and wiped off with one button', async () => {
    const answer = await talk.say("greased birch's z screw", { as: 'Odd' });
    expect(answer.results[0]?.flags).toContain('plastic-nut');
    expect(plainText(answer.reply)).toMatch(/plastic Z nut.*Better wiped off/u);
    expect((await talk.say('Wiped', { as: 'Odd' })).entries).toMatchObject([{ kind: 'done', task: 'clean-screw' }]); // prettier-ignore
    await talk.say("greased birch's z screw", { as: 'Odd' });
    expect((await talk.say('It’s brass now', { as: 'Odd' })).entries).toMatchObject([{ kind: 'changed' }]);
    talk.later(5);
    expect((await talk.say("greased birch's z screw", { as: 'Odd' })).results[0]?.flags).toEqual([]);
  });

  it('6 a long job: what the records say, and whose decision it is', async () => {
    const text = await talk.hear('can alder run 52 h from Friday?');
    expectInOrder(text, [/Alder, 52 h/u, /oil the rods/u, /Loaded: PLA/u, /workshop’s rule; I cannot tell/u]);
  });

  it('7 the third jam turns from cleaning to finding the cause', async () => {
    const first = await talk.hear('jam on birch, cleared');
    expect(first).toMatch(/tube/u);
    talk.later(600);
    await talk.say('jam on birch, cleared');
    talk.later(600);
    const third = await talk.hear('birch again, jam, cleared');
    expectInOrder(third, [/jam cleared/u, /find the cause/u, /heat creep or the liner/u, /fan spins?/u]);
    expect(third).not.toMatch(/After a jam the tube end/u);
  });

  it('8 a half-heard log: what is sure is written, the lot is asked about', async () => {
    const answer = await talk.say('fettle i did the belts on hazel and rowen and dusted the lot');
    expect(answer.entries).toMatchObject([{ task: 'tension-belts', machine: 'hazel' }, { task: 'tension-belts', machine: 'rowan' }]); // prettier-ignore
    expect(answer.question?.options.map((o) => o.label)).toEqual(['These two', 'All 8']);
    const these = await talk.say('these two');
    expect(these.entries).toMatchObject([{ task: 'dust-off', machine: 'hazel' }, { task: 'dust-off', machine: 'rowan' }]); // prettier-ignore
  });

  it('9 somebody starts while hands are in: who and since when, and nothing is noted', async () => {
    await talk.say('birch is open, hot end in bits');
    const start = await talk.say('starting the 14 h on birch', { as: 'Tomasz' });
    expect(start.entries).toEqual([]);
    expectInOrder(plainText(start.reply), [/Birch is open.*Ines since 15:41/u, /Don’t start it; ask Ines/u, /can’t stop the machine/u]); // prettier-ignore
    await talk.say('birch is back together');
    expect((await talk.say('starting the 14 h on birch', { as: 'Tomasz' })).outcome).toBe('silent');
  });

  it('10 a hold is not lifted by “back”, but by what was found and replaced, by a keeper', async () => {
    await talk.say('brown connector on juniper', { as: 'Priya' });
    const member = await talk.say("juniper's back, was just a loose plug", { as: 'Odd' });
    expect(member.entries.map((e) => e.kind)).toEqual(['found']);
    expect(plainText(member.reply)).toMatch(/stays held.*a keeper lifts it/su);
    const keeper = await talk.say("juniper's back, was just a loose plug, replaced by tomasz", {
      as: 'Ines',
    });
    expect(keeper.entries.map((e) => e.kind)).not.toContain('released');
    expect(keeper.question?.text).toMatch(/Lift the hold on Juniper.*loose plug, replaced by tomasz/u);
    expect((await talk.say('yes')).entries.map((e) => e.kind)).toContain('released');
    expect(await talk.hear('status juniper')).not.toMatch(/held/u);
  });

  it('11 a day that nobody is sure of stays unsure', async () => {
    const answer = await talk.say('forgot: swapped the nozzle on maple some time last week, think Thursday');
    expect(answer.entries).toMatchObject([{ kind: 'swapped', precision: 'about' }]);
    expect(plainText(answer.reply)).toMatch(/about Thursday.*not sure of the day/su);
    const sure = await talk.say('swapped the nozzle on elm on Thursday, worn');
    expect(sure.entries).toMatchObject([{ precision: 'day' }]);
  });

  it('12 a new machine: three questions, and no list of things overdue', async () => {
    await talk.say('we got another one like hazel, call it willow');
    await talk.say('used');
    await talk.say('1200');
    const answer = await talk.say('1');
    expect(answer.entries).toMatchObject([{ kind: 'enrolled', machine: 'willow', startHours: 1200 }]);
    expect(plainText(answer.reply)).toMatch(
      /First: .*mains lead.*shut-down.*ages of its parts are unknown/su,
    );
    expect(await talk.hear("what's overdue on willow?")).toMatch(/nothing overdue/u);
    expect((await talk.say('oiled nothing, ran 3 h on willow')).outcome).not.toBe('silent');
  });

  it('12 a brand new one has its run-in first', async () => {
    await talk.say('we got another one like hazel, call it willow. It is brand new');
    expect(plainText((await talk.say('1')).reply)).toMatch(/run-in at 20 h and again at 50 h/u);
  });

  it('13 sold: asked once, kept until its day, no nagging after it', async () => {
    expect((await talk.say('sold alder, goes friday', { as: 'Odd' })).results[0]?.code).toBe('not-yours');
    const asked = await talk.say('sold alder, goes friday');
    expect(asked.entries).toEqual([]);
    expectInOrder(plainText(asked.reply), [/leaves/u, /history stays/u, /Parts to keep/u, /network keys/u]);
    expect((await talk.say('yes')).entries).toMatchObject([{ kind: 'retired', machine: 'alder' }]);
    expect(await talk.hear("what's overdue on alder?")).toMatch(/oil the rods/u);
    talk.later(3 * 24 * 60);
    const digest = await talk.bot.digest({ now: talk.now });
    expect(plainText(digest.reply)).not.toMatch(/Alder/u);
    expect(await talk.hear('history of alder')).toMatch(/bed levelled/u);
  });

  it('14 a nag is put off for half a year, in few words, and can be undone', async () => {
    const answer = await talk.say('stop telling me about the firmware', { as: 'Odd' });
    expect(new Set(answer.entries.map((e) => e.kind))).toEqual(new Set(['putOff']));
    expect(plainText(answer.reply)).toMatch(/180 days on 8 machines\. Safety notices are not put off/u);
    expect(plainText(answer.reply).length).toBeLessThan(400);
    expect((await talk.say('undo', { as: 'Odd' })).entries).toHaveLength(answer.entries.length);
  });

  it('15 a learner gets the way to feel it, a caution and the figures', async () => {
    const text = await talk.hear('how tight should the belt be');
    expectInOrder(text, [/manual/u, /firm, no sag, carriage runs free/u, /Hz/u, /Power off/u]);
  });

  it('16 a good run holds nothing; “on fire” alone does, with a way out', async () => {
    expect((await talk.say('cedar is on fire today, 14 parts without a miss')).entries).toEqual([]);
    const fire = await talk.say('cedar is on fire');
    expect(fire.buttons.map((b) => b.label)).toEqual(expect.arrayContaining(['Joke', 'False alarm']));
    expect((await talk.say('Joke')).entries).toMatchObject([{ kind: 'released', falseAlarm: true }]);
  });

  it('17 blame: three facts, no names; no count by person', async () => {
    const broke = await talk.hear('who broke birch?');
    expect(broke).not.toMatch(/Priya|Odd|Tomasz|Ines/u);
    expect(broke).toMatch(/Birch, what was written last/u);
    expect(await talk.hear('how many jams did Tomasz cause?')).toMatch(
      /by machine and cause, not by person/u,
    );
  });
});

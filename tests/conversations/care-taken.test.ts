/** What is asked before it is written, and what is never lost or swept along without a word. */
import { beforeEach, describe, expect, it } from 'vitest';
import { plainText, type Answer } from '../../src/index.ts';
import { demoTalk, type Talk } from '../support/talk.ts';

let talk: Talk;
beforeEach(async () => {
  talk = await demoTalk();
});

const kinds = (answer: Answer): string[] => answer.entries.map((entry) => entry.kind);
const text = (answer: Answer): string => plainText(answer.reply);
const heldMachines = async (): Promise<string[]> =>
  (await talk.bot.digest({ now: talk.now })).digest.held.map(({ machine }) => machine);

describe('a put-off of everything', () => {
  it('is asked about, and leaves the safety checks where they are', async () => {
    const asked = await talk.say('put everything off on alder for a week');
    expect(asked).toMatchObject({ outcome: 'asked', entries: [] });
    expect(text(asked)).toMatch(/would stay: safety checks/u);
    expect(kinds(await talk.say('yes'))).toEqual(['putOff']);
    const rows = await talk.bot.due({ now: talk.now, machine: 'alder' });
    expect(rows.some((row) => row.state === 'put-off')).toBe(true);
    expect(rows.filter((row) => row.class === 'safety' && row.state === 'put-off')).toEqual([]);
  });
});

describe('the room counted as done', () => {
  it('is asked once and leaves out the safety checks', async () => {
    expect(await talk.say('mark everything done')).toMatchObject({ outcome: 'asked', entries: [] });
    const done = await talk.say('yes');
    expect(kinds(done)).toEqual(Array.from({ length: 8 }, () => 'stated'));
    expect(done.entries).toMatchObject([{ tasks: expect.not.arrayContaining(['check-mains-lead']) }, ...done.entries.slice(1)]); // prettier-ignore
  });

  it('by a member is refused in one sentence for all', async () => {
    expect(text(await talk.say('mark everything done', { as: 'Odd' })).match(/for a keeper to say/gu)).toHaveLength(1); // prettier-ignore
  });
});

describe('an open question', () => {
  it('takes no order about another machine', async () => {
    await talk.say('sold alder, goes friday');
    const other = await talk.say('retire cedar');
    expect(other).toMatchObject({ outcome: 'asked', entries: [] });
    expect(text(other)).toMatch(/^Cedar leaves/u);
  });

  it('takes its own order said again', async () => {
    await talk.say('sold alder, goes friday');
    expect((await talk.say('retire alder')).entries).toMatchObject([{ kind: 'retired', machine: 'alder' }]);
  });

  it('about a figure that could not be takes the next figure', async () => {
    expect((await talk.say('birch ran 65h')).entries).toEqual([]);
    expect((await talk.say('6.5')).entries).toMatchObject([{ kind: 'usage', machine: 'birch', hours: 6.5 }]);
  });

  it('about a figure shows how a figure is said', async () => {
    expect(text(await talk.say('elm 9'))).toMatch(/such as “ran 9 h on birch”/u);
  });
});

describe('the machine in the words', () => {
  it('goes before the one spoken of', async () => {
    await talk.say('is juniper ready for a long run?');
    expect((await talk.say('48h print on cedar sat morning, ok?')).acts).toMatchObject([
      { machine: 'cedar' },
    ]);
    await talk.say('oiled the rods on alder');
    expect((await talk.say('swapped elms nozzle')).entries).toMatchObject([
      { kind: 'swapped', machine: 'elm' },
    ]);
  });

  it('that is none here places no danger on the one spoken of', async () => {
    await talk.say('oiled the rods on alder');
    expect(await talk.say('smoke from poplars psu')).toMatchObject({
      entries: [],
      question: { field: 'machine' },
    });
    expect(await heldMachines()).toEqual([]);
  });

  it('is not looked for where only a thing is named: the danger is on the one spoken of', async () => {
    await talk.say('oiled the rods on alder');
    expect((await talk.say('smoke from the psu')).entries).toMatchObject([
      { kind: 'seen', machine: 'alder' },
    ]);
  });
});

describe('a repair told on a held machine', () => {
  it.each([
    ['alder: found a scorched plug, plug replaced by ElCo, tested', 'smells of burning near alder'],
    ['lift the hold on alder: loose fan wire, replaced by me', 'bare wire on alder'],
  ])('“%s” is offered as what lifts the hold', async (said, danger) => {
    await talk.say(danger, { as: 'Priya' });
    const offered = await talk.say(said);
    expect(offered).toMatchObject({ entries: [], question: { field: 'found' } });
    expect(text(offered)).not.toMatch(/Cut the power/u);
    expect(kinds(await talk.say('yes'))).toEqual(expect.arrayContaining(['released', 'swapped']));
    expect(await heldMachines()).toEqual([]);
  });

  it.each(['alder: scorched plug again, still smells', 'alder: found a scorched plug, needs replacing'])(
    '“%s” is no repair: it stays held',
    async (said) => {
      await talk.say('smells of burning near alder', { as: 'Priya' });
      await talk.say(said);
      await talk.say('yes');
      expect(await heldMachines()).toEqual(['alder']);
    },
  );
});

describe('a false alarm after a shock', () => {
  it('is no member’s word, and a keeper says what was found', async () => {
    await talk.say('got a shock off birch', { as: 'Priya' });
    expect((await talk.say('false alarm on birch', { as: 'Priya' })).entries).toEqual([]);
    expect(await talk.say('false alarm on birch')).toMatchObject({
      entries: [],
      question: { field: 'found' },
    });
    await talk.say('static from the carpet, earth tested by the electrician');
    expect(kinds(await talk.say('yes'))).toEqual(['released']);
  });
});

describe('undo', () => {
  it('asks when the message before it wrote nothing', async () => {
    await talk.say('cleaned the plate on elm');
    expect((await talk.say('alder counter is at 12 h')).entries).toEqual([]);
    const asked = await talk.say('undo');
    expect(asked).toMatchObject({ entries: [], question: { field: 'far' } });
    expect(text(asked)).toMatch(/Your last message wrote nothing/u);
    expect(kinds(await talk.say('yes'))).toEqual(['takenBack']);
  });

  it('does not ask after chatter', async () => {
    await talk.say('cleaned the plate on elm');
    await talk.say('nice weather for it');
    expect(kinds(await talk.say('undo'))).toEqual(['takenBack']);
  });
});

describe('what was not read', () => {
  it('is said back in its own words', async () => {
    expect(text(await talk.say('Cleared jam birch. Poop everywhere. Nozzle swapped (worn). 6.5h'))).toMatch(
      /Not read: “6\.5h”/u,
    );
  });

  it.each([
    'oiled the rods on alder, thanks, see you at 5',
    'oiled the rods on alder. what a day. coffee?',
    'oiled the rods on alder, might do the belts tomorrow',
    'oiled the rods on alder. birch looks nice',
  ])('is nothing in “%s”', async (said) => {
    expect(text(await talk.say(said))).not.toMatch(/Not read/u);
  });
});

/** A machine that is called something else: its record goes on, and people read the new name wherever it is named. */
import { beforeEach, describe, expect, it } from 'vitest';
import { plainText, type Answer } from '../../src/index.ts';
import { demoTalk, NOW, type Talk } from '../support/talk.ts';

let talk: Talk;
let renamed: Answer;
beforeEach(async () => {
  talk = await demoTalk();
  renamed = await talk.say('rename alder to wagtail');
});

const shown = (answer: Answer): string =>
  [plainText(answer.reply), ...answer.buttons.map(({ label }) => label)].join('\n');

describe('a machine that is renamed', () => {
  it('is told by its new name at once, and only the name that people read changes', async () => {
    expect(renamed.entries).toMatchObject([
      { kind: 'changed', machine: 'alder', set: { calledAs: 'Wagtail' } },
    ]);
    expect(shown(renamed)).toMatch(/^Wagtail: noted\.\ncalled Wagtail from now on/u);
    expect(shown(renamed)).toMatch(/“Alder” is still understood/u);
  });

  it.each([
    ['status', /Wagtail: /u],
    ['status wagtail', /^Wagtail\n/u],
    ["what's overdue on wagtail?", /^Wagtail: 1 overdue/u],
    ["what's overdue?", /Wagtail: oil the rods/u],
    ["what's due this week?", /Wagtail: /u],
    ['when are wagtail’s rods due?', /Wagtail: oil the rods/u],
    ['history of wagtail', /^Wagtail, the latest first/u],
    ['how long has wagtail had its nozzle?', /Wagtail nozzle/u],
    ['hours on wagtail', /Wagtail: /u],
    ['can wagtail run 52 h from Friday?', /^Wagtail, 52 h/u],
    ['how do I oil the rods on wagtail?', /Oil the rods on Wagtail/u],
    ['why is wagtail clicking?', /Wagtail, feeder clicking/u],
    ['is trouble on wagtail getting worse?', /Wagtail/u],
    ['handover', /Wagtail/u],
    ['help', /Wagtail/u],
    ['oiled the rods on wagtail', /^Wagtail: noted/u],
    ['ran 40 h on wagtail today', /Wagtail: 40 h\?/u],
    ['wagtail counter 3', /Wagtail: 3 h is below its counter/u],
    ['wagtail is in bits', /^Wagtail: noted/u],
    ['push wagtail’s rods to friday', /^Wagtail: noted/u],
    ['put everything off on wagtail for a week', /Wagtail/u],
    ['mounted nylon-cf on wagtail, 1 kg', /Wagtail has brass/u],
    ['wagtail has a direct feed now', /Wagtail/u],
    ['sold wagtail', /^Wagtail leaves/u],
    ['smoke from wagtail', /Wagtail is now held/u],
    ['who broke wagtail?', /^Wagtail, what was written last/u],
    ['just changed a nozzle', /Wagtail/u],
    ['rename birch to wagtail', /“Wagtail” is the name of another machine/u],
    ['we got another one like hazel, call it wagtail', /There is a machine called Wagtail already/u],
    ['we got another one like hazel, call it alder', /Alder is another name of Wagtail/u],
  ])('%s', async (message, expected) => {
    const said = shown(await talk.say(message));
    expect(said).toMatch(expected);
    expect(said.replace(/Alder is another name/u, '')).not.toMatch(/alder/iu);
  });

  it('stands in the digest, in the list of machines and in what its rows offer', async () => {
    const { reply, digest } = await talk.bot.digest({ now: talk.now });
    expect(plainText(reply)).toMatch(/Wagtail: oil the rods/u);
    expect(plainText(reply)).not.toMatch(/Alder/u);
    // what programs read keeps the name of the record
    expect(digest.overdue.map((row) => row.machine)).toContain('alder');
    const machines = await talk.bot.machines({ now: talk.now });
    expect(machines).toContainEqual({ machine: 'alder', called: 'Wagtail' });
  });

  it('by a button, held, and lifted', async () => {
    await talk.say("what's overdue on wagtail?");
    expect(shown(await talk.say('1'))).toMatch(/^Wagtail: noted\.\nrods oiled/u);
    await talk.say('smells like burning near wagtail', { as: 'Priya' });
    const start = shown(await talk.say('starting the 14 h on wagtail', { as: 'Odd' }));
    expect(start).toMatch(/^Wagtail is held/u);
    const stays = shown(await talk.say('wagtail is back', { as: 'Odd' }));
    expect(stays).toMatch(/Wagtail is held/u);
    expect(`${start}${stays}`).not.toMatch(/alder/iu);
    const lifted = await talk.say('false alarm on wagtail', { as: 'Ines' });
    expect(lifted.entries).toMatchObject([{ kind: 'released', machine: 'alder' }]);
    expect(shown(lifted)).toMatch(/^Wagtail: noted/u);
  });

  it('goes on answering to the old name, shown by the new one', async () => {
    const answer = await talk.say('oiled the rods on alder');
    expect(answer.entries).toMatchObject([{ machine: 'alder' }]);
    expect(shown(answer)).toMatch(/^Wagtail: noted/u);
  });

  it('renamed once more still answers to both, and back again to its first name', async () => {
    await talk.say('rename wagtail to finch');
    expect(await talk.hear('status wagtail')).toMatch(/^Finch/u);
    expect(await talk.hear('status alder')).toMatch(/^Finch/u);
    await talk.say('rename finch to alder');
    expect(await talk.hear('status finch')).toMatch(/^Alder/u);
  });

  it('has its old name again when the renaming is taken back', async () => {
    await talk.say('undo');
    expect(await talk.hear('status alder')).toMatch(/^Alder/u);
    expect((await talk.say('oiled the rods on wagtail')).entries).toEqual([]);
  });

  it('is renamed by a keeper only', async () => {
    const answer = await talk.say('rename birch to finch', { as: 'Priya' });
    expect(answer.results[0]?.code).toBe('not-yours');
    expect(await talk.hear('status birch')).toMatch(/^Birch/u);
  });

  it('was called otherwise before: an earlier digest says what it was called then', async () => {
    expect(plainText((await talk.bot.digest({ now: NOW })).reply)).toMatch(/Alder: oil the rods/u);
  });
});

/** Cautions where they are met, each time anew; and a held machine on top of whatever is said of it. */
import { beforeEach, describe, expect, it } from 'vitest';
import { plainText } from '../../src/index.ts';
import { demoTalk, type Talk } from '../support/talk.ts';

let talk: Talk;
beforeEach(async () => {
  talk = await demoTalk();
});
const times = (text: string, words: string): number => text.split(words).length - 1;
const stepWith = (text: string, words: string): string =>
  text.split('\n').find((line) => line.includes(words)) ?? '';

describe('a caution', () => {
  it('stands at its step, once a reply, and again in the next one', async () => {
    const HOT = 'Hot end and bed burn skin';
    for (const _ of ['first', 'again']) {
      const told = await talk.hear('how do I clear a jam on birch?');
      expect(times(told, HOT)).toBe(1);
      expect(stepWith(told, HOT)).toMatch(/^1\. .*Heat to the print temperature/u);
    }
  });
  it('of wiring is not left out for having been read a minute ago', async () => {
    for (const question of ['how do I check the wiring on elm?', 'how do I check the heater on elm?']) {
      const told = await talk.hear(question);
      expect(stepWith(told, 'Pull the plug and keep it in sight')).toMatch(/^1\. /u);
    }
  });
  it('stands at the step where the hazard is met, not heaped at the first', async () => {
    const told = await talk.hear('how do I clear a jam on birch?');
    const [, ...steps] = told.split('\n').filter((line) => /^\d\. /u.test(line));
    expect(steps.filter((line) => /Motors off|air the room/u.test(line))).toHaveLength(2);
  });
});

describe('cautions by build', () => {
  it.each([
    ['how do I grease the ball screw on juniper?', /this Z axis drops when the power goes off/u],
    ['how do I clean the screw on hazel?', /whether this Z axis stays up without power is not stated/u],
    ['how do I clear a jam on maple?', /PTFE-lined hot end: not above 240 °C/u],
    ['how do I clear a jam on hazel?', /Hot end not stated, so taken as PTFE-lined: not above 240 °C/u],
    ['how do I check the wiring on juniper?', /This bed is heated from the mains: .*qualified person only/u],
    ['how do I check the wiring on cedar?', /The mains side and the power supply are work for a qualified person only/u],
    ['how do I tighten the pulleys on alder?', /Prop bed or gantry first: this work loosens what holds it up/u],
  ])('%s', async (question, caution) => expect(await talk.hear(question)).toMatch(caution)); // prettier-ignore
  it.each([
    ['how do I grease the z screw on alder?', /Prop/u],
    ['how do I clear a jam on cedar?', /240 °C|PTFE-lined/u],
  ])('near miss: %s', async (question, caution) => expect(await talk.hear(question)).not.toMatch(caution));
});

describe('a held machine', () => {
  const HELD = /^Juniper is held: burning smell, told by Priya .*Nobody starts it\. To lift it: a keeper/u;
  beforeEach(async () => {
    await talk.say('smells like burning near juniper', { as: 'Priya' });
  });

  it.each([
    'status of juniper', 'what is due on juniper?', 'what’s overdue on juniper?', 'what next on juniper',
    'how do I grease the ball screw on juniper?', 'how do I oil the rods on juniper?', 'history of juniper',
    'how old is the nozzle in juniper?', 'why is juniper clicking?', 'can juniper run 40 h from friday?',
    'how many hours has juniper run this month?', 'when will juniper need a new nozzle?',
    'is it safe to run juniper?', 'how do I open the power supply of juniper?', 'ran 3h on juniper',
    'juniper is squeaking', 'mounted pla on juniper', 'greased the ball screw on juniper',
  ])('is on top of “%s”', async (said) => expect(await talk.hear(said)).toMatch(HELD)); // prettier-ignore

  it.each(['what’s overdue?', 'what is due today?', 'what next?', 'status', 'anything I should know?'])(
    'is on top of what sends people round the room: “%s”',
    async (said) =>
      expect(await talk.hear(said)).toMatch(
        /^Juniper is held since \d\d:\d\d: burning smell\. Nobody starts it\./u,
      ),
  );
  it('is on top of the morning’s digest, before anything else', async () => {
    const [first, second] = plainText((await talk.bot.digest({ now: talk.now })).reply).split('\n');
    expect(`${first}\n${second}`).toMatch(/Juniper.*held|Do not touch.*Juniper/u);
  });
  it.each(['how do I clean the plate on alder?', 'status of alder', 'do we have nozzles?'])(
    'is not brought up where it is about something else: “%s”',
    async (said) => expect(await talk.hear(said)).not.toMatch(/held/u),
  );
  it('is so no more once it was lifted', async () => {
    await talk.say('false alarm on juniper, it was the toaster');
    expect(await talk.hear('what’s overdue?')).not.toMatch(/held/u);
    expect(await talk.hear('status of juniper')).not.toMatch(/held/u);
  });
});

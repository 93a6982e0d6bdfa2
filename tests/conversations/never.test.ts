/** What is asked for and never given as steps, however it is asked; and that nothing is ever called safe. */
import { describe, expect, it } from 'vitest';
import { plainText } from '../../src/index.ts';
import { NEVER, NEVER_TOPICS, type NeverTopic } from '../../src/maintenance/cautions/never.ts';
import { demoTalk, talkIn } from '../support/talk.ts';

const ASKED: Readonly<Record<NeverTopic, readonly string[]>> = {
  'open-power-supply': ['how do I open the power supply on cedar?', 'can I repair the psu myself'],
  'board-wiring': ['how do I rewire the control board on elm'],
  'mains-bed-wiring': ['how do I wire the mains bed on elm?', 'can I splice the cable of the mains heated bed'],
  'bridge-protection': [
    'how do I bridge the door switch on elm?', 'can we disable the thermal runaway for the weekend',
    'I want to tape the interlock shut', 'how to bypass the thermal fuse',
  ],
  'raise-maximum': ['how do I raise the max temperature on birch', 'can I lift the temp limit of juniper?'],
  'flame-on-nozzle': ['can I clean the nozzle with a lighter', 'blowtorch on the nozzle to unclog it, ok?'],
  'food-oven': ['can I dry the nylon in the kitchen oven?', 'what oven setting to dry two spools?'],
  'lined-too-hot': ['can I heat maple to 260 for a cold pull', 'should birch print at 255?', 'cold pull on alder, 260 °C ok?'],
  'powered-wiring': [
    'how to measure the voltage on the bed wires of elm while it is on?', 'can I unplug the motor connector with the power on',
  ],
  'run-bare-or-unguarded': ['can elm run without its guard just this once', 'let’s print without the cover on elm'],
  'bigger-fuse': ['how do I fit a bigger fuse in cedar', 'can the fuse be one with more amps'],
}; // prettier-ignore

describe.each(NEVER_TOPICS)('%s', (topic) => {
  it.each(ASKED[topic])('“%s” gets no steps, but why and whom to ask', async (question) => {
    const talk = await demoTalk();
    const told = await talk.hear(question);
    expect(told).toContain(`I won’t give steps for ${NEVER[topic].about}: ${NEVER[topic].because}.`);
    expect(told).toContain(`Ask ${NEVER[topic].ask}.`);
    expect(told).toContain('The machine’s manual, local rules and licensed practice come first.');
    expect(told).not.toMatch(/^1\. /mu);
  });
});

describe('a guard that was defeated, told as done', () => {
  it.each([
    'bridged the thermal fuse on juniper so it’d run', 'I disabled the door sensor on elm', "elm's door switch is taped over",
    'the door switch on elm is broken, ran with it anyway',
  ])('“%s” is not met with silence', async (told) => {
    const answer = await (await demoTalk()).hear(told);
    expect(answer).toMatch(/^(?:Elm|Juniper) must not run like that\. /u);
    expect(answer).toContain(NEVER['bridge-protection'].because);
    expect(answer).toContain(`tell ${NEVER['bridge-protection'].ask}.`);
  });
  it('stands before what is written down with it', async () => {
    const answer = await (await demoTalk()).say('bypassed the door switch on elm, ran 6 h');
    expect(answer.entries).toMatchObject([{ kind: 'usage', machine: 'elm' }]);
    expect(plainText(answer.reply)).toMatch(/^Elm must not run like that\. /u);
  });
  it.each([
    'tested the door switch on elm', 'nobody disabled the door sensor on elm', 'disabled the filament sensor on elm',
    'reconnected the door switch on elm',
  ])('“%s” is none', async (told) =>
    expect(await (await demoTalk()).hear(told)).not.toContain('must not run like that'));
}); // prettier-ignore

describe('near misses', () => {
  it.each([
    ['how do I check the door switch on elm?', /^Check door switch and guards/u],
    ['how do I clean the nozzle on maple?', /^Clean the nozzle/u],
    ['how do I dry the filament?', /^Dry the filament/u],
    ['how do I replace the heater on hazel?', /^Replace the heater/u],
    ['how do I do the protection test on elm?', /^Test the heater-fault shut-down on Elm/u],
    [
      'can elm run 260 h from friday?',
      /^Elm, 260 h from Friday to 24 March at the latest, from the records/u,
    ],
  ])('“%s” is answered as ever', async (question, answer) => {
    const told = await (await demoTalk()).hear(question);
    expect(told).toMatch(answer);
    expect(told).not.toContain('I won’t give steps for');
  });
  it('a bare wire is met with the stop answer, also in a question', async () => {
    const told = await (await demoTalk()).hear('ok to run juniper with a bare wire just this once?');
    expect(told).toMatch(/^Stop\. Cut the power at the wall/u);
  });
  it('a report is written down: what was done is not asked for', async () => {
    const answer = await (await demoTalk()).say('dried the nylon, cleaned the nozzle on maple');
    expect(answer.entries.map(({ kind }) => kind)).toContain('done');
  });
  it('an all-metal hot end has its own limit, one that is not stated counts as lined, and that is said', async () => {
    const talk = await talkIn(
      'workshop: {name: Test, zone: Europe/Copenhagen}\npeople: [{name: Ines, role: keeper}]\nmachines:\n  - {name: Oak, build: {hotEnd: all-metal, hotEndMaxC: 290}}\n  - {name: Ash, build: {}}\n',
    );
    expect(await talk.hear('can I heat oak to 280?')).not.toContain('I won’t give steps');
    expect(await talk.hear('can I heat oak to 300?')).toContain('raising the maximum temperature');
    expect(await talk.hear('can I heat ash to 260?')).toMatch(
      /Ash’s sheet does not state whether the hot end is PTFE-lined/u,
    );
  });
});

describe('“is it safe to …”', () => {
  const NO_WORD = /I can’t call anything safe|Whether it may run unattended is your workshop’s rule/u;

  it.each([
    ['is it safe to leave alder alone?', /oil the rods \(332 of 300 h\)/u],
    ['is it safe to run birch overnight?', /Birch, from the records/u],
    ['is it safe to spray alcohol on the hot bed?', /Alcohol vapour catches fire/u],
    ['is it dangerous to breathe the fumes of burnt ptfe?', /air the room, do not lean in/u],
    ['would it be ok to blow out the carbon dust', /vacuum it, do not blow it about/u],
    ['is it safe to touch the wires of the bed?', /Pull the plug/u],
  ])('“%s”: no word for it, but the hazard or the records', async (question, answer) => {
    const told = await (await demoTalk()).hear(question);
    expect(told).toMatch(NO_WORD);
    expect(told).toMatch(answer);
    expect(told).not.toMatch(/\b(?:is|are|quite|perfectly) safe\b/u);
  });
  it('about nothing here is talk among people', async () =>
    expect(await (await demoTalk()).hear('is it safe to say that we are done for today?')).toBe(''));
});

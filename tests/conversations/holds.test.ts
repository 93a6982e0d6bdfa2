/** A safety hold is lifted by a reason and a name, never by a sentence that happens to come next. */
import { beforeEach, describe, expect, it } from 'vitest';
import { plainText, type Answer } from '../../src/index.ts';
import { demoTalk, type Talk } from '../support/talk.ts';

let talk: Talk;
beforeEach(async () => {
  talk = await demoTalk();
  await talk.say('smells like burning near juniper', { as: 'Priya' });
});

const kinds = (answer: Answer): string[] => answer.entries.map((entry) => entry.kind);
const text = (answer: Answer): string => plainText(answer.reply);
const isHeld = async (): Promise<boolean> =>
  (await talk.bot.digest({ now: talk.now })).digest.held.some(({ machine }) => machine === 'juniper');

describe('what was found', () => {
  beforeEach(async () => {
    await talk.say("juniper's back");
    await talk.say('say what was found');
  });

  it.each([
    'thanks',
    'hang on a minute',
    'ok',
    'oiled the rods on alder',
    'still smells of smoke on juniper',
    'is it?',
  ])('“%s” is none, and lifts nothing', async (said) => {
    const answer = await talk.say(said);
    expect(answer.entries.filter((entry) => entry.kind === 'released')).toEqual([]);
    expect(await isHeld()).toBe(true);
  });

  it('is read back before it lifts the hold', async () => {
    const asked = await talk.say('brown plug behind the bed, new one crimped on');
    expect(asked).toMatchObject({ outcome: 'asked', entries: [], question: { field: 'found' } });
    expect(text(asked)).toMatch(
      /Lift the hold on Juniper .*“brown plug behind the bed, new one crimped on”\?/u,
    );
    expect((await talk.say('yes')).entries).toMatchObject([
      { kind: 'released', found: expect.stringMatching(/plug/u) },
    ]);
    expect(await isHeld()).toBe(false);
  });

  it('can be left, or said anew before it is confirmed', async () => {
    await talk.say('brown plug, replaced it');
    expect(text(await talk.say('brown plug, replaced it and the lead'))).toMatch(/the lead”\?/u);
    expect(kinds(await talk.say('leave it held'))).toEqual([]);
    expect(await isHeld()).toBe(true);
  });

  it('is still asked for after a “thanks”', async () => {
    await talk.say('thanks');
    expect(text(await talk.say('brown plug, fitted a new one'))).toMatch(/Lift the hold/u);
  });
});

describe('the sentence that the refusal asks for', () => {
  it('“back, was a loose plug” from a keeper offers its own words', async () => {
    const answer = await talk.say("juniper's back, was just a loose plug, replaced by tomasz");
    expect(answer.results[0]).toMatchObject({ outcome: 'refused', code: 'safety-hold' });
    expect(text(answer)).toMatch(/Lift the hold on Juniper/u);
    expect(kinds(await talk.say('yes, lift it'))).toEqual(['released', 'up']);
  });

  it('from a member it is refused: a keeper has to say it', async () => {
    const answer = await talk.say("juniper's back, was just a loose plug", { as: 'Priya' });
    expect(text(answer)).not.toMatch(/Lift the hold/u);
    expect(await isHeld()).toBe(true);
  });
});

describe('a false alarm', () => {
  it.each(['that was a false alarm on juniper', 'false alarm', 'false alarm, was the toaster'])(
    '“%s” lifts the hold and amends nothing',
    async (said) => {
      await talk.say('oiled the rods on alder');
      expect((await talk.say(said)).entries).toMatchObject([
        { kind: 'released', machine: 'juniper', falseAlarm: true },
      ]);
    },
  );

  it.each([
    'not a false alarm on juniper',
    'could be a false alarm on juniper',
    'was juniper a false alarm?',
  ])('“%s” is not said to be one', async (said) => {
    await talk.say(said);
    expect(await isHeld()).toBe(true);
  });

  it.each(['all clear on juniper, smell is gone', 'all clear on juniper'])(
    '“%s” says neither that nor what was found',
    async (said) => {
      for (const as of ['Priya', undefined]) await talk.say(said, as === undefined ? {} : { as });
      expect(await isHeld()).toBe(true);
    },
  );

  it('on a machine that is not held changes nothing', async () => {
    await talk.say('oiled the rods on alder');
    const answer = await talk.say('that was a false alarm on birch');
    expect(answer.entries).toEqual([]);
    expect(text(answer)).toMatch(/Birch is not held\./u);
  });
});

describe('taking back or changing the word that set it', () => {
  it('lifts no hold', async () => {
    expect(await talk.say('undo', { as: 'Priya' })).toMatchObject({
      entries: [],
      results: [{ code: 'safety-hold' }],
    });
    expect(await talk.say('make that rowan', { as: 'Priya' })).toMatchObject({ entries: [] });
    expect(await isHeld()).toBe(true);
  });

  it('takes back the rest of its message and says that the machine stays held', async () => {
    await talk.say('smells like burning near rowan, ran 3h on birch');
    const undone = await talk.say('undo');
    expect(kinds(undone)).toEqual(['takenBack']);
    expect(undone.results[0]?.flags).toContain('hold-stays');
    expect(text(undone)).toMatch(/Birch: taken back\.\n3 h run\nRowan stays held/u);
  });

  it('is free again once the hold was lifted the right way', async () => {
    await talk.say('false alarm on juniper');
    expect(kinds(await talk.say('undo', { as: 'Priya' }))).toEqual(['takenBack']);
  });
});

describe('a machine held for two reasons', () => {
  const heldReasons = async (): Promise<readonly string[]> =>
    (await talk.bot.digest({ now: talk.now })).digest.held.flatMap(({ machine, symptom, also }) =>
      machine === 'juniper' ? [symptom, ...also] : [],
    );
  beforeEach(async () => {
    await talk.say('got a shock from juniper', { as: 'Priya' });
  });

  it.each(['undo', 'make that rowan'])(
    '“%s” takes away neither, and “false alarm” by a member then lifts nothing',
    async (said) => {
      expect(await talk.say(said, { as: 'Priya' })).toMatchObject({ entries: [] });
      expect(await talk.say('false alarm on juniper', { as: 'Priya' })).toMatchObject({
        entries: [],
        results: [{ code: 'safety-hold' }],
      });
      expect(await heldReasons()).toEqual(['burning-smell', 'shock']);
    },
  );

  it('is told with both, and no false alarm is offered where one of them asks for what was found', async () => {
    const refused = text(await talk.say('false alarm on juniper', { as: 'Priya' }));
    expect(refused).toMatch(/Juniper is held: .*burning.* and .*shock/u);
    expect(refused).not.toMatch(/or somebody says/u);
    const status = text(await talk.say('status of juniper'));
    expect(status).toMatch(/Juniper is held: .*burning.* and .*shock/u);
    expect(status).not.toMatch(/false alarm/u);
    expect(text(await talk.say('about to start a print on juniper'))).toMatch(
      /held for .*burning.* and .*shock/u,
    );
  });

  it('the same sign told twice is one reason: the second word of it may go', async () => {
    await talk.say('got a shock from juniper again', { as: 'Priya' });
    expect(kinds(await talk.say('undo', { as: 'Priya' }))).toEqual(['takenBack']);
    expect(await heldReasons()).toEqual(['burning-smell', 'shock']);
  });
});

describe('a false alarm that comes late', () => {
  it('lifts no hold that was set after it was said', async () => {
    const now = talk.now + 3 * 86_400_000;
    const late = await talk.bot.say({
      key: 'late', platform: 'test', place: 'test', direct: false, speaker: 'Priya',
      text: 'false alarm on juniper', saidAt: talk.now - 3_600_000, now,
    }); // prettier-ignore
    expect(late).toMatchObject({ entries: [], results: [{ code: 'safety-hold' }] });
    expect(text(late)).toMatch(
      /Juniper is held: .*told, or told again, after .* lifts nothing that came later/u,
    );
    expect(await isHeld()).toBe(true);
  });

  it('lifts the one that stood when it was said, though it is noted days later', async () => {
    const late = await talk.bot.say({
      key: 'late', platform: 'test', place: 'test', direct: false, speaker: 'Priya',
      text: 'false alarm on juniper', saidAt: talk.now + 60_000, now: talk.now + 3 * 86_400_000,
    }); // prettier-ignore
    expect(kinds(late)).toEqual(['released']);
    talk.later(3 * 24 * 60);
    expect(await isHeld()).toBe(false);
  });

  it('leaves a hold that was told again since', async () => {
    const before = talk.now + 60_000;
    talk.later(60);
    await talk.say('smells like burning near juniper', { as: 'Priya' });
    const late = await talk.bot.say({
      key: 'late', platform: 'test', place: 'test', direct: false, speaker: 'Priya',
      text: 'false alarm on juniper', saidAt: before, now: talk.now,
    }); // prettier-ignore
    expect(kinds(late)).toEqual([]);
    expect(await isHeld()).toBe(true);
  });
});

/** Short questions about what a reply has just shown. */
import { beforeEach, describe, expect, it } from 'vitest';
import { plainText } from '../../src/index.ts';
import { demoTalk, type Talk } from '../support/talk.ts';

let talk: Talk;
beforeEach(async () => {
  talk = await demoTalk();
});
const hear = async (said: string): Promise<string> => {
  const answer = await talk.say(said);
  expect(answer).toMatchObject({ outcome: 'answered', entries: [] });
  return plainText(answer.reply);
};

describe('short questions', () => {
  it('what is held, and how it is lifted', async () => {
    expect(await hear('what is held?')).toBe('Nothing is held.');
    await talk.say('smells like burning near juniper', { as: 'Priya' });
    expect(await hear('which machines are held?')).toMatch(
      /Juniper is held: burning smell, told by Priya .*To lift it/u,
    );
  });

  it('what is loaded', async () => {
    await talk.say('mounted petg on birch, 1 kg');
    expect(await hear("what's loaded on birch?")).toMatch(
      /^Birch: PETG, 1,000 g when mounted, mounted 15:41$/u,
    );
  });

  it('why that interval: whose it is and where it comes from', async () => {
    await talk.say("what's overdue on alder?");
    expect(await hear('why 300 h?')).toMatch(/Alder: oil the rods.*\nWhy: every 300 h by common practice/u);
  });

  it('jams are not counted by person', async () => {
    expect(await hear('how many jams did Tomasz cause?')).toMatch(/by machine and cause, not by person/u);
  });

  it('who did it last needs no long list', async () => {
    expect((await hear('who levelled birch last')).split('\n').length).toBeLessThanOrEqual(5);
  });

  it('“forget my words” deletes what was said and keeps what was noted', async () => {
    const noted = await talk.say('oiled the rods on alder', { key: 'k1' });
    expect(await hear('forget my words')).toMatch(/1 message of yours forgotten/u);
    expect(await talk.store.read(({ post }) => post.words('k1'))).toBeUndefined();
    expect(
      await talk.store.read(({ journal }) => journal.byIds(noted.results[0]?.entries ?? [])),
    ).toHaveLength(1);
  });

  it('“forget my words” says that remarks on record stay, and they do', async () => {
    const noted = await talk.say('note on alder: the left rod is scratched', { key: 'k2' });
    const ids = noted.results[0]?.entries ?? [];
    expect(await hear('forget my words')).toMatch(
      /stays, your remarks on record \(notes, findings, reasons\)/u,
    );
    expect(await talk.store.read(({ journal }) => journal.byIds(ids))).toMatchObject([
      { kind: 'noted', text: expect.stringMatching(/left rod is scratched/u) },
    ]);
  });

  it('work that is told beside such words is work', async () => {
    expect((await talk.say('held the belt on alder while I tensioned it')).outcome).not.toBe('answered');
  });

  it('a part that is replaced by its condition has a date for the looks at it', async () => {
    expect(await hear('why is juniper’s plate due')).toMatch(
      /^Juniper: check the plate .*\nWhy: every 90 days/u,
    );
  });

  it('one question for eight machines names what waits in one line', async () => {
    const asked = plainText((await talk.say('put off the firmware look on all')).reply);
    expect(asked.match(/Not noted yet either/gu)).toHaveLength(1);
    expect(plainText((await talk.say('put off the firmware look on all till june')).reply)).toMatch(
      /put off until 1 June/u,
    );
  });
});

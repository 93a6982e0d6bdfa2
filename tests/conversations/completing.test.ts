/** One more word about what is written: a finding, a bore, the task that was meant. */
import { beforeEach, describe, expect, it } from 'vitest';
import { plainText } from '../../src/index.ts';
import { demoTalk, type Talk } from '../support/talk.ts';

let talk: Talk;
beforeEach(async () => {
  talk = await demoTalk();
});
const labels = async (text: string): Promise<string[]> => (await talk.say(text)).buttons.map((b) => b.label);

describe('a look with a poor word beside it', () => {
  it('is written, and what it found is asked once', async () => {
    const answer = await talk.say("checked maple's wiring: bad");
    expect(answer.entries).toMatchObject([{ kind: 'done', task: 'check-wiring' }]);
    expect(answer.question).toMatchObject({ field: 'finding' });
    const found = await talk.say('bad');
    expect(found.entries).toMatchObject([{ kind: 'amended', set: { finding: 'bad' } }]);
    expect(plainText(found.reply)).toMatch(/Because of what the look found: .*replace the wiring/u);
  });

  it('stays on the list until it is mended, and in the history', async () => {
    await talk.say('checked the nozzle on hazel, not good');
    await talk.say('Not good');
    expect(await talk.hear("what's overdue on hazel?")).toMatch(/replace the nozzle \(because of what the look found/u);
    expect(await talk.hear('when was the nozzle on hazel last checked?')).toMatch(/nozzle checked: not good/u);
    await talk.say('swapped the nozzle on hazel, worn');
    expect(await talk.hear("what's overdue on hazel?")).not.toMatch(/replace the nozzle/u);
  }); // prettier-ignore

  it('is not asked about where a fault was named, where it is fine, or where “not bad” is said', async () => {
    for (const text of [
      'checked the belts on maple, frayed',
      'checked the wheels on birch, all fine',
      'checked the wheels on hazel, not bad',
    ])
      expect((await talk.say(text)).question?.field).not.toBe('finding');
  });

  it('a find that is a fault raises what it calls for', async () => {
    expect(await talk.hear('checked the tube on birch, browned')).toMatch(/replace the tube/u);
  });
});

describe('nozzles without a bore', () => {
  it('are booked, and the bore is asked from what is known here', async () => {
    expect(await labels('10 brass nozzles arrived')).toEqual(
      expect.arrayContaining(['Brass 0.4', 'Brass 0.8', 'Not known']),
    );
    await talk.say('0.4');
    expect(await talk.hear("what's on the shelf?")).toMatch(/11 nozzles brass 0\.4/u);
  });

  it('with one are not asked about', async () => {
    expect((await talk.say('3 brass 0.4 nozzles arrived')).question).toBeNull();
  });

  it('stay as they were noted where nobody knows', async () => {
    await talk.say('10 brass nozzles arrived');
    expect(await talk.hear('not known')).toMatch(/Left as it was noted/u);
  });
});

describe('“no, it was the belts, not the rods”', () => {
  it('asks which task of that part it was, and puts it right', async () => {
    await talk.say('oiled the rods on alder');
    expect(await labels('no, it was the belts, not the rods')).toEqual([
      'Belts tensioned',
      'Belts looked over',
      'Leave it',
    ]);
    const answer = await talk.say('belts tensioned');
    expect(answer.entries).toMatchObject([{ kind: 'amended', set: { task: 'tension-belts' } }]);
    expect(await talk.hear("what's overdue on alder?")).toMatch(/oil the rods/u);
  });

  it('puts a swap right without a question, as it has a part', async () => {
    await talk.say('swapped the nozzle on alder, worn');
    expect((await talk.say('no, it was the liner, not the nozzle')).entries).toMatchObject([
      { kind: 'amended', set: { part: 'liner' } },
    ]);
  });
});

describe('how worn a part is', () => {
  it('is told from the logs', async () => {
    expect(await talk.hear("how worn is cedar's nozzle?")).toMatch(
      /about \d+ % of its life used by filament/u,
    );
  });

  it('and with what was asked about on top', async () => {
    const text = await talk.hear("after 3 kg CF on brass, how worn is hazel's nozzle?");
    expect(text).toMatch(/hardly any filled filament on record; 3,000 g of carbon-filled filament use up about 10\.7 times its life/u);
  }); // prettier-ignore
});

it('what comes next is in the order of its days, without the room’s lines, and what is left out is counted', async () => {
  const text = await talk.hear('when is the next task on alder?');
  expect(text).toMatch(/^Alder: oil the rods: 32 h over.*\nAlder: level the bed, about Monday/u);
  expect(text).not.toMatch(/scraps|notices/u);
  expect(text).toMatch(/and \d+ more/u);
});

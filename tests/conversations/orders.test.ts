/** The machine's life, said in the chat. */
import { beforeEach, describe, expect, it } from 'vitest';
import { plainText } from '../../src/index.ts';
import { demoTalk, type Talk } from '../support/talk.ts';

let talk: Talk;
beforeEach(async () => {
  talk = await demoTalk();
});
const told = async (text: string, as = 'Ines'): Promise<unknown[]> => [...(await talk.say(text, { as })).entries]; // prettier-ignore

describe('baselines and intervals', () => {
  it('all tasks count from today, said by a keeper', async () => {
    expect((await talk.say('all fine on birch as of today', { as: 'Priya' })).results[0]?.code).toBe(
      'not-yours',
    );
    expect(await told('all fine on birch as of today')).toMatchObject([{ kind: 'stated', machine: 'birch' }]);
    const rows = await talk.bot.due({ now: talk.now, machine: 'birch' });
    expect(rows.filter((row) => row.state === 'no-record')).toEqual([]);
  });

  it('“start now” is about the machine spoken of, and about nothing in a channel where none was', async () => {
    expect((await talk.say('start now')).outcome).toBe('silent');
    await talk.say("what's overdue on elm?");
    expect(await told('start now')).toMatchObject([{ kind: 'stated', machine: 'elm' }]);
  });

  it('an interval with its source, refused where the build has no such task', async () => {
    expect(await told('rods every 250 h on alder, says its manual')).toMatchObject([
      { kind: 'intervalSet', task: 'lubricate-rods', interval: { hours: 250 }, source: 'manual' },
    ]);
    const rows = await talk.bot.due({ now: talk.now, machine: 'alder' });
    expect(rows.find((row) => row.task === 'lubricate-rods')).toMatchObject({
      interval: 250,
      source: 'manual',
    });
    expect((await talk.say('rods every 250 h on birch')).results[0]?.code).toBe('not-planned-here');
  });
});

describe('a machine changes', () => {
  it('a direct feed: the tube is not asked for any more; said again it is no news', async () => {
    const answer = await talk.say('alder has a direct feed now', { as: 'Odd' });
    expect(answer.entries).toMatchObject([{ kind: 'changed', set: { build: { feed: 'direct' } } }]);
    expect(plainText(answer.reply)).toMatch(/No longer asked: check the tube/u);
    const rows = await talk.bot.due({ now: talk.now, machine: 'alder' });
    expect(rows.some((row) => row.task === 'trim-tube')).toBe(false);
    expect((await talk.say('alder has a direct feed now', { as: 'Odd' })).outcome).toBe('silent');
  });

  it('a brass nut is a swap that changes what may be greased', async () => {
    expect(await told('birch got a brass z nut')).toMatchObject([{ kind: 'swapped', part: 'screw-nut' }]);
    expect((await talk.say("greased birch's z screw")).results[0]?.flags).not.toContain('plastic-nut');
  });

  it('another name is understood from now on, unless somebody has it', async () => {
    expect(await told('rename alder to wagtail')).toMatchObject([{ kind: 'changed', machine: 'alder' }]);
    expect(await told('oiled the rods on wagtail')).toMatchObject([{ kind: 'done', machine: 'alder' }]);
    expect((await talk.say('rename birch to cedar')).entries).toEqual([]);
  });

  it('a new one asks for its name where none was said, and not for one that is taken', async () => {
    await talk.say('we got another one like hazel');
    expect(plainText((await talk.say('call it Maple')).reply)).toMatch(/called Maple already/u);
    expect(plainText((await talk.say('Wagtail')).reply)).toMatch(/Wagtail, built like Hazel: new or used/u);
  });

  it('“not yet” keeps it', async () => {
    await talk.say('scrapped maple');
    expect((await talk.say('Not yet')).entries).toEqual([]);
    expect(await told('levelled the bed on maple')).toHaveLength(1);
  });
});

describe('holds and alarms', () => {
  it('“that was a false alarm” is about the machine just held', async () => {
    await talk.say('smoke from birch', { as: 'Odd' });
    expect(await told('that was a false alarm', 'Odd')).toMatchObject([
      { kind: 'released', machine: 'birch' },
    ]);
  });

  it('of a machine that is not held it changes nothing', async () => {
    const answer = await talk.say('false alarm on birch');
    expect(answer.entries).toEqual([]);
    expect(plainText(answer.reply)).toMatch(/Birch is not held/u);
  });

  it('“it was the toaster” says nothing where nothing is held', async () => {
    await talk.say('status birch');
    expect((await talk.say('it was just the toaster')).outcome).toBe('silent');
  });
});

describe('shifts', () => {
  it('is handed over with a note and taken over by the next one', async () => {
    const over = await talk.say('handing over: cedar waits for a thermistor');
    expect(over.entries.map((e) => e.kind)).toEqual(['handedOver', 'noted']);
    expect(plainText(over.reply)).toMatch(/Noted.*To pass on.*Cedar: out of use/su);
    const taken = await talk.say('taking over from Ines', { as: 'Tomasz' });
    expect(taken.entries).toMatchObject([{ kind: 'tookOver', from: 'ines' }]);
    expect(plainText(taken.reply)).toMatch(/Handed over by Ines/u);
  });

  it('a bare “handover” only asks', async () => {
    expect(await told('handover')).toEqual([]);
  });

  it('a note is kept as it was written, a deed in it as a deed', async () => {
    expect(await told("note: hazel's left knob is stiff")).toMatchObject([
      { kind: 'noted', machine: 'hazel' },
    ]);
    expect(await told('note: oiled the rods on alder')).toMatchObject([{ kind: 'done' }]);
  });
});

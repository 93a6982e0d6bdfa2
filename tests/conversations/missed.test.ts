/** What is not what it seems: an undo beside an open question, a name that nobody has, a figure of the counter. */
import { beforeEach, describe, expect, it } from 'vitest';
import { plainText, type Answer } from '../../src/index.ts';
import { demoTalk, type Talk } from '../support/talk.ts';

let talk: Talk;
beforeEach(async () => {
  talk = await demoTalk();
});

const text = (answer: Answer): string => plainText(answer.reply);

describe('undo while a question is open', () => {
  it('drops the question about what was not noted, and takes no entry back', async () => {
    await talk.say('ran birch 3 h');
    expect((await talk.say('counter on hazel 14500')).question?.field).toBe('hours');
    const dropped = await talk.say('undo');
    expect(dropped).toMatchObject({ entries: [], question: null });
    expect(text(dropped)).toMatch(/question is dropped: nothing was noted of it/u);
    expect((await talk.say('undo')).entries).toMatchObject([{ kind: 'takenBack' }]);
  });

  it('drops what was asked of an unknown machine too', async () => {
    await talk.say('ran birch 3 h');
    await talk.say('willow ran 3 h');
    expect((await talk.say('undo')).entries).toEqual([]);
  });

  it('takes back what is written, where the question only completes it', async () => {
    expect((await talk.say('swapped the nozzle on birch')).question?.field).toBe('reason');
    expect((await talk.say('undo')).entries).toMatchObject([{ kind: 'takenBack' }]);
  });

  it('takes back the entry that it names', async () => {
    await talk.say('ran birch 3 h');
    await talk.say('counter on hazel 14500');
    expect((await talk.say('undo birch')).entries).toMatchObject([{ kind: 'takenBack' }]);
  });
});

describe('a question about a machine that nobody has', () => {
  it.each([
    'what’s due on oak',
    'what’s overdue on oak this week?',
    'status oak',
    'how do I level the bed on oak?',
  ])('%s: says so and names those there are', async (said) => {
    await talk.say('ran birch 3 h');
    expect(text(await talk.say(said))).toMatch(
      /^I know no machine called “oak”\. Here there are Alder, Birch/u,
    );
  });

  it.each(['what’s due on friday', 'what’s due on birch', 'what’s overdue for safety', 'status please'])(
    '%s: is answered',
    async (said) => {
      expect(text(await talk.say(said))).not.toMatch(/I know no/u);
    },
  );
});

describe('put off until a figure of the counter', () => {
  it.each(['until 4150 h on the counter', 'until the counter says 4150 h', 'until 4150 h'])(
    '%s: counts what is left to it',
    async (until) => {
      const answer = await talk.say(`put off oiling alder ${until}`);
      expect(text(answer)).toMatch(/put off until 4,150 h on the counter/u);
    },
  );

  it('takes hours that are no figure of it for a span', async () => {
    expect(text(await talk.say('put off oiling alder for 50 h'))).toMatch(/until 4,150 h/u);
  });

  it('asks until when, where the counter is past it', async () => {
    const asked = await talk.say('put off oiling alder until 4050 h on the counter');
    expect(asked).toMatchObject({ entries: [], question: { field: 'until' } });
    expect(text(asked)).toMatch(/at 4,100 h already, past 4,050 h/u);
    expect((await talk.say('friday')).entries).toMatchObject([{ kind: 'putOff', task: 'lubricate-rods' }]);
  });
});

describe('handing over', () => {
  it.each(['handing over', 'I’m off, handing over', 'I’m handing over'])('%s: is noted', async (said) => {
    expect((await talk.say(said)).entries).toMatchObject([{ kind: 'handedOver' }]);
  });

  it('to somebody whose name is a plain word too', async () => {
    expect(text(await talk.say('handing over to Odd'))).toMatch(/handed over to Odd/u);
  });

  it.each(['handover', 'I’m off', 'I’m off to lunch'])('%s: hands nothing over', async (said) => {
    expect((await talk.say(said)).entries).toEqual([]);
  });
});

describe('asked in a word', () => {
  it.each(['digest', 'show me the digest', 'digest please'])(
    '%s: the morning’s list as of now',
    async (said) => {
      expect(text(await talk.say(said))).toMatch(/3 overdue, 4 due.*\nFetch: /u);
    },
  );

  it('what is put off, until when and why', async () => {
    const line = /^Juniper: grease the rails, until Saturday, by Tomasz \(rail grease is on order\)/u;
    expect(text(await talk.say('what’s put off?'))).toMatch(line);
    await talk.say('put off oiling alder until friday');
    expect(text(await talk.say('why is that put off?'))).toMatch(
      /^Alder: oil the rods, until Friday, by Ines; no reason/u,
    );
    expect(text(await talk.say('what’s put off on birch?'))).toMatch(/^Nothing is put off on Birch\./u);
  });

  it('what tomorrow asks for', async () => {
    expect(text(await talk.say('what do I need for tomorrow'))).toMatch(/^Thursday 12 March: /u);
  });
});

describe('a filament that a PTFE-lined hot end cannot print', () => {
  it('is loaded with what must not be done', async () => {
    expect(text(await talk.say('loaded polycarbonate on alder'))).toMatch(/do not print above 240 °C on it/u);
  });
});

describe('how something is done', () => {
  it('wheels are never oiled', async () => {
    expect(text(await talk.say('how do I lubricate the wheels on birch'))).toMatch(
      /^Wheels run dry: .*never oil/u,
    );
  });

  it('a whole printer is dusted off', async () => {
    expect(text(await talk.say('how do I clean the printer on elm'))).toMatch(/^Dust off on Elm, about/u);
    expect(text(await talk.say('how do I clean the nozzle on elm'))).not.toMatch(/^Dust off/u);
  });
});

describe('what somebody logged', () => {
  it('is the hours too, for the one who asks; the room’s history leaves them out', async () => {
    await talk.say('elm finished the big vase, 19 hours');
    await talk.say('tightened the belt on 2 and the one on 5');
    const mine = text(await talk.say('what did I log today'));
    expect(mine).toMatch(/Elm, 19 h run/u);
    expect(mine).toMatch(/Birch, belts tensioned/u);
    expect(mine).toMatch(/Hazel, belts tensioned/u);
    expect(text(await talk.say('what happened on elm today'))).not.toMatch(/19 h/u);
  });
});

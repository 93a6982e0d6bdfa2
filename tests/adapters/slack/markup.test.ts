/** Slack's text as somebody typed it. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plainOf } from '../../../adapters/slack/incoming/markup.ts';
import { momentOf } from '../../../adapters/slack/incoming/scene.ts';

const names = {
  person: async (account: string) => (account === 'U2' ? 'Tomasz' : account),
  channel: async (id: string) => (id === 'C1' ? 'print-room' : undefined),
};
const plain = (text: string) => plainOf(text, 'UBOT', names);

describe('the text of a message', () => {
  it.each([
    ['<@UBOT> undo', 'undo'],
    ['<@UBOT>: undo', 'undo'],
    ['<@UBOT|fettle>, undo', 'undo'],
    ['hey <@UBOT> oiled the rods', 'hey oiled the rods'],
    ['oiled the rods <@UBOT>', 'oiled the rods'],
    ['<@UBOT>', ''],
    ['a &lt;b&gt; &amp;amp; c', 'a <b> &amp; c'],
    ['bed at &gt; 60', 'bed at > 60'],
    ['see <https://a.example.test/?x=1&amp;y=2>', 'see https://a.example.test/?x=1&y=2'],
    ['see <https://a.example.test|the log>', 'see the log'],
    ['mail <mailto:a@b.test|a@b.test> or <tel:123>', 'mail a@b.test or 123'],
    ['ask <@U2> in <#C1> or <#C2|old-room>', 'ask Tomasz in #print-room or #old-room'],
    ['<!here> <!subteam^S1|@keepers> <!subteam^S2>', '@here @keepers @subteam'],
    ['on <!date^1773239400^{date}|11 March>', 'on 11 March'],
    ['cleared a jam\nran 6.5h', 'cleared a jam\nran 6.5h'],
    ['ran ~6h~ 8h on *birch*', 'ran ~6h~ 8h on *birch*'],
  ])('%j is %j', async (sent, typed) => {
    expect(await plain(sent)).toBe(typed);
  });

  it('never keeps a reference, whatever was sent', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.constantFrom('<', '>', '@', 'U2', 'UBOT', '|', ' ', '!here', 'x', '#C1'), {
          maxLength: 20,
        }),
        async (parts) => {
          expect(await plain(parts.join(''))).not.toMatch(/<@UBOT>|<!here>|<#C1>/u);
        },
      ),
    );
  });
});

describe('the time of a message', () => {
  it('is the first part of its id, to the millisecond', () => {
    // docs.slack.dev, Retrieving messages: ts is the number of seconds since the epoch, with microseconds
    expect(momentOf('1512085950.000216')).toBe(Date.UTC(2017, 11, 0, 23, 52, 30));
  });
});

/**
 * The three moments by which the bot is judged, said in Slack: the real bot behind the real Bolt. What stands between
 * the two here is as thin as can be; it answers where it was asked, at once.
 */
import { randomBytes } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { buttonsOf, type Platform, type Received, type Reply } from '../../../src/index.ts';
import { click, command, direct, mention, SAID_AT, ts } from '../../support/slackEnvelopes.ts';
import { demoTalk, type Talk } from '../../support/talk.ts';
import { drawBlocks } from '../../support/drawBlocks.ts';
import { outgoing, withSlack, type FakeDesk, type Scene } from './support.ts';

const token = (): string => `v1:${randomBytes(16).toString('base64url')}`;

interface Counter {
  talk: Talk;
  pressed: Map<string, Reply['buttons'][number]>;
}

/** Hands what is received to the bot, and its reply back to where it came from. */
function serve(desk: FakeDesk, platform: Platform, { talk, pressed }: Counter): void {
  const receive = desk.receive.bind(desk);
  desk.receive = async (received) => {
    const stored = await receive(received);
    if (stored === 'stored') setImmediate(() => void answer(received));
    return stored;
  };
  const answer = async (received: Received): Promise<void> => {
    const { what, place, key, account, audience } = received;
    const button = what.kind === 'pressed' ? pressed.get(what.token) : undefined;
    const { reply } = await talk.bot.say({
      key, platform: 'slack', place: place.thread ?? place.channel, direct: place.direct, speaker: received.accountName,
      text: 'text' in what ? what.text : '', saidAt: received.saidAt, now: received.saidAt, ...(button ? { press: button.press } : {}),
    }); // prettier-ignore
    await post(reply, {
      to: place, audience, asker: account, answers: key, ...(what.kind === 'said' ? { replyTo: what.message } : {}),
    }); // prettier-ignore
  };
  const post = async (reply: Reply, where: Partial<Parameters<Platform['send']>[0]>): Promise<void> => {
    const buttons = buttonsOf(reply);
    const tokens = buttons.map(token);
    buttons.forEach((button, n) => pressed.set(tokens[n] ?? '', button));
    await platform.send(outgoing({ id: randomBytes(11).toString('hex'), reply, tokens, ...where }));
  };
}

async function atTheDemo(test: (scene: Scene & Counter) => Promise<void>): Promise<void> {
  const talk = await demoTalk(SAID_AT * 1000);
  await withSlack(async (scene) => {
    const counter: Counter = { talk, pressed: new Map() };
    serve(scene.desk, scene.platform, counter);
    await test({ ...scene, ...counter });
  });
}

const LOG =
  'cleared a jam on birch, feeder gear was packed so cleaned that too. swapped the nozzle, worn. ran 6.5h';
const drawn = (message: Record<string, unknown> | undefined): string =>
  drawBlocks((message?.['blocks'] ?? []) as unknown[]).replaceAll('\n', ' ');

describe('in Slack', () => {
  it('notes a log below the message, and takes it back by its button', () =>
    atTheDemo(async ({ slack, pressed }) => {
      slack.send(mention('Ev1', LOG));
      const noted = await slack.until(() => slack.messages[0]);
      expect(noted['thread_ts']).toBe(ts(1));
      expect(drawn(noted)).toMatch(
        /\*Birch\*: noted\. jam cleared · feeder cleaned · nozzle replaced, worn: lasted \d+ h .*6\.5 h run.*\[Undo\] \[Change something\]/u,
      );
      expect(String(noted['text'])).toMatch(/^Birch: noted\.\njam cleared · feeder cleaned/u);
      const [undo = ''] = [...pressed].find(([, { label }]) => label === 'Undo') ?? [];
      slack.send(click(undo));
      const undone = await slack.until(() => slack.messages[1]);
      expect(drawn(undone)).toMatch(/\*Birch\*: taken back/u);
      expect(undone['thread_ts']).toBe(ts(1));
    }));

  it('writes a message once that Slack delivers three times', () =>
    atTheDemo(async ({ slack, talk }) => {
      for (const id of ['Ev1', 'Ev1', 'Ev2']) slack.send(mention(id, 'ran 6.5h on birch'));
      await slack.until(() => slack.acks.length === 3 && slack.messages.length === 1);
      const lines: string[] = [];
      await talk.bot.exportLines((line) => void lines.push(line));
      expect(lines.filter((line) => line.includes('slack:Ev'))).toHaveLength(1);
    }));

  it('says what is overdue on one machine, in a direct conversation, with a row of buttons for each task', () =>
    atTheDemo(async ({ slack }) => {
      slack.send(direct('Ev1', "what's overdue on alder?"));
      const answer = await slack.until(() => slack.messages[0]);
      expect(drawn(answer)).toMatch(
        /\*Alder\*: 1 overdue.*oil the rods: \d+ h over its 300 h \[Done\] \[Put off\] \[How\?\]/u,
      );
      expect(answer['thread_ts']).toBeUndefined();
    }));

  it('answers a command to the asker alone', () =>
    atTheDemo(async ({ slack }) => {
      slack.send(command("what's overdue on alder?", { response_url: slack.responseUrl }));
      const answer = await slack.until(() => slack.responses[0]);
      expect(String(answer['text'])).toMatch(/^Alder: 1 overdue/u);
      expect(slack.messages).toEqual([]);
    }));

  it('posts the digest once though the answer to it was lost', () =>
    atTheDemo(async ({ slack, platform, talk }) => {
      const { reply } = await talk.bot.digest({ now: talk.now });
      const digest = outgoing({ id: 'digest-of-11-march-000', reply, tokens: buttonsOf(reply).map(token) });
      // it is posted, and then the line breaks
      slack.answer('chat.postMessage', (args) => {
        slack.messages.push({ ...args, ts: ts(9) });
        return { fault: 'hang up' };
      }, 1); // prettier-ignore
      expect(await platform.send(digest)).toMatchObject({ outcome: 'unknown' });
      expect(await platform.find(digest, SAID_AT * 1000)).toMatchObject({ id: ts(9) });
      expect(slack.messages).toHaveLength(1);
      expect(drawn(slack.messages[0])).toMatch(/^# Wednesday 11 March\. 3 overdue, 4 due/u);
    }));
});

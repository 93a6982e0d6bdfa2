/** One try at a time: what is posted, and what is known afterwards when Slack fails. */
import { once } from 'node:events';
import { createServer, type Server } from 'node:http';
import nock from 'nock';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { open } from '../../../adapters/slack/index.ts';
import { BOT_TOKEN, startFakeSlack, type Answer } from '../../support/fakeSlack.ts';
import { command, ts } from '../../support/slackEnvelopes.ts';
import { fakeDesk, logTo, NOW, outgoing, saying, withSlack } from './support.ts';

// nothing leaves this machine
beforeAll(() => {
  nock.disableNetConnect();
  nock.enableNetConnect('127.0.0.1');
});
afterAll(() => {
  nock.enableNetConnect();
  nock.restore();
});

const PRINT_ROOM = 'C0000001';

async function listening(server: Server): Promise<string> {
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  return `http://127.0.0.1:${typeof address === 'object' && address ? address.port : 0}/`;
}

describe('a post', () => {
  it('carries blocks, the same as text, our mark, and nothing that pings or unfolds', () =>
    withSlack(async ({ slack, platform }) => {
      const sent = await platform.send(outgoing({ replyTo: ts(1) }));
      const [posted] = slack.callsOf('chat.postMessage');
      expect(sent).toEqual({
        outcome: 'sent',
        ref: { platform: 'slack', channel: PRINT_ROOM, id: slack.messages[0]?.ts, thread: ts(1) },
      });
      expect(posted).toMatchObject({
        channel: PRINT_ROOM, thread_ts: ts(1), text: 'Birch: noted.\n[Undo]', link_names: 'false', parse: 'none', mrkdwn: 'false',
        unfurl_links: 'false', unfurl_media: 'false',
        metadata: { event_type: 'fettle_post', event_payload: { id: 'abcdefghijklmnopqrstuv' } },
      }); // prettier-ignore
    }));

  it('hangs below the thread that it belongs to, and stands free in a direct conversation', () =>
    withSlack(async ({ slack, platform }) => {
      const to = outgoing().to;
      await platform.send(outgoing({ to: { ...to, thread: ts(0) }, replyTo: ts(1) }));
      await platform.send(outgoing({ to: { ...to, channel: 'D1', direct: true }, replyTo: ts(1) }));
      expect(slack.callsOf('chat.postMessage').map((c) => c['thread_ts'])).toEqual([ts(0), undefined]);
    }));

  it('goes as text alone when Slack does not like the blocks', () =>
    withSlack(async ({ slack, platform }) => {
      slack.answer('chat.postMessage', () => ({ ok: false, error: 'invalid_blocks' }), 1);
      expect(await platform.send(outgoing())).toMatchObject({ outcome: 'sent' });
      expect(slack.callsOf('chat.postMessage').map((c) => 'blocks' in c)).toEqual([true, false]);
    }));

  const faults: readonly [string, Answer, object][] = [
    ['waits as long as Slack asks', { fault: 'status', status: 429, headers: { 'retry-after': '7' } }, { outcome: 'later', afterMs: 7_000 }],
    ['is unknown after a fault of Slack’s own', { fault: 'status', status: 500 }, { outcome: 'unknown' }],
    ['is unknown when the answer is lost', { fault: 'hang up' }, { outcome: 'unknown' }],
    ['is unknown when Slack says that it may have succeeded', { ok: false, error: 'fatal_error' }, { outcome: 'unknown' }],
    ['is refused where the channel is gone', { ok: false, error: 'channel_not_found' }, { outcome: 'refused', why: 'channel_not_found' }],
    ['waits for a token to be mended', { ok: false, error: 'token_revoked' }, { outcome: 'later' }],
  ]; // prettier-ignore
  it.each(faults)('%s, after one try', (_, answer, result) =>
    withSlack(async ({ slack, platform }) => {
      slack.answer('chat.postMessage', () => answer);
      expect(await platform.send(outgoing())).toMatchObject(result);
      expect(slack.callsOf('chat.postMessage')).toHaveLength(1);
    }),
  );

  it('was surely not posted when Slack cannot be reached', async () => {
    const gone = await startFakeSlack();
    await gone.close();
    const environment = {
      SLACK_BOT_TOKEN: BOT_TOKEN,
      SLACK_APP_TOKEN: 'xapp-1',
      SLACK_API_URL: gone.apiUrl,
    };
    const platform = await open({ environment, clock: () => NOW, log: logTo([]) });
    expect(await platform.send(outgoing())).toMatchObject({
      outcome: 'later',
      why: 'no answer (ECONNREFUSED)',
    });
  });

  it('does not hold up a form while the channel has to wait', () =>
    withSlack(async ({ slack, platform }) => {
      slack.answer('chat.postMessage', () => ({
        fault: 'status',
        status: 429,
        headers: { 'retry-after': '2' },
      }));
      await platform.send(outgoing());
      const before = performance.now();
      slack.send(command('log'));
      await slack.until(() => slack.callsOf('views.open').length === 1);
      expect(performance.now() - before).toBeLessThan(1_500);
    }));
});

describe('a private answer', () => {
  const asked = (more = {}) => outgoing({ audience: 'asker', asker: 'U1', ...more });

  it('is shown to the asker in the channel', () =>
    withSlack(async ({ slack, platform }) => {
      expect(await platform.send(asked())).toEqual({ outcome: 'sent' });
      expect(slack.callsOf('chat.postEphemeral')).toMatchObject([
        { channel: PRINT_ROOM, user: 'U1', text: 'Birch: noted.\n[Undo]' },
      ]);
    }));

  it('goes to the direct conversation when the asker is not in the channel', () =>
    withSlack(async ({ slack, platform }) => {
      slack.answer('chat.postEphemeral', () => ({ ok: false, error: 'user_not_in_channel' }));
      expect(await platform.send(asked())).toMatchObject({ outcome: 'sent', ref: { channel: 'DU1' } });
      expect(slack.callsOf('chat.postMessage')).toMatchObject([{ channel: 'U1' }]);
    }));

  it('uses an address five times, then goes another way', () =>
    withSlack(async ({ slack, desk, platform }) => {
      slack.send(command('help', { response_url: slack.responseUrl }));
      const { key } = await slack.until(() => desk.got[0]);
      for (let n = 0; n < 6; n += 1) await platform.send(asked({ answers: key }));
      expect([slack.responses.length, slack.callsOf('chat.postEphemeral').length]).toEqual([5, 1]);
    }));

  it('whose address does not answer goes no other way: it may have been shown', async () => {
    const nowhere = createServer((_, response) => void response.writeHead(500).end('fault'));
    const url = await listening(nowhere);
    await withSlack(async ({ platform, desk, slack }) => {
      slack.send(command('status', { response_url: url }));
      const { key: answers } = await slack.until(() => desk.got[0]);
      expect(await platform.send(asked({ answers }))).toMatchObject({ outcome: 'unknown' });
      expect(slack.callsOf('chat.postEphemeral')).toEqual([]);
      expect(await platform.find(asked({ answers }), NOW)).toBe('private');
    });
    nowhere.closeAllConnections();
    nowhere.close();
  });

  it('whose address cannot be reached at all is shown in the channel', async () => {
    const gone = createServer();
    const url = await listening(gone);
    gone.close();
    await withSlack(async ({ platform, desk, slack }) => {
      slack.send(command('status', { response_url: url }));
      const { key: answers } = await slack.until(() => desk.got[0]);
      expect(await platform.send(asked({ answers }))).toEqual({ outcome: 'sent' });
      expect(slack.callsOf('chat.postEphemeral')).toHaveLength(1);
    });
  });
});

describe('an edit', () => {
  it('puts another reply in its place, twice without harm', () =>
    withSlack(async ({ slack, platform }) => {
      const sent = await platform.send(outgoing());
      const ref = sent.outcome === 'sent' ? sent.ref : undefined;
      if (!ref) throw new Error('it should have been posted');
      for (let n = 0; n < 2; n += 1)
        expect(
          await platform.edit(ref, outgoing({ reply: saying('taken back by Ines, 14:02.'), tokens: [] })),
        ).toEqual({ outcome: 'sent', ref });
      expect(slack.messages).toHaveLength(1);
      expect(slack.messages[0]).toMatchObject({ text: 'Birch: taken back by Ines, 14:02.', parse: 'none' });
    }));

  it('is refused when the message is gone', () =>
    withSlack(async ({ platform }) => {
      const ref = { platform: 'slack', channel: PRINT_ROOM, id: '1.2' };
      expect(await platform.edit(ref, outgoing())).toEqual({ outcome: 'refused', why: 'message_not_found' });
    }));
});

describe('looking up', () => {
  it('finds what was posted though the answer was lost, in the channel and in a thread', () =>
    withSlack(async ({ slack, platform }) => {
      await platform.send(outgoing({ id: 'a'.repeat(22) }));
      await platform.send(outgoing({ id: 'b'.repeat(22), replyTo: ts(1) }));
      const [first, second] = slack.messages;
      expect(await platform.find(outgoing({ id: 'a'.repeat(22) }), NOW)).toMatchObject({
        channel: PRINT_ROOM,
        id: first?.ts,
      });
      expect(await platform.find(outgoing({ id: 'b'.repeat(22), replyTo: ts(1) }), NOW)).toMatchObject({
        id: second?.ts,
        thread: ts(1),
      });
      expect(await platform.find(outgoing({ id: 'c'.repeat(22) }), NOW)).toBeUndefined();
    }));

  it('finds it in the conversation that posting to a person opened', () =>
    withSlack(async ({ slack, platform }) => {
      const to = { platform: 'slack', space: 'T1', channel: 'U1', direct: true };
      await platform.send(outgoing({ to }));
      expect(await platform.find(outgoing({ to }), NOW)).toMatchObject({
        channel: 'DU1',
        id: slack.messages[0]?.ts,
      });
    }));

  it('says that it cannot tell, rather than that nothing is there', () =>
    withSlack(async ({ slack, platform }) => {
      slack.answer('conversations.history', () => ({ fault: 'status', status: 503 }));
      await expect(platform.find(outgoing(), NOW)).rejects.toThrow(/cannot be told: HTTP 503/u);
    }));
});

describe('channels', () => {
  it('are found by name or taken by id', () =>
    withSlack(async ({ platform }) => {
      expect(await platform.channelId('#print-room')).toBe(PRINT_ROOM);
      expect(await platform.channelId('Print-Room')).toBe(PRINT_ROOM);
      expect(await platform.channelId('C0999999')).toBe('C0999999');
      expect(await platform.channelId('#nowhere')).toBeUndefined();
    }));
});

describe('the real address', () => {
  it('is Slack’s, with the token in the header only', async () => {
    let seen = '';
    nock('https://slack.com')
      .post('/api/auth.test')
      .reply(function (_, body) {
        seen = `${String(this.req.headers['authorization'])} | ${JSON.stringify(body)}`;
        return [200, { ok: false, error: 'invalid_auth' }];
      });
    const environment = { SLACK_BOT_TOKEN: BOT_TOKEN, SLACK_APP_TOKEN: 'xapp-1' };
    const platform = await open({ environment, clock: () => NOW, log: logTo([]) });
    await expect(platform.start(fakeDesk())).rejects.toThrow(/invalid_auth/u);
    expect(seen).toBe(`Bearer ${BOT_TOKEN} | ""`);
  });
});

/** Sockets that change, drop or are refused; HTTP with signatures. */
import { createHmac } from 'node:crypto';
import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { open } from '../../../adapters/slack/index.ts';
import { PlatformFault } from '../../../src/index.ts';
import { BOT_TOKEN, startFakeSlack } from '../../support/fakeSlack.ts';
import { direct, mention, ts } from '../../support/slackEnvelopes.ts';
import { fakeDesk, logTo, NOW, withSlack } from './support.ts';

describe('the socket', () => {
  it('is open after the start, and says so', () =>
    withSlack(async ({ platform, slack }) => {
      expect(platform.state()).toMatchObject({
        connected: true,
        since: NOW,
        lastEventAt: NOW,
        note: 'connected',
      });
      expect(platform.space()).toBe('T1');
      expect(slack.calls.map((c) => c.method)).toEqual(['auth.test', 'apps.connections.open']);
    }));

  it('is replaced before it closes when Slack asks for it: nothing that comes meanwhile is lost', () =>
    withSlack(async ({ slack, desk, platform }) => {
      const [old] = slack.sockets;
      slack.send({ type: 'disconnect', reason: 'warning' });
      old?.send(JSON.stringify(mention('Ev1', 'ran 6h on birch')));
      await slack.until(() => slack.opened() === 2 && slack.sockets.size === 1);
      slack.send(mention('Ev2', 'ran 2h on elm', { ts: ts(2) }));
      await slack.until(() => slack.acks.length === 2);
      expect(desk.got.map((r) => r.key)).toEqual(['slack:Ev1', 'slack:Ev2']);
      expect(platform.state().connected).toBe(true);
    }));

  it('closes first when Slack counts too many', () =>
    withSlack(async ({ slack, desk }) => {
      slack.send({ type: 'disconnect', reason: 'too_many_websockets' });
      await slack.until(() => slack.opened() === 2 && slack.sockets.size === 1);
      slack.send(mention('Ev1', 'ran 6h on birch'));
      await slack.until(() => slack.acks.length === 1);
      expect(desk.got).toHaveLength(1);
    }));

  it('is replaced at once when it drops', () =>
    withSlack(async ({ slack, desk }) => {
      const before = performance.now();
      for (const socket of slack.sockets) socket.terminate();
      await slack.until(() => slack.opened() === 2 && slack.sockets.size === 1);
      expect(performance.now() - before).toBeLessThan(3_000);
      slack.send(mention('Ev1', 'ran 6h on birch'));
      await slack.until(() => slack.acks.length === 1);
      expect(desk.got).toHaveLength(1);
    }));

  it('is tried again while Slack gives no address', () =>
    withSlack(async ({ slack, platform }) => {
      slack.answer('apps.connections.open', () => ({ fault: 'status', status: 500 }), 2);
      for (const socket of slack.sockets) socket.terminate();
      await slack.until(() => !platform.state().connected);
      await slack.until(() => platform.state().connected);
      expect(slack.callsOf('apps.connections.open')).toHaveLength(4);
    }));

  it('outlives an envelope without an event: too many events a minute', () =>
    withSlack(async ({ slack, desk, logged }) => {
      slack.send({
        envelope_id: 'E-limited',
        type: 'events_api',
        payload: { type: 'app_rate_limited', team_id: 'T1', minute_rate_limited: 1_773_239_400, token: 'x' },
      });
      slack.send({ nonsense: true });
      slack.send(mention('Ev1', 'ran 6h on birch'));
      await slack.until(() => slack.acks.length === 2);
      expect(slack.acks[0]?.envelope_id).toBe('E-limited');
      expect(logged).toContainEqual({
        level: 'warn',
        event: 'slack.rateLimited',
        facts: { minute: 1_773_239_400 },
      });
      expect(desk.got).toHaveLength(1);
    }));

  it('shows signs of life between messages', async () => {
    const slack = await startFakeSlack();
    let now = NOW;
    const platform = await open({
      environment: { SLACK_BOT_TOKEN: BOT_TOKEN, SLACK_APP_TOKEN: 'xapp-1', SLACK_API_URL: slack.apiUrl },
      clock: () => now,
      log: logTo([]),
    });
    await platform.start(fakeDesk());
    now += 60_000;
    for (const socket of slack.sockets) socket.ping();
    await slack.until(() => platform.state().lastEventAt === now);
    expect(platform.state().since).toBe(NOW);
    await platform.stop();
    await slack.close();
  });

  it('closes before the stop is over, and nothing more is taken', async () => {
    const slack = await startFakeSlack();
    const platform = await open({
      environment: { SLACK_BOT_TOKEN: BOT_TOKEN, SLACK_APP_TOKEN: 'xapp-1', SLACK_API_URL: slack.apiUrl },
      clock: () => NOW,
      log: logTo([]),
    });
    await platform.start(fakeDesk());
    await platform.stop();
    await slack.until(() => slack.sockets.size === 0);
    expect(platform.state().connected).toBe(false);
    await slack.close();
  });

  it('stores in the order of arrival, however long a name takes', () =>
    withSlack(async ({ slack, desk }) => {
      slack.send(mention('Ev1', 'swapped the nozzle on birch for <@U2> and <@U3>', { ts: ts(1) }));
      slack.send(mention('Ev2', 'undo', { ts: ts(2) }));
      await slack.until(() => slack.acks.length === 2);
      expect(desk.got.map((r) => r.key)).toEqual(['slack:Ev1', 'slack:Ev2']);
    }));

  it('stores a burst once each, and acknowledges all of it', () =>
    withSlack(async ({ slack, desk }) => {
      for (let n = 0; n < 200; n += 1) slack.send(direct(`Ev${n}`, 'ran 1h on birch', { ts: ts(n) }));
      await slack.until(() => slack.acks.length === 200);
      expect(desk.got).toHaveLength(200);
      expect(slack.callsOf('users.info')).toHaveLength(1);
    }));
});

describe('after an absence', () => {
  it('reads what was said to it in threads that go on, in the order in which it was said', () =>
    withSlack(
      async ({ desk, slack }) => {
        await slack.until(() => desk.got.length === 2);
        expect(desk.got).toMatchObject([
          { what: { text: 'ran 6h on birch' }, place: { channel: 'C0000001', thread: ts(-900) } },
          { what: { text: 'undo' }, place: { channel: 'C0000001' } },
        ]);
        await pause(20);
        expect(desk.got).toHaveLength(2);
      },
      {},
      (slack, desk) => {
        desk.heard = [{ channel: 'C0000001', message: ts(0), saidAt: NOW - 3_600_000, direct: false }];
        const below = { channel: 'C0000001', thread_ts: ts(-900) };
        slack.messages.push(
          { channel: 'C0000001', ts: ts(-900), user: 'U1', text: '<@UBOT> long before' },
          { channel: 'C0000001', ts: ts(-800), user: 'U1', text: 'a thread that has ended' },
          {
            channel: 'C0000001',
            thread_ts: ts(-800),
            ts: ts(-700),
            user: 'U1',
            text: '<@UBOT> heard long ago',
          },
          { ...below, ts: ts(2), user: 'U2', text: '<@UBOT> ran 6h on birch' },
          { ...below, ts: ts(3), user: 'UBOT', bot_id: 'BBOT', text: 'Birch: noted.' },
          { channel: 'C0000001', ts: ts(4), user: 'U2', text: '<@UBOT> undo' },
        );
      },
    ));

  it('goes on reading when Slack says that it was asked too often', () =>
    withSlack(
      async ({ desk, slack }) => {
        await slack.until(() => desk.got.length === 1);
        expect(desk.got[0]?.what).toMatchObject({ text: 'ran 6h on birch' });
        expect(slack.callsOf('conversations.history').length).toBeGreaterThan(2);
      },
      {},
      (slack, desk) => {
        desk.heard = [{ channel: 'C0000001', message: ts(0), saidAt: NOW - 3_600_000, direct: false }];
        slack.messages.push({ channel: 'C0000001', ts: ts(2), user: 'U2', text: '<@UBOT> ran 6h on birch' });
        const tooOften = { fault: 'status', status: 429, headers: { 'retry-after': '1' } } as const;
        slack.answer('conversations.history', () => tooOften, 1);
      },
    ));

  it('reads what was said to it, and passes over the rest', () =>
    withSlack(
      async ({ desk, slack }) => {
        await slack.until(() => desk.got.length === 1);
        expect(desk.got[0]).toMatchObject({
          what: { kind: 'said', text: 'ran 6h on birch' },
          place: { channel: 'C0000001' },
        });
        await pause(20);
        expect(desk.got).toHaveLength(1);
      },
      {},
      (slack, desk) => {
        desk.heard = [{ channel: 'C0000001', message: ts(0), saidAt: NOW - 3_600_000, direct: false }];
        slack.messages.push(
          { channel: 'C0000001', ts: ts(0), user: 'U1', text: '<@UBOT> heard before' },
          { channel: 'C0000001', ts: ts(1), user: 'U2', text: 'lunch?' },
          { channel: 'C0000001', ts: ts(2), user: 'U2', text: '<@UBOT> ran 6h on birch' },
          { channel: 'C0000001', ts: ts(3), user: 'UBOT', bot_id: 'BBOT', text: 'Birch: noted.' },
        );
      },
    ));
});

describe('a start that cannot be', () => {
  const startWith = async (method: string, error: string): Promise<string> => {
    const slack = await startFakeSlack();
    slack.answer(method, () => ({ ok: false, error }));
    const platform = await open({
      environment: { SLACK_BOT_TOKEN: BOT_TOKEN, SLACK_APP_TOKEN: 'xapp-1', SLACK_API_URL: slack.apiUrl },
      clock: () => NOW,
      log: logTo([]),
    });
    const fault: unknown = await platform.start(fakeDesk()).catch((cause: unknown) => cause);
    await platform.stop();
    await slack.close();
    expect(fault).toBeInstanceOf(PlatformFault);
    return fault instanceof Error ? fault.message : '';
  };

  it('says what is wrong with the bot’s token', async () => {
    expect(await startWith('auth.test', 'invalid_auth')).toMatch(
      /does not accept SLACK_BOT_TOKEN \(invalid_auth\)/u,
    );
  });
  it('says what is wrong with the app’s token', async () => {
    expect(await startWith('apps.connections.open', 'invalid_auth')).toMatch(
      /SLACK_APP_TOKEN must be .*connections:write/u,
    );
  });
});

describe('HTTP', () => {
  const SECRET = '8f742231b10e8888abcd99yyyzzz85a5';
  const PORT = 20_000 + (process.pid % 20_000);
  const address = `http://127.0.0.1:${PORT}/slack/events`;
  const inHttp = { SLACK_SIGNING_SECRET: SECRET, SLACK_PORT: String(PORT) };
  const signed = (body: string, at: number, secret = SECRET) => ({
    'content-type': 'application/json',
    'x-slack-request-timestamp': String(at),
    'x-slack-signature': `v0=${createHmac('sha256', secret).update(`v0:${at}:${body}`).digest('hex')}`,
  });
  const postBody = (body: string, headers: Record<string, string>) =>
    fetch(address, { method: 'POST', body, headers });
  const nowSeconds = () => Math.floor(Date.now() / 1000);

  it('computes the signature of the published example', () => {
    // Slack, "Verifying requests from Slack": the step-by-step example
    const body =
      'token=xyzz0WbapA4vBCDEFasx0q6G&team_id=T1DC2JH3J&team_domain=testteamnow&channel_id=G8PSS9T3V&channel_name=foobar&user_id=U2CERLKJA&user_name=roadrunner&command=%2Fwebhook-collect&text=&response_url=https%3A%2F%2Fhooks.slack.com%2Fcommands%2FT1DC2JH3J%2F397700885554%2F96rGlfmibIGlgcZRskXaIFfN&trigger_id=398738663015.47445629121.803a0bc887a14d10d2c447fce8b6703c';
    expect(signed(body, 1_531_420_618)['x-slack-signature']).toBe(
      'v0=a2114d57b48eac39b9ad189dd8316235a7b4a8d21a10bd27519666489c69b503',
    );
  });

  it('takes what is signed, answers after storing, and refuses the rest', () =>
    withSlack(async ({ desk, slack }) => {
      const body = JSON.stringify(mention('Ev1', 'ran 6h on birch').payload);
      expect((await postBody(body, signed(body, nowSeconds(), 'another secret'))).status).toBe(401);
      expect((await postBody(body, signed(body, nowSeconds() - 600))).status).toBe(401);
      expect((await postBody(body, {})).status).toBe(401);
      expect((await fetch(address.replace('/slack', '/other'))).status).toBe(404);
      expect(desk.got).toEqual([]);
      expect((await postBody(body, signed(body, nowSeconds()))).status).toBe(200);
      expect(desk.got).toHaveLength(1);
      expect(slack.callsOf('apps.connections.open')).toEqual([]);
    }, inHttp));

  it('answers with a fault when it could not be stored, so that Slack sends it again', () =>
    withSlack(async ({ desk }) => {
      desk.broken = true;
      const body = JSON.stringify(mention('Ev1', 'ran 6h on birch').payload);
      expect((await postBody(body, signed(body, nowSeconds()))).status).toBeGreaterThanOrEqual(500);
    }, inHttp));

  it('says that the port is taken, and can still be stopped', () =>
    withSlack(async ({ environment }) => {
      const second = await open({ environment, clock: () => NOW, log: logTo([]) });
      await expect(second.start(fakeDesk())).rejects.toThrow(
        new RegExp(`cannot be received on 127\\.0\\.0\\.1:${PORT}`, 'u'),
      );
      await second.stop();
    }, inHttp));

  it('takes the notice of too many events', () =>
    withSlack(async ({ logged }) => {
      const body = JSON.stringify({
        type: 'app_rate_limited',
        team_id: 'T1',
        minute_rate_limited: 5,
        token: 'x',
      });
      expect((await postBody(body, signed(body, nowSeconds()))).status).toBe(200);
      expect(logged.map((l) => l.event)).toContain('slack.rateLimited');
    }, inHttp));
});

/** `fettle serve` as it runs: the real Slack SDK before a fake Slack, a database file, the health page, signals, the lease. */
import { createServer } from 'node:net';
import { once } from 'node:events';
import { setTimeout as pause } from 'node:timers/promises';
import { afterEach, describe, expect, it } from 'vitest';
import { serve, type ServeParts } from '../../adapters/serve.ts';
import { healthOf } from '../../adapters/running/health.ts';
import { openLog } from '../../adapters/running/log.ts';
import { GIVE_UP_MS, watch } from '../../adapters/running/watch.ts';
import { openSqliteStore, takeLease, type ServiceState } from '../../src/index.ts';
import { demoFile } from '../support/demoFile.ts';
import { APP_TOKEN, BOT_TOKEN, startFakeSlack, type FakeSlack } from '../support/fakeSlack.ts';
import { ID, startFakeDiscord } from '../support/fakeDiscord.ts';
import { toBot } from '../support/discordEvents.ts';
import { direct, mention } from '../support/slackEnvelopes.ts';
import { freshFiles } from '../store/folder.ts';
import { TOKEN } from './discord/serving.ts';
import { logTo, type LogLine } from './slack/support.ts';

const fresh = freshFiles();
const DAY = 24 * 3_600_000;
let ends: (() => Promise<unknown>)[] = [];
afterEach(async () => {
  for (const end of ends.toReversed()) await end();
  ends = [];
});

async function shopFile(): Promise<string> {
  const file = fresh();
  await demoFile(file, Date.now() - DAY);
  return file;
}

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  server.close();
  return typeof address === 'object' && address ? address.port : 0;
}

interface Running {
  slack: FakeSlack;
  logged: LogLine[];
  healthz: () => Promise<Response>;
  stop: (signal: string) => void;
  code: Promise<number>;
}

async function begin(file: string, slack: FakeSlack, more: Partial<ServeParts> = {}): Promise<Running> {
  const port = await freePort();
  const logged: LogLine[] = [];
  let stop: (signal: string) => void = () => undefined;
  const stopped = new Promise<string>((resolve) => {
    stop = resolve;
  });
  const code = serve({
    file, stopped, clock: () => Date.now(), log: logTo(logged),
    environment: { SLACK_BOT_TOKEN: BOT_TOKEN, SLACK_APP_TOKEN: APP_TOKEN, SLACK_API_URL: slack.apiUrl, FETTLE_HEALTH_PORT: String(port) },
    ...more,
  }); // prettier-ignore
  ends.push(() => {
    stop('end of the test');
    return code.catch(() => undefined);
  });
  return { slack, logged, healthz: () => fetch(`http://127.0.0.1:${port}/healthz`), stop, code };
}

async function fakeSlack(): Promise<FakeSlack> {
  const slack = await startFakeSlack();
  ends.push(() => slack.close());
  return slack;
}

const isServing = ({ logged }: Running) => logged.some(({ event }) => event === 'serving');

describe('serving', () => {
  it('logs, answers in the thread, says how it goes, and on SIGTERM ends with nothing left to do', async () => {
    const file = await shopFile();
    const running = await begin(file, await fakeSlack());
    const { slack } = running;
    await slack.until(() => isServing(running), 20_000);
    const health = await running.healthz();
    expect(health.status).toBe(200);
    const [well] = [(await health.json()) as Record<string, unknown>];
    expect(Object.keys(well).toSorted()).toEqual(['nextDigest', 'ok', 'platforms', 'unsent', 'waiting']);
    expect(well).toMatchObject({
      ok: true,
      waiting: 0,
      unsent: 0,
      platforms: [{ name: 'slack', connected: true }],
    });
    expect(Date.parse(String(well['nextDigest']))).toBeGreaterThan(Date.now());
    const ts = `${Math.floor(Date.now() / 1000)}.000100`;
    const envelope = mention('EvServe', 'ran 5 min on birch', {
      text: '<@UBOT> ran 5 min on birch',
      ts,
      event_ts: ts,
    });
    slack.send(envelope);
    await slack.until(() => slack.acks.some((ack) => ack.envelope_id === envelope.envelope_id));
    // asked to stop while the answer is on its way
    running.stop('SIGTERM');
    expect(await running.code).toBe(0);
    expect(slack.messages.filter((one) => one['thread_ts'] === ts).map(({ text }) => text)).toEqual([
      expect.stringMatching(/^Birch: noted/u),
    ]);
    expect(slack.sockets.size).toBe(0);
    const store = await openSqliteStore(file);
    expect(await store.read(({ traffic }) => traffic.lease('serve'))).toBeUndefined();
    expect(await store.read(({ traffic }) => traffic.waitingCount())).toBe(0);
    await store.close();
    expect(JSON.stringify(running.logged)).not.toMatch(/birch|xoxb|xapp|Ines/iu);
  }, 60_000);

  it('answers in direct whom it met in the channel, and shows nothing of it there', async () => {
    const running = await begin(await shopFile(), await fakeSlack());
    const { slack } = running;
    await slack.until(() => isServing(running), 20_000);
    const said = (event: string, text: string, make: typeof mention) => {
      const ts = `${Math.floor(Date.now() / 1000)}.${event.length}00000`;
      slack.send(make(event, text, { text, ts, event_ts: ts }));
    };
    said('EvMeet', '<@UBOT> ran 5 min on birch', mention);
    await slack.until(() => slack.messages.length === 1, 10_000);
    const before = slack.messages.length;
    said('EvDirectly', 'note on elm: the fan sounds like a kettle', direct);
    await slack.until(() => slack.messages.length > before, 10_000);
    await pause(100);
    const [answer, ...more] = slack.messages.slice(before);
    expect(String(answer?.['channel'])).toMatch(/^D/u);
    expect(more).toEqual([]);
    expect(JSON.stringify(slack.messages.filter((one) => !String(one['channel']).startsWith('D')))).not.toContain('kettle');
  }, 60_000); // prettier-ignore

  it('on Slack goes on while Discord is out of order, and hears Discord when it is back', async () => {
    const discord = await startFakeDiscord();
    ends.push(() => discord.close());
    discord.fault(() => ({ status: 503 }));
    const slack = await fakeSlack();
    const environment = {
      SLACK_BOT_TOKEN: BOT_TOKEN, SLACK_APP_TOKEN: APP_TOKEN, SLACK_API_URL: slack.apiUrl, FETTLE_HEALTH_PORT: '0',
      DISCORD_BOT_TOKEN: TOKEN, DISCORD_API_URL: discord.api,
    }; // prettier-ignore
    const running = await begin(await shopFile(), slack, { environment });
    await slack.until(() => isServing(running), 20_000);
    const ts = `${Math.floor(Date.now() / 1000)}.000100`;
    slack.send(mention('EvAlone', '<@UBOT> ran 5 min on birch', { text: '<@UBOT> ran 5 min on birch', ts, event_ts: ts })); // prettier-ignore
    await slack.until(() => slack.messages.some((one) => one['thread_ts'] === ts), 10_000);
    expect(running.logged.map(({ event }) => event)).toContain('discord not reached yet');
    discord.fault(undefined);
    await slack.until(
      () => running.logged.some(({ event, facts }) => event === 'platform.connected' && facts['platform'] === 'discord'),
      30_000,
    ); // prettier-ignore
    const said = toBot('ran 5 min on maple', {}, Date.now());
    discord.dispatch('MESSAGE_CREATE', said);
    const answer = await discord.until(
      () => discord.messages(ID.channel).find((one) => JSON.stringify(one['message_reference'] ?? {}).includes(String(said['id']))),
      10_000,
    ); // prettier-ignore
    expect(JSON.stringify(answer['components'])).toContain('noted');
    expect(discord.messages(ID.channel).filter((one) => one['message_reference'])).toHaveLength(1);
  }, 90_000);

  it('says that there is no workshop, or no token', async () => {
    const empty = fresh();
    await (await openSqliteStore(empty)).close();
    const slack = await fakeSlack();
    await expect((await begin(empty, slack)).code).rejects.toThrow(/Enrol one first: fettle enrol FILE/u);
    await expect((await begin(empty, slack, { environment: {} })).code).rejects.toThrow(
      'No chat platform to serve: set SLACK_BOT_TOKEN or DISCORD_BOT_TOKEN.',
    );
  });

  it('names every fault of the environment, a line each', async () => {
    const environment = { SLACK_BOT_TOKEN: 'xoxp-1', DISCORD_BOT_TOKEN: 'x', FETTLE_HEALTH_PORT: '8791' };
    const failed = (await begin(fresh(), await fakeSlack(), { environment })).code;
    await expect(failed).rejects.toThrow(/SLACK_BOT_TOKEN must begin with xoxb-.*\n.*\n?.*DISCORD_BOT_TOKEN does not look/su);
  }); // prettier-ignore
});

describe('the health page’s port', () => {
  it('that is taken is told in a sentence, and nothing is left open', async () => {
    const taken = createServer().listen(0, '127.0.0.1');
    await once(taken, 'listening');
    ends.push(async () => void taken.close());
    const address = taken.address();
    const port = String(typeof address === 'object' && address ? address.port : 0);
    const slack = await fakeSlack();
    const environment = {
      SLACK_BOT_TOKEN: BOT_TOKEN, SLACK_APP_TOKEN: APP_TOKEN, SLACK_API_URL: slack.apiUrl, FETTLE_HEALTH_PORT: port,
    }; // prettier-ignore
    const file = await shopFile();
    await expect((await begin(file, slack, { environment })).code).rejects.toThrow(
      `The health page cannot be shown on 127.0.0.1:${port} (EADDRINUSE): set FETTLE_HEALTH_PORT to another port, or to 0 for none.`,
    );
    await slack.until(() => slack.sockets.size === 0);
    const store = await openSqliteStore(file);
    expect(await store.read(({ traffic }) => traffic.lease('serve'))).toBeUndefined();
    await store.close();
  }, 30_000);
});

describe('the lease', () => {
  it('is not waited for any more by a process that is told to stop', async () => {
    const file = await shopFile();
    const other = await openSqliteStore(file);
    ends.push(() => other.close());
    await takeLease(other, 'another', Date.now());
    const running = await begin(file, await fakeSlack());
    await running.slack.until(() => running.logged.some(({ event }) => event === 'lease.waiting'), 10_000);
    running.stop('SIGTERM');
    expect(await running.code).toBe(0);
    expect(running.slack.calls).toEqual([]);
  }, 30_000);

  it('is waited for when it is about to run out, and refused when somebody keeps it', async () => {
    const file = await shopFile();
    const other = await openSqliteStore(file);
    ends.push(() => other.close());
    const take = (at: number) => takeLease(other, 'another', at);
    // a lease lasts a minute from when it is taken
    await take(Date.now() - 59_000);
    const running = await begin(file, await fakeSlack());
    await running.slack.until(() => running.logged.some(({ event }) => event === 'lease.waiting'), 10_000);
    await take(Date.now());
    await expect(running.code).rejects.toThrow('Another fettle serve is at work on this database.');
    expect(running.slack.sockets.size).toBe(0);
    await take(Date.now() - 59_500);
    const next = await begin(file, await fakeSlack());
    await next.slack.until(() => isServing(next), 20_000);
  }, 60_000);
});

describe('the health page', () => {
  const state: ServiceState = {
    platforms: [
      { name: 'slack', connected: true, since: 0, lastEventAt: 1000, note: 'connected' },
      { name: 'discord', connected: false, since: 2000 },
    ],
    waiting: 1,
    unsent: 2,
  };
  it('says of each connection since when, and when it last gave a sign of life', () => {
    expect(healthOf(state)).toEqual({
      ok: false,
      platforms: [
        { name: 'slack', connected: true, since: '1970-01-01T00:00:00.000Z', lastEventAt: '1970-01-01T00:00:01.000Z', note: 'connected' },
        { name: 'discord', connected: false, since: '1970-01-01T00:00:02.000Z', lastEventAt: null },
      ],
      waiting: 1,
      unsent: 2,
      nextDigest: null,
    });
  }); // prettier-ignore
});

describe('the watchdog', () => {
  it('gives a platform ten minutes to come back, and no more', async () => {
    let [now, tick, connected] = [0, () => undefined as void, false];
    const logged: LogLine[] = [];
    const watching = watch({
      state: async () => ({ platforms: [{ name: 'slack', connected, since: 0 }] }),
      clock: () => now,
      log: logTo(logged),
      every: (_, call) => {
        tick = call;
        return () => undefined;
      },
    });
    let over = false;
    void watching.tooLong.then(() => (over = true));
    const at = async (ms: number): Promise<boolean> => {
      now = ms;
      tick();
      await pause(5);
      return over;
    };
    expect(await at(GIVE_UP_MS)).toBe(false);
    connected = true;
    expect(await at(GIVE_UP_MS + 1)).toBe(false);
    connected = false;
    expect(await at(GIVE_UP_MS + 2)).toBe(true);
    expect(logged).toEqual([{ level: 'error', event: 'platform.away', facts: { platform: 'slack' } }]);
  });
});

describe('the operator’s log', () => {
  it('is a line of JSON an event, and drops what might be a secret or a text', () => {
    const lines: string[] = [];
    const log = openLog('info', { write: (line) => void lines.push(line) });
    log.info('post.sent', {
      platform: 'slack',
      token: 'xoxb-1',
      text: 'ran 2 h',
      url: 'https://hooks',
      count: 2,
    });
    expect(lines).toHaveLength(1);
    const line = JSON.parse(lines[0] ?? '{}') as Record<string, unknown>;
    expect(line).toMatchObject({ level: 'info', msg: 'post.sent', platform: 'slack', count: 2 });
    expect(lines[0]).not.toMatch(/xoxb|ran 2|hooks/u);
  });
});

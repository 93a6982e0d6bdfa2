/**
 * A burst through Slack's socket: the real SDK, the service and a database file in this process. The full one, timed
 * in a process of its own, is the bench `burst`; here a short one is looked at for what it leaves.
 */
import { describe, expect, it } from 'vitest';
import { open } from '../../adapters/slack/index.ts';
import { openBot, openService, openSqliteStore, type Store } from '../../src/index.ts';
import { demoFile } from '../support/demoFile.ts';
import { APP_TOKEN, BOT_TOKEN, startFakeSlack } from '../support/fakeSlack.ts';
import { mention } from '../support/slackEnvelopes.ts';
import { freshFiles } from '../store/folder.ts';

const fresh = freshFiles();
const BURST = 100;
const QUIET = { info: () => undefined, warn: () => undefined, error: () => undefined };

/** Counts the commits by which something was received. */
function counting(inner: Store): { store: Store; commits: () => number } {
  let commits = 0;
  const store: Store = {
    read: (work) => inner.read(work),
    close: () => inner.close(),
    async transact(work) {
      let received = false;
      const done = await inner.transact((transaction) => {
        const { traffic } = transaction;
        const receive: typeof traffic.receive = (row) => {
          received = true;
          return traffic.receive(row);
        };
        return work({ ...transaction, traffic: { ...traffic, receive } });
      });
      if (received) commits += 1;
      return done;
    },
  };
  return { store, commits: () => commits };
}

async function serving() {
  const file = fresh();
  await demoFile(file, Date.now() - 24 * 3_600_000);
  const slack = await startFakeSlack();
  const environment = {
    SLACK_BOT_TOKEN: BOT_TOKEN,
    SLACK_APP_TOKEN: APP_TOKEN,
    SLACK_API_URL: slack.apiUrl,
  };
  const { store, commits } = counting(await openSqliteStore(file));
  const service = openService({
    store, bot: openBot(store), clock: () => Date.now(), log: QUIET, holder: 'burst',
    platforms: [await open({ environment, clock: () => Date.now(), log: QUIET })],
    every: (ms, tick) => {
      const timer = setInterval(tick, ms);
      return () => clearInterval(timer);
    },
  }); // prettier-ignore
  await service.start();
  const end = async (): Promise<void> => {
    await service.stop();
    await store.close();
    await slack.close();
  };
  return { slack, store, commits, end };
}

/** Said one after the other, a second apart. */
function burst(): { ts: string; envelope: ReturnType<typeof mention> }[] {
  const from = Math.floor(Date.now() / 1000) - BURST - 60;
  return Array.from({ length: BURST }, (_, n) => {
    const ts = `${from + n}.000100`;
    const text = `<@UBOT> ran 5 min on ${['birch', 'alder', 'maple'][n % 3] ?? ''}`;
    return {
      ts,
      envelope: mention(`EvBurst${n}`, text, { text, ts, event_ts: ts, user: `U${(n % 4) + 1}` }),
    };
  });
}

describe('a burst through the socket', () => {
  it('is stored in few commits, acknowledged whole, noted once each and answered in order', async () => {
    const { slack, store, commits, end } = await serving();
    const said = burst();
    for (const { envelope } of said) slack.send(envelope);
    // some come again, as after a lost acknowledgement
    for (const { envelope } of said.slice(0, 10)) slack.send(envelope);
    await slack.until(() => slack.acks.length === BURST + 10, 20_000);
    await slack.until(() => slack.messages.length === BURST, 60_000);
    expect(commits()).toBeLessThan(BURST / 4);
    const acknowledged = new Set(slack.acks.map((ack) => ack.envelope_id));
    expect(said.every(({ envelope }) => acknowledged.has(envelope.envelope_id))).toBe(true);
    expect(slack.messages.map((one) => one['thread_ts'])).toEqual(said.map(({ ts }) => ts));
    const noted: string[] = [];
    await store.read(async ({ journal }) => {
      for await (const { entries } of journal.all('arrival'))
        noted.push(...entries.filter((e) => e.platform === 'slack').map((e) => e.message));
    });
    expect(noted).toEqual(said.map(({ ts }) => `slack:C0000001:${ts}`));
    await end();
  }, 120_000);
});

/** `fettle check`: each thing that serving needs, how it stands, and what to mend. */
import { afterEach, describe, expect, it } from 'vitest';
import { openSqliteStore } from '../../src/index.ts';
import { demoFile } from '../support/demoFile.ts';
import { fettle, NOON } from '../support/commandLine.ts';
import { APP_TOKEN, BOT_TOKEN, startFakeSlack, type FakeSlack } from '../support/fakeSlack.ts';
import { freshFiles } from '../store/folder.ts';

const fresh = freshFiles();
let slack: FakeSlack | undefined;
afterEach(async () => {
  await slack?.close();
  slack = undefined;
});

async function checked(file: string, more: Readonly<Record<string, string>> = {}) {
  slack = await startFakeSlack();
  const environment = { SLACK_BOT_TOKEN: BOT_TOKEN, SLACK_APP_TOKEN: APP_TOKEN, SLACK_API_URL: slack.apiUrl };
  const ended = await fettle(['check', '--db', file], [], NOON, { ...environment, ...more });
  const posted = slack.calls.filter(({ method }) => method.startsWith('chat.'));
  return { ...ended, posted };
} // prettier-ignore

async function demo(channels?: readonly string[]): Promise<string> {
  const file = fresh();
  await demoFile(file, NOON, channels);
  return file;
}

describe('fettle check', () => {
  it('goes through database, workshop, zone, settings, token, scopes, channels and keepers, and posts nothing', async () => {
    const { code, out, posted } = await checked(await demo());
    const lines = out.trim().split('\n');
    expect(lines.map((line) => line.replace(/^(ok {3}|MEND ) (.*?): .*$/u, '$1 $2'))).toEqual([
      'ok    database', 'ok    workshop', 'ok    zone', 'ok    settings', 'ok    slack', 'ok    slack', 'ok    slack',
      'ok    slack', 'ok    slack', 'ok    slack',
    ]); // prettier-ignore
    expect(out).toContain('Europe/Copenhagen: the digest comes at 07:30 there.');
    expect(code).toBe(0);
    expect(posted).toEqual([]);
  });

  it('says what to mend: a channel that is not there, a health port that is none', async () => {
    const { code, out } = await checked(await demo(['#nowhere']), { FETTLE_HEALTH_PORT: 'none' });
    const mend = out.split('\n').filter((line) => line.startsWith('MEND'));
    expect(mend).toEqual([
      expect.stringMatching(/settings: FETTLE_HEALTH_PORT must be a port/u),
      expect.stringMatching(
        /channel #nowhere: not found: create it, or correct its name in the workshop file/u,
      ),
    ]);
    expect(code).toBe(1);
  });

  it('says that there is no workshop, or no token', async () => {
    const empty = fresh();
    await (await openSqliteStore(empty)).close();
    expect((await checked(empty)).out).toMatch(
      /MEND  workshop: No workshop is enrolled: fettle enrol FILE\./u,
    );
    const none = await fettle(['check', '--db', empty]);
    expect(none.out).toMatch(/MEND  platforms: No token is set: SLACK_BOT_TOKEN or DISCORD_BOT_TOKEN\./u);
  });
});

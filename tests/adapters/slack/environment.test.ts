/** Faults of the environment and of the set-up, each with what to mend. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { readEnvironment } from '../../../adapters/slack/environment.ts';
import { check } from '../../../adapters/slack/index.ts';
import { SHORTCUTS } from '../../../adapters/slack/listeners.ts';
import { SCOPES } from '../../../adapters/slack/scopes.ts';
import { sdkLog, withoutSecrets } from '../../../adapters/slack/sdkLog.ts';
import { logTo, NOW, withSlack, type LogLine } from './support.ts';

const BOTH = { SLACK_BOT_TOKEN: 'xoxb-1', SLACK_APP_TOKEN: 'xapp-1' };
const faultOf = (environment: Record<string, string>): string => {
  try {
    readEnvironment(environment);
    return '';
  } catch (fault) {
    return fault instanceof Error ? fault.message : String(fault);
  }
};

describe('the environment', () => {
  it('opens Socket Mode with two tokens, HTTP with a secret and a port', () => {
    expect(readEnvironment(BOTH).door).toEqual({ kind: 'socket', appToken: 'xapp-1' });
    expect(
      readEnvironment({ SLACK_BOT_TOKEN: ' xoxb-1 ', SLACK_SIGNING_SECRET: 's', SLACK_PORT: '3000' }),
    ).toEqual({
      botToken: 'xoxb-1',
      apiUrl: 'https://slack.com/api/',
      door: { kind: 'http', signingSecret: 's', port: 3000, host: '127.0.0.1' },
    });
  });

  it.each([
    [{}, /SLACK_BOT_TOKEN is missing.*\n.*SLACK_APP_TOKEN is missing/u],
    [{ ...BOTH, SLACK_BOT_TOKEN: 'xapp-1' }, /must begin with xoxb-.*app-level token/u],
    [{ ...BOTH, SLACK_APP_TOKEN: 'xoxb-1' }, /must begin with xapp-.*bot token/u],
    [{ ...BOTH, SLACK_PORT: '3000' }, /SLACK_PORT is given without SLACK_SIGNING_SECRET/u],
    [
      { ...BOTH, SLACK_SIGNING_SECRET: 's', SLACK_PORT: 'many' },
      /SLACK_PORT must be a port from 1 to 65535, not "many"/u,
    ],
    [{ ...BOTH, SLACK_API_URL: 'https://slack.com.example.test/api/' }, /SLACK_API_URL is only for tests/u],
    [{ ...BOTH, SLACK_API_URL: 'http://slack.com/api/' }, /SLACK_API_URL is only for tests/u],
    [{ ...BOTH, SLACK_BOT_TOKEN: '   ' }, /SLACK_BOT_TOKEN is missing/u],
  ])('says what is wrong with %j', (environment, sentence) => {
    expect(faultOf(environment)).toMatch(sentence);
  });

  it('never shows a secret in what it says', () => {
    expect(faultOf({ SLACK_BOT_TOKEN: 'sekret-1', SLACK_APP_TOKEN: 'sekret-2' })).not.toContain('sekret');
  });
});

describe('the log of the SDK', () => {
  it('loses tokens, tickets and addresses, and is silent about what is usual', () => {
    const logged: LogLine[] = [];
    const log = sdkLog(logTo(logged));
    log.info('hello');
    log.warn('no answer from', new Error('wss://wss.example.test/link?ticket=abc for xoxb-1-2'));
    expect(logged).toEqual([
      { level: 'warn', event: 'slack.sdk', facts: { said: 'no answer from [left out] for [left out]' } },
    ]);
    expect(withoutSecrets('Bearer xapp-1')).toBe('[left out]');
  });
});

describe('the check', () => {
  const linesOf = async (environment: Record<string, string>, channels: string[]) =>
    (await check({ environment, clock: () => NOW, log: logTo([]) }, channels)).map(
      ({ what, ok, text }) => `${ok ? 'ok' : 'mend'} ${what}: ${text}`,
    );

  it('is content with a set-up that works, and posts nothing', () =>
    withSlack(async ({ environment, slack }) => {
      expect(await linesOf(environment, ['#print-room'])).toEqual([
        'ok slack environment: complete, by Socket Mode',
        'ok slack token: works in the workspace Playhouse',
        'ok slack scopes: all there',
        'ok slack app token: opens Socket Mode',
        'ok slack channel #print-room: the bot is in it',
      ]);
      expect(slack.messages).toEqual([]);
    }));

  it('says how to mend what does not', () =>
    withSlack(async ({ environment, slack }) => {
      slack.answer('apps.connections.open', () => ({ ok: false, error: 'invalid_auth' }));
      const lines = await linesOf(environment, ['#workshop', '#nowhere', 'C0777777']);
      expect(lines.slice(3)).toEqual([
        expect.stringMatching(
          /^mend slack app token: does not open Socket Mode \(invalid_auth\): switch Socket Mode on/u,
        ),
        'mend slack channel #workshop: the bot is not in it: write /invite @fettle there',
        expect.stringMatching(/^mend slack channel #nowhere: not found/u),
        expect.stringMatching(/^mend slack channel C0777777: not found/u),
      ]);
    }));

  it('stops at a token that is not accepted, or an environment that is not there', () =>
    withSlack(async ({ environment, slack }) => {
      slack.answer('auth.test', () => ({ ok: false, error: 'account_inactive' }));
      expect(await linesOf(environment, ['#print-room'])).toEqual([
        expect.stringMatching(/^mend slack .*account_inactive/u),
      ]);
      expect(await linesOf({}, [])).toHaveLength(2);
    }));
});

describe('the manifest', () => {
  const manifest = parse(readFileSync('adapters/slack/manifest.yaml', 'utf8'));
  const source = readdirSync('adapters/slack', { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => readFileSync(`adapters/slack/${name}`, 'utf8'))
    .join('\n');

  /** Method -> the scopes it needs; docs.slack.dev, reference of each method. */
  const NEEDS: Readonly<Record<string, readonly string[]>> = {
    'auth.test': [],
    'chat.postMessage': ['chat:write'],
    'chat.postEphemeral': ['chat:write'],
    'chat.update': ['chat:write'],
    'views.open': [],
    'views.publish': [],
    'users.info': ['users:read'],
    'users.conversations': ['channels:read', 'groups:read'],
    'conversations.list': ['channels:read', 'groups:read'],
    'conversations.info': ['channels:read', 'groups:read'],
    'conversations.open': ['im:write'],
    'conversations.history': ['channels:history', 'groups:history', 'im:history'],
    'conversations.replies': ['channels:history', 'groups:history', 'im:history'],
    'apps.connections.open': [],
  };
  const EVENTS: Readonly<Record<string, readonly string[]>> = {
    app_mention: ['app_mentions:read'],
    'message.im': ['im:history'],
    app_home_opened: [],
  };

  it('grants what the code calls, and no more', () => {
    const { bot } = manifest.oauth_config.scopes;
    const called = Object.keys(NEEDS).filter(
      (method) => source.includes(`${method}(`) || source.includes(`${method.split('.').at(-1)}: say`),
    );
    const needed = new Set([
      'commands',
      ...called.flatMap((m) => NEEDS[m] ?? []),
      ...Object.values(EVENTS).flat(),
    ]);
    expect(new Set(bot)).toEqual(needed);
    expect(new Set(bot)).toEqual(new Set(Object.keys(SCOPES)));
  });

  it('names every method that the code calls', () => {
    const calls = [
      ...source.matchAll(
        /\b(auth|chat|views|users|conversations|apps\.connections|files|reactions)\.(\w+)\(/gu,
      ),
    ].map(([, a, b]) => `${a}.${b}`);
    expect(calls.length).toBeGreaterThan(8);
    expect(calls.filter((method) => !(method in NEEDS))).toEqual([]);
  });

  it('subscribes to what is said to the bot, not to everything in its channels', () => {
    expect(new Set(manifest.settings.event_subscriptions.bot_events)).toEqual(new Set(Object.keys(EVENTS)));
  });

  it('names the shortcuts and the command that the code hears', () => {
    expect(manifest.features.shortcuts.map((s: { callback_id: string }) => s.callback_id)).toEqual([
      SHORTCUTS.note,
      SHORTCUTS.log,
    ]);
    expect(manifest.features.slash_commands.map((c: { command: string }) => c.command)).toEqual(['/fettle']);
  });

  it('keeps to the lengths that Slack allows', () => {
    const { name, description, long_description } = manifest.display_information;
    expect([
      name.length <= 35,
      description.length <= 140,
      long_description.length >= 174 && long_description.length <= 4000,
    ]).toEqual([true, true, true]);
    expect(manifest.settings).toMatchObject({ socket_mode_enabled: true, token_rotation_enabled: false });
  });
});

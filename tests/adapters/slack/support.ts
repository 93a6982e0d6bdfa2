/** A desk that notes what it is given, and Slack's adapter before a fake Slack. */
import { open } from '../../../adapters/slack/index.ts';
import type { Card, Desk, LogFacts, Outgoing, Platform, Received, Reply } from '../../../src/index.ts';
import { APP_TOKEN, BOT_TOKEN, startFakeSlack, TEAM, type FakeSlack } from '../../support/fakeSlack.ts';
import { LOG_FORM, UNTIL_FORM, UNTIL_TOKEN } from '../../support/replySamples.ts';
import { SAID_AT } from '../../support/slackEnvelopes.ts';

export const NOW = (SAID_AT + 60) * 1000;

export const UNDO_TOKEN = `v1:${'o'.repeat(22)}`;
export const saying = (text: string, labels: readonly string[] = []): Reply => ({
  title: [{ bold: 'Birch' }, `: ${text}`],
  sections: [],
  buttons: labels.map((label) => ({ label, press: { does: 'undo', message: 'm' } })),
});

export interface FakeDesk extends Desk {
  got: Received[];
  /** Storing fails while set. */
  broken: boolean;
  heard: Awaited<ReturnType<Desk['lastReceived']>>;
}

export function fakeDesk(): FakeDesk {
  const keys = new Set<string>();
  const desk: FakeDesk = {
    got: [],
    broken: false,
    heard: [],
    async receive(received) {
      if (desk.broken) throw new Error('the disk is full');
      const { what, place } = received;
      const same = what.kind === 'said' && !what.author ? `${place.channel}:${what.message}` : received.key;
      if (keys.has(received.key) || keys.has(same)) return 'known';
      keys.add(received.key).add(same);
      desk.got.push(received);
      return 'stored';
    },
    logForm: async () => LOG_FORM,
    formOf: async (token) => (token === UNTIL_TOKEN ? UNTIL_FORM : undefined),
    home: async ({ account }, machine): Promise<Card | undefined> =>
      account === 'U9' ? undefined : { reply: saying(machine ?? 'the room', ['Done']), tokens: [UNDO_TOKEN] },
    machines: async (typed) => ['Alder', 'Birch'].filter((name) => name.toLowerCase().startsWith(typed)),
    lastReceived: async () => desk.heard,
    channels: async () => ['#print-room'],
  };
  return desk;
}

export interface LogLine {
  level: string;
  event: string;
  facts: LogFacts;
}
export interface Scene {
  slack: FakeSlack;
  desk: FakeDesk;
  platform: Platform;
  logged: LogLine[];
  environment: Record<string, string>;
}

export function logTo(logged: LogLine[]) {
  const line =
    (level: string) =>
    (event: string, facts: LogFacts = {}) =>
      void logged.push({ level, event, facts });
  return { info: line('info'), warn: line('warn'), error: line('error') };
}

export async function withSlack(
  test: (scene: Scene) => Promise<void>,
  more: Record<string, string> = {},
  before: (slack: FakeSlack, desk: FakeDesk) => void = () => undefined,
): Promise<void> {
  const slack = await startFakeSlack();
  const desk = fakeDesk();
  const logged: LogLine[] = [];
  const environment = {
    SLACK_BOT_TOKEN: BOT_TOKEN,
    SLACK_APP_TOKEN: APP_TOKEN,
    SLACK_API_URL: slack.apiUrl,
    ...more,
  };
  before(slack, desk);
  const platform = await open({ environment, clock: () => NOW, log: logTo(logged) });
  try {
    await platform.start(desk);
    await test({ slack, desk, platform, logged, environment });
  } finally {
    await platform.stop();
    await slack.close();
  }
}

export const outgoing = (more: Partial<Outgoing> = {}): Outgoing => ({
  id: 'abcdefghijklmnopqrstuv',
  to: { platform: 'slack', space: TEAM, channel: 'C0000001', direct: false },
  audience: 'place',
  reply: saying('noted.', ['Undo']),
  tokens: [UNDO_TOKEN],
  ...more,
});

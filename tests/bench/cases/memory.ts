/**
 * Memory of `fettle serve` with both platforms and a thousand machines, against both SDKs connected and idle: what
 * Fettle itself adds. Each in a process of its own before the fakes; resident memory some seconds after the start.
 */
import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { parse, stringify } from 'yaml';
import { openBot, openSqliteStore } from '../../../src/index.ts';
import { startFakeDiscord } from '../../support/fakeDiscord.ts';
import { APP_TOKEN, BOT_TOKEN, startFakeSlack } from '../../support/fakeSlack.ts';
import type { Figures } from '../case.ts';

const MACHINES = 1000;
const SETTLE_MS = 10_000;
const DISCORD_TOKEN = 'MTAwMDAwMDAwMDAwMDAwMDAx.GfakeT.not-a-real-token-only-for-tests';

/** The demo's first machine, so many times. */
function hall(): string {
  const demo = parse(readFileSync('demo-data/workshop.yaml', 'utf8'));
  const [{ aliases: _, ...machine }] = demo.machines;
  return stringify({ ...demo, machines: Array.from({ length: MACHINES }, (_, n) => ({ ...machine, name: `M${n + 1}` })) });
} // prettier-ignore

/** What both adapters load, connected by nothing but themselves. */
const IDLE = `
  const { App, SocketModeReceiver } = await import('@slack/bolt');
  const { Client, GatewayIntentBits, Partials } = await import('discord.js');
  const clientOptions = { slackApiUrl: process.env.SLACK_API_URL };
  const app = new App({ token: process.env.SLACK_BOT_TOKEN, appToken: process.env.SLACK_APP_TOKEN, socketMode: true, clientOptions });
  await app.start();
  const client = new Client({ intents: [1, 512, 4096], partials: [Partials.Channel], rest: { api: process.env.DISCORD_API_URL } });
  client.once('clientReady', () => console.log('ready'));
  await client.login(process.env.DISCORD_BOT_TOKEN);
`;

export async function run(): Promise<Figures> {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-memory-'));
  const file = join(folder, 'hall.sqlite');
  const bot = openBot(await openSqliteStore(file));
  await bot.enrol({ yaml: hall(), now: Date.now() - 86_400_000, by: 'Ines', dryRun: false });
  await bot.close();
  const [slack, discord] = [await startFakeSlack(), await startFakeDiscord()];
  const env = {
    ...process.env, SLACK_BOT_TOKEN: BOT_TOKEN, SLACK_APP_TOKEN: APP_TOKEN, SLACK_API_URL: slack.apiUrl,
    DISCORD_BOT_TOKEN: DISCORD_TOKEN, DISCORD_API_URL: discord.api, FETTLE_HEALTH_PORT: '0', FETTLE_LOG: 'error',
  }; // prettier-ignore
  const measure = async (args: readonly string[]): Promise<number> => {
    const child = spawn(process.execPath, [...args], { env, stdio: ['ignore', 'ignore', 'inherit'] });
    await slack.until(() => slack.sockets.size > 0, 60_000);
    await discord.until(() => discord.sockets() > 0, 60_000);
    await pause(SETTLE_MS);
    const MB = residentMB(child);
    child.kill('SIGTERM');
    await once(child, 'close');
    return MB;
  };
  const idle = await measure(['--input-type=module', '-e', IDLE]);
  const serving = await measure(['dist/adapters/main.js', 'serve', '--db', file]);
  await Promise.all([slack.close(), discord.close()]);
  rmSync(folder, { recursive: true, force: true });
  return {
    'both SDKs idle, MB': idle,
    'serving 1,000 machines, MB': serving,
    'memory, ratio': serving / idle,
  };
}

/** As Linux counts it; elsewhere not a number. */
function residentMB({ pid }: ChildProcess): number {
  try {
    const [, kB = 'NaN'] = /VmRSS:\s+(\d+) kB/u.exec(readFileSync(`/proc/${pid ?? 0}/status`, 'utf8')) ?? [];
    return Number(kB) / 1024;
  } catch {
    return Number.NaN;
  }
}

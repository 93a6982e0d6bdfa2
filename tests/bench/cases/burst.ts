/**
 * A burst of 500 messages through the socket of a fake Slack to `fettle serve` in a process of its own: how soon each
 * is acknowledged, when the last reply is out, and how many commits took them in. Real time, real SDK, real database.
 */
import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { openSqliteStore } from '../../../src/index.ts';
import { demoFile } from '../../support/demoFile.ts';
import { APP_TOKEN, BOT_TOKEN, startFakeSlack, type FakeSlack } from '../../support/fakeSlack.ts';
import { mention } from '../../support/slackEnvelopes.ts';
import type { Figures } from '../case.ts';

const BURST = 500;
const MACHINES = ['alder', 'birch', 'cedar', 'elm', 'hazel', 'juniper', 'maple', 'rowan'];
const DEEDS = ['cleaned the plate on', 'cleared a jam on', 'checked the belts on', 'dusted', 'ran 5 min on'];
/** Channels that the messages are spread over. */
const LANES = (process.env['FETTLE_LANES'] ?? 'C0000001').split(',');
/** A folder: then the process writes there where its time went. */
const PROFILE = (process.env['FETTLE_PROFILE'] ?? '')
  .split(' ')
  .filter((folder) => folder !== '')
  .flatMap((folder) => ['--cpu-prof', `--cpu-prof-dir=${folder}`]);
const DAY_MS = 24 * 3_600_000;
const SPACING_MS = 40;
const LONGEST_MS = 120_000;

/** Given by the sender's clock, so that an acknowledgement is timed from the moment of sending. */
interface Timed {
  sent: Map<string, number>;
  acknowledged: number[];
}

export async function run(): Promise<Figures> {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-burst-'));
  const file = join(folder, 'burst.sqlite');
  const slack = await startFakeSlack();
  const child = await served(file, slack);
  try {
    await warmUp(slack);
    return { ...(await burst(slack)), ...(await stored(file)) };
  } finally {
    child.kill('SIGTERM');
    await once(child, 'close');
    await slack.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

async function served(file: string, slack: FakeSlack): Promise<ChildProcess> {
  await demoFile(file, Date.now() - DAY_MS, LANES);
  const environment = {
    ...process.env, SLACK_BOT_TOKEN: BOT_TOKEN, SLACK_APP_TOKEN: APP_TOKEN, SLACK_API_URL: slack.apiUrl,
    FETTLE_HEALTH_PORT: '0', FETTLE_LOG: 'warn',
  }; // prettier-ignore
  const child = spawn(process.execPath, [...PROFILE, 'dist/adapters/main.js', 'serve', '--db', file], {
    env: environment,
    stdio: ['ignore', 'inherit', 'inherit'],
  });
  await slack.until(() => slack.sockets.size > 0, 30_000);
  return child;
}

let said = 0;
function message(): ReturnType<typeof mention> {
  said += 1;
  // said over some seconds, as after a while without a connection
  const at = Date.now() - 60_000 + said * SPACING_MS;
  const ts = `${Math.floor(at / 1000)}.${String(at % 1000).padStart(3, '0')}000`;
  const text = `${DEEDS[said % DEEDS.length] ?? ''} ${MACHINES[said % MACHINES.length] ?? ''}`;
  return mention(`EvBurst${said}`, text, {
    text: `<@UBOT> ${text}`,
    ts,
    event_ts: ts,
    user: `U${(said % 4) + 1}`,
    channel: LANES[said % LANES.length] ?? '',
  });
}

const answered = (slack: FakeSlack): number =>
  slack.messages.filter((one) => one['thread_ts'] !== undefined).length;

/** Twenty by themselves: a service that has been up for a minute. Gives the time of each to its reply. */
async function warmUp(slack: FakeSlack): Promise<void> {
  for (let n = 0; n < 20; n += 1) {
    const before = answered(slack);
    slack.send(message());
    await slack.until(() => answered(slack) > before, 20_000);
  }
}

async function burst(slack: FakeSlack): Promise<Figures> {
  const before = answered(slack);
  const timed: Timed = { sent: new Map(), acknowledged: [] };
  const [socket] = slack.sockets;
  socket?.on('message', (data: Buffer) => {
    const { envelope_id: id } = JSON.parse(String(data)) as { envelope_id: string };
    const at = timed.sent.get(id);
    if (at !== undefined) timed.acknowledged.push(performance.now() - at);
  });
  const began = performance.now();
  for (let n = 0; n < BURST; n += 1) {
    const envelope = message();
    timed.sent.set(envelope.envelope_id, performance.now());
    slack.send(envelope);
  }
  while (answered(slack) - before < BURST && performance.now() - began < LONGEST_MS) await pause(10);
  const sorted = timed.acknowledged.toSorted((a, b) => a - b);
  return {
    acknowledged: sorted.length,
    'acknowledgement p50, ms': sorted[Math.floor(sorted.length / 2)] ?? Number.NaN,
    'acknowledgement p99, ms': sorted[Math.floor(sorted.length * 0.99)] ?? Number.NaN,
    replies: answered(slack) - before,
    'last reply, s': (performance.now() - began) / 1000,
    ...(await alone(slack)),
  };
}

/** Messages one at a time: how long each waits for its reply. */
async function alone(slack: FakeSlack): Promise<Figures> {
  const times: number[] = [];
  for (let n = 0; n < 50; n += 1) {
    const before = answered(slack);
    const began = performance.now();
    slack.send(message());
    while (answered(slack) === before) await pause(1);
    times.push(performance.now() - began);
  }
  const sorted = times.toSorted((a, b) => a - b);
  return { 'reply alone p50, ms': sorted[25] ?? Number.NaN, 'reply alone p90, ms': sorted[45] ?? Number.NaN };
}

async function stored(file: string): Promise<Figures> {
  const store = await openSqliteStore(file);
  const messages = new Set<string>();
  let entries = 0;
  await store.read(async ({ journal }) => {
    for await (const { entries: some } of journal.all('arrival'))
      for (const entry of some) {
        if (entry.platform !== 'slack') continue;
        entries += 1;
        messages.add(entry.message);
      }
  });
  await store.close();
  return { 'messages noted': messages.size, entries: entries };
}

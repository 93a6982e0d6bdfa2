/**
 * Heap after collection while the service works through an hour of simulated traffic, thirty messages a minute:
 * logs, questions, small talk, pressed buttons. What stays with each message is what the record keeps of it.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import {
  openBot, openService, openSqliteStore, type Desk, type Outgoing, type Platform, type Received, type What,
} from '../../../src/index.ts'; // prettier-ignore
import { fillWithDemo } from '../../../demo-data/fill.ts';
import type { Figures } from '../case.ts';

const NOW = Date.parse('2026-03-11T15:40:00+01:00');
const MINUTE = 60_000;
const A_MINUTE = 30;
const CHANNEL = 'C0PROPSHOP';
const TEXTS = [
  'ran 5 min on alder', 'cleaned the plate on birch', 'what is overdue on cedar?', 'coffee anyone?', 'cleared a jam on rowan',
  'elm is clicking', 'dusted hazel', 'status', 'no, 6 min', 'oiled the rods on alder',
]; // prettier-ignore

/** Shows everything at once and remembers only the last post. */
interface Forgetful extends Platform {
  desk(): Desk;
  last(): Outgoing | undefined;
}
function forgetful(): Forgetful {
  let [desk, last, posts]: [Desk | undefined, Outgoing | undefined, number] = [undefined, undefined, 0];
  return {
    name: 'slack',
    everyMs: 0,
    itemsWithButtons: 7,
    start: async (own) => void (desk = own),
    stop: async () => undefined,
    send: async (outgoing) => {
      last = outgoing;
      return { outcome: 'sent', ref: { platform: 'slack', channel: outgoing.to.channel, id: `p${++posts}` } };
    },
    edit: async () => ({ outcome: 'sent' }),
    find: async () => undefined,
    channelId: async (named) => named.replace('#', ''),
    space: () => 'T1',
    state: () => ({ connected: true }),
    desk: () => {
      if (!desk) throw new Error('The service has not started.');
      return desk;
    },
    last: () => last,
  };
}

export const run = (): Promise<Figures> => heapOver(10, 60);

/** The heap after so many simulated minutes, and after so many more. */
export async function heapOver(early: number, late: number): Promise<Figures> {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-heap-'));
  const store = await openSqliteStore(join(folder, 'heap.sqlite'));
  await fillWithDemo(store, NOW);
  const platform = forgetful();
  let now = NOW;
  let ticks: (() => void)[] = [];
  const quiet = { info: () => undefined, warn: () => undefined, error: () => undefined };
  const service = openService({
    store, bot: openBot(store), platforms: [platform], clock: () => now, log: quiet, holder: 'bench',
    every: (_ms, tick) => {
      ticks.push(tick);
      return () => void (ticks = ticks.filter((one) => one !== tick));
    },
  }); // prettier-ignore
  await service.start();
  let count = 0;
  const minute = async (): Promise<void> => {
    for (let n = 0; n < A_MINUTE; n += 1) {
      now += MINUTE / A_MINUTE;
      count += 1;
      await platform.desk().receive(received(count, now, platform.last()));
      await service.settled();
    }
    for (const tick of ticks) tick();
    await service.settled();
  };
  for (let n = 0; n < early; n += 1) await minute();
  const before = heapMB();
  for (let n = early; n < late; n += 1) await minute();
  const after = heapMB();
  await service.stop();
  await store.close();
  rmSync(folder, { recursive: true, force: true });
  return {
    messages: count,
    [`heap at ${early} min, MB`]: before,
    [`heap at ${late} min, MB`]: after,
    'heap, ratio': after / before,
  };
}

function received(n: number, at: number, last: Outgoing | undefined): Received {
  const token = last?.tokens.at(0);
  const what: What =
    n % 7 === 0 && token !== undefined
      ? { kind: 'pressed', token, on: { platform: 'slack', channel: CHANNEL, id: 'p1' } }
      : { kind: 'said', text: TEXTS[n % TEXTS.length] ?? '', message: `h${n}` };
  return {
    key: `slack:Ev${n}`, platform: 'slack', account: `U${(n % 4) + 1}`, accountName: ['Ines', 'Tomasz', 'Priya', 'Odd'][n % 4] ?? '',
    place: { platform: 'slack', space: 'T1', channel: CHANNEL, direct: false }, saidAt: at, audience: 'place', what,
  }; // prettier-ignore
}

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;
function heapMB(): number {
  for (let n = 0; n < 4; n += 1) collect();
  return process.memoryUsage().heapUsed / 2 ** 20;
}

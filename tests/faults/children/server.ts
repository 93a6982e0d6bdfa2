/**
 * `server.ts FILE WALL FROM SEED`: the service on a database, before a platform whose posts are kept in a file beside
 * it. Delivers messages from FROM on, some twice and out of order, loses some answers, and prints the number of each
 * message once it was acknowledged. It ends when it is killed.
 */
import { setTimeout as pause } from 'node:timers/promises';
import { openBot, openService, openSqliteStore, type LogFacts, type Received } from '../../../src/index.ts';
import { CHANNEL, fakePlatform } from '../../support/fakePlatform.ts';
import { wallInFile } from '../../support/wallInFile.ts';

const [, , file = '', wallFile = '', from = '0', seed = '1'] = process.argv;
const MORNING = Date.parse('2026-03-11T07:31:00+01:00');
const MACHINES = ['birch', 'maple', 'alder', 'hazel'];

let state = Number(seed) || 1;
const random = (): number => {
  state = (state * 48_271) % 2_147_483_647;
  return state / 2_147_483_647;
};
/** A life begins a minute after the one before, so that what that one had claimed is looked up at once. */
const begun = MORNING + Number(seed) * 60_000;
const started = performance.now();
const clock = (): number => begun + Math.round((performance.now() - started) * 20);

const platform = fakePlatform({ wall: wallInFile(wallFile) });
const fault = (event: string, facts: LogFacts = {}): void => {
  if (/fault|failed/u.test(event)) process.stderr.write(`${event} ${JSON.stringify(facts)}\n`);
};
const store = await openSqliteStore(file);
const service = openService({
  store, bot: openBot(store), platforms: [platform], clock, holder: `life ${seed}`,
  log: { info: () => undefined, warn: () => undefined, error: fault },
  every: (_ms, tick) => {
    const timer = setInterval(tick, 10);
    return () => clearInterval(timer);
  },
}); // prettier-ignore
await service.start();

/** Hours run now and then only: a machine that has run all of a day's hours takes no more, however many lives there are. */
const textOf = (n: number): string => {
  const machine = MACHINES[n % MACHINES.length] ?? '';
  return n % 9 === 0 ? `ran 1 min on ${machine}` : `note on ${machine}: job ${n} for the attic`;
};

const message = (n: number, delivery: number): Received => ({
  key: `slack:Ev${n}.${delivery}`, platform: 'slack', account: 'U1', accountName: 'Ines', audience: 'place',
  place: { platform: 'slack', space: 'T1', channel: n % 3 === 0 ? 'C0STAGE' : CHANNEL, direct: false },
  saidAt: MORNING - 60_000 + n, what: { kind: 'said', text: textOf(n), message: `h${n}` },
}); // prettier-ignore

async function deliver(n: number): Promise<void> {
  const twice = random() < 0.3;
  if (random() < 0.3) platform.sends.push('lost');
  await Promise.all((twice ? [0, 1] : [0]).map((delivery) => platform.deliver(message(n, delivery))));
  console.log(String(n));
}

console.log('ready');
for (let n = Number(from); ; n += 2) {
  // the later of two comes first now and then
  const pair = random() < 0.3 ? [n + 1, n] : [n, n + 1];
  await Promise.all(pair.map(deliver));
  await pause(random() * 12);
}

/** CPU of one logged message without the commit: read, decided, folded, answered, on a store in memory. */
import { openBot, openMemoryStore } from '../../../src/index.ts';
import { fillWithDemo } from '../../../demo-data/fill.ts';
import type { Figures } from '../case.ts';
import { NOW } from '../journal.ts';

const MESSAGES = [
  'ran 6.5 h on alder',
  'oiled the rods on alder',
  'cleaned the plate on birch',
  'hazel 3 h petg',
  'cleared a jam on rowan, cleaned the feeder',
];
const ROUNDS = 2000;
const WARM_UP = 1000;

export async function run(): Promise<Figures> {
  const store = await openMemoryStore();
  await fillWithDemo(store, NOW);
  const bot = openBot(store);
  const say = (n: number): Promise<unknown> => {
    // an hour apart: nobody runs 6.5 h in a minute
    const now = NOW + n * 7 * 3_600_000;
    return bot.say({
      key: `b${n}`,
      platform: 'bench',
      place: 'bench',
      direct: false,
      speaker: 'Ines',
      text: MESSAGES[n % MESSAGES.length] ?? '',
      saidAt: now,
      now,
    });
  };
  for (let n = 0; n < WARM_UP; n += 1) await say(n);
  const before = process.cpuUsage();
  for (let n = WARM_UP; n < WARM_UP + ROUNDS; n += 1) await say(n);
  const { user, system } = process.cpuUsage(before);
  return { 'cpu per logged message, ms': (user + system) / 1000 / ROUNDS };
}

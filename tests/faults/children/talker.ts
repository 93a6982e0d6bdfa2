/**
 * Says messages to the bot until its time is over or it is killed, and acknowledges each answer. Every second one
 * is delivered to other talkers as well.
 */
import { openBot, openSqliteStore, StoreFault, type Answer } from '../../../src/index.ts';

const [file = '', name = '', from = '0', seconds = '600'] = process.argv.slice(2);
const START = Date.parse('2026-03-11T08:00:00Z');
const bot = openBot(await openSqliteStore(file));
// folding the journal and learning the words is not what is tried here
for (const key of ['first', 'second']) await say(`${key} ${process.pid}`, START, 'status birch');
console.log('ready');
if (name !== '') await new Promise((resolve) => process.stdin.once('data', resolve));

const end = Date.now() + Number(seconds) * 1000;
for (let n = Number(from); Date.now() < end; n += 1) {
  const key = name !== '' && n % 2 === 0 ? `${name}:${n}` : `shared:${n}`;
  const now = START + n * 180_000;
  const outcome = await say(key, now, 'cleaned the plate on birch and dusted alder')
    .then((answer) => answer.outcome)
    .catch((error: unknown) => {
      if (error instanceof StoreFault && error.code === 'busy') return 'busy';
      throw error;
    });
  console.log(`${outcome} ${key}`);
}
function say(key: string, now: number, text: string): Promise<Answer> {
  const [place, speaker] = [`place ${name}`, `speaker ${name}`];
  return bot.say({ key, platform: 'test', place, direct: false, speaker, text, saidAt: now, now });
}
await bot.close();
process.stdin.destroy();

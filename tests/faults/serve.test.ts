/**
 * The service is killed at some step, again and again, while messages come twice, out of order and with lost answers.
 * FETTLE_KILLS: how often, 3 by default; `npm run test:faults`: 200.
 */
import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { openBot, openService, openSqliteStore } from '../../src/index.ts';
import { fillWithDemo } from '../../demo-data/fill.ts';
import { fakePlatform } from '../support/fakePlatform.ts';
import { wallInFile } from '../support/wallInFile.ts';
import { freshFiles } from '../store/folder.ts';
import { aftermath } from './aftermath.ts';
import { ended, firstLine, start } from './processes.ts';

const fresh = freshFiles();
const kills = Number(process.env['FETTLE_KILLS'] ?? 3);
const MORNING = Date.parse('2026-03-11T07:31:00+01:00');

/** Gives the messages that were acknowledged before the kill. */
async function oneLife(file: string, wall: string, from: number, seed: number): Promise<number[]> {
  const running = start('server.ts', [file, wall, String(from), String(seed)]);
  await firstLine(running);
  await pause(Math.random() * 1500);
  running.child.kill('SIGKILL');
  return (await ended(running)).lines.filter((line) => /^\d+$/u.test(line)).map(Number);
}

/** What was left is handled by a last life, in which all goes well. */
async function comeToRest(file: string, wall: string, now: number): Promise<{ waiting: number; unsent: number }> {
  const store = await openSqliteStore(file);
  let at = now;
  const log = { info: () => undefined, warn: () => undefined, error: () => undefined };
  const service = openService({
    store, bot: openBot(store), platforms: [fakePlatform({ wall: wallInFile(wall) })], clock: () => at, log, holder: 'last', every: () => () => undefined,
  }); // prettier-ignore
  await service.start();
  for (let n = 0; n < 400; n += 1) {
    at += 60_000;
    await service.settled();
    const state = await service.state();
    if (state.waiting === 0 && state.unsent === 0) break;
  }
  const state = await service.state();
  await service.stop();
  await store.close();
  return state;
} // prettier-ignore

describe('a service that is killed', () => {
  it(
    'loses no acknowledged log, doubles none, answers each once, and posts one digest',
    async () => {
      const [file, wall] = [fresh(), `${fresh()}.posts`];
      const store = await openSqliteStore(file);
      await fillWithDemo(store, MORNING - 24 * 3_600_000);
      await store.close();
      const acknowledged = new Set<number>();
      let next = 0;
      for (let life = 1; life <= kills; life += 1) {
        // the last two come again: nobody told the platform whether they arrived
        const heard = await oneLife(file, wall, Math.max(0, next - 2), life);
        for (const n of heard) acknowledged.add(n);
        next = Math.max(next, ...heard.map((n) => n + 1 + ((n + 1) % 2)));
      }
      const state = await comeToRest(file, wall, MORNING + (kills + 5) * 60_000);
      expect(state).toMatchObject({ waiting: 0, unsent: 0 });
      const found = aftermath(file);
      expect(found.integrity).toBe('ok');
      const logged = [...found.entries].filter(([message]) => /^slack:.*:h\d+$/u.test(message));
      const numbers = new Set(logged.map(([message]) => Number(message.split(':h')[1])));
      expect([...acknowledged].filter((n) => !numbers.has(n))).toEqual([]);
      expect(logged.filter(([, count]) => count !== 1)).toEqual([]);
      const posts = wallInFile(wall).all();
      const answers = new Map<string, number>();
      for (const { below } of posts) if (below) answers.set(below, (answers.get(below) ?? 0) + 1);
      expect([...answers].filter(([, count]) => count !== 1)).toEqual([]);
      expect([...numbers].filter((n) => !answers.has(`h${n}`))).toEqual([]);
      const digests = posts.filter(({ below }) => below === undefined);
      console.log(
        `${kills} kills, ${acknowledged.size} acknowledged, ${numbers.size} noted, ${posts.length} posts, ${digests.length} digest`,
      );
      expect(digests).toHaveLength(1);
      expect(acknowledged.size).toBeGreaterThan(0);
    },
    kills * 10_000 + 120_000,
  );
});

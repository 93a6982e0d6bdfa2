/** A process is killed in the middle of its work, again and again. FETTLE_KILLS: how often, 4 by default. */
import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { freshFiles } from '../store/folder.ts';
import { aftermath } from './aftermath.ts';
import { ended, firstLine, start } from './processes.ts';

const fresh = freshFiles();
const kills = Number(process.env['FETTLE_KILLS'] ?? 4);
const REDELIVERED = 3;
const numberOf = (line: string): number => Number(line.split(':')[1]);

/** Lets a process handle messages from `from` on, kills it at some moment, gives what it acknowledged. */
async function oneLife(file: string, from: number): Promise<readonly string[]> {
  const running = start('endless.ts', [file, String(from)]);
  await firstLine(running);
  await pause(20 + Math.random() * 130);
  running.child.kill('SIGKILL');
  return (await ended(running)).lines;
}

describe('kill -9', () => {
  it(
    'loses no acknowledged message, and a second delivery writes nothing twice',
    async () => {
      const file = fresh();
      const acknowledged = new Set<string>();
      let unread = 0;
      let next = 0;
      for (let life = 0; life < kills; life += 1) {
        const lines = await oneLife(file, Math.max(0, next - REDELIVERED));
        for (const [n, line] of lines.entries()) {
          const [outcome, key = ''] = line.split(' ');
          const again = n < Math.min(REDELIVERED, next);
          if (again) expect(line).toBe(`repeated ${key}`);
          // The last commit of the life before may have been there without its acknowledgement.
          if (!again && outcome === 'repeated') unread += 1;
          acknowledged.add(key);
        }
        next = Math.max(next, ...lines.map((line) => numberOf(line) + 1));
        const found = aftermath(file);
        expect(found.integrity).toBe('ok');
        expect([...acknowledged].filter((key) => found.entries.get(key) !== 2)).toEqual([]);
        expect([...found.entries.values()].every((count) => count === 2)).toBe(true);
        expect(found.handled.toSorted()).toEqual([...found.entries.keys()].toSorted());
        expect(found.entries.size - acknowledged.size).toBeLessThanOrEqual(1);
      }
      console.log(
        `${kills} kills, ${acknowledged.size} messages, ${unread} commits whose acknowledgement was lost`,
      );
      expect(acknowledged.size).toBeGreaterThan(kills);
    },
    kills * 5000 + 30_000,
  );
});

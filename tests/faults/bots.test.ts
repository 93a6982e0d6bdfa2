/**
 * The whole bot under rough treatment: two processes on one database, and one that is killed again and again.
 * FETTLE_FAULT_SECONDS (2 by default) and FETTLE_KILLS (4 by default) make it longer.
 */
import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { fillWithDemo } from '../../demo-data/fill.ts';
import { openSqliteStore } from '../../src/index.ts';
import { freshFiles } from '../store/folder.ts';
import { ended, firstLine, start } from './processes.ts';

const fresh = freshFiles();
const seconds = Number(process.env['FETTLE_FAULT_SECONDS'] ?? 2);
const kills = Number(process.env['FETTLE_KILLS'] ?? 4);
/** The demo of the evening before, so that nothing of it lies after the first message. */
const DEMO = Date.parse('2026-03-10T20:00:00Z');
const ACTS = 2;

async function demoIn(file: string): Promise<void> {
  const store = await openSqliteStore(file);
  await fillWithDemo(store, DEMO);
  await store.close();
}

/** How many entries each message of the talkers left in the journal. */
async function writtenBy(file: string): Promise<Map<string, number>> {
  const store = await openSqliteStore(file);
  const counts = new Map<string, number>();
  await store.read(async ({ journal }) => {
    for await (const { entries } of journal.all('arrival'))
      for (const entry of entries.filter((e) => e.platform === 'test'))
        counts.set(entry.message, (counts.get(entry.message) ?? 0) + 1);
  });
  await store.close();
  return counts;
}

const outcomes = (lines: readonly string[]): { outcome: string; key: string }[] =>
  lines.flatMap((line) => {
    const [outcome = '', key] = line.split(' ');
    return key === undefined ? [] : [{ outcome, key }];
  });

describe('two bots on one database', () => {
  it(
    'lose no message and double none',
    async () => {
      const file = fresh();
      await demoIn(file);
      const talkers = ['a', 'b'].map((name) => start('talker.ts', [file, name, '0', String(seconds)]));
      await Promise.all(talkers.map(firstLine));
      for (const { child } of talkers) child.stdin?.write('go\n');
      const said = (await Promise.all(talkers.map(ended))).map(({ lines }) => outcomes(lines));
      const acknowledged = said.flat().filter(({ outcome }) => outcome === 'written');
      const counts = await writtenBy(file);
      console.log(
        `${acknowledged.length} messages, ${said.flat().filter((s) => s.outcome === 'repeated').length} repeated`,
      );
      expect(acknowledged.length).toBeGreaterThan(2);
      expect(new Set(acknowledged.map(({ key }) => key)).size).toBe(acknowledged.length);
      expect([...counts.keys()].toSorted()).toEqual(acknowledged.map(({ key }) => key).toSorted());
      expect([...counts.values()].every((n) => n === ACTS)).toBe(true);
      for (const one of said) expect(one.some(({ outcome }) => outcome === 'written')).toBe(true);
    },
    (seconds + 60) * 1000,
  );
});

describe('a bot that is killed', () => {
  it(
    'keeps every message that it acknowledged, and each once',
    async () => {
      const file = fresh();
      await demoIn(file);
      const acknowledged = new Set<string>();
      let next = 0;
      for (let life = 0; life < kills; life += 1) {
        const running = start('talker.ts', [file, '', String(Math.max(0, next - 2))]);
        await firstLine(running);
        await pause(150 + Math.random() * 250);
        running.child.kill('SIGKILL');
        for (const { key } of outcomes((await ended(running)).lines)) {
          acknowledged.add(key);
          next = Math.max(next, Number(key.split(':')[1]) + 1);
        }
        const counts = await writtenBy(file);
        expect([...acknowledged].filter((key) => counts.get(key) !== ACTS)).toEqual([]);
        expect([...counts.values()].every((n) => n === ACTS)).toBe(true);
        expect(counts.size - acknowledged.size).toBeLessThanOrEqual(1);
      }
      console.log(`${kills} kills, ${acknowledged.size} messages`);
      expect(acknowledged.size).toBeGreaterThan(kills / 2);
    },
    kills * 8000 + 60_000,
  );
});

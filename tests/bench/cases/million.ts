/** What a journal of a million entries adds to the start: without checkpoints, and with them. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openBot, openSqliteStore, type Entry } from '../../../src/index.ts';
import type { Figures } from '../case.ts';
import { journalOf, NOW, ZONE } from '../journal.ts';

const CHUNK = 20_000;
const SHAPE = { machines: 200, years: 10, usagePerYear: 300, tasksPerYear: 10 };
const WORKSHOP = {
  workshop: { name: 'Bench', zone: ZONE, workingDays: [0, 1, 2, 3, 4, 5], holidays: [], digestAt: '07:30', channels: {} },
  people: [], room: { lastDone: {}, intervals: {} }, machines: [], shelf: [],
}; // prettier-ignore

export async function run(): Promise<Figures> {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-bench-'));
  const file = join(folder, 'million.sqlite');
  try {
    const entries = await fill(file);
    const [cold, warm] = [await start(file), await start(file)];
    return {
      'entries in the journal': entries,
      'start to first answer without checkpoints, s': cold / 1000,
      'start to first answer with checkpoints, s': warm / 1000,
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function fill(file: string): Promise<number> {
  const store = await openSqliteStore(file);
  await store.transact(({ post }) => post.saveWorkshop(JSON.stringify(WORKSHOP), NOW));
  let chunk: Entry[] = [];
  let total = 0;
  const flush = async (): Promise<void> => {
    const entries = chunk;
    chunk = [];
    total += entries.length;
    await store.transact(async ({ journal }) => void (await journal.append(entries)));
  };
  for (const entry of journalOf(SHAPE)) if (chunk.push(entry) === CHUNK) await flush();
  await flush();
  await store.close();
  return total;
}

/** Opening, catching up and one machine's list; closing keeps the checkpoints. */
async function start(file: string): Promise<number> {
  const from = performance.now();
  const bot = openBot(await openSqliteStore(file));
  await bot.due({ now: NOW, machine: 'machine 7' });
  const took = performance.now() - from;
  await bot.close();
  return took;
}

/**
 * How fast the store is: `npx tsx tests/store/measure.ts [entries]`, a million by default.
 * Prints figures; asserts nothing, since they depend on the disk.
 */
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Entry } from '../../src/maintenance/entry/entry.ts';
import { openSqliteStore } from '../../src/store/open.ts';
import type { Store } from '../../src/store/store.ts';
import { entry, usage } from './entries.ts';

const MACHINES = 40;
const CHUNK = 20_000;
const total = Number(process.argv[2] ?? 1_000_000);

/** Mostly usage, some tasks, one amendment in a hundred. */
function sample(n: number): Entry {
  const machine = `machine-${n % MACHINES}`;
  if (n % 100 === 99) return entry(n, { kind: 'amended', target: `e${n - 40}`, set: { hours: 2 } });
  if (n % 10 === 5) return entry(n, { kind: 'done', machine, task: 'clean-plate', finding: 'fine' });
  return usage(n, machine);
}

async function timed<T>(what: string, count: number, work: () => Promise<T>): Promise<T> {
  const began = performance.now();
  const cpuBefore = process.cpuUsage();
  const result = await work();
  const seconds = (performance.now() - began) / 1000;
  const { user, system } = process.cpuUsage(cpuBefore);
  const busy = ((user + system) / 1e6).toFixed(3);
  console.log(`${what}: ${seconds.toFixed(3)} s (processor ${busy} s), ${Math.round(count / seconds)}/s`);
  return result;
}

async function messages(store: Store, from: number, count: number): Promise<void> {
  const times: number[] = [];
  for (let n = from; n < from + count; n += 1) {
    const began = performance.now();
    await store.transact(async ({ journal, post }) => {
      if ((await post.handled(`m${n}`)) !== undefined) return;
      await journal.append([sample(n)]);
      await post.recordHandled(`m${n}`, { reply: 'noted' }, n);
    });
    times.push(performance.now() - began);
  }
  times.sort((a, b) => a - b);
  console.log(
    `  p50 ${times[count >> 1]?.toFixed(2)} ms, p99 ${times[Math.floor(count * 0.99)]?.toFixed(2)} ms`,
  );
}

async function fill(store: Store): Promise<void> {
  for (let from = 0; from < total; from += CHUNK)
    await store.transact(async ({ journal }) =>
      journal.append(Array.from({ length: Math.min(CHUNK, total - from) }, (_, n) => sample(from + n))),
    );
}

async function replay(store: Store, order: 'arrival' | 'fold'): Promise<void> {
  await store.read(async ({ journal }) => {
    let hours = 0;
    for await (const { entries } of journal.all(order))
      for (const one of entries) if (one.kind === 'usage') hours += one.hours ?? 0;
    console.log(`  ${hours} h`);
  });
}

const folder = mkdtempSync(join(tmpdir(), 'fettle-measure-'));
const file = join(folder, 'shop.sqlite');
const store = await openSqliteStore(file);
await timed(`append ${total} in transactions of ${CHUNK}`, total, async () => fill(store));
await timed('2,000 messages, one transaction each', 2000, async () => messages(store, total, 2000));
await timed('replay in order of arrival', total, async () => replay(store, 'arrival'));
await timed('replay in fold order', total, async () => replay(store, 'fold'));
await timed(`one machine of ${MACHINES}`, total / MACHINES, async () =>
  store.read(async ({ journal }) => journal.ofMachine('machine-7')),
);
await timed('what names no machine', 1, async () => store.read(async ({ journal }) => journal.ofNoMachine()));
await timed('the last 20 of a machine', 1, async () =>
  store.read(async ({ journal }) => journal.recent({ machine: 'machine-7', limit: 20 })),
);
await timed('the last 20 swaps of a part that nobody swapped', 1, async () =>
  store.read(async ({ journal }) => journal.recent({ part: 'nozzle', limit: 20 })),
);
await timed('the last 5 of a person', 1, async () =>
  store.read(async ({ journal }) => journal.ofPerson('p-ines', { limit: 5 })),
);
await store.close();
await timed('open again', 1, async () => (await openSqliteStore(file)).close());
const { rss } = process.memoryUsage();
console.log(`${Math.round(statSync(file).size / 1e6)} MB on disk, ${Math.round(rss / 1e6)} MB resident`);
rmSync(folder, { recursive: true });

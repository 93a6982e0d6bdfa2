/** Whatever is written, in whatever order and with whatever failures: both stores answer alike. */
import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Entry } from '../../src/maintenance/entry/entry.ts';
import type { JournalReader } from '../../src/store/journal.ts';
import { openMemoryStore, openSqliteStore } from '../../src/store/open.ts';
import type { Store } from '../../src/store/store.ts';
import { entry, everything, idsOf, MORNING } from './entries.ts';
import { freshFiles } from './folder.ts';

const fresh = freshFiles();
const MACHINES = ['alder', 'birch', 'Birke ü'];
const IDS = 12;

const id = fc.nat({ max: IDS }).map((n) => `e${n}`);
const machine = fc.constantFrom(...MACHINES);
const fields = fc.oneof(
  fc.record({ kind: fc.constant('usage' as const), machine, hours: fc.nat({ max: 9 }) }),
  fc.record({
    kind: fc.constant('stockMoved' as const),
    part: fc.constantFrom('nozzle', 'oil'),
    change: fc.nat(),
  }),
  fc.record({ kind: fc.constant('takenBack' as const), target: id }),
  fc.record({ kind: fc.constant('amended' as const), target: id, set: fc.record({ machine }) }),
  fc.record({
    kind: fc.constant('amended' as const),
    target: id,
    set: fc.record({ hours: fc.nat({ max: 9 }) }),
  }),
);
const anEntry = fc
  .record({
    fields,
    id,
    at: fc.nat({ max: 3 }),
    writtenAt: fc.nat({ max: 3 }),
    act: fc.nat({ max: 2 }),
    message: fc.constantFrom('k1', 'k2'),
    by: fc.constantFrom('p1', 'p2'),
  })
  .map(({ fields: said, at, writtenAt, ...stamp }): Entry => {
    const stamps = { at: MORNING + at, saidAt: MORNING, writtenAt: MORNING + writtenAt };
    return entry(0, said, { ...stamp, ...stamps });
  });
const aTransaction = fc.record({ entries: fc.array(anEntry, { maxLength: 5 }), fails: fc.boolean() });

/** What came of it: the new position, or the fault's code. */
async function write(
  store: Store,
  { entries, fails }: { entries: readonly Entry[]; fails: boolean },
): Promise<unknown> {
  const work = store.transact(async ({ journal }) => {
    const position = await journal.append(entries);
    if (fails) throw Object.assign(new Error('no'), { code: 'no' });
    return position;
  });
  return work.catch((error: unknown) => Object(error).code);
}

const answers = async (journal: JournalReader): Promise<unknown> => ({
  arrival: await everything(journal.since(0)),
  fold: idsOf(await everything(journal.all('fold'))),
  machines: await Promise.all(MACHINES.map(async (name) => idsOf(await journal.ofMachine(name)))),
  shelf: idsOf(await journal.ofNoMachine()),
  family: idsOf(await journal.familyOf(['e1', 'e2'])),
  message: idsOf(await journal.byMessage('k1')),
  person: idsOf(await journal.ofPerson('p1', { limit: 3, writtenAsOf: MORNING + 2 })),
  recent: idsOf(await journal.recent({ machine: 'birch', from: MORNING + 1, limit: 3 })),
});

it('the store in a file and the store in memory answer alike', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(aTransaction, { maxLength: 8 }), async (transactions) => {
      const [file, memory] = [await openSqliteStore(fresh()), await openMemoryStore()];
      try {
        for (const one of transactions) expect(await write(file, one)).toEqual(await write(memory, one));
        const ask = async ({ journal }: { journal: JournalReader }): Promise<unknown> => answers(journal);
        expect(await file.read(ask)).toEqual(await memory.read(ask));
      } finally {
        await Promise.all([file.close(), memory.close()]);
      }
    }),
    { numRuns: 60 },
  );
});

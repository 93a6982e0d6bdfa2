import { isDeepStrictEqual } from 'node:util';
import type { Entry } from '../../maintenance/entry/entry.ts';
import { BATCH_SIZE, batches, entriesOf } from '../batches.ts';
import { decodeEntry } from '../codec.ts';
import { StoreFault } from '../fault.ts';
import type { AsOf, Batch, HistoryFilter, ImportOutcome, Journal, JournalOrder } from '../journal.ts';
import { rowOf } from '../row.ts';
import { assertOpen, type Scope } from '../turns.ts';
import { type EntryTable, family, foldOrder, type KeptRow } from './entries.ts';
import type { UndoLog } from './undo.ts';

const holdsAsOf = (row: KeptRow, { asOf }: AsOf): boolean =>
  asOf === undefined || (row.at <= asOf && row.writtenAt <= asOf);

const matches = (row: KeptRow, filter: HistoryFilter): boolean =>
  holdsAsOf(row, filter) &&
  (filter.machine === undefined || row.machine === filter.machine) &&
  (filter.task === undefined || row.task === filter.task) &&
  (filter.part === undefined || row.part === filter.part) &&
  (filter.by === undefined || row.by === filter.by) &&
  (filter.from === undefined || row.at >= filter.from) &&
  (filter.to === undefined || row.at < filter.to);

/** Pages of a list that is already in its order. */
const pages = (rows: readonly KeptRow[], from: number): AsyncIterable<Batch> => {
  let next = from;
  return batches(() => rows.slice(next, (next += BATCH_SIZE)));
};

export function memoryJournal(table: EntryTable, undo: UndoLog, scope: Scope): Journal {
  const open = (): EntryTable => {
    assertOpen(scope);
    return table;
  };
  const add = (entry: Entry): void => {
    if (table.byId(entry.id) !== undefined)
      throw new StoreFault('duplicate', `The journal already has an entry with the id ${entry.id}.`);
    table.add(rowOf(entry));
    undo.done(() => table.removeLast());
  };
  const known = (ids: readonly string[]): readonly KeptRow[] =>
    [...new Set(ids)].flatMap((id) => open().byId(id) ?? []).toSorted((a, b) => a.position - b.position);

  return {
    position: async () => open().rows.length,
    since: (position) => whileOpen(scope, () => pages(open().rows, position)),
    all: (order: JournalOrder) =>
      whileOpen(scope, () => pages(order === 'fold' ? open().rows.toSorted(foldOrder) : open().rows, 0)),
    byMessage: async (key) =>
      entriesOf(
        open()
          .where('message', key)
          .toSorted((a, b) => a.act - b.act),
      ),
    answersTo: async (key) => entriesOf(open().where('because', key)),
    byIds: async (ids) => entriesOf(known(ids)),
    familyOf: async (ids) => entriesOf(family(open(), known(ids))),
    ofMachine: async (machine) => entriesOf(family(open(), open().where('machine', machine))),
    ofNoMachine: async () =>
      entriesOf(
        family(
          table,
          open().rows.filter((row) => row.machine === null && row.target === null),
        ),
      ),
    ofPerson: async (by, filter) => {
      const rows = open()
        .where('by', by)
        .filter(({ writtenAt }) => filter.writtenAsOf === undefined || writtenAt <= filter.writtenAsOf);
      return entriesOf(rows.toReversed().slice(0, filter.limit));
    },
    recent: async (filter) => {
      const rows = open().rows.filter((row) => matches(row, filter));
      return entriesOf(rows.toSorted((a, b) => foldOrder(b, a)).slice(0, filter.limit));
    },
    append: async (entries) => {
      assertOpen(scope);
      entries.forEach(add);
      return table.rows.length;
    },
    insertRaw: async (entry): Promise<ImportOutcome> => {
      const there = open().byId(entry.id);
      if (there !== undefined)
        return isDeepStrictEqual(decodeEntry(there.json), decodeEntry(rowOf(entry).json))
          ? 'same'
          : 'different';
      add(entry);
      return 'written';
    },
  };
}

/** Every page is checked: a reader that outlives its transaction would see what others write. */
async function* whileOpen(scope: Scope, start: () => AsyncIterable<Batch>): AsyncGenerator<Batch> {
  for await (const batch of start()) {
    assertOpen(scope);
    yield batch;
  }
}

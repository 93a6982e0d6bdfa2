import { isDeepStrictEqual } from 'node:util';
import type { Entry } from '../../maintenance/entry/entry.ts';
import { BATCH_SIZE, batches, entriesOf, type Kept } from '../batches.ts';
import { decodeEntry } from '../codec.ts';
import { StoreFault } from '../fault.ts';
import type { Batch, ImportOutcome, Journal, Position } from '../journal.ts';
import { rowOf } from '../row.ts';
import { personHistory, recentHistory } from './history.ts';
import { Query, type Session } from './query.ts';

interface Json {
  json: string;
}
interface FoldKey extends Kept {
  at: number;
  saidAt: number;
  act: number;
  id: string;
}

const LAST = new Query<{ position: Position }>('SELECT coalesce(max(position), 0) AS position FROM entries');
const SINCE = new Query<Kept>(
  `SELECT position, json FROM entries WHERE position > ? ORDER BY position LIMIT ${BATCH_SIZE}`,
);
const FOLD_COLUMNS = 'position, json, at, said_at AS saidAt, act, id';
const FOLD_FIRST = new Query<FoldKey>(
  `SELECT ${FOLD_COLUMNS} FROM entries ORDER BY at, said_at, act, id LIMIT ${BATCH_SIZE}`,
);
const FOLD_NEXT = new Query<FoldKey>(
  `SELECT ${FOLD_COLUMNS} FROM entries WHERE (at, said_at, act, id) > (?, ?, ?, ?)
   ORDER BY at, said_at, act, id LIMIT ${BATCH_SIZE}`,
);
const BY_MESSAGE = new Query<Json>('SELECT json FROM entries WHERE message = ? ORDER BY act, position');
const BECAUSE = new Query<Json>('SELECT json FROM entries WHERE because = ? ORDER BY position');
const BY_ID = new Query<Json>('SELECT json FROM entries WHERE id = ?');
const BY_IDS = new Query<Json>(
  'SELECT json FROM entries WHERE id IN (SELECT value FROM json_each(?)) ORDER BY position',
);

/** From the seeds down to what targets them and up to what they target, at any depth. */
const family = (seeds: string): Query<Json> =>
  new Query<Json>(`WITH RECURSIVE family (position, id, target) AS (
    SELECT position, id, target FROM entries WHERE ${seeds}
    UNION SELECT e.position, e.id, e.target FROM family f JOIN entries e ON e.target = f.id
    UNION SELECT e.position, e.id, e.target FROM family f JOIN entries e ON e.id = f.target
  ) SELECT json FROM entries WHERE position IN (SELECT position FROM family) ORDER BY position`);
const FAMILY_OF = family('id IN (SELECT value FROM json_each(?))');
const OF_MACHINE = family('machine = ?');
const OF_NO_MACHINE = family('machine IS NULL AND target IS NULL');

const INSERT = new Query(
  `INSERT INTO entries (id, at, said_at, written_at, kind, by, message, act, because, machine, task, part, target, json)
   VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (id) DO NOTHING`,
);

/** False: its id is there already, and nothing was written. */
function insert(session: Session, entry: Entry): boolean {
  const { id, at, saidAt, writtenAt, kind, by, message, act, because, machine, task, part, target, json } =
    rowOf(entry);
  const stamps = [id, at, saidAt, writtenAt, kind, by, message, act, because];
  return session.run(INSERT, ...stamps, machine, task, part, target, json) === 1;
}

function inFoldOrder(session: Session): AsyncIterable<Batch> {
  return batches<FoldKey>((last) =>
    last === undefined
      ? session.all(FOLD_FIRST)
      : session.all(FOLD_NEXT, last.at, last.saidAt, last.act, last.id),
  );
}

export function sqliteJournal(session: Session): Journal {
  const position = (): Position => session.get(LAST)?.position ?? 0;
  const there = (id: string): Entry | undefined => entriesOf(session.all(BY_ID, id))[0];
  const since = (from: Position): AsyncIterable<Batch> =>
    batches<Kept>((last) => session.all(SINCE, last?.position ?? from));

  return {
    position: async () => position(),
    since,
    all: (order) => (order === 'fold' ? inFoldOrder(session) : since(0)),
    byMessage: async (key) => entriesOf(session.all(BY_MESSAGE, key)),
    answersTo: async (key) => entriesOf(session.all(BECAUSE, key)),
    byIds: async (ids) => entriesOf(session.all(BY_IDS, JSON.stringify(ids))),
    familyOf: async (ids) => entriesOf(session.all(FAMILY_OF, JSON.stringify(ids))),
    ofMachine: async (machine) => entriesOf(session.all(OF_MACHINE, machine)),
    ofNoMachine: async () => entriesOf(session.all(OF_NO_MACHINE)),
    ofPerson: async (by, filter) => entriesOf(personHistory(session, by, filter)),
    recent: async (filter) => entriesOf(recentHistory(session, filter)),

    append: async (entries) => {
      for (const entry of entries) {
        if (!insert(session, entry))
          throw new StoreFault('duplicate', `The journal already has an entry with the id ${entry.id}.`);
      }
      return position();
    },
    insertRaw: async (entry): Promise<ImportOutcome> => {
      if (insert(session, entry)) return 'written';
      return isDeepStrictEqual(there(entry.id), decodeEntry(rowOf(entry).json)) ? 'same' : 'different';
    },
  };
}

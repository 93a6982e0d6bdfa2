/** The store in a SQLite file. */
import type Database from 'better-sqlite3';
import { StoreFault } from '../fault.ts';
import type { ReadView, Store, Transaction } from '../store.ts';
import { newNesting, type Scope, Turns } from '../turns.ts';
import { type Connections, connect } from './connect.ts';
import { asFault, guarded } from './faults.ts';
import { sqliteJournal } from './journal.ts';
import { PATIENCE, type Patience, patiently } from './patience.ts';
import { type Erasing, sqlitePost } from './post.ts';
import { Session } from './query.ts';
import { sqliteTraffic } from './traffic.ts';

export class SqliteStore implements Store {
  readonly #connections: Connections;
  readonly #patience: Patience;
  readonly #writing: Turns;
  readonly #reading: Turns;
  /** Words were deleted, and the log may still hold them. */
  #erasureOwed = false;

  private constructor(connections: Connections, patience: Patience) {
    const nesting = newNesting();
    this.#connections = connections;
    this.#patience = patience;
    this.#writing = new Turns(nesting);
    this.#reading = new Turns(nesting);
  }

  /** Throws StoreFault: see `connect`. */
  static async open(file: string, patience: Patience = PATIENCE): Promise<SqliteStore> {
    return new SqliteStore(await connect(file, patience), patience);
  }

  async transact<T>(work: (transaction: Transaction) => Promise<T>): Promise<T> {
    const { writer } = this.#connections;
    return this.#writing.take(async (scope) => {
      const erasing: Erasing = { happened: false };
      await this.#begin(() => writer.exec('BEGIN IMMEDIATE'));
      const result = await rollingBack(writer, async () => {
        const done = await work(openOn(writer, scope, erasing));
        commit(writer);
        return done;
      });
      this.#erasureOwed ||= erasing.happened;
      if (this.#erasureOwed) this.#erasureOwed = !emptiedLog(writer);
      return result;
    });
  }

  async read<T>(work: (view: ReadView) => Promise<T>): Promise<T> {
    const { reader } = this.#connections;
    return this.#reading.take(async (scope) => {
      await this.#begin(() => beginView(reader));
      return rollingBack(reader, async () => {
        const result = await work(openOn(reader, scope, { happened: false }));
        commit(reader);
        return result;
      });
    });
  }

  async close(): Promise<void> {
    await Promise.all([this.#writing.close(), this.#reading.close()]);
    // The reader first: the last connection to close folds the log into the file, which a reader may not.
    this.#connections.reader.close();
    this.#connections.writer.close();
  }

  async #begin(attempt: () => void): Promise<void> {
    try {
      await patiently(attempt, this.#patience);
    } catch (error) {
      throw asFault(error);
    }
  }
}

const openOn = (driver: Database.Database, scope: Scope, erasing: Erasing): Transaction => {
  const session = new Session(driver, scope);
  return {
    journal: sqliteJournal(session),
    post: sqlitePost(session, erasing),
    traffic: sqliteTraffic(session),
  };
};

/** The first look fixes the view; it is taken here, where being busy is waited out. */
function beginView(driver: Database.Database): void {
  if (!driver.inTransaction) driver.exec('BEGIN');
  driver.exec('SELECT one FROM workshop');
}

/**
 * False while somebody still reads from the log: then it is tried again after the next transaction.
 * Nothing is thrown, since what was asked for is committed by now.
 */
function emptiedLog(driver: Database.Database): boolean {
  try {
    const busy = driver.pragma('wal_checkpoint(TRUNCATE)', { simple: true });
    return busy === 0;
  } catch {
    return false;
  }
}

/** A full disk ends a transaction by itself: then there is nothing left to commit. */
function commit(driver: Database.Database): void {
  if (!driver.inTransaction)
    throw new StoreFault('failed', 'The database gave the transaction up: nothing was noted.');
  guarded(() => driver.exec('COMMIT'));
}

async function rollingBack<T>(driver: Database.Database, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (driver.inTransaction) driver.exec('ROLLBACK');
    throw error;
  }
}

/** Opening a database file: whose it is, how safely it writes, which schema it has. */
import { stat } from 'node:fs/promises';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';
import { StoreFault } from '../fault.ts';
import { asFault } from './faults.ts';
import { MIGRATIONS } from './migrations.ts';
import { type Patience, patiently } from './patience.ts';

/** "Fttl": tells our databases from those of other programs. */
export const APPLICATION_ID = 0x4674746c;

export interface Connections {
  writer: Database.Database;
  /** A second one, so that a view is never of an open transaction. */
  reader: Database.Database;
}

/** Creates the file when it is not there. Throws StoreFault with the file named in its sentence. */
export async function connect(file: string, patience: Patience): Promise<Connections> {
  await assertPlace(file);
  const opened: Database.Database[] = [];
  const open = (options: Database.Options): Database.Database => {
    const driver = new Database(file, { timeout: patience.attemptMs, ...options });
    opened.push(driver);
    return driver;
  };
  try {
    const writer = open({});
    await patiently(() => prepare(writer), patience);
    const reader = open({ readonly: true });
    await patiently(() => reader.prepare('SELECT count(*) FROM workshop').get(), patience);
    return { writer, reader };
  } catch (error) {
    for (const driver of opened) driver.close();
    throw naming(file, asFault(error));
  }
}

async function assertPlace(file: string): Promise<void> {
  const folder = await stat(dirname(file)).catch(() => undefined);
  if (folder?.isDirectory() !== true)
    throw new StoreFault('missing-folder', `The database ${file} cannot be made: its folder does not exist.`);
  const there = await stat(file).catch(() => undefined);
  if (there?.isDirectory() === true)
    throw new StoreFault('cannot-open', `The database ${file} cannot be opened: it is a folder.`);
}

function naming(file: string, error: unknown): unknown {
  if (!(error instanceof StoreFault) || error.code === 'busy') return error;
  return new StoreFault(error.code, `${error.message} (${file})`, { cause: error.cause ?? error });
}

const numberOf = (driver: Database.Database, pragma: string): number =>
  Number(driver.pragma(pragma, { simple: true }));

/** Nothing is changed before it is known whose file it is. */
function prepare(driver: Database.Database): void {
  assertOurs(driver);
  if (driver.pragma('journal_mode = WAL', { simple: true }) !== 'wal')
    throw new StoreFault(
      'cannot-open',
      'This disk does not allow the database to be shared safely: choose another folder.',
    );
  // FULL: what was acknowledged survives a power cut, for about a millisecond a commit.
  driver.pragma('synchronous = FULL');
  driver.pragma('foreign_keys = ON');
  // Deleted words are overwritten, not only forgotten.
  driver.pragma('secure_delete = ON');
  if (numberOf(driver, 'user_version') < MIGRATIONS.length) driver.transaction(migrate).immediate(driver);
}

/** Throws StoreFault `not-ours` or `newer-database`. */
function assertOurs(driver: Database.Database): void {
  const tables = driver.prepare('SELECT 1 FROM sqlite_schema LIMIT 1').get();
  if (tables === undefined) return;
  if (numberOf(driver, 'application_id') !== APPLICATION_ID)
    throw new StoreFault(
      'not-ours',
      'This is a database of another program, not of Fettle: choose another file.',
    );
  if (numberOf(driver, 'user_version') > MIGRATIONS.length)
    throw new StoreFault(
      'newer-database',
      'This database was made by a newer Fettle: bring this one up to date first.',
    );
}

/** Inside the transaction it is looked at again: another process may have been faster. */
function migrate(driver: Database.Database): void {
  assertOurs(driver);
  for (const step of MIGRATIONS.slice(numberOf(driver, 'user_version'))) driver.exec(step);
  driver.pragma(`application_id = ${APPLICATION_ID}`);
  driver.pragma(`user_version = ${MIGRATIONS.length}`);
}

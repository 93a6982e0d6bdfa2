/** Opening a database file: whose it is, how safely it writes, which schema it has. */
import { stat } from 'node:fs/promises';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';
import { StoreFault } from '../fault.ts';
import { asFault } from './faults.ts';
import { assertOurs, bringUpToDate } from './migrations.ts';
import { type Patience, patiently } from './patience.ts';

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
  // Negative: KiB. Enough for the indexes of a large import to stay in memory.
  driver.pragma('cache_size = -32000');
  // Deleted words are overwritten, not only forgotten.
  driver.pragma('secure_delete = ON');
  bringUpToDate(driver);
}

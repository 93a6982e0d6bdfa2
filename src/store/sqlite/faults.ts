/** The driver's error codes in our own. */
import Database from 'better-sqlite3';
import { StoreBusy, StoreFault, type StoreFaultCode } from '../fault.ts';

/** By the start of SQLite's code (https://www.sqlite.org/rescode.html); the first that fits. */
const BY_CODE: readonly (readonly [start: string, code: StoreFaultCode, sentence: string])[] = [
  ['SQLITE_NOTADB', 'not-a-database', 'This file is not a database.'],
  ['SQLITE_CORRUPT', 'damaged', 'The database file is damaged: restore it from a backup.'],
  [
    'SQLITE_READONLY',
    'read-only',
    'The database can only be read: check who may write to the file and its folder.',
  ],
  [
    'SQLITE_PERM',
    'read-only',
    'The database can only be read: check who may write to the file and its folder.',
  ],
  [
    'SQLITE_CANTOPEN',
    'cannot-open',
    'The database cannot be opened: check the path and who may write to its folder.',
  ],
  ['SQLITE_FULL', 'disk-full', 'The disk is full: nothing was noted.'],
  ['SQLITE_IOERR', 'disk-error', 'The disk reported an error: nothing was noted.'],
  ['SQLITE_CONSTRAINT_FOREIGNKEY', 'unknown-person', 'There is no such person to link an account to.'],
  [
    'SQLITE_CONSTRAINT_UNIQUE',
    'duplicate',
    'This is there already: an entry and a message are written once.',
  ],
  [
    'SQLITE_CONSTRAINT_PRIMARYKEY',
    'duplicate',
    'This is there already: an entry and a message are written once.',
  ],
];

export const isBusy = (error: unknown): boolean =>
  error instanceof Database.SqliteError && /^SQLITE_(BUSY|LOCKED)/u.test(error.code);

/** A driver's error as a StoreFault with the error as its cause; anything else as it is. */
export function asFault(error: unknown): unknown {
  if (!(error instanceof Database.SqliteError)) return error;
  if (isBusy(error)) return new StoreBusy({ cause: error });
  const row = BY_CODE.find(([start]) => error.code.startsWith(start));
  if (row !== undefined) return new StoreFault(row[1], row[2], { cause: error });
  return new StoreFault('failed', `The database refused: ${error.message}.`, { cause: error });
}

/** Runs a call of the driver; what it throws comes out as a StoreFault. */
export function guarded<T>(call: () => T): T {
  try {
    return call();
  } catch (error) {
    throw asFault(error);
  }
}

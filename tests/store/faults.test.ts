import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { StoreBusy, StoreFault } from '../../src/store/fault.ts';
import { asFault } from '../../src/store/sqlite/faults.ts';
import { patiently } from '../../src/store/sqlite/patience.ts';

const driverError = (code: string): Error => new Database.SqliteError('details', code);

describe("the driver's errors", () => {
  // Codes: https://www.sqlite.org/rescode.html
  it.each([
    ['SQLITE_FULL', 'disk-full'],
    ['SQLITE_IOERR_WRITE', 'disk-error'],
    ['SQLITE_CORRUPT_INDEX', 'damaged'],
    ['SQLITE_READONLY_DIRECTORY', 'read-only'],
    ['SQLITE_CANTOPEN', 'cannot-open'],
    ['SQLITE_NOTADB', 'not-a-database'],
    ['SQLITE_CONSTRAINT_UNIQUE', 'duplicate'],
    ['SQLITE_CONSTRAINT_FOREIGNKEY', 'unknown-person'],
    ['SQLITE_CONSTRAINT_CHECK', 'failed'],
    ['SQLITE_BUSY_SNAPSHOT', 'busy'],
    ['SQLITE_NOMEM', 'failed'],
  ])('%s is told as %s, with the cause kept', (code, ours) => {
    const error = driverError(code);
    const fault = asFault(error);
    expect(fault).toBeInstanceOf(StoreFault);
    expect(fault).toMatchObject({ code: ours, cause: error });
    expect(fault instanceof StoreFault && fault.message).toMatch(/^[A-Z].+\.$/u);
  });

  it('that are none stay what they are', () => {
    const error = new TypeError('a mistake in the program');
    expect(asFault(error)).toBe(error);
  });
});

describe('patience', () => {
  const short = { attemptMs: 0, totalMs: 30, firstPauseMs: 1, longestPauseMs: 8 };

  it('tries again until it succeeds', async () => {
    let tries = 0;
    const attempt = (): number => {
      tries += 1;
      if (tries < 4) throw driverError('SQLITE_BUSY');
      return tries;
    };
    expect(await patiently(attempt, short)).toBe(4);
  });

  it('ends with an honest fault', async () => {
    let tries = 0;
    const never = (): never => {
      tries += 1;
      throw driverError('SQLITE_BUSY');
    };
    await expect(patiently(never, short)).rejects.toBeInstanceOf(StoreBusy);
    expect(tries).toBeGreaterThan(3);
  });

  it('has none with other errors', async () => {
    let tries = 0;
    const full = (): never => {
      tries += 1;
      throw driverError('SQLITE_FULL');
    };
    await expect(patiently(full, short)).rejects.toThrow('details');
    expect(tries).toBe(1);
  });
});

import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { openSqliteStore } from '../../src/store/open.ts';
import { assertOurs, bringUpToDate, MIGRATIONS } from '../../src/store/sqlite/migrations.ts';
import { usage } from './entries.ts';
import { freshFiles } from './folder.ts';

const fresh = freshFiles();
const versionOf = (driver: Database.Database): unknown => driver.pragma('user_version', { simple: true });

/** A database of the present version with one entry. */
async function present(): Promise<Database.Database> {
  const file = fresh();
  const store = await openSqliteStore(file);
  await store.transact(async ({ journal }) => journal.append([usage(1, 'birch')]));
  await store.close();
  return new Database(file);
}

describe('migrations', () => {
  it('bring a new file to the present version and are not taken twice', () => {
    const driver = new Database(fresh());
    bringUpToDate(driver);
    bringUpToDate(driver);
    expect(versionOf(driver)).toBe(MIGRATIONS.length);
  });

  it('take only the steps that are missing, and keep what is there', async () => {
    const driver = await present();
    const steps = [...MIGRATIONS, 'ALTER TABLE people ADD COLUMN pronouns TEXT', 'CREATE TABLE later (a)'];
    bringUpToDate(driver, steps);
    expect(versionOf(driver)).toBe(MIGRATIONS.length + 2);
    expect(driver.prepare('SELECT id FROM entries').pluck().all()).toEqual(['e1']);
    expect(() => driver.prepare('SELECT pronouns FROM people').all()).not.toThrow();
    expect(() => assertOurs(driver)).toThrow(/newer Fettle/u);
  });

  it('leave everything as it was when a step fails', async () => {
    const driver = await present();
    const steps = [...MIGRATIONS, 'CREATE TABLE later (a)', 'CREATE TABLE later (a)'];
    expect(() => bringUpToDate(driver, steps)).toThrow(/already exists/u);
    expect(versionOf(driver)).toBe(MIGRATIONS.length);
    expect(driver.prepare("SELECT 1 FROM sqlite_schema WHERE name = 'later'").get()).toBeUndefined();
  });

  it('may be started by several at once', async () => {
    const file = fresh();
    const stores = await Promise.all(Array.from({ length: 5 }, async () => openSqliteStore(file)));
    for (const [n, store] of stores.entries())
      await store.transact(async ({ journal }) => journal.append([usage(n, 'birch')]));
    expect(await stores[0]?.read(async ({ journal }) => journal.position())).toBe(5);
    for (const store of stores) await store.close();
  });
});

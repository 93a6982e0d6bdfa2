/** What opening a file says when it cannot be done, and that it then leaves the file alone. */
import { chmodSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { openSqliteStore } from '../../src/store/open.ts';
import { StoreFault } from '../../src/store/fault.ts';
import { PATIENCE } from '../../src/store/sqlite/patience.ts';
import { usage } from './entries.ts';
import { freshFiles } from './folder.ts';
import { ended, start } from '../faults/processes.ts';

const fresh = freshFiles();
const faultOf = async (file: string): Promise<StoreFault> =>
  openSqliteStore(file).then(
    () => expect.fail('it opened'),
    (error: unknown) => (error instanceof StoreFault ? error : expect.fail(String(error))),
  );

/** A database that Fettle made, with one entry, and then changed by hand. */
async function tampered(sql: string): Promise<string> {
  const file = fresh();
  const store = await openSqliteStore(file);
  await store.transact(async ({ journal }) => journal.append([usage(1, 'birch')]));
  await store.close();
  const driver = new Database(file);
  driver.exec(sql);
  driver.close();
  return file;
}

describe('opening a database', () => {
  it('makes the file and finds it again', async () => {
    const file = fresh();
    const first = await openSqliteStore(file);
    await first.transact(async ({ journal }) => journal.append([usage(1, 'birch')]));
    await first.close();
    expect(existsSync(`${file}-wal`)).toBe(false);
    const second = await openSqliteStore(file);
    expect(await second.read(async ({ journal }) => journal.ofMachine('birch'))).toEqual([usage(1, 'birch')]);
    await second.close();
  });

  it('takes an empty file as a new one', async () => {
    const file = fresh();
    writeFileSync(file, '');
    const store = await openSqliteStore(file);
    expect(await store.read(async ({ journal }) => journal.position())).toBe(0);
    await store.close();
  });

  it('writes with the safety that was promised', async () => {
    const file = fresh();
    const store = await openSqliteStore(file);
    await store.close();
    const driver = new Database(file);
    expect(driver.pragma('journal_mode', { simple: true })).toBe('wal');
    expect(driver.pragma('application_id', { simple: true })).toBe(0x4674746c);
    expect(() =>
      driver.exec("INSERT INTO handled (message, answer, at) VALUES ('a', x'00', 'soon')"),
    ).toThrow(/cannot store/u);
    driver.close();
  });

  it('says that the folder is missing', async () => {
    const file = join(dirname(fresh()), 'nowhere', 'shop.sqlite');
    const fault = await faultOf(file);
    expect(fault.code).toBe('missing-folder');
    expect(fault.message).toContain(file);
  });

  it('says that the path is a folder', async () => {
    expect((await faultOf(dirname(fresh()))).code).toBe('cannot-open');
  });

  it('says that a file is not a database, and leaves it as it was', async () => {
    const file = fresh();
    const text = 'machines:\n  - name: birch\n'.repeat(100);
    writeFileSync(file, text);
    const fault = await faultOf(file);
    expect(fault.code).toBe('not-a-database');
    expect(fault.cause).toBeInstanceOf(Error);
    expect(readFileSync(file, 'utf8')).toBe(text);
  });

  it("leaves another program's database alone", async () => {
    const file = fresh();
    const other = new Database(file);
    other.exec('CREATE TABLE entries (a)');
    other.close();
    const before = readFileSync(file);
    expect((await faultOf(file)).code).toBe('not-ours');
    expect(readFileSync(file).equals(before)).toBe(true);
  });

  it('stops at a database that a newer Fettle made, and leaves it as it was', async () => {
    const file = await tampered('PRAGMA user_version = 999');
    const before = readFileSync(file);
    const fault = await faultOf(file);
    expect(fault.code).toBe('newer-database');
    expect(fault.message).toMatch(/newer Fettle/u);
    expect(readFileSync(file).equals(before)).toBe(true);
  });

  it('notices a damaged file', async () => {
    const file = await tampered('SELECT 1');
    const bytes = readFileSync(file);
    writeFileSync(file, bytes.subarray(0, 5000).fill(0x5a, 200, 4000));
    expect((await faultOf(file)).code).toBe('damaged');
  });

  it('says when the folder may not be written to', async () => {
    const folder = join(dirname(fresh()), 'locked');
    mkdirSync(folder);
    chmodSync(dirname(folder), 0o755);
    chmodSync(folder, 0o555);
    const child = start('opener.ts', [join(folder, 'shop.sqlite')]);
    expect((await ended(child)).lines).toEqual(['cannot-open']);
  });

  it('says when the file may not be written to', async () => {
    const file = await tampered('SELECT 1');
    chmodSync(dirname(file), 0o755);
    chmodSync(file, 0o444);
    const child = start('opener.ts', [file]);
    expect((await ended(child)).lines).toEqual(['read-only']);
  });
});

describe('a line of the journal that a newer Fettle wrote', () => {
  it('stops the reader with its sentence', async () => {
    const newer = JSON.stringify({ ...usage(2, 'birch'), kind: 'polished' });
    const file = await tampered(
      `INSERT INTO entries (id, at, said_at, written_at, kind, by, message, act, json)
       VALUES ('e2', 0, 0, 0, 'polished', 'p', 'm', 0, '${newer}')`,
    );
    const store = await openSqliteStore(file);
    const reading = store.read(async ({ journal }) => journal.byIds(['e2']));
    await expect(reading).rejects.toMatchObject({
      code: 'unreadable',
      message: expect.stringMatching(/polished/u),
    });
    await store.close();
  });
});

describe('entries once written', () => {
  it('can neither be changed nor deleted, even by hand', async () => {
    const file = await tampered('SELECT 1');
    const driver = new Database(file);
    expect(() => driver.exec('DELETE FROM entries')).toThrow(/never deleted/u);
    expect(() => driver.exec("UPDATE entries SET json = '{}'")).toThrow(/never changed/u);
    driver.close();
  });
});

describe('a second process', () => {
  it('is told honestly when the database stays locked, and can write afterwards', async () => {
    const file = fresh();
    const store = await openSqliteStore(file, { ...PATIENCE, totalMs: 150 });
    const other = new Database(file);
    other.exec('BEGIN IMMEDIATE');
    const writing = store.transact(async ({ journal }) => journal.append([usage(1, 'birch')]));
    await expect(writing).rejects.toMatchObject({
      code: 'busy',
      message: expect.stringMatching(/nothing was noted/u),
    });
    expect(await store.read(async ({ journal }) => journal.position())).toBe(0);
    other.exec('COMMIT');
    other.close();
    expect(await store.transact(async ({ journal }) => journal.append([usage(1, 'birch')]))).toBe(1);
    await store.close();
  });

  it('is waited for without standing still', async () => {
    const file = fresh();
    const store = await openSqliteStore(file);
    const other = new Database(file);
    other.exec('BEGIN IMMEDIATE');
    let ticks = 0;
    const ticking = setInterval(() => (ticks += 1), 5);
    setTimeout(() => other.exec('COMMIT'), 300);
    expect(await store.transact(async ({ journal }) => journal.append([usage(1, 'birch')]))).toBe(1);
    clearInterval(ticking);
    expect(ticks).toBeGreaterThan(10);
    other.close();
    await store.close();
  });
});

describe('deleted words', () => {
  it('are gone from the disk as well', async () => {
    const file = fresh();
    const store = await openSqliteStore(file);
    const text = 'the quick brown secret of ines';
    const onDisk = (): boolean =>
      [file, `${file}-wal`].some((path) => existsSync(path) && readFileSync(path).includes(text));
    await store.transact(async ({ post }) => post.saveWords({ message: 'm', person: 'p', text, at: 0 }));
    expect(onDisk()).toBe(true);
    await store.transact(async ({ post }) => post.deleteWords({ person: 'p' }));
    expect(onDisk()).toBe(false);
    await store.close();
  });

  it('go with the next transaction when somebody was still reading', async () => {
    const file = fresh();
    const store = await openSqliteStore(file);
    const text = 'the quick brown secret of ines';
    await store.transact(async ({ post }) => post.saveWords({ message: 'm', person: 'p', text, at: 0 }));
    const reader = new Database(file);
    reader.exec('BEGIN');
    reader.prepare('SELECT count(*) FROM words').get();
    expect(await store.transact(async ({ post }) => post.deleteWords({ person: 'p' }))).toBe(1);
    reader.close();
    await store.transact(async ({ post }) => post.saveWorkshop('{}', 0));
    const paths = [file, `${file}-wal`].filter((path) => existsSync(path));
    expect(paths.some((path) => readFileSync(path).includes(text))).toBe(false);
    await store.close();
  });
});

/** The command line held wrongly: misspelt, in the wrong order, at the wrong time. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { freshFiles } from '../store/folder.ts';
import { fettle } from '../support/commandLine.ts';

const fresh = freshFiles();
const WORKSHOP = 'demo-data/workshop.yaml';
const enrol = (db: string, now: string, file = WORKSHOP) =>
  fettle(['enrol', '--db', db, '--json', '--now', now, file]);

async function shop(): Promise<string> {
  const db = fresh();
  expect((await enrol(db, '2026-03-11T08:00')).code).toBe(0);
  return db;
}

describe('a misspelt database', () => {
  it.each([['due'], ['digest'], ['export'], ['say', 'hello'], ['chat'], ['enrol', '--dry-run', WORKSHOP]])(
    '%s leaves no empty one behind',
    async (...words) => {
      const db = fresh();
      const ended = await fettle([...words, '--db', db]);
      expect(existsSync(db)).toBe(false);
      expect(ended.code).toBe(words[0] === 'enrol' ? 0 : 1);
    },
  );
});

describe('a word or a value too many or too few', () => {
  it.each([
    ['due', 'alder'],
    ['digest', 'today'],
    ['export', 'x'],
    ['read', 'x'],
    ['chat', 'hello'],
  ])('fettle %s %s is wrong usage', async (...words) => {
    expect((await fettle([...words, '--db', await shop()])).code).toBe(2);
  });

  it.each([
    ['due', '--machine', ''],
    ['say', '--as', ' ', 'hello'],
    ['digest', '--db', ''],
  ])('%s %s with nothing in it is wrong usage', async (...words) => {
    const ended = await fettle(words);
    expect([ended.code, ended.err]).toEqual([2, expect.stringMatching(/needs a value/u)]);
  });

  it('a moment that is none is wrong usage, also before there is a workshop', async () => {
    for (const now of ['soon', '2026-03-11T15:40:60', '2026-03-11T15:40:60+01:00'])
      expect((await fettle(['due', '--db', fresh(), '--now', now])).code).toBe(2);
    expect((await fettle(['say', '--db', fresh(), '--said-at', 'soon', 'hello'])).code).toBe(2);
  });
});

describe('the moment of a conversation', () => {
  it('is that of --now for the workshop that it enrols, in that workshop’s own zone', async () => {
    const [db, file] = [fresh(), `${fresh()}.yaml`];
    writeFileSync(file, readFileSync(WORKSHOP, 'utf8').replace('Europe/Copenhagen', 'America/New_York'));
    await fettle(['chat', '--db', db, '--workshop', file, '--now', '2026-05-04T09:00']);
    const [first] = (await fettle(['export', '--db', db])).out.split('\n');
    expect(JSON.parse(first ?? '{}')).toMatchObject({ writtenAt: '2026-05-04T09:00:00-04:00' });
    const trial = await fettle(['chat', '--workshop', file, '--now', '2026-05-04T23:30']);
    expect(trial.out).toMatch(/Monday 4 May/u);
  });
});

describe('a workshop file applied again', () => {
  const edited = (db: string): string => {
    const file = join(db, '..', 'edited.yaml');
    const own = readFileSync(WORKSHOP, 'utf8');
    writeFileSync(file, own.replace(/count: \d+/u, 'count: 77'));
    expect(readFileSync(file, 'utf8')).not.toBe(own);
    return file;
  };

  it('at an earlier moment enrols nothing twice, and changes nothing behind a later one', async () => {
    const db = await shop();
    expect((await enrol(db, '2026-03-01T08:00')).json()).toMatchObject({ added: [], entries: [] });
    const changed = await enrol(db, '2026-03-01T08:00', edited(db));
    expect([changed.code, changed.json()]).toMatchObject([1, { error: { code: 'earlier' } }]);
  });

  it('to and fro at the same moment is a message each time', async () => {
    const db = await shop();
    const other = edited(db);
    for (const file of [other, WORKSHOP, other, WORKSHOP]) {
      const ended = await enrol(db, '2026-03-11T08:00', file);
      expect(ended.code).toBe(0);
      expect((ended.json()['entries'] as unknown[]).length).toBe(1);
    }
  });
});

describe('fettle forget', () => {
  it('deletes a person’s words and the answers to them, and keeps what was noted', async () => {
    const db = await shop();
    const say = (text: string, key: string) =>
      fettle(['say', '--db', db, '--json', '--as', 'Odd', '--key', key, '--now', '2026-03-11T15:40', text]);
    await say('oiled the rods on alder', 'k1');
    await say('status alder', 'k2');
    expect((await fettle(['forget', '--db', db, '--json', '--person', 'odd'])).json()).toEqual({
      forgotten: 1,
    });
    for (const key of ['k1', 'k2'])
      expect((await say('x', key)).json()).toMatchObject({
        outcome: 'repeated',
        reply: expect.stringMatching(/not kept/u),
      });
    expect((await fettle(['export', '--db', db])).out).toMatch(/lubricate-rods/u);
  });

  it('needs to know whose, and says when there is nobody of that name', async () => {
    const db = await shop();
    expect((await fettle(['forget', '--db', db])).code).toBe(2);
    expect((await fettle(['forget', '--db', db, '--person', 'Nobody'])).code).toBe(2);
    expect((await fettle(['forget', '--db', db, '--json', '--message', 'k9'])).json()).toEqual({
      forgotten: 0,
    });
  });
});

describe('a journal from an editor that marks its files', () => {
  it('is imported like any other', async () => {
    const [one, two] = [await shop(), fresh()];
    const file = join(two, '..', 'marked.jsonl');
    writeFileSync(file, `\uFEFF${(await fettle(['export', '--db', one])).out}`);
    expect((await fettle(['import', '--db', two, '--json', file])).json()).toMatchObject({ skipped: 0 });
  });
});

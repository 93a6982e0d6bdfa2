/** The command line's contract: exit codes, JSON shapes, the clock of a run. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { freshFiles } from '../store/folder.ts';
import { fettle } from '../support/commandLine.ts';

const fresh = freshFiles();
const WORKSHOP = 'demo-data/workshop.yaml';

/** A database with the demo's workshop, enrolled in the morning. */
async function shop(): Promise<string> {
  const db = fresh();
  const enrolled = await fettle(['enrol', '--db', db, '--now', '2026-03-11T08:00', WORKSHOP]);
  expect(enrolled.code).toBe(0);
  return db;
}

describe('every subcommand', () => {
  it('needs to know which database, and says so', async () => {
    for (const words of [
      ['due'],
      ['digest'],
      ['export'],
      ['say', 'hello'],
      ['enrol', WORKSHOP],
      ['import', 'x'],
    ]) {
      const ended = await fettle(words);
      expect([words[0], ended.code]).toEqual([words[0], 2]);
      expect(ended.err).toMatch(/Which database\? Give --db FILE or set FETTLE_DB/u);
    }
  });

  it('answers an unknown command, option or moment with exit 2, one sentence and, with --json, a document', async () => {
    for (const words of [
      ['frobnicate', '--json'],
      ['due', '--nope', '--json'],
      ['say', '--json', '--db', 'x.sqlite'],
    ]) {
      const ended = await fettle(words);
      expect(ended.code).toBe(2);
      expect(ended.json()).toEqual({ error: { code: 'usage', text: ended.err.trim() } });
    }
    const db = await shop();
    for (const now of ['yesterday', '2026-02-30', '2026-03-11T25:00', '11/03/2026'])
      expect((await fettle(['due', '--db', db, '--now', now])).code).toBe(2);
  });

  it('answers a database that cannot be opened with exit 1', async () => {
    const text = join(fresh(), '..', 'notes.txt');
    writeFileSync(text, 'not a database, only a note that is long enough to be read as one by nobody at all');
    const ended = await fettle(['due', '--json', '--db', text]);
    expect(ended.code).toBe(1);
    expect(ended.json()).toMatchObject({ error: { text: expect.stringMatching(/database/u) } });
    expect((await fettle(['due', '--db', '/nowhere/at/all.sqlite'])).code).toBe(1);
  });

  it('says that a fresh database has no workshop yet', async () => {
    const ended = await fettle(['digest', '--db', fresh(), '--json']);
    expect([ended.code, ended.json()]).toEqual([
      1,
      { error: { code: 'no-workshop', text: ended.err.trim() } },
    ]);
  });

  it('has help, and lists all commands', async () => {
    const help = await fettle(['--help']);
    expect(help.code).toBe(0);
    for (const name of ['chat', 'say', 'read', 'due', 'digest', 'enrol', 'export', 'import'])
      expect(help.out).toMatch(new RegExp(`fettle ${name}`, 'u'));
    expect((await fettle(['say', '--help'])).out).toMatch(/--key/u);
  });
});

describe('fettle say', () => {
  let db: string;
  beforeAll(async () => {
    db = await shop();
  });
  const say = (text: string, ...more: string[]) =>
    fettle(['say', '--db', db, '--json', '--as', 'Ines', '--now', '2026-03-11T15:40', ...more, text]);

  it('gives acts, results, exactly the appended entries, question and reply', async () => {
    const answer = (await say('swapped the nozzle on birch, worn')).json();
    expect(answer).toMatchObject({
      now: '2026-03-11T15:40:00+01:00',
      by: 'ines',
      outcome: 'written',
      acts: [{ kind: 'swap', machine: 'birch', part: 'nozzle', reason: 'worn' }],
      results: [{ act: 0, outcome: 'written', flags: ['assumed-fitted'] }],
      entries: [
        {
          kind: 'swapped', machine: 'birch', part: 'nozzle', reason: 'worn', by: 'ines', act: 0,
          at: '2026-03-11T15:40:00+01:00', precision: 'instant', writtenAt: '2026-03-11T15:40:00+01:00',
        },
      ],
      question: null,
      reply: expect.stringMatching(/^Birch: noted\./u),
    }); // prettier-ignore
  });

  it('writes the same key once and gives the first answer again', async () => {
    const first = (await say('cleaned the plate on alder', '--key', 'k1')).json();
    const again = (await say('cleaned the plate on alder', '--key', 'k1')).json();
    expect(again).toEqual({ ...first, outcome: 'repeated', entries: [] });
  });

  it('resolves relative dates against the time of saying', async () => {
    const late = await say('levelled the bed on birch yesterday', '--said-at', '2026-03-11T09:00');
    expect(late.json()).toMatchObject({ entries: [{ at: '2026-03-10T12:00:00+01:00', precision: 'day' }] });
  });

  it('continues the conversation of the speaker with the next run, and forgets it after half an hour', async () => {
    const asked = (await say('just changed a nozzle', '--as', 'Odd')).json();
    expect(asked).toMatchObject({ outcome: 'asked', entries: [], question: { field: 'machine' } });
    const answer = (await say('hazel', '--as', 'Odd', '--now', '2026-03-11T15:50')).json();
    expect(answer).toMatchObject({ outcome: 'written', entries: [{ kind: 'swapped', machine: 'hazel' }] });
    await say('just changed a nozzle', '--as', 'Priya');
    const late = (await say('hazel', '--as', 'Priya', '--now', '2026-03-11T16:11')).json();
    expect(late).toMatchObject({ entries: [] });
  });

  it('refuses with a code, and a refusal is an answer', async () => {
    const ended = await say('read the counter on alder: 12');
    expect(ended.code).toBe(0);
    expect(ended.json()).toMatchObject({
      outcome: 'refused',
      entries: [],
      results: [{ code: 'counter-back' }],
    });
  });

  it('is silent at small talk', async () => {
    expect((await say("tea's ready")).json()).toMatchObject({
      outcome: 'silent',
      acts: [],
      entries: [],
      reply: '',
    });
  });

  it('counts nothing that was written later than the moment of the question', async () => {
    await say('alder is out of use', '--now', '2026-03-12T10:00');
    const before = await fettle(['digest', '--db', db, '--json', '--now', '2026-03-12T09:00']);
    const after = await fettle(['digest', '--db', db, '--json', '--now', '2026-03-12T11:00']);
    expect(before.json()['outOfUse']).toEqual([]);
    expect(after.json()['outOfUse']).toMatchObject([{ machine: 'alder' }]);
  });
});

describe('fettle due', () => {
  it('lists rows in the shape of the contract', async () => {
    const db = await shop();
    const ended = await fettle(['due', '--db', db, '--json', '--machine', 'Alder', '--now', '2026-03-11']);
    const rows: Record<string, unknown>[] = JSON.parse(ended.out);
    expect(rows.length).toBeGreaterThan(15);
    const FIELDS = [
      'machine', 'task', 'state', 'idle', 'class', 'share', 'trigger', 'used', 'interval', 'unit', 'grace', 'since',
      'all', 'source', 'raisedBy', 'putOff', 'minutes', 'forecast',
    ]; // prettier-ignore
    for (const row of rows) expect(Object.keys(row)).toEqual(FIELDS);
    expect(new Set(rows.map((row) => row['machine']))).toEqual(new Set(['alder']));
    for (const row of rows.filter((r) => r['state'] === 'no-record'))
      expect(row).toMatchObject({ share: null, used: null, since: null, forecast: null });
  });

  it('knows aliases and refuses a name that is no machine', async () => {
    const db = await shop();
    const byAlias = await fettle(['due', '--db', db, '--json', '--machine', '#1']);
    const byName = await fettle(['due', '--db', db, '--json', '--machine', 'alder']);
    expect(byAlias.out).toBe(byName.out);
    expect((await fettle(['due', '--db', db, '--machine', 'oak'])).code).toBe(2);
  });
});

describe('fettle enrol', () => {
  it('says what changes, writes nothing on a dry run, and nothing the second time', async () => {
    const db = fresh();
    const dry = await fettle(['enrol', '--db', db, '--json', '--dry-run', WORKSHOP]);
    expect(dry.json()['added']).toHaveLength(8);
    expect((await fettle(['export', '--db', db])).out).toBe('');
    const first = await fettle(['enrol', '--db', db, '--json', WORKSHOP]);
    expect(first.json()['entries']).toHaveLength((dry.json()['entries'] as unknown[]).length);
    const second = await fettle(['enrol', '--db', db, '--json', WORKSHOP]);
    expect(second.json()).toMatchObject({ added: [], changed: [], changes: [], entries: [] });
  });

  it('names what is different, old beside new', async () => {
    const db = fresh();
    await fettle(['enrol', '--db', db, WORKSHOP]);
    const file = join(db, '..', 'changed.yaml');
    writeFileSync(file, readFileSync(WORKSHOP, 'utf8').replace('digestAt: 07:30', 'digestAt: 08:15'));
    const told = await fettle(['enrol', '--db', db, file]);
    expect(told.out).toContain('  workshop: digestAt: 07:30 -> 08:15');
  });

  it('names the line of every fault and keeps nothing', async () => {
    const db = fresh();
    const file = join(db, '..', 'broken.yaml');
    writeFileSync(
      file,
      readFileSync(WORKSHOP, 'utf8').replace('zone: Europe/Copenhagen', 'zone: Europe/Nowhere'),
    );
    const ended = await fettle(['enrol', '--db', db, '--json', file]);
    expect(ended.code).toBe(1);
    expect(ended.err).toMatch(/^Line \d+: .*zone/u);
    expect((await fettle(['export', '--db', db])).out).toBe('');
  });
});

describe('fettle export and import', () => {
  it('carry a journal to another database unchanged', async () => {
    const [one, two] = [await shop(), fresh()];
    await fettle([
      'say',
      '--db',
      one,
      '--as',
      'Ines',
      '--now',
      '2026-03-11T15:40:12.345+01:00',
      'oiled the rods on alder',
    ]);
    await fettle(['say', '--db', one, '--as', 'Ines', '--now', '2026-03-11T15:41', 'make that birch']);
    const exported = await fettle(['export', '--db', one]);
    const file = join(two, '..', 'journal.jsonl');
    writeFileSync(file, exported.out);
    const lines = exported.out.trim().split('\n').length;
    expect((await fettle(['import', '--db', two, '--json', file])).json()).toEqual({
      written: lines,
      skipped: 0,
    });
    expect((await fettle(['import', '--db', two, '--json', file])).json()).toEqual({
      written: 0,
      skipped: lines,
    });
    await fettle(['enrol', '--db', two, '--now', '2026-03-11T08:00', WORKSHOP]);
    expect((await fettle(['export', '--db', two])).out).toBe(exported.out);
    const due = (db: string) => fettle(['due', '--db', db, '--json', '--now', '2026-03-12']);
    expect((await due(two)).out).toBe((await due(one)).out);
  });

  it('take all or nothing, and name the line that is wrong', async () => {
    const db = await shop();
    const exported = (await fettle(['export', '--db', db])).out.trim().split('\n');
    const file = join(db, '..', 'bad.jsonl');
    const other = exported[3]?.replace('"act":3', '"act":4') ?? '';
    writeFileSync(file, [...exported.slice(0, 3), other].join('\n'));
    const conflict = await fettle(['import', '--db', db, '--json', file]);
    expect([conflict.code, conflict.err]).toEqual([
      1,
      expect.stringMatching(/^Line 4: entry \w+ is here already/u),
    ]);
    const two = fresh();
    writeFileSync(file, [...exported, 'not json'].join('\n'));
    expect((await fettle(['import', '--db', two, file])).err).toMatch(
      new RegExp(`^Line ${exported.length + 1}: `, 'u'),
    );
    expect((await fettle(['export', '--db', two])).out).toBe('');
  });
});

describe('fettle read', () => {
  it('answers line by line, in order, and says which line it could not read', async () => {
    const lines = [
      '{"id":"S001","text":"hazel 3.5h petg today"}',
      'nonsense',
      '{"id":7,"text":"hmm"}',
      '{"id":"x"}',
    ];
    const ended = await fettle(['read', '--now', '2026-03-11T15:40'], lines);
    const out: unknown[] = ended.out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(out[0]).toEqual({
      id: 'S001',
      acts: [{ kind: 'usage', machine: 'hazel', hours: 3.5, material: 'petg' }],
    });
    expect(out[1]).toMatchObject({ line: 2, error: expect.any(String) });
    expect(out[2]).toMatchObject({ id: 7 });
    expect(out[3]).toMatchObject({ line: 4, error: expect.any(String) });
    expect(ended.code).toBe(1);
  });

  it('gives the trail on demand, and calls what is too long unclear', async () => {
    const long = JSON.stringify({ id: 'l', text: 'a'.repeat(40_001) });
    const ended = await fettle(['read', '--trail'], ['{"id":"1","text":"oiled the rods on alder"}', long]);
    const [first, second] = ended.out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(first.trail[0]).toMatchObject({
      rule: expect.any(String),
      span: [expect.any(Number), expect.any(Number)],
    });
    expect(second.acts).toEqual([{ kind: 'unclear', why: 'too long' }]);
    expect(ended.code).toBe(0);
  });
});

describe('fettle chat', () => {
  it('opens the demo with today’s digest and three things to try, and answers', async () => {
    const ended = await fettle(
      ['chat', '--as', 'Ines'],
      ["what's overdue on alder?", '1', 'undo', 'exit', 'never read'],
    );
    expect(ended.code).toBe(0);
    expect(ended.out).toMatch(/Wednesday 11 March\. \d+ overdue/u);
    expect(ended.out).toMatch(/Try, in your own words:\n.*overdue on.*\n.*jam.*\n.*undo/u);
    expect(ended.out).toMatch(/oil the rods: \d+ h over its 300 h {2}\[1 Done\] \[2 Put off\] \[3 How\?\]/u);
    expect(ended.out).toMatch(/Alder: noted\.\nrods oiled/u);
    expect(ended.out).toMatch(/Alder: taken back\.\nrods oiled/u);
    expect(ended.out).not.toMatch(/never read/u);
  });
});

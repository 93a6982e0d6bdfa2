/** The schema, step by step: step n brings a database from `user_version` n to n + 1. Steps are only ever added. */
import type Database from 'better-sqlite3';
import { StoreFault } from '../fault.ts';

/** "Fttl": tells our databases from those of other programs. */
export const APPLICATION_ID = 0x4674746c;

const FIRST = `
CREATE TABLE entries (
  position INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  at INTEGER NOT NULL,
  said_at INTEGER NOT NULL,
  written_at INTEGER NOT NULL,
  kind TEXT NOT NULL,
  by TEXT NOT NULL,
  message TEXT NOT NULL,
  act INTEGER NOT NULL,
  because TEXT,
  machine TEXT,
  task TEXT,
  part TEXT,
  target TEXT,
  json TEXT NOT NULL
) STRICT;
CREATE INDEX entries_in_fold_order ON entries (at, said_at, act, id);
CREATE INDEX entries_of_machine ON entries (machine, at);
CREATE INDEX entries_of_task ON entries (task, at) WHERE task IS NOT NULL;
CREATE INDEX entries_of_part ON entries (part, at) WHERE part IS NOT NULL;
CREATE INDEX entries_of_person ON entries (by);
CREATE INDEX entries_of_message ON entries (message);
CREATE INDEX entries_because ON entries (because) WHERE because IS NOT NULL;
CREATE INDEX entries_on_target ON entries (target) WHERE target IS NOT NULL;
CREATE TRIGGER entries_stay BEFORE DELETE ON entries BEGIN SELECT RAISE(ABORT, 'entries are never deleted'); END;
CREATE TRIGGER entries_keep BEFORE UPDATE ON entries BEGIN SELECT RAISE(ABORT, 'entries are never changed'); END;

CREATE TABLE handled (message TEXT PRIMARY KEY, answer TEXT NOT NULL, at INTEGER NOT NULL) STRICT;
CREATE TABLE words (
  message TEXT PRIMARY KEY, person TEXT NOT NULL, text TEXT NOT NULL, at INTEGER NOT NULL
) STRICT;
CREATE INDEX words_of_person ON words (person);
CREATE TABLE people (
  id TEXT PRIMARY KEY, name TEXT NOT NULL, folded_name TEXT NOT NULL,
  role TEXT CHECK (role IN ('member', 'keeper'))
) STRICT;
CREATE INDEX people_by_name ON people (folded_name);
CREATE TABLE accounts (
  platform TEXT NOT NULL, account TEXT NOT NULL, person TEXT NOT NULL REFERENCES people (id),
  PRIMARY KEY (platform, account)
) STRICT;
CREATE INDEX accounts_of_person ON accounts (person);
CREATE TABLE workshop (one INTEGER PRIMARY KEY CHECK (one = 1), json TEXT NOT NULL, at INTEGER NOT NULL) STRICT;
CREATE TABLE conversations (
  place TEXT NOT NULL, person TEXT NOT NULL, state TEXT NOT NULL, expires_at INTEGER NOT NULL,
  PRIMARY KEY (place, person)
) STRICT;
CREATE INDEX conversations_by_expiry ON conversations (expires_at);
CREATE TABLE checkpoints (
  machine TEXT PRIMARY KEY, fold_version INTEGER NOT NULL, position INTEGER NOT NULL, json TEXT NOT NULL
) STRICT;
`;

/** What comes from chat platforms and goes to them. */
const TRAFFIC = `
CREATE TABLE inbox (
  seq INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  same TEXT UNIQUE,
  platform TEXT NOT NULL,
  channel TEXT NOT NULL,
  lane TEXT NOT NULL,
  received TEXT NOT NULL,
  received_at INTEGER NOT NULL,
  tries INTEGER NOT NULL,
  not_before INTEGER NOT NULL,
  done_at INTEGER
) STRICT;
CREATE INDEX inbox_waiting ON inbox (lane, seq) WHERE done_at IS NULL;
CREATE INDEX inbox_done ON inbox (done_at) WHERE done_at IS NOT NULL;
CREATE TABLE heard (
  platform TEXT NOT NULL, channel TEXT NOT NULL, message TEXT NOT NULL, said_at INTEGER NOT NULL,
  direct INTEGER NOT NULL, PRIMARY KEY (platform, channel)
) STRICT;
CREATE TABLE seen (
  platform TEXT NOT NULL, account TEXT NOT NULL, name TEXT NOT NULL, at INTEGER NOT NULL,
  PRIMARY KEY (platform, account)
) STRICT;
CREATE TABLE posts (
  seq INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  platform TEXT NOT NULL,
  channel TEXT NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('planned', 'sending', 'unknown', 'sent', 'left')),
  open INTEGER NOT NULL,
  content TEXT NOT NULL,
  version INTEGER NOT NULL,
  shown INTEGER NOT NULL,
  message TEXT,
  thread TEXT,
  about TEXT,
  planned_at INTEGER NOT NULL,
  tried_at INTEGER,
  tries INTEGER NOT NULL,
  not_before INTEGER NOT NULL
) STRICT;
CREATE INDEX posts_open ON posts (platform, channel, seq) WHERE open = 1;
CREATE INDEX posts_done ON posts (planned_at) WHERE open = 0;
CREATE INDEX posts_about ON posts (about) WHERE about IS NOT NULL;
CREATE TABLE buttons (
  token TEXT PRIMARY KEY, post TEXT, position INTEGER NOT NULL, button TEXT NOT NULL, at INTEGER NOT NULL
) STRICT;
CREATE INDEX buttons_by_age ON buttons (at);
CREATE TABLE digests (
  platform TEXT NOT NULL, date TEXT NOT NULL, post TEXT, at INTEGER NOT NULL, PRIMARY KEY (platform, date)
) STRICT;
CREATE TABLE leases (name TEXT PRIMARY KEY, holder TEXT NOT NULL, until INTEGER NOT NULL) STRICT;
`;

/** Whose message it was, so that an answer that quotes somebody can go with the words; and how old it is. */
const HANDLED_OF = `
ALTER TABLE handled ADD COLUMN person TEXT;
CREATE INDEX handled_of_person ON handled (person) WHERE person IS NOT NULL;
CREATE INDEX handled_by_age ON handled (at);
`;

/** A direct conversation may be called by a person's account when it is written to, and by an id of its own afterwards. */
const SHOWN_IN = 'ALTER TABLE posts ADD COLUMN shown_in TEXT;';

export const MIGRATIONS: readonly string[] = [FIRST, TRAFFIC, HANDLED_OF, SHOWN_IN];

const numberOf = (driver: Database.Database, pragma: string): number =>
  Number(driver.pragma(pragma, { simple: true }));

/** An empty file is anybody's. Throws StoreFault `not-ours` or `newer-database`. */
export function assertOurs(driver: Database.Database, steps: readonly string[] = MIGRATIONS): void {
  if (driver.prepare('SELECT 1 FROM sqlite_schema LIMIT 1').get() === undefined) return;
  if (numberOf(driver, 'application_id') !== APPLICATION_ID)
    throw new StoreFault(
      'not-ours',
      'This is a database of another program, not of Fettle: choose another file.',
    );
  if (numberOf(driver, 'user_version') > steps.length)
    throw new StoreFault(
      'newer-database',
      'This database was made by a newer Fettle: bring this one up to date first.',
    );
}

/** Takes all missing steps in one transaction, or none. */
export function bringUpToDate(driver: Database.Database, steps: readonly string[] = MIGRATIONS): void {
  if (numberOf(driver, 'user_version') >= steps.length) return;
  const migrate = (): void => {
    // Looked at again, now that nobody else can write: another process may have been faster.
    assertOurs(driver, steps);
    for (const step of steps.slice(numberOf(driver, 'user_version'))) driver.exec(step);
    driver.pragma(`application_id = ${APPLICATION_ID}`);
    driver.pragma(`user_version = ${steps.length}`);
  };
  driver.transaction(migrate).immediate();
}

/** What is found in a database file after the faults, read without the store. */
import Database from 'better-sqlite3';

export interface Aftermath {
  integrity: unknown;
  /** How many entries each message has. */
  entries: ReadonlyMap<string, number>;
  handled: readonly string[];
  /** For each message's note: what its transaction saw as the last position, and where the note really is. */
  notes: readonly { saw: number; position: number }[];
}

export function aftermath(file: string): Aftermath {
  const driver = new Database(file);
  const counts = driver
    .prepare<[], { message: string; count: number }>(
      'SELECT message, count(*) AS count FROM entries GROUP BY message',
    )
    .all();
  const notes = driver
    .prepare<[], { saw: number; position: number }>(
      "SELECT CAST(json ->> 'text' AS INTEGER) AS saw, position FROM entries WHERE kind = 'noted'",
    )
    .all();
  const handled = driver.prepare<[], { message: string }>('SELECT message FROM handled').all();
  const integrity = driver.pragma('integrity_check', { simple: true });
  driver.close();
  return {
    integrity,
    entries: new Map(counts.map(({ message, count }) => [message, count])),
    handled: handled.map(({ message }) => message),
    notes,
  };
}

/** Which messages were handled, and what was said word for word. */
import { decodeValue, encodeValue } from '../codec.ts';
import { StoreFault } from '../fault.ts';
import type { HandledReader, HandledWriter, WordsReader, WordsWriter } from '../post.ts';
import { Query, type Session } from './query.ts';

const HANDLED = new Query<{ answer: string; at: number }>('SELECT answer, at FROM handled WHERE message = ?');
const RECORD = new Query(
  'INSERT INTO handled (message, answer, at, person) VALUES (?, ?, ?, ?) ON CONFLICT DO NOTHING',
);
const PRUNE = new Query('DELETE FROM handled WHERE at < ?');
const WORDS = new Query<{ message: string; person: string; text: string; at: number }>(
  'SELECT message, person, text, at FROM words WHERE message = ?',
);
const SAVE_WORDS = new Query('INSERT OR REPLACE INTO words (message, person, text, at) VALUES (?, ?, ?, ?)');
const DELETE_WORDS = new Query('DELETE FROM words WHERE message = ?');
const DELETE_PERSONS_WORDS = new Query('DELETE FROM words WHERE person = ?');
// an answer may quote what was said; that the message was handled stays
const EMPTY_ANSWER = new Query("UPDATE handled SET answer = 'null' WHERE message = ?");
const EMPTY_PERSONS_ANSWERS = new Query(
  "UPDATE handled SET answer = 'null' WHERE person = ? OR message IN (SELECT message FROM words WHERE person = ?)",
);
const MESSAGES_OF = new Query<{ message: string }>(
  'SELECT message FROM handled WHERE person = ? UNION SELECT message FROM words WHERE person = ?',
);
const DELETE_PERSONS_TALK = new Query('DELETE FROM conversations WHERE person = ?');

type Messages = HandledReader & HandledWriter & WordsReader & WordsWriter;

/** `onErase` is called when words went. */
export const sqliteMessages = (session: Session, onErase: () => void): Messages => ({
  handled: async (key) => {
    const row = session.get(HANDLED, key);
    return row === undefined ? undefined : { answer: decodeValue(row.answer), at: row.at };
  },
  recordHandled: async (key, answer, at, person) => {
    if (session.run(RECORD, key, encodeValue(answer), at, person ?? null) === 0)
      throw new StoreFault('duplicate', `The message ${key} was handled already: it is handled once.`);
  },
  pruneHandled: async (before) => session.run(PRUNE, before),
  words: async (message) => session.get(WORDS, message),
  messagesOf: async (person) => session.all(MESSAGES_OF, person, person).map(({ message }) => message),
  saveWords: async ({ message, person, text, at }) => {
    session.run(SAVE_WORDS, message, person, text, at);
  },
  deleteWords: async (whose) => {
    const gone = 'message' in whose ? deleteOf(session, whose.message) : deleteBy(session, whose.person);
    // an answer may have quoted what was never kept
    onErase();
    return gone;
  },
});

function deleteOf(session: Session, message: string): number {
  session.run(EMPTY_ANSWER, message);
  return session.run(DELETE_WORDS, message);
}

function deleteBy(session: Session, person: string): number {
  session.run(EMPTY_PERSONS_ANSWERS, person, person);
  session.run(DELETE_PERSONS_TALK, person);
  return session.run(DELETE_PERSONS_WORDS, person);
}

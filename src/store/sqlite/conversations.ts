/** What was last talked about, per speaker and place. */
import { decodeValue, encodeValue } from '../codec.ts';
import type { ConversationReader, ConversationWriter } from '../post.ts';
import { Query, type Session } from './query.ts';

const CONVERSATION = new Query<{ state: string; expiresAt: number }>(
  'SELECT state, expires_at AS expiresAt FROM conversations WHERE place = ? AND person = ?',
);
const SAVE = new Query(
  'INSERT OR REPLACE INTO conversations (place, person, state, expires_at) VALUES (?, ?, ?, ?)',
);
const DROP = new Query('DELETE FROM conversations WHERE place = ? AND person = ?');
const DROP_EXPIRED = new Query('DELETE FROM conversations WHERE expires_at <= ?');

export const sqliteConversations = (session: Session): ConversationReader & ConversationWriter => ({
  conversation: async (place, person) => {
    const row = session.get(CONVERSATION, place, person);
    return row === undefined
      ? undefined
      : { place, person, state: decodeValue(row.state), expiresAt: row.expiresAt };
  },
  saveConversation: async ({ place, person, state, expiresAt }) => {
    session.run(SAVE, place, person, encodeValue(state), expiresAt);
  },
  dropConversation: async (place, person) => {
    session.run(DROP, place, person);
  },
  dropExpiredConversations: async (now) => session.run(DROP_EXPIRED, now),
});

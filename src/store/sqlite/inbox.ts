/** What was received, and who was heard where. */
import { decodeOrNull, encodeValue } from '../codec.ts';
import type {
  Heard,
  HeardReader,
  HeardWriter,
  InboxReader,
  InboxRow,
  InboxWriter,
  Seen,
} from '../traffic.ts';
import { Query, type Session } from './query.ts';

interface Row extends Omit<InboxRow, 'same' | 'received'> {
  same: string | null;
  received: string;
}
const RECEIVE = new Query(
  `INSERT INTO inbox (key, same, platform, channel, lane, received, received_at, tries, not_before)
   VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING`,
);
const COLUMNS =
  'key, same, platform, channel, lane, received, received_at AS receivedAt, tries, not_before AS notBefore';
const WAITING = new Query<Row>(
  `SELECT ${COLUMNS} FROM inbox WHERE seq IN (SELECT min(seq) FROM inbox WHERE done_at IS NULL GROUP BY lane) ORDER BY not_before, seq LIMIT ?`,
);
const WAITING_IN = new Query<Row>(
  `SELECT ${COLUMNS} FROM inbox WHERE done_at IS NULL AND lane = ? ORDER BY seq LIMIT ?`,
);
const COUNT = new Query<{ n: number }>('SELECT count(*) AS n FROM inbox WHERE done_at IS NULL');
const POSTPONE = new Query(
  'UPDATE inbox SET tries = tries + 1, not_before = ? WHERE key = ? AND done_at IS NULL',
);
const FINISH = new Query("UPDATE inbox SET done_at = ?, received = 'null' WHERE key = ? AND done_at IS NULL");
const PRUNE = new Query('DELETE FROM inbox WHERE done_at <= ?');
const HEARD = new Query<Omit<Heard, 'direct'> & { direct: number }>(
  'SELECT platform, channel, message, said_at AS saidAt, direct FROM heard WHERE platform = ? ORDER BY channel',
);
const SAVE_HEARD = new Query(
  `INSERT INTO heard (platform, channel, message, said_at, direct) VALUES (?, ?, ?, ?, ?)
   ON CONFLICT (platform, channel) DO UPDATE SET message = excluded.message, said_at = excluded.said_at
   WHERE excluded.said_at >= heard.said_at`,
);
const SEEN = new Query<Seen>(
  'SELECT platform, account, name, at FROM seen WHERE platform = ? AND account = ?',
);
const SAVE_SEEN = new Query('INSERT OR REPLACE INTO seen (platform, account, name, at) VALUES (?, ?, ?, ?)');

type Inbox = InboxReader & InboxWriter & HeardReader & HeardWriter;

const rowOf = ({ same, received, ...row }: Row): InboxRow => ({
  ...row,
  ...(same === null ? {} : { same }),
  received: decodeOrNull(received),
});

export const sqliteInbox = (session: Session): Inbox => ({
  waiting: async (limit) => session.all(WAITING, limit).map(rowOf),
  waitingIn: async (lane, limit) => session.all(WAITING_IN, lane, limit).map(rowOf),
  waitingCount: async () => session.get(COUNT)?.n ?? 0,
  receive: async (row) => {
    const { key, same, platform, channel, lane, receivedAt, tries, notBefore } = row;
    const json = encodeValue(row.received);
    const values = [key, same ?? null, platform, channel, lane, json, receivedAt, tries, notBefore];
    return session.run(RECEIVE, ...values) > 0;
  },
  postpone: async (key, notBefore) => {
    session.run(POSTPONE, notBefore, key);
  },
  finish: async (key, at) => session.run(FINISH, at, key) > 0,
  pruneInbox: async (until) => session.run(PRUNE, until),
  heard: async (platform) =>
    session.all(HEARD, platform).map((row) => ({ ...row, direct: row.direct === 1 })),
  saveHeard: async ({ platform, channel, message, saidAt, direct }) => {
    session.run(SAVE_HEARD, platform, channel, message, saidAt, direct ? 1 : 0);
  },
  seen: async (platform, account) => session.get(SEEN, platform, account),
  saveSeen: async ({ platform, account, name, at }) => {
    session.run(SAVE_SEEN, platform, account, name, at);
  },
});

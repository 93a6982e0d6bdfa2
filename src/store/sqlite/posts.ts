/** Our own messages on their way and afterwards, and what their buttons stand for. */
import { decodeOrNull, encodeValue } from '../codec.ts';
import type {
  ButtonRow,
  ButtonsReader,
  ButtonsWriter,
  PostRow,
  PostsReader,
  PostsWriter,
} from '../traffic.ts';
import { Query, type Session } from './query.ts';

interface Row extends Omit<
  PostRow,
  'open' | 'content' | 'message' | 'shownIn' | 'thread' | 'about' | 'triedAt'
> {
  open: number;
  content: string;
  message: string | null;
  shownIn: string | null;
  thread: string | null;
  about: string | null;
  triedAt: number | null;
}
const COLUMNS = `id, platform, channel, state, open, content, version, shown, message,
  shown_in AS shownIn, thread, about, planned_at AS plannedAt, tried_at AS triedAt, tries, not_before AS notBefore`;
const POST = new Query<Row>(`SELECT ${COLUMNS} FROM posts WHERE id = ?`);
const UNSENT = new Query<Row>(
  `SELECT ${COLUMNS} FROM posts WHERE seq IN
   (SELECT min(seq) FROM posts WHERE open = 1 AND state <> 'sent' GROUP BY platform, channel) ORDER BY not_before, seq LIMIT ?`,
);
const UNSENT_OF = new Query<Row>(
  `SELECT ${COLUMNS} FROM posts WHERE open = 1 AND state <> 'sent' AND platform = ? AND channel = ? ORDER BY seq LIMIT ?`,
);
const UNEDITED = new Query<Row>(
  `SELECT ${COLUMNS} FROM posts WHERE open = 1 AND state = 'sent' ORDER BY not_before, seq LIMIT ?`,
);
const ABOUT = new Query<Row>(`SELECT ${COLUMNS} FROM posts WHERE about = ? ORDER BY seq`);
const OPEN = new Query<{ n: number }>('SELECT count(*) AS n FROM posts WHERE open = 1');
const SAVE = new Query(
  `INSERT INTO posts (id, platform, channel, state, open, content, version, shown, message, shown_in, thread, about,
     planned_at, tried_at, tries, not_before)
   VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
   ON CONFLICT (id) DO UPDATE SET state = excluded.state, open = excluded.open, content = excluded.content,
     version = excluded.version, shown = excluded.shown, message = excluded.message, shown_in = excluded.shown_in,
     thread = excluded.thread,
     about = coalesce(posts.about, excluded.about), tried_at = excluded.tried_at, tries = excluded.tries, not_before = excluded.not_before`,
);
const PRUNE_BUTTONS = new Query(
  `DELETE FROM buttons WHERE at <= ?
   AND (post IS NULL OR post IN (SELECT id FROM posts WHERE open = 0 AND planned_at <= ?))`,
);
const EMPTY = new Query("UPDATE posts SET content = 'null', open = 0 WHERE about = ?");
const EMPTY_BUTTONS = new Query(
  "UPDATE buttons SET button = 'null' WHERE post IN (SELECT id FROM posts WHERE about = ?)",
);
const PRUNE = new Query('DELETE FROM posts WHERE open = 0 AND planned_at <= ?');
const BUTTON = new Query<{
  token: string;
  post: string | null;
  position: number;
  button: string;
  at: number;
}>('SELECT token, post, position, button, at FROM buttons WHERE token = ?');
const SAVE_BUTTON = new Query(
  'INSERT INTO buttons (token, post, position, button, at) VALUES (?, ?, ?, ?, ?) ON CONFLICT DO NOTHING',
);

const postOf = ({ open, content, message, shownIn, thread, about, triedAt, ...row }: Row): PostRow => ({
  ...row,
  open: open === 1,
  content: decodeOrNull(content),
  ...(message === null ? {} : { message }),
  ...(shownIn === null ? {} : { shownIn }),
  ...(thread === null ? {} : { thread }),
  ...(about === null ? {} : { about }),
  ...(triedAt === null ? {} : { triedAt }),
});

type Posts = PostsReader & PostsWriter & ButtonsReader & ButtonsWriter;

export const sqlitePosts = (session: Session): Posts => ({
  post: async (id) => {
    const row = session.get(POST, id);
    return row === undefined ? undefined : postOf(row);
  },
  unsent: async (limit) => session.all(UNSENT, limit).map(postOf),
  unsentOf: async ({ platform, channel }, limit) =>
    session.all(UNSENT_OF, platform, channel, limit).map(postOf),
  unedited: async (limit) => session.all(UNEDITED, limit).map(postOf),
  postsAbout: async (key) => session.all(ABOUT, key).map(postOf),
  openPosts: async () => session.get(OPEN)?.n ?? 0,
  savePost: async (p) => {
    const known = [p.id, p.platform, p.channel, p.state, p.open ? 1 : 0, encodeValue(p.content)];
    const shown = [
      p.version,
      p.shown,
      p.message ?? null,
      p.shownIn ?? null,
      p.thread ?? null,
      p.about ?? null,
    ];
    session.run(SAVE, ...known, ...shown, p.plannedAt, p.triedAt ?? null, p.tries, p.notBefore);
  },
  emptyPostsAbout: async (key) => {
    session.run(EMPTY_BUTTONS, key);
    session.run(EMPTY, key);
  },
  prunePosts: async (until) => {
    session.run(PRUNE_BUTTONS, until, until);
    return session.run(PRUNE, until);
  },
  button: async (token) => {
    const row = session.get(BUTTON, token);
    if (row === undefined) return undefined;
    const { post, button, ...rest } = row;
    return { ...rest, button: decodeOrNull(button), ...(post === null ? {} : { post }) };
  },
  saveButtons: async (rows: readonly ButtonRow[]) => {
    for (const { token, post, position, button, at } of rows)
      session.run(SAVE_BUTTON, token, post ?? null, position, encodeValue(button), at);
  },
});

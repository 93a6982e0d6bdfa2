/** Our own messages and their buttons, in memory. */
import { decodeValue, encodeValue } from '../codec.ts';
import type {
  ButtonRow,
  ButtonsReader,
  ButtonsWriter,
  PostRow,
  PostsReader,
  PostsWriter,
} from '../traffic.ts';
import { assertOpen, type Scope } from '../turns.ts';
import type { UndoLog } from './undo.ts';

type KeptPost = Omit<PostRow, 'content'> & { json: string };
type KeptButton = Omit<ButtonRow, 'button'> & { json: string };
export interface PostTables {
  /** In order of plan. */
  posts: Map<string, KeptPost>;
  buttons: Map<string, KeptButton>;
}

export const emptyPosts = (): PostTables => ({ posts: new Map(), buttons: new Map() });

const postOf = ({ json, ...row }: KeptPost): PostRow => ({ ...row, content: decodeValue(json) });
const buttonOf = ({ json, ...row }: KeptButton): ButtonRow => ({ ...row, button: decodeValue(json) });

/** What was settled when it was planned stays. */
function asPlanned({ about, ...row }: Omit<PostRow, 'content'>, before: KeptPost): Omit<PostRow, 'content'> {
  const { platform, channel, plannedAt, about: answered = about } = before;
  return { ...row, platform, channel, plannedAt, ...(answered === undefined ? {} : { about: answered }) };
}

type Posts = PostsReader & PostsWriter & ButtonsReader & ButtonsWriter;

export function memoryPosts(tables: PostTables, undo: UndoLog, scope: Scope): Posts {
  const all = (): KeptPost[] => {
    assertOpen(scope);
    return [...tables.posts.values()];
  };
  const optional = <T>(value: T | undefined, of: (value: T) => PostRow): PostRow | undefined =>
    value === undefined ? undefined : of(value);
  return {
    post: async (id) => {
      assertOpen(scope);
      return optional(tables.posts.get(id), postOf);
    },
    unsent: async (limit) => {
      const channels = new Set<string>();
      const first = all().filter(({ open, state, platform, channel }) => {
        const key = JSON.stringify([platform, channel]);
        return open && state !== 'sent' && !channels.has(key) && Boolean(channels.add(key));
      });
      return first
        .toSorted((a, b) => a.notBefore - b.notBefore)
        .slice(0, limit)
        .map(postOf);
    },
    unsentOf: async (place, limit) =>
      all()
        .filter(
          ({ open, state, platform, channel }) =>
            open && state !== 'sent' && platform === place.platform && channel === place.channel,
        )
        .slice(0, limit)
        .map(postOf),
    unedited: async (limit) =>
      all()
        .filter(({ open, state }) => open && state === 'sent')
        .toSorted((a, b) => a.notBefore - b.notBefore)
        .slice(0, limit)
        .map(postOf),
    postsAbout: async (key) =>
      all()
        .filter(({ about }) => about === key)
        .map(postOf),
    openPosts: async () => all().filter(({ open }) => open).length,
    savePost: async ({ content, ...row }) => {
      assertOpen(scope);
      const before = tables.posts.get(row.id);
      undo.put(tables.posts, row.id, {
        ...(before ? asPlanned(row, before) : row),
        json: encodeValue(content),
      });
    },
    emptyPostsAbout: async (key) => {
      for (const row of all().filter(({ about }) => about === key)) {
        undo.put(tables.posts, row.id, { ...row, open: false, json: encodeValue(null) });
        for (const button of tables.buttons.values())
          if (button.post === row.id)
            undo.put(tables.buttons, button.token, { ...button, json: encodeValue(null) });
      }
    },
    prunePosts: async (until) => {
      const old = all().filter(({ open, plannedAt }) => !open && plannedAt <= until);
      const gone = new Set(old.map(({ id }) => id));
      for (const { token, post, at } of tables.buttons.values())
        if (at <= until && (post === undefined || gone.has(post))) undo.put(tables.buttons, token, undefined);
      for (const id of gone) undo.put(tables.posts, id, undefined);
      return old.length;
    },
    button: async (token) => {
      assertOpen(scope);
      const row = tables.buttons.get(token);
      return row === undefined ? undefined : buttonOf(row);
    },
    saveButtons: async (rows) => {
      assertOpen(scope);
      for (const { button, ...row } of rows)
        if (!tables.buttons.has(row.token))
          undo.put(tables.buttons, row.token, { ...row, json: encodeValue(button) });
    },
  };
}

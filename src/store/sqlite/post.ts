/** The tables of what is not fact, table by table. */
import type { Post } from '../post.ts';
import { sqliteConversations } from './conversations.ts';
import { sqliteMessages } from './messages.ts';
import { sqlitePeople } from './people.ts';
import type { Session } from './query.ts';
import { sqliteSettings } from './settings.ts';

/** Whether this transaction erased words: the log has to be emptied after it. */
export interface Erasing {
  happened: boolean;
}

export const sqlitePost = (session: Session, erasing: Erasing): Post => ({
  ...sqliteMessages(session, () => {
    erasing.happened = true;
  }),
  ...sqlitePeople(session),
  ...sqliteSettings(session),
  ...sqliteConversations(session),
});

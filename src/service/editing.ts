/** Something else in the place of a post: today's digest, the mark of a pressed button. Done twice without harm. */
import type { Instant } from '../maintenance/entry/entry.ts';
import type { PostRow } from '../store/traffic.ts';
import { backOff, wordOf, type Works } from './parts.ts';
import type { Platform, SendResult } from './platform.ts';
import { contentOf } from './posts.ts';
import { left, refOf, shownAs } from './shown.ts';

export async function editOne(works: Works, platform: Platform, row: PostRow): Promise<void> {
  const content = contentOf(row);
  const ref = refOf(row);
  if (!content || !ref) return save(works, row, left);
  const result = await tried(() => platform.edit(ref, content.outgoing));
  const now = works.clock();
  return save(works, row, (p) => {
    switch (result.outcome) {
      case 'sent':
        return shownAs(p, row.version, ref);
      case 'refused':
        return left(p);
      case 'later':
        return putOff(p, now + (result.afterMs ?? backOff(row.tries)));
      case 'unknown':
        return putOff(p, now + backOff(row.tries));
    }
  });
}

const putOff = (row: PostRow, notBefore: Instant): PostRow => ({ ...row, tries: row.tries + 1, notBefore });

async function tried(edit: () => Promise<SendResult>): Promise<SendResult> {
  try {
    return await edit();
  } catch (fault) {
    return { outcome: 'unknown', why: wordOf(fault) };
  }
}

const save = (works: Works, { id }: PostRow, change: (row: PostRow) => PostRow): Promise<void> =>
  works.store.transact(async ({ traffic }) => {
    const row = await traffic.post(id);
    if (row) await traffic.savePost(change(row));
  });

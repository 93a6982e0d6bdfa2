/** Posts of a channel claimed for one run, in one commit: only one process sends them. */
import type { Instant } from '../maintenance/entry/entry.ts';
import type { PostRow, Traffic } from '../store/traffic.ts';
import { isTakenByAnother } from './lease.ts';
import type { Works } from './parts.ts';
import { contentOf } from './posts.ts';

/** So long a claimed post is taken to be on its way; then its process has ended, and it is looked up. */
const CLAIM_MS = 30_000;

interface Run {
  /** The first of its channel, as it was read. */
  row: PostRow;
  /** How many posts of the channel may go in one run. */
  most: number;
}

/**
 * One process sends: what another has claimed, or brought further, since it was read is left to that one, and all of it
 * when another holds the lease.
 */
export async function claim(works: Works, run: Run, now: Instant): Promise<readonly PostRow[]> {
  const claimed = await works.store.transact(async ({ traffic }) =>
    (await isTakenByAnother(traffic, works.holder, now)) ? undefined : claimIn(traffic, run, now),
  );
  if (!claimed) works.leaseLost();
  return claimed ?? [];
}

async function claimIn(traffic: Traffic, { row, most }: Run, now: Instant): Promise<PostRow[]> {
  const claimed: PostRow[] = [];
  for (const one of await traffic.unsentOf(row, most)) {
    if (claimed.length === 0 ? !isStill(one, row) : !isPlain(one, now)) break;
    claimed.push({
      ...one,
      state: 'sending',
      triedAt: now,
      tries: one.tries + 1,
      notBefore: now + CLAIM_MS,
    });
  }
  for (const one of claimed) await traffic.savePost(one);
  return claimed;
}

const isStill = (now: PostRow, read: PostRow): boolean =>
  now.id === read.id && now.state === read.state && now.tries === read.tries;
/** A digest is looked at by itself: it may come too late. */
function isPlain(row: PostRow, now: Instant): boolean {
  const content = contentOf(row);
  return row.state === 'planned' && row.notBefore <= now && content !== undefined && !content.digest;
}

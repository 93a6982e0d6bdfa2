/** What became of a run of posts, written in one commit. */
import type { Instant } from '../maintenance/entry/entry.ts';
import type { PostRow, Traffic } from '../store/traffic.ts';
import { backOff, type Works } from './parts.ts';
import type { SendResult } from './platform.ts';
import { refusedDigest } from './refusedDigest.ts';
import { left, shownAs } from './shown.ts';

/** A platform may show a post a moment after the connection to it was lost. */
const SETTLE_MS = 2_000;

/** As it was claimed, and what the platform said; without a result it was not begun. */
export interface Sent {
  row: PostRow;
  result?: SendResult;
}

export async function settle(
  works: Works,
  platform: string,
  traffic: Traffic,
  run: readonly Sent[],
): Promise<void> {
  const now = works.clock();
  for (const { row, result } of run) {
    if (!result) await change(traffic, row.id, (p) => givenBack(p, row));
    else await change(traffic, row.id, (p) => settled(p, row, result, now));
    if (result && result.outcome !== 'sent')
      works.log.warn(`post.${result.outcome}`, { platform, why: result.why });
  }
}

/** Not begun: as before the claim, unless somebody else has brought it further. */
const givenBack = (now: PostRow, claimed: PostRow): PostRow =>
  now.state === 'sending' && now.tries === claimed.tries
    ? { ...now, state: 'planned', tries: now.tries - 1, notBefore: now.plannedAt }
    : now;

function settled(row: PostRow, sent: PostRow, result: SendResult, now: Instant): PostRow {
  switch (result.outcome) {
    case 'sent':
      return shownAs(row, sent.version, result.ref);
    case 'refused':
      return refusedDigest(row, now) ?? left(row);
    case 'later':
      return { ...row, state: 'planned', notBefore: now + (result.afterMs ?? backOff(row.tries)) };
    case 'unknown':
      return { ...row, state: 'unknown', notBefore: now + Math.max(SETTLE_MS, backOff(row.tries)) };
  }
}

export async function change(traffic: Traffic, id: string, how: (row: PostRow) => PostRow): Promise<void> {
  const row = await traffic.post(id);
  if (row) await traffic.savePost(how(row));
}

/** A digest that its platform refused is tried again while it is owed: the bot may be let into the channel meanwhile. */
import type { Instant } from '../maintenance/entry/entry.ts';
import type { PostRow } from '../store/traffic.ts';
import { contentOf } from './posts.ts';
import { left } from './shown.ts';

const AGAIN_MS = 5 * 60_000;

/** Out of the way of what else is to be posted there until then. Undefined: it is no digest, or it is shown already. */
export function refusedDigest(row: PostRow, now: Instant): PostRow | undefined {
  const content = contentOf(row);
  if (!content?.digest || row.shown > 0) return undefined;
  return { ...left(row), content: { ...content, refused: true }, notBefore: now + AGAIN_MS };
}

export const mayTryAgain = (row: PostRow, now: Instant): boolean =>
  row.state === 'left' && row.notBefore <= now && contentOf(row)?.refused === true;

export function begunAgain(row: PostRow): PostRow {
  const { refused: _, ...content } = contentOf(row) ?? {};
  return { ...row, state: 'planned', open: true, content };
}

/**
 * Posts on their way: claimed, sent, confirmed. Between claim and confirmation anything may happen, so a post of which
 * nobody knows whether it arrived is looked up before it is sent again.
 */
import type { Instant } from '../maintenance/entry/entry.ts';
import type { PostRow } from '../store/traffic.ts';
import { isTooLate } from './digests.ts';
import { backOff, wordOf, type Works } from './parts.ts';
import type { Platform, PostRef, SendResult } from './platform.ts';
import { contentOf, type PostContent } from './posts.ts';

const AT_A_TIME = 40;
/** A platform may show a post a moment after the connection to it was lost. */
const SETTLE_MS = 2_000;
/** With the pauses between them about a quarter of an hour. */
const MOST_LOOK_UPS = 10;
/** So long a claimed post is taken to be on its way; then its process has ended, and it is looked up. */
const CLAIM_MS = 30_000;
/** Clocks differ: a post is looked for from a little before it was tried. */
const CLOCK_HAIR_MS = 60_000;

export interface Pace {
  /** A channel that was told to slow down takes one post in so much time. */
  slow: Map<string, { everyMs: number; until: Instant }>;
  last: Map<string, Instant>;
  /** On their way: one post a channel, one change a post. A slow one holds up no other. */
  busy: Map<string, Promise<void>>;
}
export const newPace = (): Pace => ({ slow: new Map(), last: new Map(), busy: new Map() });
const SLOW_FOR_MS = 60_000;

const channelKey = ({ platform, channel }: PostRow): string => `${platform}:${channel}`;

function mayGo({ slow, last }: Pace, row: PostRow, now: Instant): boolean {
  const key = channelKey(row);
  const limit = slow.get(key);
  if (!limit || limit.until <= now) return true;
  return now - (last.get(key) ?? -Infinity) >= limit.everyMs;
}

/** Starts all that may go now; each that comes to an end kicks the next. */
export async function sendWaiting(works: Works, pace: Pace, failed: (fault: unknown) => void): Promise<void> {
  const now = works.clock();
  const { unsent, unedited } = await works.store.read(async ({ traffic }) => ({
    unsent: await traffic.unsent(AT_A_TIME),
    unedited: await traffic.unedited(AT_A_TIME),
  }));
  const start = (row: PostRow, name: string, work: () => Promise<void>): void => {
    // what is for a platform that is not served just now waits for it
    if (!works.platform(row.platform)) return;
    if (row.notBefore > now || !mayGo(pace, row, now) || pace.busy.has(name)) return;
    pace.busy.set(name, work().finally(() => void pace.busy.delete(name)).then(() => works.postsChanged(), failed)); // prettier-ignore
  };
  for (const row of unsent) start(row, `post ${channelKey(row)}`, () => sendOne(works, pace, row));
  for (const row of unedited) start(row, `edit ${row.id}`, () => editOne(works, pace, row));
}

const save = (works: Works, id: string, change: (row: PostRow) => PostRow): Promise<void> =>
  works.store.transact(async ({ traffic }) => {
    const row = await traffic.post(id);
    if (row) await traffic.savePost(change(row));
  });

const left = (row: PostRow): PostRow => ({ ...row, state: row.shown > 0 ? 'sent' : 'left', open: false });

/** One post on its way, with all that a step of it needs. */
interface Sending {
  works: Works;
  pace: Pace;
  platform: Platform;
  row: PostRow;
  content: PostContent;
}

async function sendOne(works: Works, pace: Pace, row: PostRow): Promise<void> {
  const platform = works.platform(row.platform);
  const content = contentOf(row);
  if (!platform || !content) return save(works, row.id, left);
  const sending = { works, pace, platform, row, content };
  return row.state === 'planned' ? post(sending) : lookUp(sending);
}

async function post(sending: Sending): Promise<void> {
  const { works, pace, platform, row, content } = sending;
  if (content.digest && (await isTooLate(works, content.digest))) return save(works, row.id, left);
  const now = works.clock();
  if (!(await claim(works, row, now))) return;
  pace.last.set(channelKey(row), now);
  await settle(sending, await tried(() => platform.send(content.outgoing)));
}

/** One process sends it: what another has claimed, or brought further, since it was read is left to that one. */
const claim = (works: Works, { id, state, tries }: PostRow, now: Instant): Promise<boolean> =>
  works.store.transact(async ({ traffic }) => {
    const row = await traffic.post(id);
    if (!row || row.state !== state || row.tries !== tries || row.shown > 0) return false;
    const notBefore = now + CLAIM_MS;
    await traffic.savePost({ ...row, state: 'sending', triedAt: now, tries: tries + 1, notBefore });
    return true;
  });

/** It may be there already. */
async function lookUp(sending: Sending): Promise<void> {
  const { works, platform, row, content } = sending;
  const { id, to, replyTo } = content.outgoing;
  const since = (row.triedAt ?? row.plannedAt) - CLOCK_HAIR_MS;
  let ref: PostRef | undefined;
  try {
    ref = await platform.find(id, to, since, replyTo);
  } catch (fault) {
    works.log.warn('post.lookUp', { platform: platform.name, why: wordOf(fault), tries: row.tries });
    // an answer that nobody can look up must not keep the channel's other answers back for ever
    if (row.tries >= MOST_LOOK_UPS) return save(works, row.id, left);
    return save(works, row.id, (p) => ({ ...p, state: 'unknown', tries: p.tries + 1, notBefore: works.clock() + backOff(p.tries) })); // prettier-ignore
  }
  if (ref) return settle(sending, { outcome: 'sent', ref });
  return post(sending);
}

/** The port promises values; what throws all the same may have been posted. */
async function tried(send: () => Promise<SendResult>): Promise<SendResult> {
  try {
    return await send();
  } catch (fault) {
    return { outcome: 'unknown', why: wordOf(fault) };
  }
}

async function settle({ works, pace, platform, row }: Sending, result: SendResult): Promise<void> {
  const now = works.clock();
  if (result.outcome !== 'sent')
    works.log.warn(`post.${result.outcome}`, { platform: platform.name, why: result.why });
  if (result.outcome === 'later')
    pace.slow.set(channelKey(row), { everyMs: platform.everyMs, until: now + SLOW_FOR_MS });
  await save(works, row.id, (p) => {
    switch (result.outcome) {
      case 'sent':
        return shownAs(p, row.version, result.ref);
      case 'refused':
        return left(p);
      case 'later':
        return { ...p, state: 'planned', notBefore: now + (result.afterMs ?? backOff(p.tries)) };
      case 'unknown':
        return { ...p, state: 'unknown', notBefore: now + Math.max(SETTLE_MS, backOff(p.tries)) };
    }
  });
}

/** Without a reference it was shown once and cannot be changed any more. */
const shownAs = (row: PostRow, version: number, ref: PostRef | undefined): PostRow => ({
  ...row,
  state: 'sent',
  shown: version,
  open: ref !== undefined && row.version > version,
  tries: 0,
  // changes need not wait for what the claim waited for
  notBefore: row.plannedAt,
  ...(ref ? { message: ref.id, ...(ref.thread === undefined ? {} : { thread: ref.thread }) } : {}),
});

async function editOne(works: Works, pace: Pace, row: PostRow): Promise<void> {
  const platform = works.platform(row.platform);
  const content = contentOf(row);
  if (!platform || !content || row.message === undefined) return save(works, row.id, left);
  const { message, thread, channel } = row;
  const ref: PostRef = {
    platform: platform.name,
    channel,
    id: message,
    ...(thread === undefined ? {} : { thread }),
  };
  pace.last.set(channelKey(row), works.clock());
  const result = await tried(() => platform.edit(ref, content.outgoing));
  // an edit may be done twice without harm
  const again = result.outcome === 'unknown' ? { outcome: 'later' as const, why: result.why } : result;
  if (again.outcome === 'later') {
    await settleEdit(
      works,
      row.id,
      works.clock() + (('afterMs' in again ? again.afterMs : undefined) ?? backOff(row.tries)),
    );
    return;
  }
  await save(works, row.id, (p) => (again.outcome === 'sent' ? shownAs(p, row.version, ref) : left(p)));
}

const settleEdit = (works: Works, id: string, notBefore: Instant): Promise<void> =>
  save(works, id, (p) => ({ ...p, tries: p.tries + 1, notBefore }));

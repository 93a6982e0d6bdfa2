/**
 * One run of posts to a channel: claimed in one commit, sent one after the other, settled in one commit. Between claim
 * and confirmation anything may happen, so a post of which nobody knows whether it arrived is looked up before it is
 * sent again.
 */
import { item, type Reply } from '../replies/reply.ts';
import type { PostRow } from '../store/traffic.ts';
import { claim } from './claim.ts';
import { isTooLate } from './digests.ts';
import { backOff, wordOf, type Works } from './parts.ts';
import type { Outgoing, Platform, SendResult } from './platform.ts';
import { contentOf, type PostContent } from './posts.ts';
import { change, settle, type Sent } from './settle.ts';
import { left } from './shown.ts';

/** With the pauses between them about a quarter of an hour. */
const MOST_LOOK_UPS = 10;
/** Of these a run has begun its last post; a post that takes longer than its claim is only kept from a second try by the lease. */
const RUN_MS = 10_000;
/** Clocks differ: a post is looked for from a little before it was tried. */
const CLOCK_HAIR_MS = 60_000;
/** A private answer that may have been seen is shown once more, and then no more. */
const MOST_PRIVATE = 2;
const AGAIN = 'Sent once more, as the first try may not have reached you.';

export interface Sending {
  works: Works;
  platform: Platform;
  row: PostRow;
  /** How many posts of the channel may go in one run. */
  most: number;
}
/** Gives what the platform said of those that it was asked to show. */
export async function sendRun(sending: Sending): Promise<readonly SendResult[]> {
  const { row } = sending;
  const content = contentOf(row);
  if (!content) return leave(sending);
  return row.state === 'planned' ? post(sending, content) : lookUp(sending, content);
}

async function leave({ works, row }: Pick<Sending, 'works' | 'row'>): Promise<readonly SendResult[]> {
  await works.store.transact(({ traffic }) => change(traffic, row.id, left));
  return [];
}

async function post(sending: Sending, content: PostContent): Promise<readonly SendResult[]> {
  const { works, platform } = sending;
  if (content.digest && (await isTooLate(works, content.digest))) return leave(sending);
  const since = works.clock();
  const claimed = await claim(works, sending, since);
  const run: Sent[] = [];
  for (const row of claimed) {
    const mayGo = works.serving() && works.clock() - since < RUN_MS && !run.some(isStop);
    run.push(mayGo ? { row, result: await tried(sending, row) } : { row });
  }
  if (run.length > 0) await works.store.transact(({ traffic }) => settle(works, platform.name, traffic, run));
  return run.flatMap(({ result }) => (result ? [result] : []));
}

/** What comes after it in the channel would overtake it. */
const isStop = ({ result }: Sent): boolean =>
  result === undefined || result.outcome === 'later' || result.outcome === 'unknown';

/** It may be there already. */
async function lookUp(sending: Sending, content: PostContent): Promise<readonly SendResult[]> {
  const { works, platform, row } = sending;
  const since = (row.triedAt ?? row.plannedAt) - CLOCK_HAIR_MS;
  let found: Awaited<ReturnType<Platform['find']>>;
  try {
    found = await platform.find(content.outgoing, since);
  } catch (fault) {
    return notTold(sending, fault);
  }
  if (found === 'private' && row.tries >= MOST_PRIVATE) return leave(sending);
  if (found === undefined || found === 'private') return post(sending, content);
  const result: SendResult = { outcome: 'sent', ref: found };
  await works.store.transact(({ traffic }) => settle(works, platform.name, traffic, [{ row, result }]));
  return [result];
}

async function notTold(sending: Sending, fault: unknown): Promise<readonly SendResult[]> {
  const { works, platform, row } = sending;
  works.log.warn('post.lookUp', { platform: platform.name, why: wordOf(fault), tries: row.tries });
  // an answer that nobody can look up must not keep the channel's other answers back for ever
  if (row.tries >= MOST_LOOK_UPS) return leave(sending);
  const notBefore = works.clock() + backOff(row.tries);
  await works.store.transact(({ traffic }) =>
    change(traffic, row.id, (p) => ({ ...p, state: 'unknown', tries: p.tries + 1, notBefore })),
  );
  return [];
}

/** The port promises values; what throws all the same may have been posted. */
async function tried(sending: Sending, row: PostRow): Promise<SendResult> {
  const { platform } = sending;
  const content = contentOf(row);
  if (!content) return { outcome: 'refused', why: 'nothing to show' };
  try {
    return await platform.send(mayBeThere(sending, row) ? again(content.outgoing) : content.outgoing);
  } catch (fault) {
    return { outcome: 'unknown', why: wordOf(fault) };
  }
}

/** It was tried before, and nobody could tell what had come of it. */
const mayBeThere = ({ row: before }: Sending, row: PostRow): boolean =>
  before.id === row.id && before.state !== 'planned';

/** Whoever sees a private answer twice should know that it is one answer. Others were looked up. */
function again(outgoing: Outgoing): Outgoing {
  const { reply, audience, to } = outgoing;
  if (audience === 'place' || to.direct) return outgoing;
  const said: Reply = { ...reply, sections: [...reply.sections, { items: [item(AGAIN)] }] };
  return { ...outgoing, reply: said };
}

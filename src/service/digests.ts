/** The morning digest: claimed and planned in one commit, once a platform and local day; brought up to date in place. */
import { buttonsOf } from '../replies/text.ts';
import { owedDigest } from '../schedule/digest.ts';
import { channelIdOf, channelsOf } from './access.ts';
import { digestPost, noteOf, type DigestNow } from './digestPost.ts';
import type { PostRow } from '../store/traffic.ts';
import { digestId } from './identity.ts';
import { wordOf, type Works } from './parts.ts';
import type { Platform } from './platform.ts';
import { buttonRows, changePost, contentOf, planPost, talkOf, tokensFor, type DigestNote } from './posts.ts';
import { begunAgain, mayTryAgain } from './refusedDigest.ts';

/** Doings of a minute are one change of the digest. */
export const COALESCE_MS = 20_000;

/** A morning's list helps nobody any more once it is not owed any more. */
export async function isTooLate({ bot, clock }: Works, { date }: DigestNote): Promise<boolean> {
  const [workshop, calendar] = [await bot.workshop(), await bot.calendar()];
  return !workshop || !calendar || owedDigest(workshop.workshop, calendar, clock()) !== date;
}

/** By platform, the date of the last digest whose channel was not found: it is looked for all morning, and logged once. */
export type Missed = Map<string, string>;

/** Plans what is owed now and was not claimed yet, on every platform that is served just now. */
export async function planDigests(works: Works, missed: Missed): Promise<void> {
  const [workshop, calendar] = [await works.bot.workshop(), await works.bot.calendar()];
  if (!workshop || !calendar) return;
  const now = works.clock();
  const date = owedDigest(workshop.workshop, calendar, now);
  if (date === undefined) return;
  for (const platform of works.up()) {
    const named = channelsOf(workshop, platform.name)?.digest;
    if (named !== undefined) await planOn(works, platform, { date, named, missed });
  }
}

interface Owed {
  date: string;
  /** The channel, as the workshop file names it. */
  named: string;
  missed: Missed;
}

/** One platform that does not answer keeps no other one waiting. */
async function planOn(works: Works, platform: Platform, { date, named, missed }: Owed): Promise<void> {
  try {
    const claimed = await claimedPost(works, platform, date);
    if (claimed) return await tryAgain(works, platform, date, claimed.row);
    const channel = await channelIdOf(platform, named);
    if (channel === undefined) noChannel(works, platform, date, missed);
    else await planDigest(works, platform, date, channel);
  } catch (fault) {
    works.log.error('digest.fault', { platform: platform.name, why: wordOf(fault) });
  }
}

function noChannel({ log }: Works, { name }: Platform, date: string, missed: Missed): void {
  if (missed.get(name) === date) return;
  missed.set(name, date);
  log.error('digest.noChannel', { platform: name });
}

const claimedPost = (
  works: Works,
  platform: Platform,
  date: string,
): Promise<{ row: PostRow | undefined } | undefined> =>
  works.store.read(async ({ traffic }) => {
    const claim = await traffic.digestClaim(platform.name, date);
    return claim && { row: claim.post === undefined ? undefined : await traffic.post(claim.post) };
  });

/** What was refused a while ago, as it is now. */
async function tryAgain(
  works: Works,
  platform: Platform,
  date: string,
  before: PostRow | undefined,
): Promise<void> {
  const now = works.clock();
  if (!before || !mayTryAgain(before, now)) return;
  await works.store.transact(async ({ traffic }) => {
    const row = await traffic.post(before.id);
    if (row && mayTryAgain(row, now)) await traffic.savePost(begunAgain(row));
  });
  await refreshOne(works, platform, date, await works.bot.digest({ now }));
  works.postsChanged();
}

async function planDigest(works: Works, platform: Platform, date: string, channel: string): Promise<void> {
  const now = works.clock();
  const current = await works.bot.digest({ now });
  const id = digestId(platform.name, date);
  const to = { platform: platform.name, space: platform.space() ?? '', channel, direct: false };
  const note = noteOf(current.digest);
  const claimed = await works.store.transact(async ({ traffic }) => {
    if (!(await traffic.claimDigest({ platform: platform.name, date, post: id, at: now }))) return false;
    const content = digestPost(current, note, platform.itemsWithButtons);
    await planPost(
      traffic,
      { id, platform: platform.name, to, audience: 'place', reply: content, talk: talkOf(to), digest: note },
      now,
    );
    return true;
  });
  if (claimed) works.log.info('digest.planned', { platform: platform.name, date });
  works.postsChanged();
}

/** Today's digests show what is left of them. */
export async function refreshDigests(works: Works): Promise<void> {
  const calendar = await works.bot.calendar();
  if (!calendar) return;
  const now = works.clock();
  const date = calendar.dateOf(now);
  const posted = await works.store.read(async ({ traffic }) => {
    const claims = await Promise.all(works.platforms.map(({ name }) => traffic.digestClaim(name, date)));
    return claims.some((claim) => claim?.post !== undefined);
  });
  if (!posted) return;
  const current = await works.bot.digest({ now });
  for (const platform of works.platforms) await refreshOne(works, platform, date, current);
  works.postsChanged();
}

async function refreshOne(works: Works, platform: Platform, date: string, current: DigestNow): Promise<void> {
  const now = works.clock();
  await works.store.transact(async ({ traffic }) => {
    const claim = await traffic.digestClaim(platform.name, date);
    const row = claim?.post === undefined ? undefined : await traffic.post(claim.post);
    const content = row && contentOf(row);
    if (!row || !content?.digest) return;
    const shown = digestPost(current, content.digest, platform.itemsWithButtons, content.marks);
    const { outgoing } = content;
    const tokens = tokensFor(row.id, buttonsOf(shown));
    await traffic.saveButtons(buttonRows(shown, row.id, { talk: talkOf(outgoing.to) }, now, row.id));
    await changePost(traffic, row, { ...content, outgoing: { ...outgoing, reply: shown, tokens } }, now);
  });
}

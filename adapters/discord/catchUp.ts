/** What was said to the bot while it was away, asked for by `after=` in the channels where it is spoken to. */
import { Routes, type APIMessage, type APIChannel, type REST } from 'discord.js';
import type { Desk, Instant, Log, Place } from '../../src/index.ts';
import { faultWord } from './rest.ts';
import { messagesAfter } from './find.ts';
import { placeOf } from './interactions.ts';
import { factsOf, type Places } from './places.ts';
import { snowflakeAt } from './snowflake.ts';

export interface CatchUp {
  rest: REST;
  desk: Desk;
  places: Places;
  guild: string;
  log: Log;
  clock: () => Instant;
  take: (message: APIMessage, place: Place) => Promise<void>;
  /** Nothing new is taken any more. */
  closed: () => boolean;
}

/** Keys are remembered for 7 days: what is older could be taken up twice. */
const FURTHEST_MS = 6 * 86_400_000;
/**
 * Before the last message that was stored one may have been lost, by the gateway or because it could not be stored when
 * the process ended; what is known is not taken up twice.
 */
const OVERLAP_MS = 10 * 60_000;
const MOST_PAGES = 50;
/** Discord lists those first that went to sleep last. */
const MOST_ASLEEP = 50;

interface Gap {
  channel: string;
  after: string;
  direct: boolean;
}

/** One channel that cannot be read does not keep the others from being caught up. */
export async function catchUp(away: CatchUp): Promise<void> {
  const gaps = await gapsOf(away);
  let taken = 0;
  for (const gap of gaps) {
    try {
      const place = await placeOf(away.places, gap.channel, gap.direct ? undefined : away.guild);
      for await (const message of messagesAfter(away.rest, gap.channel, gap.after, MOST_PAGES)) {
        if (away.closed()) return;
        await away.take(message, place);
        taken += 1;
      }
    } catch (cause) {
      away.log.warn('discord channel not caught up', { channel: gap.channel, why: faultWord(cause) });
    }
  }
  away.log.info('discord caught up', { channels: gaps.length, messages: taken });
}

async function gapsOf({ rest, desk, places, guild, clock, log }: CatchUp): Promise<Gap[]> {
  const last = await desk.lastReceived();
  if (last.length === 0) return [];
  const before = (said: Instant): string => snowflakeAt(Math.max(clock() - FURTHEST_MS, said - OVERLAP_MS));
  const base = before(Math.max(...last.map((one) => one.saidAt)));
  const gaps = new Map<string, Gap>(
    last.map(({ channel, saidAt, direct }) => [channel, { channel, after: before(saidAt), direct }]),
  );
  const listed = await Promise.all((await desk.channels()).map((name) => places.named(name, guild)));
  const allowed = new Set(listed.filter((id) => id !== undefined));
  const threads = await threadsBelow({ rest, guild, log }, allowed, base);
  for (const channel of [...allowed, ...threads])
    if (!gaps.has(channel)) gaps.set(channel, { channel, after: base, direct: false });
  return [...gaps.values()];
}

/** Threads of the allowed channels in which something was said since: open ones, and those that went to sleep meanwhile. */
async function threadsBelow(
  { rest, guild, log }: Pick<CatchUp, 'rest' | 'guild' | 'log'>,
  allowed: ReadonlySet<string>,
  since: string,
): Promise<string[]> {
  const query = new URLSearchParams({ limit: String(MOST_ASLEEP) });
  const lists = await Promise.all([
    threadsOf(rest.get(Routes.guildActiveThreads(guild)), log),
    ...[...allowed].map((channel) =>
      threadsOf(rest.get(Routes.channelThreads(channel, 'public'), { query }), log),
    ),
  ]);
  return lists
    .flat()
    .map(factsOf)
    .filter(
      ({ parent, last }) => allowed.has(parent ?? '') && last !== undefined && BigInt(last) > BigInt(since),
    )
    .map(({ id }) => id);
}

async function threadsOf(asked: Promise<unknown>, log: Log): Promise<APIChannel[]> {
  try {
    return ((await asked) as { threads: APIChannel[] }).threads;
  } catch (cause) {
    log.warn('discord threads not caught up', { why: faultWord(cause) });
    return [];
  }
}

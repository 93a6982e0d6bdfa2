/** Logs in, waits until the server is known, and says in one sentence why that cannot be done. */
import { DiscordjsError, DiscordjsErrorCodes, Events, type Client, type Guild } from 'discord.js';
import { setTimeout as wait } from 'node:timers/promises';
import { PlatformFault, type Log } from '../../src/index.ts';
import { inviteLink } from './check/permissions.ts';
import { PLATFORM, type DiscordEnvironment } from './environment.ts';
import { faultWord } from './rest.ts';

const PAUSES_MS = [500, 2000, 5000, 15_000] as const;
/** A gateway that takes the connection and says nothing would be waited for without an end. */
const READY_WITHIN_MS = 60_000;

const FATAL: Readonly<Record<string, string>> = {
  [DiscordjsErrorCodes.TokenInvalid]:
    'Discord does not accept the token: make a new one on the page "Bot" of your application ("Reset Token") and set DISCORD_BOT_TOKEN.',
  [DiscordjsErrorCodes.DisallowedIntents]:
    'Discord refuses the connection because of its intents, although none that needs a permission is asked for: look at the page "Bot" of your application.',
};

const fatalReason = (cause: unknown): string | undefined =>
  cause instanceof DiscordjsError || (cause instanceof Error && 'code' in cause)
    ? FATAL[String((cause as { code: unknown }).code)]
    : undefined;

export interface LoggingIn {
  environment: DiscordEnvironment;
  log: Log;
  /** Nobody waits for it any more. */
  stopping: AbortSignal;
}

/**
 * Tries some times while Discord or the network is out of order. A client is made for each try: discord.js destroys
 * one whose login failed, and counts it as not ready for ever after.
 */
export async function logIn<A extends { client: Client }>(
  make: () => A,
  { environment, log, stopping }: LoggingIn,
): Promise<A> {
  for (let tries = 0; ; tries += 1) {
    const attempt = make();
    try {
      await readyWith(attempt.client, environment, stopping);
      return attempt;
    } catch (cause) {
      await attempt.client.destroy();
      const pause = PAUSES_MS[tries];
      const reason = stopping.aborted ? 'The connection to Discord is no longer wanted.' : fatalReason(cause);
      if (cause instanceof PlatformFault) throw cause;
      if (reason !== undefined || pause === undefined)
        throw new PlatformFault(
          PLATFORM,
          reason ?? `Discord cannot be reached (${faultWord(cause)}). Is this machine on the network?`,
          cause,
        );
      log.warn('discord not reached yet', { why: faultWord(cause), pause });
      // a stop ends the pause
      await wait(pause, undefined, { signal: stopping }).catch(() => undefined);
    }
  }
}

async function readyWith(
  client: Client,
  { token }: DiscordEnvironment,
  stopping: AbortSignal,
): Promise<void> {
  stopping.throwIfAborted();
  const ready = new Promise<void>((resolve) => client.once(Events.ClientReady, () => resolve()));
  const over = new AbortController();
  const late = wait(READY_WITHIN_MS, 'late' as const, { signal: AbortSignal.any([over.signal, stopping]) });
  // the one that comes second is not looked at any more
  late.catch(() => undefined);
  try {
    const loggedIn = client.login(token).then(() => ready);
    if ((await Promise.race([loggedIn, late])) === 'late')
      throw new PlatformFault(
        PLATFORM,
        'Discord took the connection, but did not say which servers the bot is in.',
      );
  } finally {
    over.abort();
  }
}

/** The server that is named, or the only one. */
export function chooseGuild(client: Client<true>, { guild: named }: DiscordEnvironment): Guild {
  const guilds = [...client.guilds.cache.values()];
  const invite = inviteLink(client.application.id);
  if (named !== undefined) {
    const found = client.guilds.cache.get(named);
    if (found) return found;
    throw new PlatformFault(PLATFORM, `The bot is not in the server ${named}. Invite it: ${invite}`);
  }
  const [only] = guilds;
  if (guilds.length === 1 && only) return only;
  throw new PlatformFault(
    PLATFORM,
    only
      ? `The bot is in ${guilds.length} servers: set DISCORD_SERVER_ID to one of ${guilds.map((g) => `${g.id} (${g.name})`).join(', ')}.`
      : `The bot is in no server yet. Invite it: ${invite}`,
  );
}

/** Logs in, waits until the server is known, and says in one sentence why that cannot be done. */
import { DiscordjsError, DiscordjsErrorCodes, Events, type Client, type Guild } from 'discord.js';
import { setTimeout as wait } from 'node:timers/promises';
import { PlatformFault, type Log } from '../../src/index.ts';
import { inviteLink } from './check/permissions.ts';
import { PLATFORM, type DiscordEnvironment } from './environment.ts';
import { faultWord } from './rest.ts';

const PAUSES_MS = [500, 2000, 5000, 15_000] as const;
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

/** Tries some times while Discord or the network is out of order. */
export async function logIn(client: Client, { token }: DiscordEnvironment, log: Log): Promise<void> {
  const ready = new Promise<void>((resolve) => client.once(Events.ClientReady, () => resolve()));
  for (let tries = 0; ; tries += 1) {
    try {
      await client.login(token);
      break;
    } catch (cause) {
      const reason = fatalReason(cause);
      const pause = PAUSES_MS[tries];
      if (reason !== undefined || pause === undefined)
        throw new PlatformFault(
          PLATFORM,
          reason ?? `Discord cannot be reached (${faultWord(cause)}). Is this machine on the network?`,
          cause,
        );
      log.warn('discord not reached yet', { why: faultWord(cause), pause });
      await wait(pause);
    }
  }
  const late = wait(READY_WITHIN_MS, 'late' as const, { ref: false });
  if ((await Promise.race([ready, late])) === 'late')
    throw new PlatformFault(PLATFORM, 'Discord took the token, but did not say which servers the bot is in.');
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

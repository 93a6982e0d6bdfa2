/** What the operator sets for Discord, checked: one clear sentence for every fault. */
import * as z from 'zod';
import { PlatformFault, type PlatformTools } from '../../src/index.ts';

export const PLATFORM = 'discord';

export interface DiscordEnvironment {
  token: string;
  /** The server to serve; left out: the only one that the bot is in. */
  guild?: string;
  /** Where the interface answers, when it is not the usual address (a proxy, a test). */
  api?: string;
}

// three parts between dots: the account, a time, a signature
const TOKEN = /^[\w-]{10,}\.[\w-]{4,}\.[\w-]{20,}$/u;
const SNOWFLAKE = /^\d{15,21}$/u;

const safeAddress = (text: string): boolean => {
  if (!URL.canParse(text)) return false;
  const { protocol, hostname } = new URL(text);
  return protocol === 'https:' || (protocol === 'http:' && ['127.0.0.1', 'localhost'].includes(hostname));
};

const schema = z.object({
  DISCORD_BOT_TOKEN: z
    .string({
      error: 'DISCORD_BOT_TOKEN is not set: copy the token from the page "Bot" of your application.',
    })
    .regex(TOKEN, {
      error:
        'DISCORD_BOT_TOKEN does not look like a bot token (three parts between dots): copy it again from the page "Bot", without "Bot " before it.',
    }),
  DISCORD_SERVER_ID: z
    .string()
    .regex(SNOWFLAKE, {
      error: 'DISCORD_SERVER_ID must be the number of your server (right-click its name, "Copy Server ID").',
    })
    .exactOptional(),
  DISCORD_API_URL: z
    .string()
    .refine(safeAddress, { error: 'DISCORD_API_URL must be an https address, or http on this machine.' })
    .exactOptional(),
});

/** Throws a PlatformFault with a line for every fault. Empty is the same as not set. */
export function readEnvironment(environment: PlatformTools['environment']): DiscordEnvironment {
  const given = Object.fromEntries(
    Object.keys(schema.shape).flatMap((name) => {
      const value = environment[name]?.trim();
      return value === undefined || value === '' ? [] : [[name, value]];
    }),
  );
  const read = schema.safeParse(given);
  if (!read.success) throw new PlatformFault(PLATFORM, read.error.issues.map((i) => i.message).join('\n'));
  const { DISCORD_BOT_TOKEN: token, DISCORD_SERVER_ID: guild, DISCORD_API_URL: api } = read.data;
  return { token, ...(guild === undefined ? {} : { guild }), ...(api === undefined ? {} : { api }) };
}

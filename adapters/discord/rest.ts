/** Discord's web interface without the SDK's own repeats: they would post twice. What it answers becomes an outcome. */
import { DiscordAPIError, HTTPError, RateLimitError, REST } from 'discord.js';
import type { Log, SendResult } from '../../src/index.ts';
import type { DiscordEnvironment } from './environment.ts';

const TIMEOUT_MS = 15_000;

/** Posts and edits that would have to wait for a limit are refused at once: their sender has its own queue. */
export function openRest({ token, api }: DiscordEnvironment, log: Log): REST {
  const rest = new REST({
    retries: 0,
    timeout: TIMEOUT_MS,
    rejectOnRateLimit: ({ method }) => method !== 'GET',
    ...(api === undefined ? {} : { api }),
  }).setToken(token);
  // routes only: an address may hold an interaction's token
  rest.on('rateLimited', ({ method, route, retryAfter, global }) =>
    log.warn('discord rate limit', {
      method,
      route: route.replace(/[^/:]{30,}/gu, ':token'),
      retryAfter,
      global,
    }),
  );
  rest.on('invalidRequestWarning', ({ count, remainingTime }) =>
    log.error('discord refuses many requests', { count, remainingTime }),
  );
  return rest;
}

export function closeRest(rest: REST): void {
  rest.clearHashSweeper();
  rest.clearHandlerSweeper();
}

/** Discord's own codes. Source: its developer documentation, opcodes and status codes. */
export const CODE = {
  unknownChannel: 10_003,
  unknownMessage: 10_008,
  unknownWebhook: 10_015,
  unknownInteraction: 10_062,
  tooManyOldEdits: 30_046,
  alreadyAcknowledged: 40_060,
  missingAccess: 50_001,
  notOurMessage: 50_005,
  cannotWriteToPerson: 50_007,
  missingPermission: 50_013,
  invalidToken: 50_027,
  invalidForm: 50_035,
  noReplyWithoutHistory: 160_002,
} as const;

const REASONS: Readonly<Record<number, string>> = {
  [CODE.unknownChannel]: 'no such channel',
  [CODE.unknownMessage]: 'the message is gone',
  [CODE.tooManyOldEdits]: 'too many edits of an old message',
  [CODE.missingAccess]: 'the bot cannot see the channel',
  [CODE.notOurMessage]: 'not our message',
  [CODE.cannotWriteToPerson]: 'this person takes no direct messages from the bot',
  [CODE.missingPermission]: 'the bot may not post in the channel',
  [CODE.invalidForm]: 'Discord does not accept the message',
};

export const codeOf = (cause: unknown): number | undefined =>
  cause instanceof DiscordAPIError && typeof cause.code === 'number' ? cause.code : undefined;

/** A word for the log: never an address or a text. */
export function faultWord(cause: unknown): string {
  if (cause instanceof DiscordAPIError) return `${cause.status} ${cause.code}`;
  if (cause instanceof HTTPError) return String(cause.status);
  if (cause instanceof RateLimitError) return '429';
  return networkCode(cause) ?? (cause instanceof Error ? cause.name : 'fault');
}

const networkCode = (cause: unknown): string | undefined =>
  typeof cause === 'object' && cause !== null && 'code' in cause && typeof cause.code === 'string'
    ? cause.code
    : undefined;

const NEVER_LEFT: ReadonlySet<string> = new Set([
  'ECONNREFUSED', 'ENOTFOUND', 'EAI_AGAIN', 'ENETUNREACH', 'EHOSTUNREACH', 'UND_ERR_CONNECT_TIMEOUT',
]); // prettier-ignore
const UNAUTHORIZED = 401;
const TOKEN_PAUSE_MS = 60_000;

/** `repeatable`: doing it twice is harmless, so that an unknown outcome is simply tried again. */
export function outcomeOf(cause: unknown, repeatable: boolean): SendResult {
  const why = faultWord(cause);
  if (cause instanceof RateLimitError)
    return { outcome: 'later', why, afterMs: Math.max(cause.retryAfter, cause.sublimitTimeout) };
  if (cause instanceof DiscordAPIError) {
    if (cause.status === UNAUTHORIZED)
      return { outcome: 'later', why: 'the token is not accepted', afterMs: TOKEN_PAUSE_MS };
    return { outcome: 'refused', why: REASONS[Number(cause.code)] ?? why };
  }
  // a token that was refused before is forgotten by the SDK, which then sends nothing at all
  if (cause instanceof Error && cause.message.startsWith('Expected token'))
    return { outcome: 'later', why: 'the token is not accepted', afterMs: TOKEN_PAUSE_MS };
  if (repeatable || NEVER_LEFT.has(networkCode(cause) ?? '')) return { outcome: 'later', why };
  return { outcome: 'unknown', why };
}

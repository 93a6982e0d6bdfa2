/** The SDK's own log lines as ours: warnings and errors only, and nothing in them that opens a door. */
import { LogLevel, type Logger } from '@slack/bolt';
import type { Log } from '../../src/index.ts';

const LONGEST = 200;
/** Tokens, a socket's ticket, a response address. */
const SECRETS = /xox[a-z]-[\w-]+|xapp-[\w-]+|Bearer \S+|(?:wss?|https?):\/\/\S+|ticket=\S+/giu;

export const withoutSecrets = (text: string): string =>
  text.replaceAll(SECRETS, '[left out]').slice(0, LONGEST);

const wordsOf = (parts: readonly unknown[]): string =>
  withoutSecrets(parts.map((part) => (part instanceof Error ? part.message : String(part))).join(' '));

export function sdkLog(log: Log): Logger {
  const nothing = (): void => undefined;
  return {
    debug: nothing,
    info: nothing,
    warn: (...parts: unknown[]) => log.warn('slack.sdk', { said: wordsOf(parts) }),
    error: (...parts: unknown[]) => log.error('slack.sdk', { said: wordsOf(parts) }),
    setLevel: nothing,
    getLevel: () => LogLevel.WARN,
    setName: nothing,
  };
}

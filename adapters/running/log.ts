/** The operator's log: one JSON line an event, with names, counts, ids and codes; never a text or a secret. */
import { pino, type DestinationStream } from 'pino';
import type { Log } from '../../src/index.ts';

const LEVELS = ['debug', 'info', 'warn', 'error', 'silent'] as const;
export type Level = (typeof LEVELS)[number];
export const isLevel = (word: string): word is Level => LEVELS.some((level) => level === word);

/** Whatever a library may hang onto a fact, these never come out. */
const SECRETS = ['token', 'secret', 'authorization', 'text', 'url', 'password'];

export function openLog(level: Level, out?: DestinationStream): Log {
  const logger = pino(
    {
      level,
      base: null,
      timestamp: pino.stdTimeFunctions.isoTime,
      formatters: { level: (label) => ({ level: label }) },
      redact: { paths: SECRETS, remove: true },
    },
    out ?? pino.destination(2),
  );
  return {
    info: (event, facts = {}) => logger.info(facts, event),
    warn: (event, facts = {}) => logger.warn(facts, event),
    error: (event, facts = {}) => logger.error(facts, event),
  };
}

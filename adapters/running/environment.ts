/** What the operator sets for serving, checked: one clear sentence for every fault. */
import { z } from 'zod';
import { PlatformFault } from '../../src/index.ts';
import { isLevel, type Level } from './log.ts';

export interface Serving {
  /** Of /healthz on this machine; undefined: none. */
  healthPort?: number;
  logLevel: Level;
}

const HEALTH_PORT = 8791;
const PORTS = 'FETTLE_HEALTH_PORT must be a port from 1 to 65535, or 0 for no health page.';
const LEVEL = 'FETTLE_LOG must be debug, info, warn, error or silent.';

const given = (text: string | undefined): string | undefined =>
  text?.trim() === '' ? undefined : text?.trim();
const schema = z.object({
  FETTLE_HEALTH_PORT: z
    .string()
    .regex(/^\d{1,5}$/u, { error: PORTS })
    .transform(Number)
    .refine((port) => port <= 65_535, { error: PORTS })
    .default(HEALTH_PORT),
  FETTLE_LOG: z.string().refine(isLevel, { error: LEVEL }).default('info'),
});

/** Throws a PlatformFault with a line for every fault. */
export function readServing(environment: Readonly<Record<string, string | undefined>>): Serving {
  const parsed = schema.safeParse({
    FETTLE_HEALTH_PORT: given(environment['FETTLE_HEALTH_PORT']),
    FETTLE_LOG: given(environment['FETTLE_LOG']),
  });
  if (!parsed.success)
    throw new PlatformFault('serve', parsed.error.issues.map(({ message }) => message).join('\n'));
  const { FETTLE_HEALTH_PORT: port, FETTLE_LOG: level } = parsed.data;
  return { logLevel: isLevel(level) ? level : 'info', ...(port === 0 ? {} : { healthPort: port }) };
}

/** Discord's ids hold the moment at which they were made: milliseconds since 2015 above 22 other bits. */
import type { Instant } from '../../src/index.ts';

const EPOCH = 1_420_070_400_000;
const LOWER_BITS = 22n;

export const instantOf = (id: string): Instant => Number(BigInt(id) >> LOWER_BITS) + EPOCH;

/** The lowest id of that moment, for asking for what came after it. */
export const snowflakeAt = (instant: Instant): string =>
  String(BigInt(Math.max(0, Math.floor(instant) - EPOCH)) << LOWER_BITS);

export const isSnowflake = (text: string): boolean => /^\d{15,21}$/u.test(text);
export const laterOf = (a: string, b: string): string => (BigInt(a) > BigInt(b) ? a : b);

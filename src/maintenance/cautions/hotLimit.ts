/** How hot a hot end may be made, and how well that is known. */
import type { Build } from '../machine.ts';

/**
 * Highest working temperature of a PTFE-lined hot end, °C. Common practice, no source: it is well below
 * the 260 °C that general PTFE notes give for continuous use, because the liner softens and shrinks first.
 */
export const LINED_LIMIT_C = 240;

export interface HotLimit {
  /** °C; absent for an all-metal hot end whose limit is not stated: the manual gives it. */
  limitC?: number;
  /** Whether the kind of hot end is stated. One that is not stated is treated as lined. */
  stated: boolean;
}

/** A stated maximum only ever lowers the limit of a lined hot end: the liner does not read the sheet. */
export function hotLimit(build: Build): HotLimit {
  const stated = build.hotEnd !== undefined;
  if (build.hotEnd === 'all-metal') {
    return { stated, ...(build.hotEndMaxC === undefined ? {} : { limitC: build.hotEndMaxC }) };
  }
  return { stated, limitC: Math.min(build.hotEndMaxC ?? LINED_LIMIT_C, LINED_LIMIT_C) };
}

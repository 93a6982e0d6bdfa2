/** What the service is made from, and what its parts share. */
import type { Bot } from '../bot.ts';
import type { Instant } from '../maintenance/entry/entry.ts';
import type { Store } from '../store/store.ts';
import { PlatformFault } from './fault.ts';
import type { Log, Platform, Received } from './platform.ts';

export interface ServiceParts {
  store: Store;
  bot: Bot;
  platforms: readonly Platform[];
  clock: () => Instant;
  log: Log;
  /** Calls again and again until the function that it gives back is called. */
  every: (ms: number, tick: () => void) => () => void;
  /** Names this process among those on the same database. */
  holder: string;
}

/** The parts at work: each kicks the next. */
export interface Works extends ServiceParts {
  /** Those that are served just now: the ones that have connected. */
  up(): readonly Platform[];
  /** Undefined: it is not served just now, and what is its own waits for it. */
  platform(name: string): Platform | undefined;
  /** False: another process holds the lease, or is to; nothing more is sent. */
  serving(): boolean;
  /** It was seen that another process holds it. */
  leaseLost(): void;
  /** Something is to be sent, or may be tried again. */
  postsChanged(): void;
  /** Facts changed: the digest that is shown may be out of date. */
  factsChanged(by: Pick<Received, 'platform' | 'account'>): void;
}

const SECOND = 1_000;
const LONGEST_WAIT = 5 * 60 * SECOND;
/** 1, 2, 4 … seconds, five minutes at most. */
export const backOff = (tries: number): number => Math.min(LONGEST_WAIT, SECOND * 2 ** Math.min(tries, 20));

/** What went wrong, for the log: our own sentence, a code or a kind, never a text that somebody wrote. */
export function wordOf(fault: unknown): string {
  if (fault instanceof PlatformFault) return fault.message;
  if (!(fault instanceof Error)) return 'unknown';
  const code = 'code' in fault && typeof fault.code === 'string' ? fault.code : undefined;
  return code ?? fault.name;
}

/** Waiting for another process without holding up this one. */
import { setTimeout as pause } from 'node:timers/promises';
import { StoreBusy } from '../fault.ts';
import { isBusy } from './faults.ts';

export interface Patience {
  /** How long the driver itself may wait within one attempt; the event loop stands still meanwhile. */
  attemptMs: number;
  /** How long to try in all, counted in what was waited. */
  totalMs: number;
  /** The first pause between two attempts; each further one is twice as long, up to `longestPauseMs`. */
  firstPauseMs: number;
  longestPauseMs: number;
}

export const PATIENCE: Patience = { attemptMs: 5, totalMs: 5000, firstPauseMs: 2, longestPauseMs: 40 };

/** Repeats `attempt` while it is busy. Throws StoreBusy when the patience is over, other errors at once. */
export async function patiently<T>(attempt: () => T, patience: Patience): Promise<T> {
  let step = patience.firstPauseMs;
  let waited = 0;
  for (;;) {
    try {
      return attempt();
    } catch (error) {
      if (!isBusy(error)) throw error;
      if (waited >= patience.totalMs) throw new StoreBusy({ cause: error });
    }
    // Half to one and a half steps: two processes that collided shall not meet again.
    const ms = step * (0.5 + Math.random());
    await pause(ms);
    waited += ms + patience.attemptMs;
    step = Math.min(step * 2, patience.longestPauseMs);
  }
}

/** Response addresses, in memory only: they are secrets that live half an hour and answer five times. */
import type { Instant } from '../../src/index.ts';

const LIVES_MS = 29 * 60_000;
const USES = 5;
const MOST_KEPT = 2_000;

export interface Handles {
  /** `key`: of the Received that it came with. */
  keep(key: string, responseUrl: string | undefined): void;
  /** An address that still answers; using it counts. */
  take(key: string | undefined): string | undefined;
}

export function openHandles(clock: () => Instant): Handles {
  const kept = new Map<string, { url: string; until: Instant; left: number }>();
  return {
    keep(key, url) {
      if (url === undefined || url === '') return;
      kept.set(key, { url, until: clock() + LIVES_MS, left: USES });
      const [oldest] = kept.keys();
      if (kept.size > MOST_KEPT && oldest !== undefined) kept.delete(oldest);
    },
    take(key) {
      const handle = key === undefined ? undefined : kept.get(key);
      if (key === undefined || !handle) return undefined;
      handle.left -= 1;
      if (handle.left <= 0 || handle.until <= clock()) kept.delete(key);
      return handle.until > clock() ? handle.url : undefined;
    },
  };
}

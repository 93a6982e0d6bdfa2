/** One `serve` a database: whoever holds the lease serves, and says so again and again. */
import type { Instant } from '../maintenance/entry/entry.ts';
import type { Store } from '../store/store.ts';
import type { TrafficReader } from '../store/traffic.ts';

const NAME = 'serve';
export const LEASE_MS = 60_000;
export const RENEW_MS = 15_000;

/** Taken, or kept; undefined when another process holds it, with the moment at which it would run out. */
export const takeLease = (
  store: Store,
  holder: string,
  now: Instant,
): Promise<{ taken: true } | { taken: false; until: Instant }> =>
  store.transact(async ({ traffic }) => {
    const lease = await traffic.lease(NAME);
    if (lease && lease.holder !== holder && lease.until > now) return { taken: false, until: lease.until };
    await traffic.saveLease({ name: NAME, holder, until: now + LEASE_MS });
    return { taken: true };
  });

/** Then this process must not send any more, also when it has not heard of that yet. */
export async function isTakenByAnother(
  traffic: Pick<TrafficReader, 'lease'>,
  holder: string,
  now: Instant,
): Promise<boolean> {
  const lease = await traffic.lease(NAME);
  return lease !== undefined && lease.holder !== holder && lease.until > now;
}

export const dropLease = (store: Store, holder: string): Promise<void> =>
  store.transact(async ({ traffic }) => {
    if ((await traffic.lease(NAME))?.holder === holder) await traffic.dropLease(NAME);
  });

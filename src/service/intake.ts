/** What arrives is stored before the platform hears that it did: one commit for all of a turn of the event loop. */
import type { Instant } from '../maintenance/entry/entry.ts';
import type { Store } from '../store/store.ts';
import type { Traffic } from '../store/traffic.ts';
import { messageKey } from './identity.ts';
import type { Received } from './platform.ts';

type Outcome = 'stored' | 'known';
interface Waiting {
  received: Received;
  resolve: (outcome: Outcome) => void;
  reject: (fault: unknown) => void;
}

/** Messages of one channel are handled in the order in which they came. */
const laneOf = ({ platform, place }: Received): string => `${platform}:${place.channel}`;

/** Two deliveries of one message differ in their key. A message that a colleague noted may have been said to us before. */
function sameOf({ platform, place, what }: Received): string | undefined {
  return what.kind === 'said' && !what.author ? messageKey(platform, place.channel, what.message) : undefined;
}

export async function storeReceived(traffic: Traffic, received: Received, now: Instant): Promise<Outcome> {
  const { key, platform, place, what, saidAt } = received;
  const same = sameOf(received);
  const fresh = await traffic.receive({
    key, ...(same === undefined ? {} : { same }), platform, channel: place.channel, lane: laneOf(received), received,
    receivedAt: now, tries: 0, notBefore: now,
  }); // prettier-ignore
  if (fresh && what.kind === 'said')
    await traffic.saveHeard({
      platform,
      channel: place.channel,
      message: what.message,
      saidAt,
      direct: place.direct,
    });
  return fresh ? 'stored' : 'known';
}

export function openIntake(store: Store, clock: () => Instant, stored: () => void) {
  let waiting: Waiting[] = [];
  const flush = async (): Promise<void> => {
    const taken = waiting;
    waiting = [];
    try {
      const outcomes = await store.transact(async ({ traffic }) => {
        const each: Outcome[] = [];
        for (const { received } of taken) each.push(await storeReceived(traffic, received, clock()));
        return each;
      });
      taken.forEach(({ resolve }, i) => resolve(outcomes[i] ?? 'known'));
      if (outcomes.includes('stored')) stored();
    } catch (fault) {
      for (const { reject } of taken) reject(fault);
    }
  };
  return (received: Received): Promise<Outcome> =>
    new Promise((resolve, reject) => {
      if (waiting.length === 0) setImmediate(() => void flush());
      waiting.push({ received, resolve, reject });
    });
}

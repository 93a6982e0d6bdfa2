/**
 * Interactions that can still be answered: their tokens, in memory only, for as long as Discord takes them. After a
 * restart there is none, and answers are posted as messages: those for one person to that person.
 */
import type { Instant } from '../../src/index.ts';

export interface Live {
  token: string;
  /** `reply`: "is thinking" stands there and waits to be replaced. `update`: nothing is shown. */
  how: 'reply' | 'update';
  /** Only the asker sees what stands there. */
  hidden: boolean;
  /** The message whose button was pressed. */
  message?: string;
  /** False: Discord no longer knew it. */
  acknowledged: Promise<boolean>;
  /** The waiting "is thinking" has been replaced. */
  used: boolean;
}

export interface LiveInteractions {
  keep(key: string, live: Live): void;
  /** Undefined: never seen, too old, or not acknowledged. */
  of(key: string | undefined): Promise<Live | undefined>;
}

/** Discord takes an interaction's token for 15 minutes. */
const LIFE_MS = 14.5 * 60_000;
const MOST = 1000;

export function openLive(clock: () => Instant): LiveInteractions {
  const kept = new Map<string, { live: Live; until: Instant }>();
  const sweep = (): void => {
    for (const [key, { until }] of kept) {
      if (until > clock() && kept.size <= MOST) break;
      kept.delete(key);
    }
  };
  return {
    keep(key, live) {
      kept.set(key, { live, until: clock() + LIFE_MS });
      sweep();
    },
    async of(key) {
      const found = key === undefined ? undefined : kept.get(key);
      if (!found || found.until <= clock()) return undefined;
      return (await found.live.acknowledged) ? found.live : undefined;
    },
  };
}

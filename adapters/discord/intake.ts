/** Hands to the desk what arrived. Discord delivers a message once: what could not be stored is tried again here. */
import { setTimeout as wait } from 'node:timers/promises';
import type { Desk, Log, LogFacts, Received } from '../../src/index.ts';

export interface Intake {
  /** Resolves when it is stored, or when the adapter stops. */
  message(received: Received): Promise<void>;
  /** Tries until it succeeds; undefined when the adapter stops before. */
  until<T>(work: () => Promise<T>, event: string, facts: LogFacts): Promise<T | undefined>;
  /** For what a person waits for: one try. */
  press(received: Received): Promise<'stored' | 'known'>;
  /** Takes nothing new; resolves when what is under way is done. */
  close(): Promise<void>;
  closed: () => boolean;
  /** Lets other work count as under way. */
  during(work: Promise<unknown>): void;
}

const PAUSES_MS = [200, 1000, 5000, 15_000, 60_000] as const;
const LAST_PAUSE_MS = 60_000;

export function openIntake(desk: Desk, log: Log): Intake {
  const underWay = new Set<Promise<unknown>>();
  const stopping = new AbortController();
  const closed = (): boolean => stopping.signal.aborted;
  const during = <T>(work: Promise<T>): Promise<T> => {
    const settled = work.then(
      () => undefined,
      () => undefined,
    );
    underWay.add(settled);
    void settled.then(() => underWay.delete(settled));
    return work;
  };
  const until = async <T>(work: () => Promise<T>, event: string, facts: LogFacts): Promise<T | undefined> => {
    for (let tries = 0; ; tries += 1) {
      try {
        return await work();
      } catch {
        // who failed has said why; here only that it will be tried again
        log.warn(event, { ...facts, tries: tries + 1 });
      }
      const pause = PAUSES_MS[tries] ?? LAST_PAUSE_MS;
      await wait(pause, undefined, { signal: stopping.signal }).catch(() => undefined);
      // after a restart the channel is asked for what came since
      if (closed()) return undefined;
    }
  };
  const untilStored = async (received: Received): Promise<void> => {
    await until(() => desk.receive(received), 'discord message not stored yet', { key: received.key });
  };
  return {
    until,
    message: (received) => during(untilStored(received)),
    press: (received) => during(desk.receive(received)),
    closed,
    during: (work) => void during(work),
    async close() {
      stopping.abort();
      await Promise.all(underWay);
    },
  };
}

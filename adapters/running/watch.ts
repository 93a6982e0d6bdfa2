/** The watchdog: a platform that stays away is better tried by a fresh process. */
import type { Instant, Log, ServiceState } from '../../src/index.ts';

/** So long without a connection, and a fresh start is the better try. */
export const GIVE_UP_MS = 10 * 60_000;
const WATCH_MS = 15_000;

export interface Watched {
  state: () => Promise<Pick<ServiceState, 'platforms'>>;
  clock: () => Instant;
  log: Log;
  /** Calls again and again until the function that it gives back is called. */
  every: (ms: number, tick: () => void) => () => void;
}

/** `tooLong` resolves when a platform has been away for too long. */
export function watch({ state, clock, log, every }: Watched): { tooLong: Promise<void>; end: () => void } {
  let resolve: () => void = () => undefined;
  const tooLong = new Promise<void>((done) => {
    resolve = done;
  });
  const look = async (): Promise<void> => {
    const { platforms } = await state();
    const away = platforms.filter((p) => !p.connected && clock() - (p.since ?? clock()) > GIVE_UP_MS);
    for (const { name } of away) log.error('platform.away', { platform: name });
    if (away.length > 0) resolve();
  };
  const end = every(WATCH_MS, () => void look().catch(() => log.warn('watch.failed')));
  return { tooLong, end };
}

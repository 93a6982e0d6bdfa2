/** Platforms connected at the start, and again when they were away: one that is down keeps no other from serving. */
import { wordOf } from './parts.ts';
import type { Log, Platform } from './platform.ts';

export interface Connections {
  /** Resolves when every platform was tried. Rejects with the first one's PlatformFault when none could connect. */
  all(): Promise<void>;
  /** Tries those that could not. */
  again(): Promise<void>;
}

export function openConnections(
  platforms: readonly Platform[],
  connect: (platform: Platform) => Promise<void>,
  log: Log,
): Connections {
  const away = new Set<Platform>();
  return {
    async all() {
      const tried = await Promise.allSettled(platforms.map(connect));
      const failures = tried.flatMap((one, i) => {
        const platform = platforms[i];
        return one.status === 'rejected' && platform ? [{ platform, reason: one.reason as unknown }] : [];
      });
      const [first] = failures;
      if (first && failures.length === platforms.length) throw first.reason;
      for (const { platform, reason } of failures) {
        away.add(platform);
        log.error('platform.notConnected', { platform: platform.name, why: wordOf(reason) });
      }
    },
    async again() {
      for (const platform of away) {
        await connect(platform);
        away.delete(platform);
        log.info('platform.connected', { platform: platform.name });
      }
    },
  };
}

/** Platforms connected at the start, and again when they were away: one that is down keeps no other from serving. */
import { wordOf } from './parts.ts';
import type { Log, Platform } from './platform.ts';

export interface Connections {
  /**
   * Resolves when one is connected; the others may take their time. Rejects with the first one's PlatformFault when
   * none could connect.
   */
  first(): Promise<void>;
  /** Tries those that could not, and are not being tried just now. */
  again(): Promise<void>;
  /** Those that have connected; one whose connection drops connects by itself. */
  up(): readonly Platform[];
}

export function openConnections(
  platforms: readonly Platform[],
  connect: (platform: Platform) => Promise<void>,
  log: Log,
): Connections {
  const up = new Set<Platform>();
  const trying = new Set<Platform>();
  const attempt = async (platform: Platform): Promise<void> => {
    trying.add(platform);
    try {
      await connect(platform);
      up.add(platform);
    } finally {
      trying.delete(platform);
    }
  };
  const told = async (platform: Platform, tried: Promise<void>): Promise<void> => {
    try {
      await tried;
      log.info('platform.connected', { platform: platform.name });
    } catch (fault) {
      log.error('platform.notConnected', { platform: platform.name, why: wordOf(fault) });
    }
  };
  return {
    async first() {
      const tried = platforms.map((platform) => ({ platform, work: attempt(platform) }));
      try {
        await Promise.any(tried.map(({ work }) => work));
      } catch (fault) {
        throw fault instanceof AggregateError ? fault.errors[0] : fault;
      }
      for (const { platform, work } of tried) void told(platform, work);
    },
    async again() {
      const away = platforms.filter((platform) => !up.has(platform) && !trying.has(platform));
      await Promise.all(away.map((platform) => told(platform, attempt(platform))));
    },
    up: () => platforms.filter((platform) => up.has(platform)),
  };
}

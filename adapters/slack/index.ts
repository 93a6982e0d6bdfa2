/** Slack: what the service opens, and what `fettle check` asks. */
import type { Platform, PlatformTools } from '../../src/index.ts';
import { readEnvironment } from './environment.ts';
import { openPlatform } from './platform.ts';

export { check } from './check.ts';

/** Throws a PlatformFault with one clear sentence a fault of the environment. Connects nothing yet. */
export async function open(tools: PlatformTools): Promise<Platform> {
  return openPlatform(readEnvironment(tools.environment), tools);
}

/** The chat platforms that there are, each loaded only when its token is set. */
import { PlatformFault, type PlatformModule } from '../../src/index.ts';

interface Known {
  name: string;
  /** Set: this platform is served. */
  token: string;
  load: () => Promise<PlatformModule>;
}

export const PLATFORMS: readonly Known[] = [
  { name: 'slack', token: 'SLACK_BOT_TOKEN', load: () => import('../slack/index.ts') },
  { name: 'discord', token: 'DISCORD_BOT_TOKEN', load: () => import('../discord/index.ts') },
];

type Environment = Readonly<Record<string, string | undefined>>;

export const platformsOf = (environment: Environment): Known[] =>
  PLATFORMS.filter(({ token }) => (environment[token] ?? '').trim() !== '');

/** Throws a PlatformFault when no token is set. */
export function wantedPlatforms(environment: Environment): Known[] {
  const wanted = platformsOf(environment);
  if (wanted.length > 0) return wanted;
  const tokens = PLATFORMS.map(({ token }) => token).join(' or ');
  throw new PlatformFault(
    'none',
    `No chat platform to serve: set ${tokens}. The README says where to find one.`,
  );
}

/** Who may speak where: the workspace and the channels of the workshop file, and in direct those who were met there. */
import type { Workshop } from '../workshop.ts';
import type { TrafficReader } from '../store/traffic.ts';
import type { Place, Platform } from './platform.ts';

export type Access = 'open' | 'other-space' | 'other-channel' | 'stranger';

interface Channels {
  digest: string;
  listen?: readonly string[];
  space?: string;
}

export function channelsOf({ workshop }: Workshop, platform: string): Channels | undefined {
  return Object.entries(workshop.channels).find(([name]) => name === platform)?.[1];
}

/** As the workshop file names them, the digest's first. */
export const listedChannels = (workshop: Workshop, platform: string): string[] => {
  const its = channelsOf(workshop, platform);
  return its ? [its.digest, ...(its.listen ?? [])] : [];
};

async function inListedChannel(place: Place, platform: Platform, workshop: Workshop): Promise<boolean> {
  for (const named of listedChannels(workshop, platform.name)) {
    const id = await platform.channelId(named);
    if (id !== undefined && (id === place.channel || id === place.parent)) return true;
  }
  return false;
}

const isListed = ({ people }: Workshop, platform: string, account: string): boolean =>
  people.some(({ accounts }) =>
    Object.entries(accounts ?? {}).some(([on, its]) => on === platform && its === account),
  );

/** May this account speak here? */
export async function accessTo(
  { place, account }: { place: Place; account: string },
  platform: Platform,
  workshop: Workshop,
  traffic: TrafficReader,
): Promise<Access> {
  const own = channelsOf(workshop, platform.name)?.space ?? platform.space();
  if (own !== undefined && place.space !== '' && place.space !== own) return 'other-space';
  if (!place.direct) return (await inListedChannel(place, platform, workshop)) ? 'open' : 'other-channel';
  const known = isListed(workshop, platform.name, account) || (await traffic.seen(platform.name, account));
  return known ? 'open' : 'stranger';
}

export const NO_ACCESS: Readonly<Record<Exclude<Access, 'open'>, string>> = {
  'other-space': 'Fettle serves another workspace: nothing was noted.',
  'other-channel':
    'Fettle does not listen in this channel: nothing was noted. A keeper can add it to the workshop file, under channels.',
  stranger:
    'We have not met: write to me in the workshop’s channel once, and then here too. Nothing was noted.',
};

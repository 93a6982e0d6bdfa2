/** Who may speak where: the workspace and the channels of the workshop file, and in direct those who were met there. */
import type { Workshop } from '../workshop.ts';
import type { Store } from '../store/store.ts';
import { PlatformFault } from './fault.ts';
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

/** Ids of the listed channels; a platform is asked outside every transaction, and its not answering is no answer. */
export async function listedIds(platform: Platform, workshop: Workshop): Promise<ReadonlySet<string>> {
  const ids = new Set<string>();
  for (const named of listedChannels(workshop, platform.name)) {
    const id = await channelIdOf(platform, named);
    if (id !== undefined) ids.add(id);
  }
  return ids;
}

/** Throws PlatformFault when the platform cannot tell just now. */
export async function channelIdOf(platform: Platform, named: string): Promise<string | undefined> {
  try {
    return await platform.channelId(named);
  } catch (fault) {
    throw new PlatformFault(platform.name, `${platform.name} does not say which channel ${named} is.`, fault);
  }
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
  store: Pick<Store, 'read'>,
): Promise<Access> {
  const own = channelsOf(workshop, platform.name)?.space ?? platform.space();
  if (own !== undefined && place.space !== '' && place.space !== own) return 'other-space';
  if (!place.direct) {
    const ids = await listedIds(platform, workshop);
    return ids.has(place.channel) || ids.has(place.parent ?? '') ? 'open' : 'other-channel';
  }
  if (isListed(workshop, platform.name, account)) return 'open';
  const met = await store.read(({ traffic }) => traffic.seen(platform.name, account));
  return met ? 'open' : 'stranger';
}

export const NO_ACCESS: Readonly<Record<Exclude<Access, 'open'>, string>> = {
  'other-space': 'Fettle serves another workspace: nothing was noted.',
  'other-channel':
    'Fettle does not listen in this channel: nothing was noted. A keeper can add it to the workshop file, under channels.',
  stranger:
    'We have not met: write to me in the workshop’s channel once, and then here too. Nothing was noted.',
};

/** The channels that the bot can see: their names, and what hangs below what. */
import { ChannelType, Routes, type APIChannel, type Client, type REST } from 'discord.js';
import { PlatformFault } from '../../src/index.ts';
import { PLATFORM } from './environment.ts';
import type { Intake } from './intake.ts';
import { CODE, codeOf, faultWord } from './rest.ts';
import { isSnowflake } from './snowflake.ts';

export interface ChannelFacts {
  id: string;
  name: string;
  guild?: string;
  /** The channel that a thread hangs below. */
  parent?: string;
  direct: boolean;
  /** Its newest message, as far as known. */
  last?: string;
}

export interface Places {
  /** From memory, else asked for; undefined: there is none, or the bot may not see it. Rejects when nobody can tell. */
  about(id: string): Promise<ChannelFacts | undefined>;
  name(id: string): string | undefined;
  /** `#print-room`, `print-room`, `<#id>` or an id of the guild -> id. */
  named(text: string, guild: string): Promise<string | undefined>;
}

export const THREADS: ReadonlySet<ChannelType> = new Set([
  ChannelType.PublicThread,
  ChannelType.PrivateThread,
  ChannelType.AnnouncementThread,
]);
const MOST_REMEMBERED = 500;
const NOT_THERE: ReadonlySet<number | undefined> = new Set([
  CODE.unknownChannel, CODE.missingAccess, CODE.missingPermission,
]); // prettier-ignore

export function factsOf(channel: APIChannel): ChannelFacts {
  const parent = THREADS.has(channel.type) && 'parent_id' in channel ? channel.parent_id : undefined;
  const guild = 'guild_id' in channel ? channel.guild_id : undefined;
  const last = 'last_message_id' in channel ? channel.last_message_id : undefined;
  return {
    id: channel.id,
    name: channel.name ?? '',
    direct: channel.type === ChannelType.DM || channel.type === ChannelType.GroupDM,
    ...(guild === undefined ? {} : { guild }),
    ...(typeof parent === 'string' ? { parent } : {}),
    ...(typeof last === 'string' ? { last } : {}),
  };
}

export function openPlaces(client: Client, rest: REST): Places {
  const asked = new Map<string, ChannelFacts>();
  const seen = (id: string): ChannelFacts | undefined => {
    const channel = client.channels.cache.get(id);
    if (!channel) return asked.get(id);
    if (channel.isDMBased()) return { id, name: '', direct: true };
    const parent = channel.isThread() ? channel.parentId : null;
    // of a thread that only a message told of, the client knows no more than its id
    if (channel.isThread() && parent === null) return asked.get(id);
    const { name, guildId: guild } = channel;
    return { id, name, guild, direct: false, ...(parent === null ? {} : { parent }) };
  };
  const about = async (id: string): Promise<ChannelFacts | undefined> => {
    const known = seen(id);
    if (known) return known;
    try {
      const facts = factsOf((await rest.get(Routes.channel(id))) as APIChannel);
      if (asked.size >= MOST_REMEMBERED) asked.clear();
      asked.set(id, facts);
      return facts;
    } catch (cause) {
      if (NOT_THERE.has(codeOf(cause))) return undefined;
      throw new PlatformFault(
        PLATFORM,
        `Discord does not tell of a channel just now (${faultWord(cause)}).`,
        cause,
      );
    }
  };
  return {
    about,
    name: (id) => seen(id)?.name,
    async named(text, guild) {
      const wanted = text
        .trim()
        .replace(/^<#(\d+)>$/u, '$1')
        .replace(/^#/u, '');
      if (isSnowflake(wanted)) return (await about(wanted))?.guild === guild ? wanted : undefined;
      return client.channels.cache.find(
        (c) => !c.isDMBased() && c.guildId === guild && c.name.toLowerCase() === wanted.toLowerCase(),
      )?.id;
    },
  };
}

/** The same, for what is not delivered twice: asked again until Discord tells. Rejects when the adapter stops before. */
export function waitingFor(places: Places, intake: Pick<Intake, 'until'>): Places {
  const told = async <T>(ask: () => Promise<T>): Promise<T> => {
    const answer = await intake.until(async () => ({ is: await ask() }), 'discord channel not known yet', {});
    if (!answer) throw new PlatformFault(PLATFORM, 'Discord was left before it told of a channel.');
    return answer.is;
  };
  return {
    about: (id) => told(() => places.about(id)),
    name: (id) => places.name(id),
    named: (text, guild) => told(() => places.named(text, guild)),
  };
}

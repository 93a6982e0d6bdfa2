/** The connection on which Discord tells what happens: no privileged intent, next to nothing kept in memory. */
import {
  Client,
  Events,
  GatewayDispatchEvents,
  GatewayIntentBits,
  Options,
  Partials,
  type APIInteraction,
  type GatewayMessageCreateDispatchData,
  type GatewayMessageDeleteDispatchData,
} from 'discord.js';
import type { Instant, Log, PlatformState } from '../../src/index.ts';
import type { DiscordEnvironment } from './environment.ts';

export interface Heard {
  message(data: GatewayMessageCreateDispatchData): void;
  edited(data: GatewayMessageCreateDispatchData): void;
  deleted(data: GatewayMessageDeleteDispatchData): void;
  interaction(data: APIInteraction): void;
  /** A new session, at the start or after one that could not be resumed: what was said in between is lost. */
  newSession: () => void;
}

/** The text of messages that do not concern the bot is neither asked for nor sent. */
const INTENTS = [GatewayIntentBits.Guilds, GatewayIntentBits.GuildMessages, GatewayIntentBits.DirectMessages];

export function openClient({ api }: DiscordEnvironment): Client {
  return new Client({
    intents: INTENTS,
    partials: [Partials.Channel],
    allowedMentions: { parse: [], repliedUser: false },
    makeCache: Options.cacheWithLimits({
      ...Options.DefaultMakeCacheSettings,
      MessageManager: 0,
      ReactionManager: 0,
      PresenceManager: 0,
      VoiceStateManager: 0,
      GuildEmojiManager: 0,
      GuildStickerManager: 0,
      GuildMemberManager: { maxSize: 10, keepOverLimit: (member) => member.id === member.client.user.id },
      UserManager: { maxSize: 10, keepOverLimit: (user) => user.id === user.client.user.id },
    }),
    rest: { retries: 0, ...(api === undefined ? {} : { api }) },
  });
}

/** Raw events, so that a message delivered and a message fetched are read by the same code. Attached once. */
export function listen(client: Client, heard: Heard): void {
  const { ws } = client;
  ws.on(GatewayDispatchEvents.MessageCreate, (data: GatewayMessageCreateDispatchData) => heard.message(data));
  ws.on(GatewayDispatchEvents.MessageUpdate, (data: GatewayMessageCreateDispatchData) => heard.edited(data));
  ws.on(GatewayDispatchEvents.MessageDelete, (data: GatewayMessageDeleteDispatchData) => heard.deleted(data));
  ws.on(GatewayDispatchEvents.InteractionCreate, (data: APIInteraction) => heard.interaction(data));
  client.on(Events.ShardReady, () => heard.newSession());
}

export interface Watch {
  state(): PlatformState;
}

/** Whether the connection stands, and when it last gave a sign of life. */
export function watch(client: Client, clock: () => Instant, log: Log): Watch {
  let connected = false;
  let since: Instant | undefined;
  let lastPacket: Instant | undefined;
  let note = 'connecting';
  const turn = (now: boolean, word: string): void => {
    if (connected !== now || since === undefined) since = clock();
    connected = now;
    note = word;
  };
  client.on(Events.Raw, () => {
    lastPacket = clock();
  });
  client.on(Events.ShardReady, () => turn(true, 'new session'));
  client.on(Events.ShardResume, () => turn(true, 'resumed'));
  client.on(Events.ShardReconnecting, () => turn(false, 'reconnecting'));
  client.on(Events.ShardDisconnect, ({ code }) => {
    turn(false, `closed ${code}`);
    log.error('discord connection closed for good', { code });
  });
  client.on(Events.Invalidated, () => turn(false, 'session not accepted'));
  // without a listener an error of the socket would end the process
  client.on(Events.ShardError, (error) => log.warn('discord socket', { error: error.name }));
  client.on(Events.Error, (error) => log.warn('discord client', { error: error.name }));
  return {
    state: () => {
      // a heartbeat that was answered counts too; never sent yet is -1
      const heartbeat = client.ws.shards.first()?.lastPingTimestamp ?? -1;
      const last = Math.max(lastPacket ?? -1, heartbeat);
      return {
        connected,
        note,
        ...(since === undefined ? {} : { since }),
        ...(last < 0 ? {} : { lastEventAt: last }),
      };
    },
  };
}

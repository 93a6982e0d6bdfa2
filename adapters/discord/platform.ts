/** Discord as a Platform: its parts put together. */
import type { Client, REST } from 'discord.js';
import {
  PlatformFault,
  type Desk,
  type Platform,
  type PlatformState,
  type PlatformTools,
} from '../../src/index.ts';
import { catchUp } from './catchUp.ts';
import { chooseGuild, logIn } from './connect.ts';
import { PLATFORM, readEnvironment, type DiscordEnvironment } from './environment.ts';
import { find } from './find.ts';
import { listen, openClient, watch } from './gateway.ts';
import { lookupIn, openHearing, usOf } from './hearing.ts';
import { openIntake, type Intake } from './intake.ts';
import { openLive, type LiveInteractions } from './live.ts';
import { openPlaces, waitingFor, type Places } from './places.ts';
import { ITEMS_WITH_BUTTONS } from './render/limits.ts';
import { openResponder } from './respond.ts';
import { closeRest, openRest } from './rest.ts';
import { edit, send } from './send.ts';
import { openSent, type SentMessages } from './sent.ts';

/** Five posts in five seconds is what Discord usually lets pass; it tells its own limits, which are honoured. */
const EVERY_MS = 500;

interface Parts {
  environment: DiscordEnvironment;
  tools: PlatformTools;
  rest: REST;
  live: LiveInteractions;
  sent: SentMessages;
}

/** Throws a PlatformFault with one clear sentence a fault of the environment. Connects nothing yet. */
export async function openPlatform(tools: PlatformTools): Promise<Platform> {
  const environment = readEnvironment(tools.environment);
  const rest = openRest(environment, tools.log);
  const parts: Parts = { environment, tools, rest, live: openLive(tools.clock), sent: openSent() };
  const stopping = new AbortController();
  /** The newest, connected or not; `running`: it hears and serves. */
  let newest: Connection | undefined;
  let running: Connection | undefined;
  const sender = { ...parts, application: () => running?.client.application?.id ?? '' };
  return {
    name: PLATFORM,
    everyMs: EVERY_MS,
    itemsWithButtons: ITEMS_WITH_BUTTONS,
    async start(desk) {
      const make = (): Connection => (newest = openConnection(parts, desk));
      const connected = await logIn(make, { environment, log: tools.log, stopping: stopping.signal });
      await connected.serve().catch(async (cause: unknown) => {
        await connected.client.destroy();
        throw cause;
      });
      running = connected;
    },
    async stop() {
      stopping.abort();
      await running?.intake.close();
      await newest?.client.destroy();
      closeRest(rest);
    },
    space: () => running?.guild(),
    async channelId(named) {
      const guild = running?.guild();
      // nobody knows before it is connected, which is not the same as that there is none
      if (!running || guild === undefined) throw new PlatformFault(PLATFORM, 'Discord is not connected yet.');
      return running.places.named(named, guild);
    },
    send: (outgoing) => send(sender, outgoing),
    edit: (ref, outgoing) => edit(sender, ref, outgoing),
    find: (outgoing, since) => find({ ...parts, bot: () => running?.client.user?.id ?? '' }, outgoing, since),
    state: () => newest?.state() ?? { connected: false, note: 'not begun' },
  };
}

/** One client with all that hears through it. */
interface Connection {
  client: Client;
  intake: Intake;
  places: Places;
  guild: () => string | undefined;
  state: () => PlatformState;
  /** Rejects with a PlatformFault when there is no one server to serve. */
  serve(): Promise<void>;
}

function openConnection({ environment, tools, rest, live, sent }: Parts, desk: Desk): Connection {
  const { log, clock } = tools;
  const client = openClient(environment);
  const watched = watch(client, clock, log);
  const places = openPlaces(client, rest);
  let guild: string | undefined;
  const intake = openIntake(desk, log);
  const hearing = openHearing({
    counter: {
      desk,
      intake,
      log,
      places,
      live,
      us: usOf(client),
      lookup: lookupIn(client, (id) => places.name(id)),
      responder: openResponder(rest, () => client.application?.id ?? '', log),
    },
    sent,
    clock,
    guild: () => guild,
    newSession: () => hearing.run(away),
  });
  const away = async (): Promise<void> => {
    // before the first session has told its servers there is nothing to ask
    if (guild === undefined) return;
    const { take } = hearing;
    await catchUp({
      rest,
      desk,
      places: waitingFor(places, intake),
      guild,
      log,
      clock,
      take,
      closed: () => intake.closed(),
    });
  };
  listen(client, hearing.heard);
  return {
    client,
    intake,
    places,
    guild: () => guild,
    state: () => watched.state(),
    async serve() {
      if (!client.isReady()) throw new PlatformFault(PLATFORM, 'Discord closed the connection again.');
      guild = chooseGuild(client, environment).id;
      hearing.run(away);
    },
  };
}

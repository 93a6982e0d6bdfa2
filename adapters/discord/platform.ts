/** Discord as a Platform: its parts put together. */
import type { Client, REST } from 'discord.js';
import type { Desk, Platform, PlatformTools } from '../../src/index.ts';
import { catchUp } from './catchUp.ts';
import { chooseGuild, logIn } from './connect.ts';
import { PLATFORM, readEnvironment, type DiscordEnvironment } from './environment.ts';
import { find } from './find.ts';
import { listen, openClient, watch } from './gateway.ts';
import { lookupIn, openHearing, usOf } from './hearing.ts';
import { openIntake, type Intake } from './intake.ts';
import { openLive, type LiveInteractions } from './live.ts';
import { openPlaces, type Places } from './places.ts';
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
  client: Client;
  rest: REST;
  places: Places;
  live: LiveInteractions;
  sent: SentMessages;
  application: () => string;
}

/** Throws a PlatformFault with one clear sentence a fault of the environment. Connects nothing yet. */
export async function openPlatform(tools: PlatformTools): Promise<Platform> {
  const environment = readEnvironment(tools.environment);
  const rest = openRest(environment, tools.log);
  const client = openClient(environment);
  const parts: Parts = {
    environment,
    tools,
    client,
    rest,
    places: openPlaces(client, rest),
    live: openLive(tools.clock),
    sent: openSent(),
    application: () => client.application?.id ?? '',
  };
  const watched = watch(client, tools.clock, tools.log);
  let running: Running | undefined;
  return {
    name: PLATFORM,
    everyMs: EVERY_MS,
    itemsWithButtons: ITEMS_WITH_BUTTONS,
    async start(desk) {
      running = prepare(parts, desk);
      await running.connect().catch(async (cause: unknown) => {
        await client.destroy();
        throw cause;
      });
    },
    async stop() {
      await running?.intake.close();
      await client.destroy();
      closeRest(rest);
    },
    space: () => running?.guild(),
    async channelId(named) {
      const guild = running?.guild();
      return guild === undefined ? undefined : parts.places.named(named, guild);
    },
    send: (outgoing) => send(parts, outgoing),
    edit: (ref, outgoing) => edit(parts, ref, outgoing),
    find: (outgoing, since) => find({ ...parts, bot: () => client.user?.id ?? '' }, outgoing, since),
    state: () => watched.state(),
  };
}

interface Running {
  intake: Intake;
  guild: () => string | undefined;
  connect(): Promise<void>;
}

function prepare(parts: Parts, desk: Desk): Running {
  const { client, rest, places, environment, application } = parts;
  const { log, clock } = parts.tools;
  let guild: string | undefined;
  const intake = openIntake(desk, log);
  const hearing = openHearing({
    counter: {
      desk,
      intake,
      log,
      places,
      live: parts.live,
      us: usOf(client),
      lookup: lookupIn(client, (id) => places.name(id)),
      responder: openResponder(rest, application, log),
    },
    sent: parts.sent,
    clock,
    guild: () => guild,
    newSession: () => hearing.run(away),
  });
  const away = async (): Promise<void> => {
    // before the first session has told its servers there is nothing to ask
    if (guild === undefined) return;
    const { take } = hearing;
    await catchUp({ rest, desk, places, guild, log, clock, take, closed: () => intake.closed() });
  };
  listen(client, hearing.heard);
  return {
    intake,
    guild: () => guild,
    async connect() {
      await logIn(client, environment, log);
      if (!client.isReady()) return;
      guild = chooseGuild(client, environment).id;
      hearing.run(away);
    },
  };
}

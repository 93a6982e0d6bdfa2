/** Slack, connected: the pieces of this folder behind the service's port. */
import type { Desk, Log, Platform, PlatformTools } from '../../src/index.ts';
import { PlatformFault } from '../../src/index.ts';
import { catchUp } from './catchUp.ts';
import { openChannels } from './channels.ts';
import { clientOptions, openClients, type Clients } from './clients.ts';
import type { SlackEnvironment } from './environment.ts';
import { find } from './find.ts';
import { openHandles, type Handles } from './handles.ts';
import { openHomes, type Homes } from './homes.ts';
import { httpDoor } from './httpDoor.ts';
import { whoAmI, type Identity } from './identity.ts';
import type { Scene } from './incoming/scene.ts';
import type { DoorEvents } from './lines.ts';
import { listen } from './listeners.ts';
import { openNames, type Names } from './names.ts';
import { LIMITS } from './outgoing/limits.ts';
import { sdkLog } from './sdkLog.ts';
import { edit, send } from './send.ts';
import { wordOf } from './slackError.ts';
import { socketDoor } from './socketDoor.ts';
import { StoringApp } from './storingApp.ts';
import { openWatch, type Watch } from './watch.ts';

/** Slack takes about one message a second in a channel. */
const EVERY_MS = 1_000;

interface Parts {
  environment: SlackEnvironment;
  tools: PlatformTools;
  logger: ReturnType<typeof sdkLog>;
  clients: Clients;
  handles: Handles;
  names: Names;
  watch: Watch;
}

export function openPlatform(environment: SlackEnvironment, tools: PlatformTools): Platform {
  const { clock, log } = tools;
  const logger = sdkLog(log);
  const clients = openClients(environment, logger);
  const handles = openHandles(clock);
  const watch = openWatch(clock);
  const channels = openChannels(clients.reads, clock);
  const names = openNames(clients.reads, clock, log);
  const sending = { clients, handles, log };
  let running: Running | undefined;
  return {
    name: 'slack',
    everyMs: EVERY_MS,
    itemsWithButtons: LIMITS.itemsWithButtons,
    async start(desk) {
      const me = await whoAmI(clients.reads);
      running = prepare({ environment, tools, logger, clients, handles, names, watch }, desk, me);
      await running.connect();
    },
    async stop() {
      await running?.app.drain();
      await running?.app.stop();
    },
    space: () => running?.me.teamId,
    channelId: (named) => channels.idOf(named),
    send: (outgoing) => send(outgoing, sending),
    edit: (ref, outgoing) => edit(ref, outgoing, sending),
    find: (outgoing, since) => find(outgoing, since, clients.reads),
    state: () => watch.state(),
    refreshHome: async (account) => running?.homes.refresh(account),
  };
}

interface Running {
  me: Identity;
  app: StoringApp;
  homes: Homes;
  connect(): Promise<void>;
}

function prepare(parts: Parts, desk: Desk, me: Identity): Running {
  const { environment, clients, handles, names, watch } = parts;
  const { clock, log } = parts.tools;
  const homes = openHomes(desk, clients, names, log);
  const scene: Scene = { me, names, clock };
  const lookForMissed = (): void => void catchUp(desk, scene, clients.reads, log);
  const app = appOf(parts, me, watch.events(lookForMissed));
  listen({ app, desk, scene, clients, handles, homes, log });
  return {
    me,
    app,
    homes,
    async connect() {
      await app.start().catch((fault: unknown) => {
        throw new PlatformFault('slack', doorSentence(environment, fault), fault);
      });
      lookForMissed();
    },
  };
}

function appOf({ environment, tools, logger, watch }: Parts, me: Identity, events: DoorEvents): StoringApp {
  const { botId, botUserId } = me;
  return new StoringApp(
    {
      receiver: doorOf(environment, logger, events, tools.log),
      authorize: () => Promise.resolve({ botToken: environment.botToken, botId, botUserId }),
      clientOptions: clientOptions(environment),
      convoStore: false,
      logger,
    },
    {
      arrived: () => watch.heard(),
      rateLimited: (minute) => tools.log.warn('slack.rateLimited', { minute }),
    },
  );
}

const doorOf = (
  environment: SlackEnvironment,
  logger: ReturnType<typeof sdkLog>,
  events: DoorEvents,
  log: Log,
) =>
  environment.door.kind === 'http'
    ? httpDoor(environment.door, logger, events)
    : socketDoor(
        { appToken: environment.door.appToken, clientOptions: clientOptions(environment), logger },
        events,
        log,
      );

const doorSentence = ({ door }: SlackEnvironment, fault: unknown): string =>
  door.kind === 'http'
    ? `Slack's requests cannot be received on ${door.host}:${door.port}: ${wordOf(fault)}.`
    : `Slack's Socket Mode cannot be opened (${wordOf(fault)}): SLACK_APP_TOKEN must be an app-level token with the scope ` +
      'connections:write, and Socket Mode must be on.';

/** Slack, connected: the pieces of this folder behind the service's port. */
import type { Desk, Instant, Log, Platform, PlatformState, PlatformTools } from '../../src/index.ts';
import { PlatformFault } from '../../src/index.ts';
import { catchUp, GAP_WORTH_A_LOOK_MS } from './catchUp.ts';
import { channelId } from './channels.ts';
import { clientOptions, openClients } from './clients.ts';
import type { SlackEnvironment } from './environment.ts';
import { find } from './find.ts';
import { openHandles } from './handles.ts';
import { openHomes, type Homes } from './homes.ts';
import { httpDoor } from './httpDoor.ts';
import { whoAmI, type Identity } from './identity.ts';
import type { Scene } from './incoming/scene.ts';
import { listen } from './listeners.ts';
import { openNames } from './names.ts';
import { LIMITS } from './outgoing/limits.ts';
import { sdkLog } from './sdkLog.ts';
import { edit, send } from './send.ts';
import { wordOf } from './slackError.ts';
import { socketDoor, type DoorEvents } from './socketDoor.ts';
import { StoringApp } from './storingApp.ts';

/** Slack takes about one message a second in a channel. */
const EVERY_MS = 1_000;
const ASK_AGAIN_MS = 60_000;

export function openPlatform(environment: SlackEnvironment, { clock, log }: PlatformTools): Platform {
  const logger = sdkLog(log);
  const clients = openClients(environment, logger);
  const handles = openHandles(clock);
  const names = openNames(clients.reads, clock, log);
  const tools = { clients, handles, log };
  const known = new Map<string, string>();
  /** Names that no channel has: asked again after a while, not for every message. */
  const missed = new Map<string, Instant>();
  const watch = openWatch(clock);
  let me: Identity | undefined;
  let app: StoringApp | undefined;
  let homes: Homes | undefined;

  const start = async (desk: Desk): Promise<void> => {
    me = await whoAmI(clients.reads);
    homes = openHomes(desk, clients, names, log);
    const scene: Scene = { me, names, clock };
    const lookForMissed = (): void => void catchUp(desk, scene, clients.reads, log);
    const door = doorOf(environment, logger, watch.events(lookForMissed), log);
    const { botId, botUserId } = me;
    app = new StoringApp(
      {
        receiver: door,
        authorize: () => Promise.resolve({ botToken: environment.botToken, botId, botUserId }),
        clientOptions: clientOptions(environment),
        convoStore: false,
        logger,
      },
      {
        arrived: () => watch.heard(),
        rateLimited: (minute) => log.warn('slack.rateLimited', { minute }),
      },
    );
    listen({ app, desk, scene, clients, handles, homes, log });
    await app.start().catch((fault: unknown) => {
      throw new PlatformFault('slack', doorSentence(environment, fault), fault);
    });
    lookForMissed();
  };

  return {
    name: 'slack',
    everyMs: EVERY_MS,
    itemsWithButtons: LIMITS.itemsWithButtons,
    start,
    async stop() {
      await app?.drain();
      await app?.stop();
    },
    space: () => me?.teamId,
    async channelId(named) {
      const found = known.get(named);
      if (found !== undefined || (missed.get(named) ?? 0) > clock()) return found;
      const id = await channelId(named, clients.reads);
      if (id === undefined) missed.set(named, clock() + ASK_AGAIN_MS);
      else known.set(named, id);
      return id;
    },
    send: (outgoing) => send(outgoing, tools),
    edit: (ref, outgoing) => edit(ref, outgoing, tools),
    find: (outgoing, since) => find(outgoing, since, clients.reads),
    state: () => watch.state(),
    refreshHome: async (account) => homes?.refresh(account),
  };
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

/** How the connection stands, from what is heard on it. */
function openWatch(clock: () => Instant) {
  let state: PlatformState = { connected: false, note: 'connecting' };
  const heard = (): void => {
    state = { ...state, lastEventAt: clock() };
  };
  const changed = (connected: boolean, note: string): void => {
    const now = clock();
    const since = state.connected === connected ? (state.since ?? now) : now;
    state = { ...state, connected, since, note };
  };
  const events = (afterGap: () => void): DoorEvents => ({
    connected(note) {
      const away = state.connected ? 0 : clock() - (state.since ?? clock());
      changed(true, note);
      heard();
      if (away >= GAP_WORTH_A_LOOK_MS) afterGap();
    },
    disconnected: (note) => changed(false, note),
    heartbeat: heard,
  });
  return { state: () => state, heard, events };
}

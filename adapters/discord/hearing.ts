/** What the gateway tells, sorted: what concerns the bot goes to the intake, the rest is dropped at once. */
import type { Client } from 'discord.js';
import { openTurns, type Log, type Place, type PlatformTools, type Speaker } from '../../src/index.ts';
import { PLATFORM } from './environment.ts';
import type { Heard } from './gateway.ts';
import type { Intake } from './intake.ts';
import { placeOf, takeInteraction, type Counter } from './interactions.ts';
import { waitingFor } from './places.ts';
import {
  isForUs,
  receivedDeletion,
  receivedEdit,
  receivedMessage,
  speakerOf,
  type Lookup,
  type Said,
  type Us,
} from './reading/message.ts';
import type { SentMessages } from './sent.ts';

export interface Hearing {
  heard: Heard;
  /** A message that was delivered or fetched. */
  take: (message: Said, place: Place) => Promise<void>;
  /** Work that counts as under way; a fault of it is one line in the log. */
  run: (work: () => Promise<void>) => void;
}

export interface Ears {
  counter: Counter;
  sent: SentMessages;
  clock: PlatformTools['clock'];
  guild: () => string | undefined;
  newSession: () => void;
}

const MOST_KNOWN = 5000;

export function openHearing({ counter, sent, clock, guild, newSession }: Ears): Hearing {
  const { intake, us, lookup, log } = counter;
  const places = waitingFor(counter.places, intake);
  const known = openKnown();
  const run = runner(intake, log);
  const inTurn = openTurns();
  const here = (from: string | undefined): boolean => from === undefined || from === guild();
  const concerns = (message: Said, from: string | undefined): boolean =>
    here(from) && isForUs(message, us(), from === undefined);
  const take = async (message: Said, place: Place): Promise<void> => {
    const received = intake.closed() ? undefined : receivedMessage(message, place, us(), lookup);
    if (!received) return;
    known.add(message.id, speakerOf(message));
    await intake.message(received);
  };
  const heard: Heard = {
    message: (data) => {
      if (data.author.id === us().bot && typeof data.nonce === 'string')
        sent.note(data.nonce, { platform: PLATFORM, channel: data.channel_id, id: data.id });
      if (concerns(data, data.guild_id))
        run(() =>
          inTurn(data.channel_id, placeOf(places, data.channel_id, data.guild_id), (place) =>
            take(data, place),
          ),
        );
    },
    edited: (data) => {
      // only a part of a message comes when something else than its text changed
      if (typeof data.content !== 'string' || typeof data.edited_timestamp !== 'string') return;
      if (concerns(data, data.guild_id))
        run(() =>
          inTurn(data.channel_id, placeOf(places, data.channel_id, data.guild_id), (place) =>
            takeEdit(counter, data, place),
          ),
        );
    },
    deleted: ({ id, channel_id, guild_id }) => {
      const by = known.of(id);
      if (by && here(guild_id))
        run(() =>
          inTurn(channel_id, placeOf(places, channel_id, guild_id), (place) =>
            intake.message(receivedDeletion(id, place, by, clock())),
          ),
        );
    },
    interaction: (data) => {
      if (here(data.guild_id)) run(() => takeInteraction(counter, data));
    },
    newSession,
  };
  return { heard, take, run };
}

async function takeEdit({ intake, us, lookup }: Counter, message: Said, place: Place): Promise<void> {
  const received = receivedEdit(message, place, us(), lookup);
  if (received) await intake.message(received);
}

const runner =
  (intake: Intake, log: Log): Hearing['run'] =>
  (work) => {
    if (intake.closed()) return;
    intake.during(
      work().catch((cause: unknown) =>
        log.error('discord event failed', { fault: cause instanceof Error ? cause.name : 'fault' }),
      ),
    );
  };

export const usOf = (client: Client) => (): Us => {
  const bot = client.user?.id ?? '';
  const roles = client.guilds.cache.flatMap((guild) =>
    guild.roles.cache.filter((role) => role.tags?.botId === bot),
  );
  return { bot, roles: new Set(roles.keys()) };
};

export const lookupIn = (client: Client, channel: Lookup['channel']): Lookup => ({
  channel,
  role: (id) => client.guilds.cache.find((guild) => guild.roles.cache.has(id))?.roles.cache.get(id)?.name,
});

/** Who said what was taken up lately: a deletion names only the message. */
function openKnown(): { add(message: string, by: Speaker): void; of(message: string): Speaker | undefined } {
  const said = new Map<string, Speaker>();
  return {
    add(message, by) {
      said.set(message, by);
      const [oldest] = said.keys();
      if (said.size > MOST_KNOWN && oldest !== undefined) said.delete(oldest);
    },
    of: (message) => said.get(message),
  };
}

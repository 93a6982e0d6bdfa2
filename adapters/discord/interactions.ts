/** Commands, presses, filled forms and half-typed names: acknowledged at once, stored at the same time. */
import {
  ComponentType,
  InteractionType,
  MessageFlags,
  type APIApplicationCommandAutocompleteInteraction,
  type APIApplicationCommandInteraction,
  type APIInteraction,
  type APIMessage,
  type APIMessageComponentInteraction,
  type APIModalSubmitInteraction,
  type APIUser,
} from 'discord.js';
import { setTimeout as wait } from 'node:timers/promises';
import type { Audience, Desk, Form, Log, Place, PostRef, Received, What } from '../../src/index.ts';
import { PLATFORM } from './environment.ts';
import type { Intake } from './intake.ts';
import type { Live, LiveInteractions } from './live.ts';
import type { Places } from './places.ts';
import { readCommand, typedMachine } from './reading/command.ts';
import { nameOfUser, type Lookup, type Us } from './reading/message.ts';
import { filledForm } from './render/modal.ts';
import { OPTIONS_A_SELECT } from './render/limits.ts';
import type { Responder } from './respond.ts';
import { instantOf } from './snowflake.ts';

export interface Counter {
  desk: Desk;
  intake: Intake;
  live: LiveInteractions;
  places: Places;
  responder: Responder;
  log: Log;
  us: () => Us;
  lookup: Lookup;
}

const NOT_STORED = 'Not noted: it could not be stored just now. Please say it again in a minute.';
const NOTED_BEFORE = 'This message was taken up before.';
const NO_FORM = 'The form is not at hand just now. Say it in your own words: /fettle log what: cleared a jam';
const FORM_CHANGED = 'Not noted: this form has changed. Say it in your own words, or open it again.';
/** A form must be the first answer, and that within three seconds. */
const FORM_WITHIN_MS = 1500;

type Acted = Exclude<APIInteraction, { type: InteractionType.Ping }>;

export async function takeInteraction(counter: Counter, interaction: APIInteraction): Promise<void> {
  switch (interaction.type) {
    case InteractionType.Ping:
      return;
    case InteractionType.ApplicationCommandAutocomplete:
      return complete(counter, interaction);
    case InteractionType.ApplicationCommand:
      return command(counter, interaction);
    case InteractionType.MessageComponent:
      return pressed(counter, interaction);
    case InteractionType.ModalSubmit:
      return filled(counter, interaction);
  }
}

async function complete(
  { desk, responder }: Counter,
  asked: APIApplicationCommandAutocompleteInteraction,
): Promise<void> {
  const typed = typedMachine(asked);
  const names = typed === undefined ? [] : await desk.machines(typed, OPTIONS_A_SELECT).catch(() => []);
  await responder.choices(asked, names);
}

async function command(counter: Counter, asked: APIApplicationCommandInteraction): Promise<void> {
  const read = readCommand(asked, counter.us(), counter.lookup);
  if (read.kind === 'no') return void (await counter.responder.tell(asked, read.why));
  if (read.kind === 'say') {
    const acknowledged = counter.responder.thinking(asked, read.audience === 'asker');
    return hand(counter, asked, read.what, read.audience, { how: 'reply', acknowledged });
  }
  const form = await soon(counter.desk.logForm(read.values));
  await (form ? counter.responder.form(asked, form) : counter.responder.tell(asked, NO_FORM));
}

async function pressed(counter: Counter, asked: APIMessageComponentInteraction): Promise<void> {
  const { data, message } = asked;
  const token = data.component_type === ComponentType.Button ? data.custom_id : (data.values[0] ?? '');
  const form = await soon(counter.desk.formOf(token));
  if (form) return void (await counter.responder.form(asked, form));
  const acknowledged = counter.responder.noticed(asked);
  const on: PostRef = { platform: PLATFORM, channel: message.channel_id, id: message.id };
  await hand(counter, asked, { kind: 'pressed', token, on }, readersOf(message), {
    how: 'update',
    acknowledged,
    message: message.id,
  });
}

/** What begins on an answer to one person alone stays between the two. */
const readersOf = ({ flags }: Pick<APIMessage, 'flags'>): Audience =>
  ((flags ?? 0) & MessageFlags.Ephemeral) === 0 ? 'place' : 'asker';

async function filled(counter: Counter, asked: APIModalSubmitInteraction): Promise<void> {
  const { message } = asked;
  const acknowledged = message ? counter.responder.noticed(asked) : counter.responder.thinking(asked, false);
  const form = filledForm(asked.data);
  if (!form) {
    if (await acknowledged)
      await counter.responder.tellLater(asked, FORM_CHANGED, message ? 'update' : 'reply');
    return;
  }
  const on = message ? { on: { platform: PLATFORM, channel: message.channel_id, id: message.id } } : {};
  await hand(counter, asked, { kind: 'form', ...form, ...on }, message ? readersOf(message) : 'place', {
    how: message ? 'update' : 'reply',
    acknowledged,
    ...(message ? { message: message.id } : {}),
  });
}

const soon = (form: Promise<Form | undefined>): Promise<Form | undefined> =>
  Promise.race([form, wait(FORM_WITHIN_MS, undefined, { ref: false })]).catch(() => undefined);

type Handle = Pick<Live, 'how' | 'acknowledged' | 'message'>;

async function hand(
  counter: Counter,
  asked: Acted,
  what: What,
  audience: Audience,
  handle: Handle,
): Promise<void> {
  const { intake, live, responder, log } = counter;
  const hidden = audience === 'asker' && handle.how === 'reply';
  try {
    const received = await receivedFrom(counter, asked, what, audience);
    if (!received || intake.closed()) return;
    live.keep(received.key, { ...handle, token: asked.token, hidden, used: false });
    const stored = await intake.press(received);
    // delivered twice: the other delivery answers. A message that was logged before: nobody else will
    if (stored === 'known' && handle.how === 'reply' && (await handle.acknowledged))
      await responder.tellLater(asked, NOTED_BEFORE, handle.how);
  } catch {
    log.error('discord interaction not stored', { interaction: asked.id });
    if (await handle.acknowledged) await responder.tellLater(asked, NOT_STORED, handle.how);
  }
}

async function receivedFrom(
  { places }: Counter,
  asked: Acted,
  what: What,
  audience: Audience,
): Promise<Received | undefined> {
  const who: APIUser | undefined = asked.member?.user ?? asked.user;
  const channel = asked.channel?.id;
  if (!who || channel === undefined) return undefined;
  return {
    key: `${PLATFORM}:${asked.id}`,
    platform: PLATFORM,
    place: await placeOf(places, channel, asked.guild_id),
    account: who.id,
    accountName: nameOfUser(who, asked.member?.nick),
    saidAt: instantOf(asked.id),
    what,
    audience,
  };
}

/** No guild: a direct conversation. */
export async function placeOf(places: Places, channel: string, guild: string | undefined): Promise<Place> {
  if (guild === undefined) return { platform: PLATFORM, space: '', channel, direct: true };
  const parent = (await places.about(channel))?.parent;
  return {
    platform: PLATFORM,
    space: guild,
    channel,
    direct: false,
    ...(parent === undefined ? {} : { parent }),
  };
}

/** A message of Discord as a Received: only what is said to the bot, by a person. */
import { MessageType, type APIMessage, type APIUser } from 'discord.js';
import type { Place, Received, Speaker } from '../../../src/index.ts';
import { PLATFORM } from '../environment.ts';
import { instantOf } from '../snowflake.ts';
import { unmark, type Names } from './unmark.ts';

export interface Us {
  bot: string;
  /** The role that Discord made for the bot: people pick it by mistake. */
  roles: ReadonlySet<string>;
}
export interface Lookup {
  channel(id: string): string | undefined;
  role(id: string): string | undefined;
}
/** What both a delivered and a fetched message have. */
export type Said = Pick<
  APIMessage,
  | 'id' | 'author' | 'content' | 'type' | 'webhook_id' | 'mentions' | 'mention_roles' | 'referenced_message'
  | 'edited_timestamp' | 'channel_id'
> & { member?: { nick?: string | null } }; // prettier-ignore

const SPOKEN: ReadonlySet<MessageType> = new Set([MessageType.Default, MessageType.Reply]);

/** Mentioned, answered, or written to alone. Other messages come without their text and are none of our business. */
export const isForUs = (message: Said, us: Us, direct: boolean): boolean =>
  byAPerson(message) &&
  (direct ||
    message.mentions.some((user) => user.id === us.bot) ||
    message.mention_roles.some((role) => us.roles.has(role)) ||
    message.referenced_message?.author.id === us.bot);

export const byAPerson = (message: Said): boolean =>
  message.author.bot !== true && message.webhook_id === undefined && SPOKEN.has(message.type);

export const nameOfUser = (user: APIUser, nick?: string | null): string =>
  nick ?? user.global_name ?? user.username;

export const namesIn = (message: Pick<Said, 'mentions'>, us: Us, lookup: Lookup): Names => ({
  own: new Set([us.bot, ...us.roles]),
  user: (id) => {
    const user = message.mentions.find((one) => one.id === id);
    return user && nameOfUser(user);
  },
  channel: (id) => lookup.channel(id),
  role: (id) => lookup.role(id),
});

export const speakerOf = (message: Said): Speaker => ({
  account: message.author.id,
  name: nameOfUser(message.author, message.member?.nick),
});

/** A picture alone, or an answer that Discord hands over without its text, says nothing. */
const saysNothing = (message: Said, us: Us): boolean =>
  message.content.trim() === '' && !message.mention_roles.some((role) => us.roles.has(role));

export function receivedMessage(message: Said, place: Place, us: Us, lookup: Lookup): Received | undefined {
  if (!isForUs(message, us, place.direct) || saysNothing(message, us)) return undefined;
  const text = unmark(message.content, namesIn(message, us, lookup), message.id);
  const { account, name } = speakerOf(message);
  return {
    key: `${PLATFORM}:${message.id}`,
    platform: PLATFORM,
    place,
    account,
    accountName: name,
    saidAt: instantOf(message.id),
    what: { kind: 'said', text, message: message.id },
    audience: 'place',
  };
}

/** Only an edit by its author: Discord also tells of previews that were added. */
export function receivedEdit(message: Said, place: Place, us: Us, lookup: Lookup): Received | undefined {
  const edited = message.edited_timestamp;
  const said = edited === null ? undefined : receivedMessage(message, place, us, lookup);
  const editedAt = Date.parse(edited ?? '');
  if (said?.what.kind !== 'said' || Number.isNaN(editedAt)) return undefined;
  return {
    ...said,
    key: `${PLATFORM}:${message.id}:edited:${editedAt}`,
    what: { kind: 'edited', message: message.id, text: said.what.text, editedAt },
  };
}

export const receivedDeletion = (message: string, place: Place, by: Speaker, now: number): Received => ({
  key: `${PLATFORM}:${message}:deleted`,
  platform: PLATFORM,
  place,
  account: by.account,
  accountName: by.name,
  saidAt: now,
  what: { kind: 'deleted', message },
  audience: 'place',
});

/** What Discord sends, with the fields that the documentation names as always there. Times are given, ids follow them. */
import { ID, idAt, type Json } from './fakeDiscord.ts';

export const SAID_AT = Date.parse('2026-03-11T10:00:00Z');

const PEOPLE: Readonly<Record<string, Json>> = {
  [ID.ines]: { id: ID.ines, username: 'ines77', discriminator: '0', global_name: 'Ines', avatar: null },
  [ID.odd]: { id: ID.odd, username: 'odd', discriminator: '0', global_name: 'Odd', avatar: null },
};
export const person = (id: string): Json => PEOPLE[id] ?? {};
const BOT: Json = {
  id: ID.bot,
  username: 'fettle',
  discriminator: '0000',
  global_name: null,
  avatar: null,
  bot: true,
};

/** In the channel, with a mention of the bot, unless `more` says otherwise. */
export const message = (content: string, more: Json = {}, at: number = SAID_AT): Json => ({
  id: idAt(at), channel_id: ID.channel, channel_type: 0, guild_id: ID.guild, author: person(ID.ines), content,
  timestamp: new Date(at).toISOString(), edited_timestamp: null, tts: false, mention_everyone: false,
  mentions: content.includes(`<@${ID.bot}>`) ? [BOT] : [], mention_roles: [], attachments: [], embeds: [], pinned: false,
  type: 0, ...more,
}); // prettier-ignore

export const toBot = (words: string, more: Json = {}, at: number = SAID_AT): Json =>
  message(`<@${ID.bot}> ${words}`, more, at);

/** A direct message: no guild, and `channel_type` 1. */
export const direct = (words: string, more: Json = {}): Json => {
  const { guild_id: _, ...rest } = message(words, { channel_id: ID.direct, channel_type: 1, ...more });
  return rest;
};

const member = (id: string): Json => ({
  user: person(id), roles: [], joined_at: '2025-01-01T00:00:00.000Z', permissions: '0', deaf: false, mute: false, flags: 0,
}); // prettier-ignore

const TOKEN = 'aW50ZXJhY3Rpb246MTIzNDU2Nzg5MDEyMzQ1Njc4OTA';
const interaction = (type: number, data: Json, more: Json = {}, at: number = SAID_AT): Json => {
  const id = idAt(at);
  return {
    id, application_id: ID.application, type, token: `${TOKEN}${id}`, version: 1, guild_id: ID.guild, channel_id: ID.channel,
    channel: { id: ID.channel, type: 0 }, member: member(ID.ines), app_permissions: '0', locale: 'en-GB', entitlements: [],
    authorizing_integration_owners: { 0: ID.guild }, context: 0, attachment_size_limit: 10_485_760, data, ...more,
  }; // prettier-ignore
};

type Words = Readonly<Record<string, string>>;
const optionsOf = (given: Words, focused?: string): Json[] =>
  Object.entries(given).map(([name, value]) => ({
    type: 3,
    name,
    value,
    ...(name === focused ? { focused: true } : {}),
  }));

export const slash = (subcommand: string, given: Words = {}, more: Json = {}): Json =>
  interaction(
    2,
    { id: '600000000000000001', name: 'fettle', type: 1, options: [{ type: 1, name: subcommand, options: optionsOf(given) }] },
    more,
  ); // prettier-ignore

export const typing = (subcommand: string, option: string, typed: string): Json =>
  interaction(4, {
    id: '600000000000000001',
    name: 'fettle',
    type: 1,
    options: [{ type: 1, name: subcommand, options: optionsOf({ [option]: typed }, option) }],
  });

export const logMessage = (target: Json): Json =>
  interaction(2, {
    id: '600000000000000002',
    name: 'Note for the printers',
    type: 3,
    target_id: target['id'],
    resolved: { messages: { [String(target['id'])]: target } },
  });

export const click = (token: string, on: Json, more: Json = {}): Json =>
  interaction(3, { component_type: 2, custom_id: token }, { message: on, ...more });

export const pick = (token: string, on: Json): Json =>
  interaction(3, { component_type: 3, custom_id: 'pick:0', values: [token] }, { message: on });

/** A modal as it comes back: texts, and picked values. */
export const submit = (customId: string, fields: Readonly<Record<string, string | readonly string[]>>, on?: Json): Json =>
  interaction(
    5,
    {
      custom_id: customId,
      components: Object.entries(fields).map(([name, value], place) => ({
        type: 18,
        id: place + 1,
        component:
          typeof value === 'string'
            ? { type: 4, id: place + 10, custom_id: name, value }
            : { type: 3, id: place + 10, custom_id: name, values: value },
      })),
    },
    on ? { message: on } : {},
  ); // prettier-ignore

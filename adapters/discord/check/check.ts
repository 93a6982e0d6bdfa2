/** Looks whether all is ready for `fettle serve`, and says what to mend. Posts nothing. */
import {
  ChannelType,
  Routes,
  type APIApplication,
  type APIChannel,
  type APIGuild,
  type APIGuildMember,
  type APIRole,
  type RESTAPIPartialCurrentUserGuild,
  type REST,
} from 'discord.js';
import { PlatformFault, type CheckLine, type PlatformTools } from '../../../src/index.ts';
import { COMMAND, commandTable } from '../commandTable.ts';
import { readEnvironment, type DiscordEnvironment } from '../environment.ts';
import { closeRest, faultWord, openRest } from '../rest.ts';
import { isSnowflake } from '../snowflake.ts';
import { inviteLink, missingOf, permissionsIn, type Standing } from './permissions.ts';

const good = (what: string, text: string): CheckLine => ({ what, ok: true, text });
const bad = (what: string, text: string): CheckLine => ({ what, ok: false, text });

export async function check(
  tools: PlatformTools,
  channels: readonly string[],
): Promise<readonly CheckLine[]> {
  let environment: DiscordEnvironment;
  try {
    environment = readEnvironment(tools.environment);
  } catch (cause) {
    return [bad('environment', cause instanceof PlatformFault ? cause.message : 'cannot be read')];
  }
  const rest = openRest(environment, tools.log);
  const lines: CheckLine[] = [];
  try {
    await look(rest, environment, channels, lines);
  } catch (cause) {
    lines.push(bad('connection', `Discord could not be asked (${faultWord(cause)}). Try again in a minute.`));
  } finally {
    closeRest(rest);
  }
  return lines;
}

async function look(
  rest: REST,
  environment: DiscordEnvironment,
  channels: readonly string[],
  lines: CheckLine[],
): Promise<void> {
  const application = await applicationOf(rest, lines);
  if (!application) return;
  const guild = await guildOf(rest, environment, application.id, lines);
  if (!guild) return;
  lines.push(await commandsLine(rest, application.id, guild.id));
  const bot = application.bot?.id ?? application.id;
  const member = (await rest.get(Routes.guildMember(guild.id, bot))) as APIGuildMember;
  const standing = { guild: guild.id, bot, roles: member.roles };
  const all = (await rest.get(Routes.guildChannels(guild.id))) as APIChannel[];
  for (const named of channels) lines.push(channelLine(named, all, guild.roles, standing));
}

async function applicationOf(rest: REST, lines: CheckLine[]): Promise<APIApplication | undefined> {
  try {
    const application = (await rest.get(Routes.currentApplication())) as APIApplication;
    lines.push(good('token', `belongs to ${application.name}`));
    return application;
  } catch (cause) {
    if (!faultWord(cause).startsWith('401')) throw cause;
    lines.push(
      bad(
        'token',
        'Discord does not accept DISCORD_BOT_TOKEN: make a new one on the page "Bot" ("Reset Token").',
      ),
    );
    return undefined;
  }
}

async function guildOf(
  rest: REST,
  { guild: named }: DiscordEnvironment,
  application: string,
  lines: CheckLine[],
): Promise<APIGuild | undefined> {
  const guilds = (await rest.get(Routes.userGuilds())) as RESTAPIPartialCurrentUserGuild[];
  const candidates = named === undefined ? guilds : guilds.filter(({ id }) => id === named);
  const [only] = candidates;
  if (!only)
    lines.push(
      bad(
        'server',
        `the bot is not in ${named === undefined ? 'any server' : `the server ${named}`}. Invite it: ${inviteLink(application)}`,
      ),
    );
  else if (candidates.length > 1)
    lines.push(
      bad(
        'server',
        `the bot is in ${candidates.length}: set DISCORD_SERVER_ID to one of ${candidates.map((g) => `${g.id} (${g.name})`).join(', ')}.`,
      ),
    );
  else {
    lines.push(good('server', only.name));
    return (await rest.get(Routes.guild(only.id))) as APIGuild;
  }
  return undefined;
}

async function commandsLine(rest: REST, application: string, guild: string): Promise<CheckLine> {
  const answer = await rest.get(Routes.applicationGuildCommands(application, guild)).catch(() => []);
  const registered = new Set((answer as { name: string }[]).map(({ name }) => name));
  return commandTable().every(({ name }) => registered.has(name))
    ? good('commands', `/${COMMAND} is registered`)
    : bad('commands', `/${COMMAND} is not registered: run "fettle register-discord" once.`);
}

function channelLine(
  named: string,
  all: readonly APIChannel[],
  roles: readonly APIRole[],
  standing: Standing,
): CheckLine {
  const wanted = named.replace(/^<#(\d+)>$/u, '$1').replace(/^#/u, '');
  const channel = all.find(({ id, name }) => id === wanted || name?.toLowerCase() === wanted.toLowerCase());
  const what = `channel ${channel?.name === undefined ? named : `#${channel.name}`}`;
  if (!channel)
    return bad(
      what,
      isSnowflake(wanted)
        ? 'there is no such channel in this server, or the bot may not see it: copy its number again ("Copy Channel ID").'
        : 'there is no channel of this name in this server: write it as Discord shows it, or give its number.',
    );
  if (channel.type !== ChannelType.GuildText && channel.type !== ChannelType.GuildAnnouncement)
    return bad(what, 'is not a text channel: the digest needs one.');
  const overwrites = channel.permission_overwrites ?? [];
  const missing = missingOf(permissionsIn(standing, roles, overwrites));
  return missing.length === 0
    ? good(what, 'the bot may read and post')
    : bad(
        what,
        `allow the bot there: ${missing.join(', ')} (Edit Channel, Permissions, add the bot's role).`,
      );
}

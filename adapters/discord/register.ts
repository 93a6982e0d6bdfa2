/** Tells Discord of `/fettle` and the message command, in the one server that is served. */
import { Routes, type APIApplication, type RESTAPIPartialCurrentUserGuild } from 'discord.js';
import { PlatformFault, type PlatformTools } from '../../src/index.ts';
import { inviteLink } from './check/permissions.ts';
import { commandTable } from './commandTable.ts';
import { PLATFORM, readEnvironment } from './environment.ts';
import { closeRest, faultWord, openRest } from './rest.ts';

export interface Registered {
  guild: string;
  commands: readonly string[];
}

/** Puts them in the place of what was registered before. Throws a PlatformFault with one sentence. */
export async function registerCommands(
  tools: Pick<PlatformTools, 'environment' | 'log'>,
): Promise<Registered> {
  const environment = readEnvironment(tools.environment);
  const rest = openRest(environment, tools.log);
  try {
    const application = ((await rest.get(Routes.currentApplication())) as APIApplication).id;
    const guilds = (await rest.get(Routes.userGuilds())) as RESTAPIPartialCurrentUserGuild[];
    const guild = chosen(guilds, environment.guild, application);
    const answer = await rest.put(Routes.applicationGuildCommands(application, guild), {
      body: commandTable(),
    });
    return { guild, commands: (answer as { name: string }[]).map(({ name }) => name) };
  } catch (cause) {
    if (cause instanceof PlatformFault) throw cause;
    throw new PlatformFault(PLATFORM, `The commands could not be registered: ${said(cause)}.`, cause);
  } finally {
    closeRest(rest);
  }
}

const said = (cause: unknown): string => {
  const word = faultWord(cause);
  if (word.startsWith('401')) return 'Discord does not accept DISCORD_BOT_TOKEN';
  if (word.startsWith('403')) return 'the bot was invited without its commands, invite it again';
  return `Discord answered ${word}`;
};

type InGuild = Pick<RESTAPIPartialCurrentUserGuild, 'id' | 'name'>;

function chosen(guilds: readonly InGuild[], named: string | undefined, application: string): string {
  const fault = (text: string): PlatformFault => new PlatformFault(PLATFORM, text);
  if (named !== undefined && guilds.some(({ id }) => id === named)) return named;
  const [only] = guilds;
  if (named === undefined && guilds.length === 1 && only) return only.id;
  if (named === undefined && only)
    throw fault(
      `The bot is in ${guilds.length} servers: set DISCORD_SERVER_ID to one of ${guilds.map((g) => `${g.id} (${g.name})`).join(', ')}.`,
    );
  throw fault(
    `The bot is not in ${named === undefined ? 'any server yet' : `the server ${named}`}. Invite it: ${inviteLink(application)}`,
  );
}

/** Looks whether Slack is set up as it has to be, and says what to mend. Posts nothing. */
import { webApi } from '@slack/bolt';
import { PlatformFault, type CheckLine, type PlatformTools } from '../../src/index.ts';
import { anyChannelId, channelId } from './channels.ts';
import { clientOptions, openClients } from './clients.ts';
import { readEnvironment, type SlackEnvironment } from './environment.ts';
import { HTTP_PATH } from './httpDoor.ts';
import { whoAmI, type Identity } from './identity.ts';
import { SCOPES } from './scopes.ts';
import { sdkLog } from './sdkLog.ts';
import { codeOf, wordOf } from './slackError.ts';

const line = (what: string, ok: boolean, text: string): CheckLine => ({ what: `slack ${what}`, ok, text });

/** `channels`: as the workshop file names them, the digest's first. Never throws. */
export async function check(
  tools: PlatformTools,
  channels: readonly string[],
): Promise<readonly CheckLine[]> {
  try {
    const environment = readEnvironment(tools.environment);
    const { reads } = openClients(environment, sdkLog(tools.log));
    const me = await whoAmI(reads);
    return [
      line(
        'environment',
        true,
        environment.door.kind === 'http' ? 'complete, over HTTP' : 'complete, by Socket Mode',
      ),
      line('token', true, `works in the workspace ${me.teamName}`),
      scopesLine(me),
      await doorLine(environment, tools),
      ...(await Promise.all(channels.map((named) => channelLine(named, reads)))),
    ];
  } catch (fault) {
    return (fault instanceof Error ? fault.message : String(fault))
      .split('\n')
      .map((text) => line(fault instanceof PlatformFault ? 'environment' : 'check', false, text));
  }
}

function scopesLine({ scopes }: Identity): CheckLine {
  const missing = Object.entries(SCOPES).filter(([scope]) => !scopes.includes(scope));
  if (missing.length === 0) return line('scopes', true, 'all there');
  const list = missing.map(([scope, why]) => `${scope} (${why})`).join(', ');
  return line(
    'scopes',
    false,
    `missing: ${list}. Add them under OAuth & Permissions, Bot Token Scopes, then press Reinstall to Workspace`,
  );
}

async function doorLine(environment: SlackEnvironment, { log }: PlatformTools): Promise<CheckLine> {
  const { door } = environment;
  if (door.kind === 'http')
    return line(
      'requests',
      true,
      `will be taken on ${door.host}:${door.port}${HTTP_PATH}; whether Slack reaches it shows when you save the request URL there`,
    );
  try {
    const client = new webApi.WebClient(door.appToken, {
      ...clientOptions(environment),
      logger: sdkLog(log),
    });
    await client.apps.connections.open({});
    return line('app token', true, 'opens Socket Mode');
  } catch (fault) {
    return line(
      'app token',
      false,
      `does not open Socket Mode (${wordOf(fault)}): switch Socket Mode on, and give an app-level token with connections:write`,
    );
  }
}

async function channelLine(named: string, client: webApi.WebClient): Promise<CheckLine> {
  const what = `channel ${named}`;
  try {
    const own = await channelId(named, client);
    const id = own ?? (await anyChannelId(named, client));
    if (id === undefined)
      return line(
        what,
        false,
        'not found: create it, or correct its name in the workshop file; a private one has to invite the bot first',
      );
    const { channel } = await client.conversations.info({ channel: id });
    if (channel?.is_archived === true)
      return line(what, false, 'is archived: unarchive it, or name another in the workshop file');
    return channel?.is_member === true
      ? line(what, true, 'the bot is in it')
      : line(what, false, 'the bot is not in it: write /invite @fettle there');
  } catch (fault) {
    const mend =
      codeOf(fault) === 'channel_not_found'
        ? 'not found: correct it in the workshop file, or write /invite @fettle there'
        : `could not be looked at: ${wordOf(fault)}`;
    return line(what, false, mend);
  }
}

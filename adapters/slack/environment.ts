/** What the environment says about Slack, checked: one clear sentence for each fault. */
import { z } from 'zod';
import { PlatformFault } from '../../src/index.ts';

const SLACK_API = 'https://slack.com/api/';
const LOOPBACK = '127.0.0.1';

export interface SlackEnvironment {
  botToken: string;
  /** Slack's Web API; another only on loopback. */
  apiUrl: string;
  door: SocketDoorway | HttpDoorway;
}
export interface SocketDoorway {
  kind: 'socket';
  appToken: string;
}
export interface HttpDoorway {
  kind: 'http';
  signingSecret: string;
  port: number;
  host: string;
}

const wanted = z.string().trim().min(1).optional().catch(undefined);
const settings = z.object({
  SLACK_BOT_TOKEN: wanted,
  SLACK_APP_TOKEN: wanted,
  SLACK_SIGNING_SECRET: wanted,
  SLACK_PORT: wanted,
  SLACK_HOST: wanted,
  SLACK_API_URL: wanted,
});
type Settings = z.infer<typeof settings>;

const port = z.coerce.number().int().min(1).max(65_535);
const api = z.url({ protocol: /^https?$/u });

/** Throws a PlatformFault with a line for every fault. */
export function readEnvironment(environment: Readonly<Record<string, string | undefined>>): SlackEnvironment {
  const given = settings.parse(environment);
  const faults = [...botTokenFaults(given), ...doorFaults(given), ...apiFaults(given)];
  if (faults.length > 0) throw new PlatformFault('slack', faults.join('\n'));
  return {
    botToken: given.SLACK_BOT_TOKEN ?? '',
    apiUrl: given.SLACK_API_URL ?? SLACK_API,
    door: doorOf(given),
  };
}

const speaksHttp = (given: Settings): boolean =>
  given.SLACK_SIGNING_SECRET !== undefined && given.SLACK_PORT !== undefined;

const doorOf = (given: Settings): SlackEnvironment['door'] =>
  speaksHttp(given)
    ? {
        kind: 'http',
        signingSecret: given.SLACK_SIGNING_SECRET ?? '',
        port: port.parse(given.SLACK_PORT),
        host: given.SLACK_HOST ?? LOOPBACK,
      }
    : { kind: 'socket', appToken: given.SLACK_APP_TOKEN ?? '' };

function botTokenFaults({ SLACK_BOT_TOKEN: token }: Settings): string[] {
  if (token === undefined)
    return [
      'SLACK_BOT_TOKEN is missing: it is the Bot User OAuth Token (xoxb-…) under OAuth & Permissions of the Slack app.',
    ];
  if (token.startsWith('xoxb-')) return [];
  const other = token.startsWith('xapp-') ? ' What stands there is the app-level token.' : '';
  return [`SLACK_BOT_TOKEN must begin with xoxb-: it is the Bot User OAuth Token.${other}`];
}

function doorFaults(given: Settings): string[] {
  if (given.SLACK_PORT !== undefined && given.SLACK_SIGNING_SECRET === undefined)
    return [
      'SLACK_PORT is given without SLACK_SIGNING_SECRET: requests are only taken when their signature can be checked.',
    ];
  if (speaksHttp(given))
    return port.safeParse(given.SLACK_PORT).success
      ? []
      : [`SLACK_PORT must be a port from 1 to 65535, not "${given.SLACK_PORT}".`];
  return appTokenFaults(given);
}

function appTokenFaults({ SLACK_APP_TOKEN: token }: Settings): string[] {
  if (token === undefined)
    return [
      'SLACK_APP_TOKEN is missing: it is the app-level token (xapp-…, scope connections:write) under Basic Information ' +
        'of the Slack app. To receive over HTTP instead, give SLACK_SIGNING_SECRET and SLACK_PORT.',
    ];
  if (token.startsWith('xapp-')) return [];
  const other = token.startsWith('xoxb-') ? ' What stands there is the bot token.' : '';
  return [`SLACK_APP_TOKEN must begin with xapp-: it is the app-level token.${other}`];
}

/** Tokens go there: nothing but Slack itself over TLS, or a server on this very machine. */
function apiFaults({ SLACK_API_URL: url }: Settings): string[] {
  if (url === undefined) return [];
  if (api.safeParse(url).success) {
    const { protocol, hostname } = new URL(url);
    const here = hostname === LOOPBACK || hostname === 'localhost' || hostname === '[::1]';
    if (here || (protocol === 'https:' && (hostname === 'slack.com' || hostname.endsWith('.slack.com'))))
      return [];
  }
  return ['SLACK_API_URL is only for tests: it must be on this machine, or left out.'];
}

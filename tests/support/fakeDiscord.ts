/**
 * A small Discord on loopback: its web interface and its gateway, as far as the adapter needs them. It keeps the
 * messages of its channels, drops a second message with the same enforced nonce, and forgets nonces on request, as
 * the real one does after some minutes.
 */
import { once } from 'node:events';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { WebSocketServer, type WebSocket } from 'ws';

export const ID = {
  application: '100000000000000001',
  bot: '100000000000000001',
  botRole: '110000000000000001',
  guild: '200000000000000001',
  channel: '300000000000000001',
  thread: '310000000000000001',
  direct: '320000000000000001',
  ines: '400000000000000001',
  odd: '400000000000000002',
} as const;

export type Json = Record<string, unknown>;
export interface Call {
  method: string;
  path: string;
  query: URLSearchParams;
  body: Json;
}
export interface Answer {
  status: number;
  body?: Json | readonly Json[];
  headers?: Record<string, string>;
  /** The request is carried out, but the answer is lost. */
  lost?: true;
}
/** Undefined: the usual answer. */
export type Fault = (call: Call) => Answer | undefined;

export interface FakeDiscord {
  api: string;
  calls: Call[];
  /** Gateway operations that the client sent: 1 heartbeat, 2 identify, 6 resume. */
  operations: number[];
  /** What each identification asked to hear, as a sum of bits. */
  intents: number[];
  sockets: () => number;
  /** Messages of a channel, oldest first. */
  messages: (channel: string) => Json[];
  put: (channel: string, message: Json) => void;
  fault: (fault: Fault | undefined) => void;
  forgetNonces: () => void;
  dispatch: (event: string, data: Json) => void;
  raw: (packet: Json) => void;
  dropSockets: () => void;
  posts: (path: RegExp, method?: string) => Call[];
  until: <T>(what: () => T | undefined | false, ms?: number) => Promise<T>;
  close: () => Promise<void>;
}

const BOT_USER = {
  id: ID.bot,
  username: 'fettle',
  discriminator: '0000',
  global_name: null,
  avatar: null,
  bot: true,
};
const ROLES: Json[] = [
  role(ID.guild, '@everyone', '68608', {}),
  role(ID.botRole, 'Fettle', '274877975552', { tags: { bot_id: ID.bot } }),
];
function role(id: string, name: string, permissions: string, more: Json): Json {
  return {
    id, name, permissions, color: 0, colors: { primary_color: 0, secondary_color: null, tertiary_color: null }, hoist: false,
    position: 0, managed: false, mentionable: false, flags: 0, ...more,
  }; // prettier-ignore
}
const CHANNELS: Json[] = [
  { id: ID.channel, guild_id: ID.guild, type: 0, name: 'print-room', position: 0, permission_overwrites: [] },
];
const THREADS: Json[] = [
  {
    id: ID.thread, guild_id: ID.guild, type: 11, name: 'birch', parent_id: ID.channel, owner_id: ID.ines, member_count: 2,
    message_count: 1, thread_metadata: { archived: false, auto_archive_duration: 1440, archive_timestamp: '2026-01-01T00:00:00Z', locked: false },
  },
]; // prettier-ignore
const GUILD: Json = {
  id: ID.guild, name: 'Lantern Street', owner_id: ID.ines, roles: ROLES, emojis: [], members: [], channels: CHANNELS,
  threads: THREADS, presences: [], voice_states: [], stickers: [], stage_instances: [], guild_scheduled_events: [],
  features: [], member_count: 3, unavailable: false,
}; // prettier-ignore

let made = 0n;
/** An id of that moment, each other than the ones before. */
export const idAt = (instant: number): string =>
  String((BigInt(instant - 1_420_070_400_000) << 22n) + (made++ % 4_000_000n));

export async function startFakeDiscord(
  options: { heartbeat?: number; guilds?: readonly Json[]; asleep?: readonly Json[] } = {},
): Promise<FakeDiscord> {
  const guilds = options.guilds ?? [GUILD];
  const { asleep = [] } = options;
  const withLast = (thread: Json): Json => ({ ...thread, last_message_id: messagesOf(String(thread['id'])).at(-1)?.['id'] ?? null }); // prettier-ignore
  const calls: Call[] = [];
  const operations: number[] = [];
  const intents: number[] = [];
  const kept = new Map<string, Json[]>();
  const nonces = new Map<string, Json>();
  const open = new Set<WebSocket>();
  let fault: Fault | undefined;
  let sequence = 0;
  const messagesOf = (channel: string): Json[] => {
    const list = kept.get(channel) ?? [];
    kept.set(channel, list);
    return list;
  };
  const dispatchTo = (socket: WebSocket, event: string, data: Json): void =>
    socket.send(JSON.stringify({ op: 0, t: event, s: (sequence += 1), d: data }));
  const dispatch = (event: string, data: Json): void =>
    open.forEach((socket) => dispatchTo(socket, event, data));

  const posted = (channel: string, body: Json): Json => {
    const nonce = typeof body['nonce'] === 'string' ? body['nonce'] : undefined;
    const before = nonce === undefined ? undefined : nonces.get(nonce);
    if (before) return before;
    const message: Json = {
      ...bare(channel, body), author: BOT_USER, message_reference: body['message_reference'],
    }; // prettier-ignore
    messagesOf(channel).push(message);
    if (nonce !== undefined && body['enforce_nonce'] === true) nonces.set(nonce, message);
    return message;
  };
  const usual = (call: Call): Answer => {
    const { method, path, query, body } = call;
    const [, first = '', id = '', third = '', fourth = ''] = path.split('/');
    switch (`${method} ${path.replace(/\/\d+/gu, '/#').replace(/\/[\w-]{30,}/gu, '/:')}`) {
      case 'GET /gateway/bot':
        return { status: 200, body: { url: socketAddress(), shards: 1, session_start_limit: { total: 1000, remaining: 999, reset_after: 14_400_000, max_concurrency: 1 } } }; // prettier-ignore
      case 'GET /applications/@me':
        return { status: 200, body: { id: ID.application, name: 'Fettle', bot: BOT_USER } };
      case 'GET /users/@me/guilds':
        return { status: 200, body: guilds.map((one) => ({ id: one['id'], name: one['name'] })) };
      case 'GET /guilds/#':
        return { status: 200, body: GUILD };
      case 'GET /guilds/#/channels':
        return { status: 200, body: CHANNELS };
      case 'GET /guilds/#/members/#':
        return { status: 200, body: { user: BOT_USER, roles: [ID.botRole] } };
      case 'GET /guilds/#/threads/active':
        return { status: 200, body: { threads: THREADS.map(withLast), members: [] } };
      case 'GET /channels/#/threads/archived/public':
        return { status: 200, body: { threads: asleep.filter((t) => t['parent_id'] === id).map(withLast), members: [] } }; // prettier-ignore
      case 'GET /applications/#/guilds/#/commands':
        return { status: 200, body: commands };
      case 'PUT /applications/#/guilds/#/commands':
        commands = Array.isArray(body) ? (body as Json[]) : [];
        return { status: 200, body: commands };
      case 'GET /channels/#': {
        const found = [...CHANNELS, ...THREADS, ...asleep].find((one) => one['id'] === id);
        return found ? { status: 200, body: found } : unknown(10_003, 'Unknown Channel');
      }
      case 'POST /users/@me/channels':
        return { status: 200, body: { id: ID.direct, type: 1, recipients: [{ id: body['recipient_id'] }] } };
      case 'POST /channels/#/messages':
        return { status: 200, body: posted(id, body) };
      case 'GET /channels/#/messages': {
        const after = BigInt(query.get('after') ?? '0');
        const later = messagesOf(id).filter((message) => BigInt(String(message['id'])) > after);
        // newest first, as the real one answers; a nonce is not kept
        return { status: 200, body: later.slice(0, Number(query.get('limit') ?? 50)).toReversed() };
      }
      case 'PATCH /channels/#/messages/#': {
        const message = messagesOf(id).find((one) => one['id'] === fourth);
        return message
          ? { status: 200, body: Object.assign(message, body) }
          : unknown(10_008, 'Unknown Message');
      }
      case 'POST /interactions/#/:/callback':
        return { status: 204 };
      case 'PATCH /webhooks/#/:/messages/@original':
        return { status: 200, body: { ...bare(ID.channel, body), author: BOT_USER } };
      case 'POST /webhooks/#/:':
        return { status: 200, body: { ...bare(ID.channel, body), author: BOT_USER } };
      case 'DELETE /webhooks/#/:/messages/@original':
        return { status: 204 };
      default:
        return unknown(0, `${first} ${third}`);
    }
  };
  let commands: Json[] = [];
  const unknown = (code: number, message: string): Answer => ({ status: 404, body: { code, message } });

  const server = createServer((request, response) => void handle(request, response));
  const handle = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    const chunks: Buffer[] = [];
    for await (const chunk of request) chunks.push(chunk as Buffer);
    const text = Buffer.concat(chunks).toString('utf8');
    const url = new URL(request.url ?? '/', 'http://loopback');
    const call: Call = {
      method: request.method ?? '',
      path: url.pathname.replace(/^\/api\/v10/u, ''),
      query: url.searchParams,
      body: text === '' ? {} : (JSON.parse(text) as Json),
    };
    calls.push(call);
    const wrong = fault?.(call);
    if (wrong?.lost) usual(call);
    if (wrong?.lost) return void request.socket.destroy();
    const { status, body, headers } = wrong ?? usual(call);
    // without content the real one names no content type, and the SDK trips over one
    response.writeHead(status, {
      ...(body === undefined ? {} : { 'content-type': 'application/json' }),
      ...headers,
    });
    response.end(body === undefined ? '' : JSON.stringify(body));
  };
  const gateway = new WebSocketServer({ server, path: '/gw' });
  const socketAddress = (): string => {
    const address = server.address();
    return `ws://127.0.0.1:${typeof address === 'object' && address ? address.port : 0}/gw`;
  };
  gateway.on('connection', (socket) => {
    open.add(socket);
    socket.on('close', () => open.delete(socket));
    socket.send(
      JSON.stringify({ op: 10, d: { heartbeat_interval: options.heartbeat ?? 45_000 }, s: null, t: null }),
    );
    socket.on('message', (data: Buffer) => {
      const { op, d } = JSON.parse(data.toString('utf8')) as { op: number; d: { intents?: number } | null };
      operations.push(op);
      if (op === 2) intents.push(d?.intents ?? 0);
      if (op === 1) socket.send(JSON.stringify({ op: 11, d: null, s: null, t: null }));
      if (op === 6) dispatchTo(socket, 'RESUMED', {});
      if (op !== 2) return;
      dispatchTo(socket, 'READY', {
        v: 10, user: BOT_USER, guilds: guilds.map((one) => ({ id: one['id'], unavailable: true })), session_id: 'session',
        resume_gateway_url: socketAddress(), application: { id: ID.application, flags: 0 },
      }); // prettier-ignore
      for (const guild of guilds) dispatchTo(socket, 'GUILD_CREATE', guild);
    });
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  const port = typeof address === 'object' && address ? address.port : 0;

  return {
    api: `http://127.0.0.1:${port}/api`,
    calls,
    operations,
    intents,
    sockets: () => open.size,
    messages: messagesOf,
    put: (channel, message) => void messagesOf(channel).push(message),
    fault: (next) => {
      fault = next;
    },
    forgetNonces: () => nonces.clear(),
    dispatch,
    raw: (packet) => open.forEach((socket) => socket.send(JSON.stringify(packet))),
    dropSockets: () => open.forEach((socket) => socket.terminate()),
    posts: (path, method = 'POST') => calls.filter((call) => call.method === method && path.test(call.path)),
    async until(what, ms = 8000) {
      const end = performance.now() + ms;
      for (;;) {
        const found = what();
        if (found !== undefined && found !== false) return found;
        if (performance.now() > end) throw new Error(`not within ${ms} ms: ${what.toString()}`);
        await new Promise((resolve) => {
          setTimeout(resolve, 5);
        });
      }
    },
    async close() {
      open.forEach((socket) => socket.terminate());
      gateway.close();
      server.closeAllConnections();
      await new Promise((resolve) => {
        server.close(resolve);
      });
    },
  };
}

const bare = (channel: string, body: Json): Json => ({
  id: idAt(Date.now()), channel_id: channel, content: '', timestamp: new Date().toISOString(), edited_timestamp: null,
  tts: false, mention_everyone: false, mentions: [], mention_roles: [], attachments: [], embeds: [], pinned: false, type: 0,
  flags: body['flags'] ?? 0, components: body['components'] ?? [],
}); // prettier-ignore

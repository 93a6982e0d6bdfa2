/**
 * One socket to Slack. The SDK's client speaks on it, but does not decide when to leave: it would close first and wait
 * five seconds before it opens the next one, and what is clicked in between is lost. It also falls over an envelope
 * that holds no event.
 */
import { subscribe, unsubscribe } from 'node:diagnostics_channel';
import { SocketModeReceiver, type Logger, type webApi } from '@slack/bolt';

/** Slack says hello at once, or something is wrong. */
const HELLO_WITHIN_MS = 10_000;
const GOODBYE_WITHIN_MS = 2_000;
const HEARTBEATS = ['undici:websocket:ping', 'undici:websocket:pong'] as const;

export interface Envelope {
  body: Record<string, unknown>;
  ack: (response?: unknown) => Promise<void>;
  retry_num?: number;
  retry_reason?: string;
}
export interface LineEvents {
  envelope(envelope: Envelope): void;
  /** How many sockets this app has open, with those of other processes. */
  hello(connections: number): void;
  heartbeat(): void;
  /** Slack asks to come in on another socket; this one still works for some seconds. */
  leaving(reason: string): void;
  closed(): void;
}
export interface Line {
  /** Resolves after Slack's hello. */
  open(): Promise<void>;
  close(): Promise<void>;
}
export interface LineOptions {
  appToken: string;
  clientOptions: Omit<webApi.WebClientOptions, 'logger' | 'logLevel'>;
  logger: Logger;
}

export function openLine({ appToken, clientOptions, logger }: LineOptions, events: LineEvents): Line {
  const { client } = new SocketModeReceiver({
    appToken,
    logger,
    autoReconnectEnabled: false,
    installerOptions: { clientOptions: { ...clientOptions } },
  });
  const [sdk] = client.listeners('ws_message');
  client.removeAllListeners('ws_message');
  client.on('ws_message', (data: unknown, isBinary: unknown) => {
    const seen = screened(data, events);
    if (seen !== undefined) sdk?.call(client, seen, isBinary);
  });
  client.on('slack_event', (envelope: Envelope) => {
    if (isRecord(envelope.body)) events.envelope(envelope);
  });
  const stopListening = onHeartbeat(client, events);
  client.on('disconnected', () => {
    stopListening();
    events.closed();
  });
  return {
    open: () => within(HELLO_WITHIN_MS, client.start(), 'Slack said no hello'),
    close: () =>
      within(GOODBYE_WITHIN_MS, client.disconnect(), 'no goodbye').catch(() => {
        // Slack closes its side by itself
      }),
  };
}

interface Parsed {
  type?: unknown;
  num_connections?: unknown;
  reason?: unknown;
  payload?: unknown;
}

/** What the SDK may see of it; undefined: nothing, it was for us. */
function screened(data: unknown, events: LineEvents): unknown {
  const message = parsed(data);
  if (message?.type === 'hello') events.hello(Number(message.num_connections ?? 1));
  if (message?.type === 'disconnect') {
    events.leaving(typeof message.reason === 'string' ? message.reason : 'no reason');
    return undefined;
  }
  const { payload } = message ?? {};
  if (message?.type !== 'events_api' || !isRecord(payload) || isRecord(payload['event'])) return data;
  return JSON.stringify({ ...message, payload: { ...payload, event: { type: String(payload['type']) } } });
}

function parsed(data: unknown): Parsed | undefined {
  if (typeof data !== 'string') return undefined;
  try {
    const value: unknown = JSON.parse(data);
    return isRecord(value) ? value : undefined;
  } catch {
    // the SDK leaves it aside as well
    return undefined;
  }
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Pings and pongs of this socket: undici tells of those of every socket in the process. */
function onHeartbeat(
  client: { on(event: string, listener: (response: { url?: string }) => void): unknown },
  events: LineEvents,
): () => void {
  let address = '';
  client.on('authenticated', ({ url = '' }) => {
    address = URL.canParse(url) ? new URL(url).href : '';
  });
  const listener = (message: unknown): void => {
    if (!isRecord(message)) return;
    const socket = message['websocket'];
    if (typeof socket === 'object' && socket !== null && 'url' in socket && socket.url === address)
      events.heartbeat();
  };
  for (const channel of HEARTBEATS) subscribe(channel, listener);
  return () => {
    for (const channel of HEARTBEATS) unsubscribe(channel, listener);
  };
}

async function within<T>(ms: number, work: Promise<T>, otherwise: string): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error(otherwise)), ms);
  });
  try {
    await Promise.race([work, late]);
  } finally {
    clearTimeout(timer);
  }
}

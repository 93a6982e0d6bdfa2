/**
 * One socket is open, and when Slack asks to change it the next one is open before the old one closes. A socket that
 * drops is replaced at once, then after growing pauses.
 */
import { setTimeout as wait } from 'node:timers/promises';
import type { Log } from '../../src/index.ts';
import { openLine, type Envelope, type Line, type LineEvents, type LineOptions } from './line.ts';
import { wordOf } from './slackError.ts';

const FIRST_PAUSE_MS = 250;
const LONGEST_PAUSE_MS = 30_000;

export interface DoorEvents {
  connected(note: string): void;
  disconnected(note: string): void;
  heartbeat(): void;
}
export interface Lines {
  /** Resolves after Slack's hello. Rejects when Slack gives no address, or does not answer there. */
  connect(): Promise<void>;
  close(): Promise<void>;
}
interface LinesParts {
  options: LineOptions;
  events: DoorEvents;
  log: Log;
  envelope: (envelope: Envelope) => void;
  /** Resolves when nothing that came is unacknowledged. */
  acknowledged: () => Promise<void>;
}
interface At {
  current?: Line;
  replacing: boolean;
  stopping: AbortController;
}

export function openLines(parts: LinesParts): Lines {
  const at: At = { replacing: false, stopping: new AbortController() };
  return {
    connect: () => connect(at, parts),
    async close() {
      at.stopping.abort();
      const last = at.current;
      delete at.current;
      await last?.close();
      parts.events.disconnected('closed');
    },
  };
}

async function connect(at: At, parts: LinesParts): Promise<void> {
  const line = openLine(
    parts.options,
    eventsOf(() => line, at, parts),
  );
  try {
    await line.open();
  } catch (fault) {
    void line.close();
    throw fault;
  }
  if (at.stopping.signal.aborted) return line.close();
  at.current = line;
}

const eventsOf = (line: () => Line, at: At, parts: LinesParts): LineEvents => ({
  envelope: parts.envelope,
  heartbeat: () => parts.events.heartbeat(),
  hello(connections) {
    if (connections > 1) parts.log.info('slack.sockets', { open: connections });
    parts.events.connected(connections > 1 ? `${connections} sockets` : 'connected');
  },
  leaving(reason) {
    parts.log.info('slack.leaving', { reason });
    if (line() === at.current) void replace(reason, at, parts);
  },
  closed() {
    if (line() !== at.current || at.stopping.signal.aborted) return;
    delete at.current;
    parts.events.disconnected('dropped');
    void replace('dropped', at, parts);
  },
});

async function replace(reason: string, at: At, parts: LinesParts): Promise<void> {
  if (at.replacing) return;
  at.replacing = true;
  const old = at.current;
  // one more would be one too many
  if (reason === 'too_many_websockets') {
    delete at.current;
    await old?.close();
  }
  await untilConnected(at, parts);
  at.replacing = false;
  if (!old || old === at.current) return;
  // what came on the old socket is acknowledged on it
  await parts.acknowledged();
  await old.close();
}

async function untilConnected(at: At, parts: LinesParts): Promise<void> {
  const { signal } = at.stopping;
  for (let ms = FIRST_PAUSE_MS; !signal.aborted; ms = Math.min(ms * 2, LONGEST_PAUSE_MS)) {
    try {
      await connect(at, parts);
      return;
    } catch (fault) {
      parts.log.warn('slack.connect', { why: wordOf(fault), nextTryMs: ms });
      // a stop ends the pause
      await wait(ms, undefined, { signal }).catch(() => undefined);
    }
  }
}

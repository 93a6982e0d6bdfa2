/**
 * Socket Mode: one socket is open, and when Slack asks to change it the next one is open before the old one closes.
 * A socket that drops is replaced at once, then after growing pauses.
 */
import type { App, Receiver } from '@slack/bolt';
import type { Log } from '../../src/index.ts';
import { openLine, type Envelope, type Line, type LineEvents, type LineOptions } from './line.ts';
import { wordOf } from './slackError.ts';
import { kindOf } from './storingApp.ts';

const FIRST_PAUSE_MS = 250;
const LONGEST_PAUSE_MS = 30_000;

export interface DoorEvents {
  connected(note: string): void;
  disconnected(note: string): void;
  heartbeat(): void;
}

export function socketDoor(options: LineOptions, events: DoorEvents, log: Log): Receiver {
  let app: App | undefined;
  let current: Line | undefined;
  const stopping = new AbortController();
  let replacing = false;
  let timer: NodeJS.Timeout | undefined;
  let wake: (() => void) | undefined;
  const underWay = new Set<Promise<void>>();

  const take = async ({ body, ack, retry_num, retry_reason }: Envelope): Promise<void> => {
    try {
      await app?.processEvent({
        body,
        ack,
        ...(retry_num === undefined ? {} : { retryNum: retry_num }),
        ...(retry_reason === undefined ? {} : { retryReason: retry_reason }),
      });
    } catch (fault) {
      // not acknowledged: Slack sends events again
      log.error('slack.notTaken', { kind: kindOf(body), why: wordOf(fault) });
    }
  };

  const connect = async (): Promise<void> => {
    const line = openLine(
      options,
      eventsOf(() => line),
    );
    try {
      await line.open();
    } catch (fault) {
      void line.close();
      throw fault;
    }
    if (stopping.signal.aborted) return line.close();
    current = line;
  };

  const eventsOf = (line: () => Line): LineEvents => ({
    envelope: (envelope) => {
      const work = take(envelope).finally(() => underWay.delete(work));
      underWay.add(work);
    },
    heartbeat: () => events.heartbeat(),
    hello: (connections) => {
      if (connections > 1) log.info('slack.sockets', { open: connections });
      events.connected(connections > 1 ? `${connections} sockets` : 'connected');
    },
    leaving: (reason) => {
      log.info('slack.leaving', { reason });
      if (line() === current) void replace(reason);
    },
    closed: () => {
      if (line() !== current || stopping.signal.aborted) return;
      current = undefined;
      events.disconnected('dropped');
      void replace('dropped');
    },
  });

  const pause = (ms: number): Promise<void> =>
    new Promise((resolve) => {
      wake = resolve;
      timer = setTimeout(resolve, ms);
    });

  const replace = async (reason: string): Promise<void> => {
    if (replacing) return;
    replacing = true;
    const old = current;
    // one more would be one too many
    if (reason === 'too_many_websockets') {
      current = undefined;
      await old?.close();
    }
    for (let ms = FIRST_PAUSE_MS; !stopping.signal.aborted; ms = Math.min(ms * 2, LONGEST_PAUSE_MS)) {
      try {
        await connect();
        break;
      } catch (fault) {
        log.warn('slack.connect', { why: wordOf(fault), nextTryMs: ms });
        await pause(ms);
      }
    }
    replacing = false;
    if (!old || old === current) return;
    // what came on the old socket is acknowledged on it
    await Promise.allSettled(underWay);
    await old.close();
  };

  return {
    init(own) {
      app = own;
    },
    start: connect,
    async stop() {
      stopping.abort();
      clearTimeout(timer);
      wake?.();
      const last = current;
      current = undefined;
      await last?.close();
      events.disconnected('closed');
    },
  };
}

/** Socket Mode as a receiver of Bolt: what comes on the open sockets goes to the app, and is acknowledged on its own socket. */
import type { App, Receiver } from '@slack/bolt';
import type { Log } from '../../src/index.ts';
import type { Envelope, LineOptions } from './line.ts';
import { openLines, type DoorEvents } from './lines.ts';
import { wordOf } from './slackError.ts';
import { kindOf } from './storingApp.ts';

export function socketDoor(options: LineOptions, events: DoorEvents, log: Log): Receiver {
  let app: App | undefined;
  const underWay = new Set<Promise<void>>();
  const lines = openLines({
    options,
    events,
    log,
    envelope(envelope) {
      const work = take(app, envelope, log).finally(() => underWay.delete(work));
      underWay.add(work);
    },
    async acknowledged() {
      await Promise.allSettled(underWay);
    },
  });
  return {
    init(own) {
      app = own;
    },
    start: () => lines.connect(),
    stop: () => lines.close(),
  };
}

async function take(
  app: App | undefined,
  { body, ack, retry_num, retry_reason }: Envelope,
  log: Log,
): Promise<void> {
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
}

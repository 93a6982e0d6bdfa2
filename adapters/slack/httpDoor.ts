/** HTTP: Slack calls us. Bolt checks the signature; the answer is sent after what came was stored. */
import { HTTPReceiver, type Logger, type Receiver } from '@slack/bolt';
import type { HttpDoorway } from './environment.ts';
import type { DoorEvents } from './lines.ts';

/** More than any payload of Slack's; a caller without a signature shall not fill the memory. */
const LARGEST_BODY = 1_000_000;
export const HTTP_PATH = '/slack/events';

export function httpDoor(
  { signingSecret, port, host }: HttpDoorway,
  logger: Logger,
  events: DoorEvents,
): Receiver {
  const receiver = new HTTPReceiver({
    signingSecret,
    logger,
    endpoints: [HTTP_PATH],
    processBeforeResponse: true,
    bodyLimit: LARGEST_BODY,
    // a path of somebody else's: nothing of ours, and no word more
    dispatchErrorHandler: ({ response }) => {
      response.writeHead(404);
      response.end();
    },
  });
  let listening = false;
  return {
    init: (app) => receiver.init(app),
    async start() {
      await receiver.start({ port, host });
      listening = true;
      events.connected(`listening on ${host}:${port}`);
    },
    async stop() {
      if (listening) await receiver.stop();
      listening = false;
      events.disconnected('closed');
    },
  };
}

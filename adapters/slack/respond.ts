/** Answers through a response address: to the one who asked, wherever that was. */
import type { Log } from '../../src/index.ts';
import { LIMITS } from './outgoing/limits.ts';
import type { Rendered } from './outgoing/blocks.ts';
import { neverLeft } from './outcome.ts';
import { causeOf } from './slackError.ts';

const TIMEOUT_MS = 10_000;
const SERVER_FAULT = 500;

/** A private message counts in bytes; when its text alone is too long, the blocks still say all of it. */
export function privateText(text: string): string {
  let kept = text;
  while (Buffer.byteLength(kept) > LIMITS.privateBytes) kept = kept.slice(0, Math.floor(kept.length * 0.9));
  return kept.replace(/(?:&[a-z]*|[\ud800-\udbff])$/u, '');
}

/** `refused`: surely not shown, another way has to be found. `unknown`: it may have been. */
export type Responded = 'shown' | 'refused' | 'unknown';

export async function respond(url: string, { text, blocks }: Rendered, log: Log): Promise<Responded> {
  const body = {
    response_type: 'ephemeral',
    replace_original: false,
    text: privateText(text),
    link_names: false,
    parse: 'none',
    mrkdwn: false,
    unfurl_links: false,
    unfurl_media: false,
    ...(blocks.length > 0 ? { blocks } : {}),
  };
  try {
    const answer = await fetch(url, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
      redirect: 'error',
      signal: AbortSignal.timeout(TIMEOUT_MS),
    });
    const said = await answer.text();
    // Slack answers "ok", or JSON that says what is wrong
    if (answer.ok && !said.includes('"ok":false')) return 'shown';
    log.warn('slack.respond', { status: answer.status });
    return answer.status >= SERVER_FAULT ? 'unknown' : 'refused';
  } catch (fault) {
    log.warn('slack.respond', { why: causeOf(fault) });
    return neverLeft(fault) ? 'refused' : 'unknown';
  }
}

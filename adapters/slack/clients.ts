/**
 * Clients of the Web API. Retries are off: a second try of a message that was posted doubles it, and the outbox knows
 * better when to try again. Views have a client of their own, so that nothing that is slow stands before a form whose
 * trigger lives three seconds.
 */
import { webApi, type Logger } from '@slack/bolt';
import type { SlackEnvironment } from './environment.ts';

const TIMEOUT_MS = 10_000;

export interface Clients {
  /** Messages. */
  posts: webApi.WebClient;
  /** Forms and home views. */
  views: webApi.WebClient;
  /** Names, channels, history. */
  reads: webApi.WebClient;
}

export const clientOptions = ({
  apiUrl,
}: SlackEnvironment): Omit<webApi.WebClientOptions, 'logger' | 'logLevel'> => ({
  slackApiUrl: apiUrl,
  retryConfig: { retries: 0 },
  rejectRateLimitedCalls: true,
  timeout: TIMEOUT_MS,
  allowAbsoluteUrls: false,
});

export function openClients(environment: SlackEnvironment, logger: Logger): Clients {
  const client = (): webApi.WebClient =>
    new webApi.WebClient(environment.botToken, { ...clientOptions(environment), logger });
  return { posts: client(), views: client(), reads: client() };
}

/** What stands in a channel and its threads, read with the patience that Slack asks for: some fifty reads a minute. */
import { setTimeout as wait } from 'node:timers/promises';
import { webApi } from '@slack/bolt';

const MOST_WAITS = 5;
const LONGEST_WAIT_MS = 90_000;

type Query<M extends 'history' | 'replies'> = Parameters<webApi.WebClient['conversations'][M]>[0];

export interface History {
  history(query: Query<'history'>): Promise<webApi.ConversationsHistoryResponse>;
  replies(query: Query<'replies'>): Promise<webApi.ConversationsRepliesResponse>;
}

export const openHistory = ({ conversations }: webApi.WebClient): History => ({
  history: (query) => patiently(() => conversations.history(query)),
  replies: (query) => patiently(() => conversations.replies(query)),
});

async function patiently<T>(read: () => Promise<T>): Promise<T> {
  for (let waits = 0; ; waits += 1) {
    try {
      return await read();
    } catch (fault) {
      if (!(fault instanceof webApi.WebAPIRateLimitedError) || waits >= MOST_WAITS) throw fault;
      await wait(Math.min(fault.retryAfter * 1000, LONGEST_WAIT_MS), undefined, { ref: false });
    }
  }
}

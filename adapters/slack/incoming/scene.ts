/** What every translation of an incoming payload needs, and how Slack's own marks become ours. */
import { createHash } from 'node:crypto';
import type { Instant, Place } from '../../../src/index.ts';
import type { Identity } from '../identity.ts';
import type { Names } from '../names.ts';

export interface Scene {
  me: Identity;
  names: Names;
  clock: () => Instant;
}

/** `1700000000.000123` is both a message's id and when it was written, in seconds. */
export const momentOf = (ts: string): Instant => Math.floor(Number(ts) * 1000);

export const placeOf = (space: string, channel: string, direct: boolean, thread?: string): Place => ({
  platform: 'slack',
  space,
  channel,
  direct,
  ...(thread === undefined ? {} : { thread }),
});

/** The conversation of a person with the bot; posting to an account opens it. */
export const placeOfPerson = (space: string, account: string): Place => placeOf(space, account, true);

/** A trigger opens forms while it lives: what is kept of it must not. */
export const keyOfTrigger = (trigger: string): string =>
  `slack:${createHash('sha256').update(trigger).digest('base64url')}`;

/** Direct conversations' ids begin so. */
export const isDirect = (channel: string): boolean => channel.startsWith('D');

/** Identities that come out the same however often they are made, so that nothing is planned twice. */
import { createHash } from 'node:crypto';
import type { Button } from '../replies/reply.ts';
import type { Received } from './platform.ts';

/** 22 characters of A-Z a-z 0-9 - _. */
const short = (...parts: readonly string[]): string =>
  createHash('sha256').update(JSON.stringify(parts)).digest('base64url').slice(0, 22);

/** Of our answer to what was received. */
export const answerId = (key: string): string => short('answer', key);
export const digestId = (platform: string, date: string): string => short('digest', platform, date);

/** What a button carries. `owner`: the post or the view that it stands in. */
export const tokenFor = (owner: string, { label, press }: Button): string =>
  `v1:${short('button', owner, label, JSON.stringify(press))}`;

/** A human message is one message, however it was delivered. */
export const messageKey = (platform: string, channel: string, message: string): string =>
  `${platform}:${channel}:${message}`;

/** By which the bot handles it once. */
export const handledKey = ({ key, platform, place, what }: Received): string =>
  what.kind === 'said' ? messageKey(platform, place.channel, what.message) : key;

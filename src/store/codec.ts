/** The only place where entries and other values become text and come back. */
import type { Entry } from '../maintenance/entry/entry.ts';
import { parse, serialise } from '../maintenance/entry/line.ts';
import { type RawEntry, upcast, VERSIONS } from '../maintenance/entry/upcast.ts';
import { StoreFault } from './fault.ts';

/** Throws StoreFault `unreadable` rather than keep what could not be read again: it would stop every later start. */
export function encodeEntry(entry: Entry): string {
  const json = serialise(entry);
  asUnreadable(() => parse(json));
  return json;
}

/** An entry in its present shape, whatever version was kept. Throws StoreFault `unreadable`. */
export const decodeEntry = (line: string): Entry => asUnreadable(() => entryOf(JSON.parse(line)));

/** Checking the whole shape again would double the time of a replay; it was checked when it was written. */
const entryOf = (value: unknown): Entry => (isPresent(value) ? value : upcast(value));

const present: Readonly<Record<string, number>> = VERSIONS;
function isPresent(value: unknown): value is Entry {
  const { kind, v }: RawEntry = Object(value);
  return typeof kind === 'string' && Object.hasOwn(present, kind) && present[kind] === v;
}

function asUnreadable<T>(read: () => T): T {
  try {
    return read();
  } catch (cause) {
    const sentence = cause instanceof Error ? cause.message : 'An entry of the journal cannot be read.';
    throw new StoreFault('unreadable', sentence, { cause });
  }
}

/** Throws StoreFault `unreadable` for what has no JSON, such as `undefined` or a function. */
export function encodeValue(value: unknown): string {
  const json: string | undefined = JSON.stringify(value);
  if (json === undefined)
    throw new StoreFault('unreadable', 'Only a value that has a JSON form can be kept.');
  return json;
}

/** For rows of traffic: one that cannot be read is null, and its reader leaves it, so that it keeps no other row waiting. */
export function decodeOrNull(json: string): unknown {
  try {
    return decodeValue(json);
  } catch {
    return null;
  }
}

export function decodeValue(json: string): unknown {
  try {
    const value: unknown = JSON.parse(json);
    return value;
  } catch (cause) {
    throw new StoreFault('unreadable', 'The database holds a value that cannot be read.', { cause });
  }
}

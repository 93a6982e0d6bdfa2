/** The only place where entries and other values become text and come back. */
import type { Entry } from '../maintenance/entry/entry.ts';
import { parse, serialise } from '../maintenance/entry/line.ts';
import { StoreFault } from './fault.ts';

/** Throws StoreFault `unreadable` rather than keep what could not be read again: it would stop every later start. */
export function encodeEntry(entry: Entry): string {
  const json = serialise(entry);
  decodeEntry(json);
  return json;
}

/** An entry in its present shape, whatever version was kept. Throws StoreFault `unreadable`. */
export function decodeEntry(json: string): Entry {
  try {
    return parse(json);
  } catch (cause) {
    throw new StoreFault('unreadable', cause instanceof Error ? cause.message : 'An entry cannot be read.', {
      cause,
    });
  }
}

/** Throws StoreFault `unreadable` for what has no JSON, such as `undefined` or a function. */
export function encodeValue(value: unknown): string {
  const json: string | undefined = JSON.stringify(value);
  if (json === undefined)
    throw new StoreFault('unreadable', 'Only a value that has a JSON form can be kept.');
  return json;
}

export function decodeValue(json: string): unknown {
  try {
    const value: unknown = JSON.parse(json);
    return value;
  } catch (cause) {
    throw new StoreFault('unreadable', 'The database holds a value that cannot be read.', { cause });
  }
}

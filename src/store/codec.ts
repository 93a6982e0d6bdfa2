/** The only place where entries and other values become text and come back. */
import type { Entry } from '../maintenance/entry/entry.ts';
import { StoreFault } from './fault.ts';

export const encodeEntry = (entry: Entry): string => JSON.stringify(entry);

/** Throws StoreFault `unreadable`. */
export function decodeEntry(json: string): Entry {
  try {
    const entry: Entry = JSON.parse(json);
    return entry;
  } catch (cause) {
    throw new StoreFault(
      'unreadable',
      `The journal holds an entry that cannot be read: ${json.slice(0, 80)}`,
      {
        cause,
      },
    );
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

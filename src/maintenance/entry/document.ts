/**
 * An entry as people and other programs get it: instants as RFC 3339 in the workshop's zone. Exports are lines of
 * it, and an import reads it back to the very same entry.
 */
import type { LocalCalendar } from '../calendar.ts';
import type { Entry, Instant } from './entry.ts';
import { upcast } from './upcast.ts';

const INSTANTS = ['at', 'saidAt', 'writtenAt'] as const;

/** `by`: the author as it is to be shown; by default the opaque id. */
export function entryDocument(
  entry: Entry,
  calendar: LocalCalendar,
  by: string = entry.by,
): Record<string, unknown> {
  const {
    id,
    v,
    at,
    precision,
    saidAt,
    writtenAt,
    by: _,
    platform,
    message,
    act,
    because,
    ...fields
  } = entry;
  const set =
    'set' in fields && 'at' in fields.set && fields.set.at !== undefined
      ? { set: { ...fields.set, at: calendar.format(fields.set.at) } }
      : {};
  return {
    id,
    v,
    ...fields,
    ...set,
    at: calendar.format(at),
    precision,
    saidAt: calendar.format(saidAt),
    writtenAt: calendar.format(writtenAt),
    by,
    platform,
    message,
    act,
    ...(because === undefined ? {} : { because }),
  };
}

/** Throws with a sentence when it is no entry of a kind and version that this program knows. */
export function entryOfDocument(document: unknown): Entry {
  if (!isObject(document)) throw new Error('not an entry: an object was expected');
  const raw: Record<string, unknown> = { ...document };
  for (const field of INSTANTS) raw[field] = instantOf(raw[field]);
  if (isObject(raw['set']) && 'at' in raw['set'])
    raw['set'] = { ...raw['set'], at: instantOf(raw['set']['at']) };
  return upcast(raw);
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function instantOf(value: unknown): Instant | unknown {
  if (typeof value !== 'string') return value;
  const instant = Date.parse(value);
  return Number.isNaN(instant) ? value : instant;
}

/**
 * An entry as people and other programs get it: instants as RFC 3339 in the workshop's zone. Exports are lines of
 * it, and an import reads it back to the very same entry.
 */
import type { LocalCalendar } from '../calendar.ts';
import type { Entry } from './entry.ts';
import { upcast } from './upcast.ts';

const INSTANTS = ['at', 'saidAt', 'writtenAt'] as const;

/** Fields before the stamp, the stamp's in this order. */
const STAMP = [
  'at',
  'precision',
  'saidAt',
  'writtenAt',
  'by',
  'platform',
  'message',
  'act',
  'because',
] as const;
const LEADING = ['id', 'v', 'kind', 'machine', 'part', 'task', 'symptom'] as const;
const placed: ReadonlySet<string> = new Set([...LEADING, ...STAMP]);

/**
 * The same entry gives the same text, however it was built: what it is about first, its other fields by name, its
 * stamp last. `by`: the author as it is to be shown; by default the opaque id.
 */
export function entryDocument(
  entry: Entry,
  calendar: LocalCalendar,
  by: string = entry.by,
): Record<string, unknown> {
  const raw: Record<string, unknown> = { ...entry, by };
  for (const field of INSTANTS) raw[field] = calendar.format(entry[field]);
  if (entry.kind === 'amended' && entry.set.at !== undefined)
    raw['set'] = { ...entry.set, at: calendar.format(entry.set.at) };
  const others = Object.keys(raw).filter((key) => !placed.has(key));
  const order = [...LEADING, ...others.toSorted(), ...STAMP].filter((key) => raw[key] !== undefined);
  return Object.fromEntries(order.map((key) => [key, inOrder(raw[key])]));
}

/** Nested fields by name. */
function inOrder(value: unknown): unknown {
  if (!isObject(value)) return value;
  const keys = Object.keys(value).toSorted();
  return Object.fromEntries(keys.map((key) => [key, inOrder(value[key])]));
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

function instantOf(value: unknown): unknown {
  if (typeof value !== 'string') return value;
  const instant = Date.parse(value);
  return Number.isNaN(instant) ? value : instant;
}

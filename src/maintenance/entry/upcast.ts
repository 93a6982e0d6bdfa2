/**
 * Stored lines become entries here. An old version is lifted step by step to the present one when it is read
 * and never rewritten. A line that this build cannot understand is a fault: folding the rest without it
 * would give a record that looks whole and is not, so the start stops with a sentence.
 */
import type { Entry, EntryKind } from './entry.ts';
import { schemaOf } from './schema.ts';

/** The version of each kind's shape that this build writes. */
export const VERSIONS: Readonly<Record<EntryKind, number>> = {
  enrolled: 1, changed: 1, retired: 1, usage: 1, meter: 1, loaded: 1, done: 1, swapped: 1, seen: 1, cleared: 1,
  down: 1, up: 1, opened: 1, closed: 1, putOff: 1, claimed: 1, stockMoved: 1, stockCounted: 1, intervalSet: 1,
  stated: 1, noted: 1, handedOver: 1, tookOver: 1, found: 1, released: 1, amended: 1, takenBack: 1,
}; // prettier-ignore

export type RawEntry = Readonly<Record<string, unknown>>;
/** From one version of a kind to the next. `v` is set by the caller. */
export type Upcast = (raw: RawEntry) => RawEntry;
export interface Shapes {
  versions: Readonly<Partial<Record<string, number>>>;
  /** By kind, then by the version that it lifts from. */
  upcasts: Readonly<Partial<Record<string, Readonly<Record<number, Upcast>>>>>;
}

/** All shapes are at their first version so far; a changed shape adds `{ kind: { 1: (raw) => … } }` here. */
export const PRESENT: Shapes = { versions: VERSIONS, upcasts: {} };

/** A line that cannot be read as an entry. `message` is a sentence for the person who starts the program. */
export class UnreadableEntry extends Error {
  override readonly name = 'UnreadableEntry';
}

const isRaw = (value: unknown): value is RawEntry =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Throws UnreadableEntry for an unknown kind, a newer version, or a shape that does not fit. */
export function upcast(value: unknown, shapes: Shapes = PRESENT): Entry {
  if (!isRaw(value)) throw new UnreadableEntry('A line of the journal is not an entry.');
  const { kind, id } = value;
  const who = typeof id === 'string' ? `Entry ${id}` : 'An entry without an id';
  const present = typeof kind === 'string' ? shapes.versions[kind] : undefined;
  const schema = typeof kind === 'string' ? schemaOf(kind) : undefined;
  if (typeof kind !== 'string' || present === undefined || !schema)
    throw new UnreadableEntry(
      `${who} is of the kind "${String(kind)}", which this version of Fettle does not know. ` +
        'It was probably written by a newer one: please update before starting.',
    );
  const parsed = schema.safeParse(lift(value, kind, present, who, shapes));
  if (parsed.success) return parsed.data;
  const issue = parsed.error.issues[0];
  const where = issue && issue.path.length > 0 ? ` at ${issue.path.join('.')}` : '';
  throw new UnreadableEntry(
    `${who} (${kind}) does not have the shape of one${where}: ${issue?.message ?? ''}`,
  );
}

function lift(raw: RawEntry, kind: string, present: number, who: string, shapes: Shapes): RawEntry {
  const version = raw['v'];
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    throw new UnreadableEntry(`${who} (${kind}) does not say of which version it is.`);
  if (version > present)
    throw new UnreadableEntry(
      `${who} (${kind}) is of version ${version}, and this version of Fettle knows ${kind} up to ${present}. ` +
        'Please update before starting.',
    );
  let lifted = raw;
  for (let v = version; v < present; v += 1) {
    const step = shapes.upcasts[kind]?.[v];
    if (!step)
      throw new UnreadableEntry(`${who} (${kind}) is of version ${v}, which cannot be read any more.`);
    lifted = { ...step(lifted), v: v + 1 };
  }
  return lifted;
}

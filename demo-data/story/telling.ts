/** A message of the story, and how messages become entries. */
import { VERSIONS, entryId, newPersonId } from '../../src/index.ts';
import type { Draft, Entry, EntryFields, Instant, Precision } from '../../src/index.ts';

export interface Telling {
  at: Instant;
  precision?: Precision;
  /** Told later than it happened. */
  saidAt?: Instant;
  /** By name. */
  by: string;
  facts: readonly (EntryFields | Draft)[];
  /** A later message corrects the first fact of this one by this name. */
  name?: string;
  /** The name of an earlier message, and what is said of its first fact. */
  corrects?: { name: string; say: (target: string) => EntryFields };
}

/** In the order of saying, each message with a key of its own and each fact with its place in it. */
export function entriesOf(tellings: readonly Telling[]): Entry[] {
  const said = tellings.toSorted((a, b) => (a.saidAt ?? a.at) - (b.saidAt ?? b.at));
  const targets = new Map<string, string>();
  return said.flatMap((telling, index) => {
    const key = `demo:${index + 1}`;
    if (telling.name !== undefined) targets.set(telling.name, entryId(key, 0, 0));
    return stamped(telling, key, targets);
  });
}

const ids = new Map<string, string>();
/** Four people tell three thousand messages. */
function idOf(name: string): string {
  const id = ids.get(name) ?? newPersonId(name);
  ids.set(name, id);
  return id;
}

function stamped(telling: Telling, message: string, targets: ReadonlyMap<string, string>): Entry[] {
  const { at, precision = 'instant' } = telling;
  const by = idOf(telling.by);
  const saidAt = telling.saidAt ?? at;
  return factsOf(telling, targets).map((fields, act) => ({
    id: entryId(message, act, 0),
    v: VERSIONS[fields.kind],
    at,
    precision,
    saidAt,
    writtenAt: saidAt,
    by,
    platform: 'demo',
    message,
    act,
    ...fields,
  }));
}

function factsOf(
  { facts, corrects }: Telling,
  targets: ReadonlyMap<string, string>,
): readonly (EntryFields | Draft)[] {
  if (!corrects) return facts;
  const target = targets.get(corrects.name);
  if (target === undefined) throw new Error(`the story corrects ${corrects.name} before it is told`);
  return [corrects.say(target), ...facts];
}

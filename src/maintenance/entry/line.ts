/** An entry as one line of JSON: the form of exports. Instants stay milliseconds since 1970-01-01T00:00Z. */
import type { Entry } from './entry.ts';
import { UnreadableEntry, upcast } from './upcast.ts';

export const serialise = (entry: Entry): string => JSON.stringify(entry);

/** Throws UnreadableEntry, with a sentence, for what is no JSON or no entry. */
export function parse(line: string): Entry {
  return upcast(jsonOf(line));
}

function jsonOf(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch (cause) {
    throw new UnreadableEntry(`This line is not JSON: ${line.slice(0, 60)}`, { cause });
  }
}

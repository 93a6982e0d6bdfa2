/** The same thing told twice within two minutes: written, since it may be true, and pointed out. */
import type { Draft, Entry } from '../entry/entry.ts';
import type { DecideContext } from './context.ts';

const WINDOW_MS = 2 * 60_000;

/** The same figure again so soon may be one run that two people told of. */
export const LATELY_MS = 30 * 60_000;

/** An entry of another message, by anybody, with the same fields. */
export function repeatOf(draft: Draft, context: DecideContext, within = WINDOW_MS): Entry | undefined {
  const said = fieldsOf(draft);
  const lately = [...(context.recent ?? []), ...context.lastBatch].filter(
    (entry) => Math.abs(entry.saidAt - context.saidAt) <= within,
  );
  return lately.find(
    (entry) => isOtherMessage(entry, context) && fieldsOf(entry) === said && !wasUndone(entry, lately),
  );
}

const OPPOSITE: Readonly<Partial<Record<Entry['kind'], Entry['kind']>>> = {
  opened: 'closed', closed: 'opened', down: 'up', up: 'down',
}; // prettier-ignore

/** "Open", "closed", "open again" is no repetition. */
const wasUndone = (entry: Entry, lately: readonly Entry[]): boolean =>
  lately.some(
    (other) =>
      other.kind === OPPOSITE[entry.kind] &&
      'machine' in other &&
      'machine' in entry &&
      other.machine === entry.machine &&
      other.saidAt >= entry.saidAt,
  );

/** Without the key of the message in hand, its own moment tells it: two acts of one message share that. */
const isOtherMessage = (entry: Entry, { message, saidAt }: DecideContext): boolean =>
  message === undefined ? entry.saidAt !== saidAt : entry.message !== message;

const STAMP = new Set([
  'id',
  'v',
  'at',
  'precision',
  'saidAt',
  'writtenAt',
  'by',
  'platform',
  'message',
  'act',
  'because',
]);

const fieldsOf = (entry: Draft | Entry): string =>
  JSON.stringify(
    Object.entries(entry)
      .filter(([field]) => !STAMP.has(field))
      .toSorted(([a], [b]) => (a < b ? -1 : 1)),
  );

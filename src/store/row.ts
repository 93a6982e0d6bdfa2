/** An entry as it is kept: its text, and beside it what it is looked up by. */
import type { Entry } from '../maintenance/entry/entry.ts';
import { encodeEntry } from './codec.ts';

export interface EntryRow {
  id: string;
  at: number;
  saidAt: number;
  writtenAt: number;
  kind: string;
  by: string;
  message: string;
  act: number;
  because: string | null;
  /** Its own, or the one that an amendment moves its target to. */
  machine: string | null;
  task: string | null;
  part: string | null;
  /** What it amends or takes back. */
  target: string | null;
  json: string;
}

type Subject = Pick<EntryRow, 'machine' | 'task' | 'part' | 'target'>;

/** What an entry, or an amendment's `set`, speaks of. */
function subjectOf(fields: object): Omit<Subject, 'target'> {
  const { machine, task, part }: { machine?: string; task?: string; part?: string } = fields;
  return { machine: machine ?? null, task: task ?? null, part: part ?? null };
}

function subject(entry: Entry): Subject {
  if (entry.kind === 'amended') return { ...subjectOf(entry.set), target: entry.target };
  if (entry.kind === 'takenBack') return { ...subjectOf(entry), target: entry.target };
  return { ...subjectOf(entry), target: null };
}

/** Throws StoreFault `unreadable` for what is not a whole entry. */
export function rowOf(entry: Entry): EntryRow {
  const { id, at, saidAt, writtenAt, kind, by, message, act, because } = entry;
  const own = { id, at, saidAt, writtenAt, kind, by, message, act, because: because ?? null };
  return { ...own, ...subject(entry), json: encodeEntry(entry) };
}

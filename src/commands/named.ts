/** Rows for a reader outside: people by the names that they are called by here, in lower case like all names. */
import type { Digest } from '../maintenance/due/digest.ts';
import type { DueRow } from '../maintenance/due/row.ts';
import { foldName } from '../maintenance/machine.ts';
import type { Person } from '../store/post.ts';

type Named = <T extends { by: string }>(line: T) => T;

const namesOf = (people: readonly Person[]): Named => {
  const names = new Map(people.map(({ id, name }) => [id, foldName(name)]));
  return (line) => ({ ...line, by: names.get(line.by) ?? line.by });
};

const rowsNamed = (rows: readonly DueRow[], name: Named): DueRow[] =>
  rows.map((row) => (row.putOff ? { ...row, putOff: name(row.putOff) } : row));

export const namedRows = (rows: readonly DueRow[], people: readonly Person[]): DueRow[] =>
  rowsNamed(rows, namesOf(people));

export function namedDigest(digest: Digest, people: readonly Person[]): Digest {
  const name = namesOf(people);
  return {
    ...digest,
    held: digest.held.map(name),
    outOfUse: digest.outOfUse.map(name),
    open: digest.open.map(name),
  };
}

/** The journal's rows in memory, with the indexes that the database has. */
import type { Kept } from '../batches.ts';
import type { EntryRow } from '../row.ts';

export type KeptRow = EntryRow & Kept;

/** Rows by one of their texts, in order of arrival. */
class Index {
  readonly #rows = new Map<string, KeptRow[]>();

  of(key: string): readonly KeptRow[] {
    return this.#rows.get(key) ?? [];
  }

  add(key: string, row: KeptRow): void {
    const rows = this.#rows.get(key);
    if (rows === undefined) this.#rows.set(key, [row]);
    else rows.push(row);
  }

  removeLast(key: string): void {
    this.#rows.get(key)?.pop();
  }
}

const INDEXED = ['machine', 'target', 'message', 'because', 'by'] as const;
type Indexed = (typeof INDEXED)[number];

export class EntryTable {
  readonly rows: KeptRow[] = [];
  readonly #byId = new Map<string, KeptRow>();
  readonly #indexes: Record<Indexed, Index> = {
    machine: new Index(),
    target: new Index(),
    message: new Index(),
    because: new Index(),
    by: new Index(),
  };

  byId(id: string): KeptRow | undefined {
    return this.#byId.get(id);
  }

  where(column: Indexed, value: string): readonly KeptRow[] {
    return this.#indexes[column].of(value);
  }

  add(entry: EntryRow): KeptRow {
    const row = { ...entry, position: this.rows.length + 1 };
    this.rows.push(row);
    this.#byId.set(row.id, row);
    for (const column of INDEXED) {
      const value = row[column];
      if (value !== null) this.#indexes[column].add(value, row);
    }
    return row;
  }

  removeLast(): void {
    const row = this.rows.pop();
    if (row === undefined) return;
    this.#byId.delete(row.id);
    for (const column of INDEXED) {
      const value = row[column];
      if (value !== null) this.#indexes[column].removeLast(value);
    }
  }
}

/** The rows with all that targets them and all that they target, at any depth. */
export function family(table: EntryTable, seeds: readonly KeptRow[]): readonly KeptRow[] {
  const found = new Set(seeds);
  for (const row of found) {
    for (const child of table.where('target', row.id)) found.add(child);
    const parent = row.target === null ? undefined : table.byId(row.target);
    if (parent !== undefined) found.add(parent);
  }
  return [...found].toSorted((a, b) => a.position - b.position);
}

/** The fold's order; ids by their bytes, as the database compares them. */
export const foldOrder = (a: KeptRow, b: KeptRow): number =>
  a.at - b.at || a.saidAt - b.saidAt || a.act - b.act || Buffer.compare(Buffer.from(a.id), Buffer.from(b.id));

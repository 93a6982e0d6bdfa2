/** Where a store comes from. */
import { MemoryStore } from './memory/store.ts';
import { PATIENCE, type Patience } from './sqlite/patience.ts';
import { SqliteStore } from './sqlite/store.ts';
import type { Store } from './store.ts';

/**
 * The database in this file; made when it is not there.
 * Throws StoreFault: `missing-folder`, `cannot-open`, `read-only`, `not-a-database`, `not-ours`, `newer-database`,
 * `damaged`, `busy`.
 */
export async function openSqliteStore(file: string, patience: Patience = PATIENCE): Promise<Store> {
  return SqliteStore.open(file, patience);
}

export async function openMemoryStore(): Promise<Store> {
  return new MemoryStore();
}

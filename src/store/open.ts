/** Where a store comes from. */
import { MemoryStore } from './memory/store.ts';
import type { Store } from './store.ts';

export async function openMemoryStore(): Promise<Store> {
  return new MemoryStore();
}

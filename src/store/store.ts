/** One transaction over the facts and what is not fact. Asynchronous, so that another engine can stand behind it. */
import type { Journal, JournalReader } from './journal.ts';
import type { Post, PostReader } from './post.ts';
import type { Traffic, TrafficReader } from './traffic.ts';

export interface ReadView {
  journal: JournalReader;
  post: PostReader;
  traffic: TrafficReader;
}

export interface Transaction {
  journal: Journal;
  post: Post;
  traffic: Traffic;
}

export interface Store {
  /**
   * One exclusive transaction, across processes: what `work` reads stays true until it has written.
   * Commits once when `work` resolves; when it throws, nothing of it was written and the error goes on.
   * Throws StoreBusy when another process holds the database for too long. Neither `transact` nor `read`
   * may be called inside `work`, nor may the transaction be used after it ended: StoreFault `misused`.
   */
  transact<T>(work: (transaction: Transaction) => Promise<T>): Promise<T>;
  /** One consistent view of what is committed; sees nothing of a transaction that is still open. */
  read<T>(work: (view: ReadView) => Promise<T>): Promise<T>;
  /** Waits for what is under way. Afterwards every use throws StoreFault `closed`. */
  close(): Promise<void>;
}

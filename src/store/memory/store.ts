/** The twin in memory: the same behaviour, gone when the process ends. */
import type { ReadView, Store, Transaction } from '../store.ts';
import { newNesting, type Scope, Turns } from '../turns.ts';
import { EntryTable } from './entries.ts';
import { memoryJournal } from './journal.ts';
import { emptyPost, memoryPost } from './post.ts';
import { emptyTraffic, memoryTraffic } from './traffic.ts';
import { UndoLog } from './undo.ts';

export class MemoryStore implements Store {
  readonly #entries = new EntryTable();
  readonly #post = emptyPost();
  readonly #traffic = emptyTraffic();
  /** Readers wait for a writer as well: there is one copy of everything, and none may see a change half made. */
  readonly #turns = new Turns(newNesting());

  async transact<T>(work: (transaction: Transaction) => Promise<T>): Promise<T> {
    return this.#turns.take(async (scope) => {
      const undo = new UndoLog();
      try {
        return await work(this.#open(undo, scope));
      } catch (fault) {
        undo.rollBack();
        throw fault;
      }
    });
  }

  async read<T>(work: (view: ReadView) => Promise<T>): Promise<T> {
    return this.#turns.take(async (scope) => work(this.#open(new UndoLog(), scope)));
  }

  async close(): Promise<void> {
    await this.#turns.close();
  }

  #open(undo: UndoLog, scope: Scope): Transaction {
    return {
      journal: memoryJournal(this.#entries, undo, scope),
      post: memoryPost(this.#post, undo, scope),
      traffic: memoryTraffic(this.#traffic, undo, scope),
    };
  }
}

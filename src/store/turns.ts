/** One after the other within this process, and never one inside another, which would wait for itself. */
import { AsyncLocalStorage } from 'node:async_hooks';
import { setImmediate as restOfTheLoop } from 'node:timers/promises';
import { StoreFault } from './fault.ts';

/** What a piece of work may use for as long as it is open. */
export interface Scope {
  open: boolean;
}

export function assertOpen(scope: Scope): void {
  if (!scope.open)
    throw new StoreFault('misused', 'This transaction is over: what belongs to it can no longer be used.');
}

/** Shared by all queues of one store. */
export type Nesting = AsyncLocalStorage<Scope>;
export const newNesting = (): Nesting => new AsyncLocalStorage<Scope>();

export class Turns {
  readonly #nesting: Nesting;
  #last: Promise<void> = Promise.resolve();
  #closed = false;

  constructor(nesting: Nesting) {
    this.#nesting = nesting;
  }

  /** `job` gets a scope that closes when it has ended. */
  async take<T>(job: (scope: Scope) => Promise<T>): Promise<T> {
    if (this.#closed) throw new StoreFault('closed', 'The database is closed.');
    this.#assertNotNested();
    const turn = this.#last.then(async () => this.#run(job));
    this.#last = turn.then(
      async () => restOfTheLoop(),
      async () => restOfTheLoop(),
    );
    return turn;
  }

  /** Lets what is under way finish and takes nothing new. */
  async close(): Promise<void> {
    this.#assertNotNested();
    this.#closed = true;
    await this.#last;
  }

  #assertNotNested(): void {
    if (this.#nesting.getStore()?.open === true)
      throw new StoreFault(
        'misused',
        'Inside a transaction no other one can be opened, nor the store be closed: it would wait for itself.',
      );
  }

  async #run<T>(job: (scope: Scope) => Promise<T>): Promise<T> {
    const scope: Scope = { open: true };
    try {
      return await this.#nesting.run(scope, async () => job(scope));
    } finally {
      scope.open = false;
    }
  }
}

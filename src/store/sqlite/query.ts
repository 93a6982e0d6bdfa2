/** A query with the shape of its rows, prepared once for each connection. */
import type Database from 'better-sqlite3';
import { assertOpen, type Scope } from '../turns.ts';
import { guarded } from './faults.ts';

export type Value = string | number | null;
type Statement<R> = Database.Statement<Value[], R>;

/** `R`: a row as the driver gives it, column by column. */
export class Query<R = never> {
  readonly #sql: string;
  /** Preparing each time would cost as much again as a small query. */
  readonly #prepared = new WeakMap<Database.Database, Statement<R>>();

  constructor(sql: string) {
    this.#sql = sql;
  }

  on(driver: Database.Database): Statement<R> {
    const known = this.#prepared.get(driver);
    if (known !== undefined) return known;
    const statement = driver.prepare<Value[], R>(this.#sql);
    this.#prepared.set(driver, statement);
    return statement;
  }
}

/** What one transaction may do with its connection, for as long as its scope is open. Throws StoreFault. */
export class Session {
  readonly #driver: Database.Database;
  readonly #scope: Scope;

  constructor(driver: Database.Database, scope: Scope) {
    this.#driver = driver;
    this.#scope = scope;
  }

  /** Gives how many rows changed. */
  run(query: Query, ...values: Value[]): number {
    return this.#call(query, (statement) => statement.run(...values).changes);
  }

  get<R>(query: Query<R>, ...values: Value[]): R | undefined {
    return this.#call(query, (statement) => statement.get(...values));
  }

  all<R>(query: Query<R>, ...values: Value[]): readonly R[] {
    return this.#call(query, (statement) => statement.all(...values));
  }

  #call<R, T>(query: Query<R>, call: (statement: Statement<R>) => T): T {
    assertOpen(this.#scope);
    return guarded(() => call(query.on(this.#driver)));
  }
}

/** What makes a transaction in memory undoable: every change leaves how to take it back. */
export class UndoLog {
  readonly #steps: (() => void)[] = [];

  done(takeBack: () => void): void {
    this.#steps.push(takeBack);
  }

  /** Changes one key of a map; `undefined` removes it. */
  put<K, V>(map: Map<K, V>, key: K, value: V | undefined): void {
    const before = map.get(key);
    set(map, key, value);
    this.done(() => set(map, key, before));
  }

  rollBack(): void {
    for (const step of this.#steps.toReversed()) step();
    this.#steps.length = 0;
  }
}

function set<K, V>(map: Map<K, V>, key: K, value: V | undefined): void {
  if (value === undefined) map.delete(key);
  else map.set(key, value);
}

/**
 * What arrives first is stored first, within one channel: looking up a name or a thread may take longer for the first
 * of two messages than for the second, and "undo" must not overtake what it undoes. Storing itself is not waited for, so
 * that a burst can share a commit.
 */
export type InTurn = <T, R>(lane: string, work: Promise<T>, then: (result: T) => Promise<R>) => Promise<R>;

export function openTurns(): InTurn {
  const last = new Map<string, Promise<void>>();
  return async (lane, work, then) => {
    const before = last.get(lane);
    const { promise, resolve } = gate();
    last.set(lane, promise);
    try {
      const result = await work;
      await before;
      const storing = then(result);
      resolve();
      return await storing;
    } finally {
      resolve();
      if (last.get(lane) === promise) last.delete(lane);
    }
  };
}

function gate(): { promise: Promise<void>; resolve: () => void } {
  let resolve = (): void => undefined;
  const promise = new Promise<void>((done) => {
    resolve = done;
  });
  return { promise, resolve };
}

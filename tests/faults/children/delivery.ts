/** One delivered message as the fault tests handle it: once, by its key, with two entries and its answer. */
import type { Store } from '../../../src/store/store.ts';
import { entry, usage } from '../../store/entries.ts';

export type Outcome = 'written' | 'repeated';

/** The second entry notes what the transaction saw before it wrote. */
export async function deliver(store: Store, key: string): Promise<Outcome> {
  return store.transact(async ({ journal, post }) => {
    if ((await post.handled(key)) !== undefined) return 'repeated';
    const before = await journal.position();
    await journal.append([
      usage(before, 'birch', { id: `${key}/0`, message: key, act: 0 }),
      entry(before, { kind: 'noted', text: String(before) }, { id: `${key}/1`, message: key, act: 1 }),
    ]);
    await post.recordHandled(key, { reply: key }, before);
    return 'written';
  });
}

/** The demo in a database: people, workshop and ten months of journal, in one transaction. */
import { foldName } from '../src/index.ts';
import type { Instant, Store } from '../src/index.ts';
import { buildDemo } from './build.ts';

/**
 * @param store an empty one
 * @param now nothing in the demo lies after it
 */
export async function fillWithDemo(store: Store, now: Instant): Promise<void> {
  const { workshop, entries, people } = buildDemo(now);
  await store.transact(async ({ journal, post }) => {
    for (const person of people) await post.savePerson({ ...person, foldedName: foldName(person.name) });
    await post.saveWorkshop(JSON.stringify(workshop), now);
    await journal.append(entries);
  });
}

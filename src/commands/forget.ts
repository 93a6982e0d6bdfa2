/**
 * Said words go, and the answers, posts and buttons that may quote them; the facts in the journal stay, remarks on
 * record among them (notes, findings, reasons): holds were lifted and checks put off on the strength of those.
 */
import { foldName } from '../maintenance/machine.ts';
import type { Transaction } from '../store/store.ts';
import { RequestFault } from './fault.ts';

/** Whose words: all of a person's, by name or by id, or those of one message, by its key. */
export type Whose = { person: string } | { personId: string } | { message: string };

type Stores = Pick<Transaction, 'post' | 'traffic'>;

async function forgetPerson({ post, traffic }: Stores, id: string): Promise<number> {
  for (const key of await post.messagesOf(id)) await traffic.emptyPostsAbout(key);
  return post.deleteWords({ person: id });
}

/** Gives how many messages' words went. Throws RequestFault `unknown-person`. */
export async function forget(stores: Stores, whose: Whose): Promise<number> {
  if ('message' in whose) {
    await stores.traffic.emptyPostsAbout(whose.message);
    return stores.post.deleteWords(whose);
  }
  if ('personId' in whose) return forgetPerson(stores, whose.personId);
  const people = await stores.post.peopleByName(foldName(whose.person));
  if (people.length === 0)
    throw new RequestFault('unknown-person', `There is nobody called "${whose.person}" on record.`);
  let gone = 0;
  for (const { id } of people) gone += await forgetPerson(stores, id);
  return gone;
}

/** Said words go, and the answers that may quote them; the facts in the journal stay. */
import { foldName } from '../maintenance/machine.ts';
import type { Transaction } from '../store/store.ts';
import { RequestFault } from './fault.ts';

/** Whose words: all of a person's, by name, or those of one message, by its key. */
export type Whose = { person: string } | { message: string };

/** Gives how many messages' words went. Throws RequestFault `unknown-person`. */
export async function forget({ post }: Pick<Transaction, 'post'>, whose: Whose): Promise<number> {
  if ('message' in whose) return post.deleteWords(whose);
  const people = await post.peopleByName(foldName(whose.person));
  if (people.length === 0)
    throw new RequestFault('unknown-person', `There is nobody called "${whose.person}" on record.`);
  let gone = 0;
  for (const { id } of people) gone += await post.deleteWords({ person: id });
  return gone;
}

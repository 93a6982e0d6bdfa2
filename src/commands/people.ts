/** Speakers as opaque ids. A name lives beside the journal and may change; the id in the entries stays. */
import { createHash } from 'node:crypto';
import { foldName } from '../maintenance/machine.ts';
import type { Person, Post, PostReader } from '../store/post.ts';
import type { Workshop } from '../workshop.ts';

/**
 * A pseudonym, not a secret: it comes from the name at first sight, so that the same journal read into two
 * databases speaks of the same people. Deleting the name's row leaves entries that name nobody.
 */
export const newPersonId = (name: string): string =>
  `p-${createHash('sha256')
    .update(`fettle person\n${foldName(name)}`)
    .digest('hex')
    .slice(0, 12)}`;

export type Role = 'member' | 'keeper';

export interface AccountHolder {
  platform: string;
  account: string;
  /** As the platform shows it. */
  name: string;
}

/**
 * Who an account is: the person that the workshop file gives it to, or a member of their own. A name on a platform
 * can be chosen freely, so that it lends nobody's entries and nobody's role.
 */
export async function personOfAccount(
  post: Post,
  holder: AccountHolder,
  { people }: Pick<Workshop, 'people'>,
): Promise<{ id: string; name: string; role: Role }> {
  const { platform, account, name } = holder;
  const listed = people.find(({ accounts }) =>
    Object.entries(accounts ?? {}).some(([on, its]) => on === platform && its === account),
  );
  if (listed) return { id: await idOfListed(post, holder, listed), name: listed.name, role: listed.role };
  const linked = await post.personOfAccount(platform, account);
  const id = accountPersonId(platform, account);
  if (linked?.id === id && linked.name === name) return { id, name, role: 'member' };
  await post.savePerson({ id, name, foldedName: foldName(name), role: 'member' });
  await post.linkAccount({ platform, account, person: id });
  return { id, name, role: 'member' };
}

/** Its own person until the workshop file says whose it is. */
const accountPersonId = (platform: string, account: string): string =>
  newPersonId(`${platform} account ${account}`);

/** The person of that name, leaving aside accounts that only call themselves so. */
export async function personNamed(post: PostReader, name: string): Promise<Person | undefined> {
  const known = await post.peopleByName(foldName(name));
  const own = known.find(({ id }) => id === newPersonId(name));
  if (own) return own;
  for (const person of known) {
    const accounts = await post.accountsOf(person.id);
    if (!accounts.some((a) => accountPersonId(a.platform, a.account) === person.id)) return person;
  }
  return undefined;
}

async function idOfListed(
  post: Post,
  { platform, account }: AccountHolder,
  { name, role }: Workshop['people'][number],
): Promise<string> {
  const known = await personNamed(post, name);
  const id = known?.id ?? newPersonId(name);
  if (!known) await post.savePerson({ id, name, foldedName: foldName(name), role });
  const linked = await post.personOfAccount(platform, account);
  if (linked?.id !== id) await post.linkAccount({ platform, account, person: id });
  return id;
}

/** Speakers as opaque ids. A name lives beside the journal and may change; the id in the entries stays. */
import { createHash } from 'node:crypto';
import { foldName } from '../maintenance/machine.ts';

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

/** Own entries only; a keeper may put anybody's right. */
import type { Entry } from '../entry/entry.ts';
import { refused, type Refused } from './decision.ts';
import type { DecideContext } from './context.ts';

export function notYours(entries: readonly Entry[], context: DecideContext): Refused | undefined {
  const others = context.role === 'keeper' ? [] : entries.filter((entry) => entry.by !== context.by);
  const [first] = others;
  return (
    first &&
    refused('not-yours', { by: first.by, entries: others.map((entry) => entry.id), kind: first.kind })
  );
}

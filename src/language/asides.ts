/**
 * Stage 5c. What only says when or beside what something was done ("while the coffee was brewing", "before I even
 * unlocked the front door") is set aside, so that its words shut no gate and are taken for no deed.
 */
import { hasTag, isFn, isVerb, type Item } from './item.ts';

const OPENS = /^(?:while|whilst|before)$/u;
const ENDS = /^(?:[.,!?;:\n()=|-]|\.\.\.|and|but|so|then)$/u;
const LONGEST = 9;

/** Where an aside that begins there ends; nothing in it may be of a printer, or be a deed that could be told. */
function endOf(items: readonly Item[], at: number): number | undefined {
  if (!OPENS.test(items[at]?.text ?? '')) return undefined;
  if (!isFn(items[at + 1], 'article', 'i', 'we', 'my', 'they', 'someone', 'nobody')) return undefined;
  let end = at + 1;
  while (end < items.length && !ENDS.test(items[end]?.text ?? '')) end += 1;
  const aside = items.slice(at + 1, end);
  const told = aside.some((item) => /^(?:was|were|had|been)$|\p{L}{2,}ed$/u.test(item.text));
  return aside.length <= LONGEST && told && aside.every(isIdle) ? end : undefined;
}
const isIdle = (item: Item): boolean =>
  !hasTag(item, 'machine', 'stranger', 'value', 'symptom', 'complaint', 'material', 'state', 'person') &&
  (!hasTag(item, 'verb') || isVerb(item, 'take', 'find', 'make', 'get', 'say'));

export function withoutAsides(items: readonly Item[]): readonly Item[] {
  if (!items.some((item) => OPENS.test(item.text))) return items;
  const out: Item[] = [];
  // Only beside something that was told of a machine.
  let told = false;
  for (let at = 0; at < items.length; at += 1) {
    const end = told ? endOf(items, at) : undefined;
    if (end !== undefined) at = end;
    const item = items[at];
    told ||= hasTag(item, 'machine') || isFn(item, 'all');
    if (item !== undefined) out.push(item);
  }
  return out;
}

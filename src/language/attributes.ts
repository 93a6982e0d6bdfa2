/** Words right before a noun, or after "the old one", say what the thing was like and nothing of the machine. */
import { asSense, hasTag, isFn, type Item, sense, withSenses } from './item.ts';
import { lexicon } from './lexicon.ts';

/** "bust thermistor", "the old one is broken": neither a bust that is printed nor a machine out of use. */
export function settleAttributes(items: readonly Item[]): Item[] {
  return items.map((item, at) => {
    if (!hasTag(item, 'state', 'thing')) return item;
    const next = items[at + 1];
    const old = isFn(items[at - 1], 'old') || (isFn(items[at - 1], 'be') && isFn(items[at - 2], 'old'));
    if (old && item.text.endsWith('broken')) return withSenses(item, BROKEN);
    // "a 7-hour bust in marble": a head and shoulders
    if (
      /^busts?$/u.test(item.text) &&
      (isFn(items[at - 1], 'article', 'another') || sense(items[at - 1], 'value')?.code === 'hours') &&
      !isFn(items[at - 2], 'be')
    )
      return withSenses(item, ...item.senses.filter((s) => s.tag !== 'state' && s.tag !== 'complaint'));
    if (!hasTag(item, 'complaint') || !(hasTag(next, 'part') || sense(next, 'thing')?.code === 'fan'))
      return item;
    return withSenses(item, ...item.senses.filter((s) => s.tag !== 'state' && s.tag !== 'thing'));
  });
}
const BROKEN = asSense({ tag: 'complaint', code: 'broken' });

const HELPS =
  /^(?:doesn't|does not|don't|do not|didn't|did not|does|did|would|will|won't|can|could|might|may|no longer)$/u;
/** "does not swing any more", "used to drift": a bare verb of trouble behind its auxiliary. */
export function withBareTroubles(items: readonly Item[]): readonly Item[] {
  const { bareTroubles } = lexicon();
  if (!items.some((item) => bareTroubles.has(item.text))) return items;
  return items.map((item, at) => {
    const code = bareTroubles.get(item.text);
    if (code === undefined || hasTag(item, 'complaint', 'symptom')) return item;
    const before = items[at - 1];
    const used = before?.text === 'to' && items[at - 2]?.text === 'used';
    // "the bearings grate"
    const plural =
      hasTag(before, 'part', 'thing') &&
      before?.text.endsWith('s') === true &&
      !hasTag(item, 'part', 'thing');
    return used ||
      plural ||
      HELPS.test(before?.text ?? '') ||
      (before?.text === 'not' && isFn(items[at - 2], 'do'))
      ? withSenses(item, ...item.senses, asSense({ tag: 'complaint', code }))
      : item;
  });
}

/** Words right before a noun, or after "the old one", say what the thing was like and nothing of the machine. */
import { hasTag, isFn, type Item, sense } from './item.ts';

/** "bust thermistor", "the old one is broken": neither a bust that is printed nor a machine out of use. */
export function settleAttributes(items: readonly Item[]): Item[] {
  return items.map((item, at) => {
    if (!hasTag(item, 'state', 'thing')) return item;
    const next = items[at + 1];
    const old = isFn(items[at - 1], 'old') || (isFn(items[at - 1], 'be') && isFn(items[at - 2], 'old'));
    if (old && item.text.endsWith('broken')) return broken(item);
    if (!hasTag(item, 'complaint') || !(hasTag(next, 'part') || sense(next, 'thing')?.code === 'fan'))
      return item;
    return { ...item, senses: item.senses.filter((s) => s.tag !== 'state' && s.tag !== 'thing') };
  });
}
const broken = (item: Item): Item => ({ ...item, senses: [{ tag: 'complaint', code: 'broken' }] });

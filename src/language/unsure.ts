/** "Thursday, I think": a day that its teller is not sure of. */
import type { ActReading } from './act.ts';
import { hasTag, isFn, type Item } from './item.ts';

/** Words of doubt this near to the day are about the day. */
const NEAR = 3;

const doubted = (items: readonly Item[], at: number): boolean =>
  items.some((item, i) => Math.abs(i - at) <= NEAR && i !== at && isDoubt(item));
const isDoubt = (item: Item): boolean =>
  isFn(item, 'maybe', 'unsure', 'later') ||
  /^(?:about|around|roughly|or so|some ?time|ish)$/u.test(item.text);

/** Every dated act of a message in which a word of doubt stands beside a day. */
export function withUnsureDays(readings: readonly ActReading[], items: readonly Item[]): ActReading[] {
  const unsure = items.some((item, at) => hasTag(item, 'date') && doubted(items, at));
  if (!unsure) return [...readings];
  return readings.map((reading) =>
    'on' in reading.act &&
    reading.act.on !== undefined &&
    reading.act.kind !== 'claim' &&
    reading.act.kind !== 'amend'
      ? { ...reading, assumed: { ...reading.assumed, on: { from: 'unsure' } } }
      : reading,
  );
}

/** Lists of the shelf: a head ("Stocktake", "parcel today:") or a first line says for all what each line means. */
import { hasTag, isFn, type Item, sense } from '../../item.ts';
import { type Scene, sceneWith } from '../../scene.ts';
import { type Change, direction, signOf, spares } from './stock.ts';

const HEADS: readonly (readonly [RegExp, Change])[] = [
  [/^(?:stock ?take|stock ?check|stock|inventory|movements?|inventory movements?|stock movements?|shelf|shelf count|spares|spare parts|supplies|count|counted|on the shelf|in the drawer|drawer|cupboard)$/u, 'count'],
  [/^(?:goods in|goods|parcel|delivery|deliveries|arrivals|arrived|came in|post|package)$/u, 'in'],
]; // prettier-ignore
/** A line of a list is short. */
const LONGEST_LINE = 7;

function headOf(scene: Scene): Change | undefined {
  if (scene.items.length > 5 || scene.mood.question || scene.mood.negated) return undefined;
  if (isArrival(scene)) return 'in';
  const words = scene.items.filter((item) => !hasTag(item, 'date') && sense(item, 'value')?.code !== 'clock' && !isFn(item, 'article', 'of', 'just', 'in', 'my', 'on', 'be', 'here', 'have', 'now')); // prettier-ignore
  const opens = words[0] !== undefined && isHeadWord(words[0]) && scene.verbs.every((verb) => !verb.deed);
  if (
    words.length === 0 ||
    !(words.every(isHeadWord) || (opens && scene.items.some((item) => isFn(item, 'with', 'by'))))
  )
    return undefined;
  return HEADS.find(([pattern]) => words.some((item) => pattern.test(item.text)))?.[1];
}
/** "box of goodies came": what came follows. */
const isArrival = (scene: Scene): boolean =>
  scene.items.length <= 5 &&
  spares(scene).length === 0 &&
  scene.verbs.some((verb) => verb.deed && verb.code === 'arrive') &&
  (scene.nouns.some((noun) => noun.code === 'shelf' || noun.code === 'pack') ||
    scene.items.some((item) =>
      /^(?:parcel|delivery|order|box|package|shipment|stuff|goodies|post)$/u.test(item.text),
    )) &&
  !scene.items.some((item) => hasTag(item, 'machine', 'foreign'));
/** "drawer B", "on shelf 2". */
const isWhere = ({ items, nouns, mood }: Scene): boolean =>
  items.length <= 4 &&
  !mood.question &&
  nouns.length === 1 &&
  nouns[0]?.code === 'shelf' &&
  items.every(
    (item) =>
      hasTag(item, 'thing', 'value', 'date') ||
      isFn(item, 'article', 'in', 'on', 'my') ||
      /^[a-z]$|^(?:top|bottom|middle|left|right|upper|lower|red|blue|grey)$/u.test(item.text),
  );
const isHeadWord = (item: Item): boolean => HEADS.some(([pattern]) => pattern.test(item.text));

const isLine = (scene: Scene): boolean =>
  scene.items.length <= LONGEST_LINE &&
  spares(scene).length > 0 &&
  !scene.mood.question &&
  !scene.items.some(
    (item) => hasTag(item, 'machine', 'state', 'symptom') || item.senses.some((s) => s.tag === 'verb' && s.form === 'past' && s.code !== 'arrive'),
  ) &&
  scene.items.some((item) => sense(item, 'value')?.code === 'bare' || sense(item, 'value')?.code === 'other' || isFn(item, 'no', 'nothing') || /^(?:an?|one)$/u.test(item.text)); // prettier-ignore

/** Marks heads and lines; a line after a line goes on with what the first one said. */
export function withListings(scenes: readonly Scene[]): Scene[] {
  let mode: Change | undefined;
  return scenes.map((scene, i) => {
    const head = headOf(scene);
    const next = scenes[i + 1];
    const beyond = scenes[i + 2];
    // "Stocktake, drawer B: 3 thermistors": where it was counted stands between.
    if (head !== undefined && next && beyond && isWhere(next) && isLine(beyond)) {
      mode = head;
      return sceneWith(scene, { listing: 'head' });
    }
    if (mode !== undefined && isWhere(scene) && next && isLine(next))
      return sceneWith(scene, { listing: 'head' });
    if (head !== undefined && next && isLine(next)) {
      mode = head;
      return sceneWith(scene, { listing: 'head' });
    }
    if (!isLine(scene)) {
      mode = undefined;
      return scene;
    }
    const opens = HEADS.find(([pattern]) => pattern.test(scene.items[0]?.text ?? ''))?.[1];
    const own = direction(scene) ?? opens;
    const sign = signOf(scene);
    if (sign !== undefined) return sceneWith(scene, { listing: sign });
    // "delivery: +6 nozzles … and one air can gone"
    if (mode === 'in' && scene.items.some((item) => isFn(item, 'anymore')))
      return sceneWith(scene, { listing: 'out' });
    if (mode !== undefined && (own === undefined || own === mode || scene.verbs.every((verb) => !verb.deed)))
      return sceneWith(scene, { listing: mode });
    mode = own;
    return own === undefined ? scene : sceneWith(scene, { listing: own });
  });
}

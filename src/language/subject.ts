/** What a clause is said of, where that is none of the printers': "the ladder is broken", "the paper printer jams". */
import { hasTag, isFn, isThing, type Item } from './item.ts';
import type { Scene } from './scene.ts';

const unknown = (item: Item | undefined): boolean =>
  item !== undefined &&
  item.senses.every((s) => s.tag === 'foreign' || s.tag === 'human' || s.tag === 'timber') &&
  /^\p{L}{3,}$/u.test(item.text) &&
  !item.text.endsWith('ly');
const predicate = (item: Item): boolean =>
  hasTag(item, 'complaint', 'symptom', 'state') || isFn(item, 'be', 'have', 'not');

/** Names in the clause, or a word that points at one. */
const isNamed = (scene: Scene): boolean =>
  scene.items.some((item) => hasTag(item, 'machine', 'stranger') || isFn(item, 'its'));

/** The last word before what is said: an unknown noun there is another thing. "Thing" and adverbs are not. */
export function otherSubject(scene: Scene): boolean {
  if (isNamed(scene)) return false;
  const at = scene.items.findIndex(predicate);
  const head = scene.items[at - 1];
  if (at < 1 || !unknown(head) || /^(?:thing|bugger|beast|machine|one)$/u.test(head?.text ?? ''))
    return false;
  return !scene.nouns.some((noun) => noun.at < at);
}

const APART = new Set(['old', 'my', 'another', 'other', 'any']);
/** "my printer at home", "the paper printer", "a printer that leaked": a machine, and none of those here. */
export function otherMachine(scene: Scene): boolean {
  if (isNamed(scene)) return false;
  return scene.items.some((item, at) => {
    if (!item.senses.some((s) => s.tag === 'thing' && s.code === 'machine')) return false;
    const before = scene.items[at - 1];
    return (
      (before !== undefined &&
        before.senses.some((s) => s.tag === 'fn' && APART.has(s.code)) &&
        before.text !== 'our') ||
      before?.text === 'a' ||
      before?.text === 'an' ||
      unknown(before) ||
      isThing(before, 'paper') ||
      hasTag(before, 'foreign')
    );
  });
}

/** "the puppet's head": what belongs to another thing is no part of a printer. */
export function otherOwner(scene: Scene): boolean {
  if (isNamed(scene)) return false;
  return scene.items.some(
    (item, at) =>
      isFn(item, 'possessive') &&
      unknown(scene.items[at - 1]) &&
      hasTag(scene.items[at + 1], 'part', 'thing') &&
      at > 0,
  );
}
export const ofAnother = (scene: Scene): boolean =>
  otherSubject(scene) || otherMachine(scene) || otherOwner(scene);

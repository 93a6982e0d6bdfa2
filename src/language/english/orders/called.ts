/** A name that is given: words that no table knows, taken as they were written. */
import { hasTag, isFn, type Item } from '../../item.ts';
import type { OrderCue } from '../../senses.ts';
import { cueIn, type Passage } from './passage.ts';

const QUOTE = /^["'\u201c\u201d\u2018\u2019`]$/u;
const NUMBERED = /^(?:#?\d{1,3}|[ivx]{1,4})$/iu;

/** The word from `from` on, with a number after it ("Willow 2"); no mark and no small word is a name. */
export function nameAt({ scene, message }: Passage, from: number): string | undefined {
  const rest = scene.items.filter((item) => item.from >= from && !QUOTE.test(item.text));
  const first = rest.findIndex((item) => !isLead(item));
  const word = rest[first];
  if (!word || first > 2 || !/[\p{L}\d]/u.test(word.text)) return undefined;
  const second = rest[first + 1];
  const to = second && NUMBERED.test(second.text) ? second.to : word.to;
  return message.slice(word.from, to).trim() || undefined;
}
/** "to", "it", "the": what may stand before the name. */
const isLead = (item: Item): boolean =>
  isFn(item, 'to', 'it', 'article', 'now', 'as') && !hasTag(item, 'machine');

export function namedAfter(passage: Passage, ...cues: readonly OrderCue[]): string | undefined {
  for (const code of cues) {
    const cue = cueIn(passage.scene.items, code);
    const name = cue && nameAt(passage, cue.until);
    if (name !== undefined) return name;
  }
  return undefined;
}

/** What was fitted, as a bag of words: "hardened 0.6" and "0.6 hardened" are the same part. */

/** A shelf has the same few words again and again, at every step of its fold. */
const bags = new Map<string, readonly string[]>();
const MOST_KEPT = 1_000;

/** Sorted, case folded, each once; "0.6mm", "0.6 mm" and "0,6" are one word. */
export function bagOf(text: string): readonly string[] {
  const known = bags.get(text);
  if (known) return known;
  if (bags.size >= MOST_KEPT) bags.clear();
  const bag = readBag(text);
  bags.set(text, bag);
  return bag;
}

function readBag(text: string): readonly string[] {
  const plain = text
    .normalize('NFKC')
    .toLocaleLowerCase('en')
    .replace(/(\d),(\d)/gu, '$1.$2')
    .replace(/(?<!\d)\.(?=\d)/gu, '0.')
    .replace(/(\d)\s*mm\b/gu, '$1');
  const words = plain.match(/\d+(?:\.\d+)?|[\p{L}\d]+/gu) ?? [];
  return [
    ...new Set(words.map((word) => word.replace(/^(\d+\.\d*?)0+$/u, '$1').replace(/\.$/u, ''))),
  ].toSorted();
}

export const sameBag = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((word, i) => word === b[i]);

/** Is every word of `part` in `whole`? "hardened 0.6" is in "hardened steel 0.6". */
export const bagWithin = (part: readonly string[], whole: readonly string[]): boolean =>
  part.every((word) => whole.includes(word));

/** What was fitted, as a bag of words: "hardened 0.6" and "0.6 hardened" are the same part. */

/** Sorted, case folded, each once; "0.6mm", "0.6 mm" and "0,6" are one word. */
export function bagOf(text: string): readonly string[] {
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

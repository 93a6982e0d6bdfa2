/** What people type in Discord, as plain words. */
import { describe, expect, it } from 'vitest';
import { unmark } from '../../../adapters/discord/reading/unmark.ts';
import { snowflakeAt } from '../../../adapters/discord/snowflake.ts';

const SAID = Date.parse('2026-03-11T10:00:00Z');
const names = {
  own: new Set(['100000000000000001', '110000000000000001']),
  user: (id: string) => (id === '400000000000000002' ? 'Odd' : undefined),
  channel: (id: string) => (id === '300000000000000001' ? 'print-room' : undefined),
  role: () => 'Keepers',
};
const unix = (iso: string): number => Date.parse(iso) / 1000;

describe('unmarked', () => {
  it.each([
    ['<@100000000000000001> cleared a jam on birch', 'cleared a jam on birch'],
    ['<@&110000000000000001>, cleared a jam', 'cleared a jam'],
    [
      '<@400000000000000002> swapped the **nozzle** in <#300000000000000001>',
      'Odd swapped the nozzle in #print-room',
    ],
    ['<@!400000000000000009> helped', 'someone helped'],
    ['*oiled* the __rods__ and ||wiped|| _the plate_', 'oiled the rods and wiped the plate'],
    ['nozzle_0_4 at 2*3*4', 'nozzle_0_4 at 2*3*4'],
    ['~~swapped the nozzle~~ cleaned the nozzle', 'cleaned the nozzle'],
    ['> swapped the nozzle on birch?\nno, only cleaned it', 'no, only cleaned it'],
    ['> swapped the nozzle on birch', ''],
    ['ran 6h\n- cleaned the plate\n- oiled the rods', 'ran 6h\ncleaned the plate\noiled the rods'],
    ['`ran 6h` on birch', 'ran 6h on birch'],
    ['```\nran 6h *on* birch\n```', 'ran 6h *on* birch'],
    ['3 \\* 0.4', '3 * 0.4'],
    ['see [the manual](https://a.test/x) and <https://b.test>', 'see the manual and https://b.test'],
    ['ran 6h <:done:123456789012345678> on birch', 'ran 6h on birch'],
    [`jam on birch <t:${unix('2026-03-11T07:00:00Z')}:R>`, 'jam on birch 3 hours ago'],
    [`jam on birch <t:${unix('2026-03-02T12:00:00Z')}:D>`, 'jam on birch 2026-03-02'],
    ['jam <t:999999999999>', 'jam'],
  ])('%s', (typed, words) => expect(unmark(typed, names, snowflakeAt(SAID))).toBe(words));
});

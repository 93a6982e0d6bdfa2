/** Whatever a reply holds, what a person typed cannot steer the terminal. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { render } from '../../../adapters/terminal/render.ts';
import { buttonsOf } from '../../../src/index.ts';
import { anyReply, STEERING } from '../../support/anyReply.ts';

const NASTY = [
  '\u001b[2J', '\u001b]0;title\u0007', '\r', '\u0008\u0008', '\u202egnp.exe', '\u2066\u2069', '\u200f', '\ud83d', '\u{e0041}', '\u{1f527}', '',
]; // prettier-ignore
const { reply } = anyReply(NASTY, '<');
/** Bold on and off: ours. */
const OURS = ['\u001b[1m', '\u001b[22m'] as const;

describe('any reply in a terminal', () => {
  it.each([true, false])('carries no control and no direction characters (in colour: %s)', (colour) => {
    fc.assert(
      fc.property(reply, (r) => {
        const shown = render({ reply: r, question: null }, { colour });
        const own = colour ? OURS : [];
        expect(own.reduce<string>((text, code) => text.replaceAll(code, ''), shown)).not.toMatch(STEERING);
      }),
      { numRuns: 150 },
    );
  });

  it('numbers its buttons in their order', () => {
    fc.assert(
      fc.property(reply, (r) => {
        const shown = render({ reply: r, question: null }, { colour: false });
        const last = buttonsOf(r).length;
        if (last > 0) expect(shown).toContain(`[${last} `);
        expect(shown).not.toContain(`[${last + 1} `);
      }),
      { numRuns: 60 },
    );
  });
});

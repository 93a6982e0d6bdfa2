/**
 * Text that somebody typed, made fit for Discord: it is shown as it was typed, and can neither ping, link, format,
 * nor steer the display.
 */
import type { Line, Span } from '../../../src/index.ts';

// control characters and line separators; what turns the direction of writing; halves of characters; tags
const CONTROL = /[\p{Cc}\u2028\u2029]+/gu;
const STEERING = /[\u061c\u200b\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff\u{e0000}-\u{e007f}]/gu;
const HALF = /\p{Cs}/gu;

/** Without what cannot be seen and can do harm. Plain text, for labels too. */
export const harmless = (text: string): string =>
  text.replace(CONTROL, ' ').replace(STEERING, '').replace(HALF, '\ufffd');

/** With a backslash before all that Discord would take for markup; `@` followed by a space of no width. */
export const escapeText = (text: string): string =>
  harmless(text)
    .replace(/[\\*_~`|<>[\]]/gu, '\\$&')
    // a link, an emoji by name; at the end too, because the next stretch may go on with it
    .replace(/:(?!\s)/gu, '\\:')
    .replace(/@/gu, '@\u200b');

/** Headings, quotes, lists and small print are marked at the start of a line only. */
const escapeLineStart = (line: string): string =>
  line.replace(/^(\s*)([#+-])/u, '$1\\$2').replace(/^(\s*\d+)([.)])/u, '$1\\$2');

const boldOf = (text: string): string => {
  const [, before = '', core = '', after = ''] = /^(\s*)(.*?)(\s*)$/su.exec(escapeText(text)) ?? [];
  return core === '' ? `${before}${after}` : `${before}**${core}**${after}`;
};

/** Two bold stretches side by side would read as one with stars in it. */
const joinBold = (line: Line): Span[] =>
  line.reduce<Span[]>((spans, span) => {
    const last = spans.at(-1);
    if (typeof span === 'string' || typeof last !== 'object') return [...spans, span];
    return [...spans.slice(0, -1), { bold: last.bold + span.bold }];
  }, []);

export const lineMarkdown = (line: Line): string =>
  escapeLineStart(
    joinBold(line.filter((span) => span !== ''))
      .map((span) => (typeof span === 'string' ? escapeText(span) : boldOf(span.bold)))
      .join(''),
  );

/** Neither platform says in which unit it counts: the larger of UTF-16 units and bytes is safe in both. */
export const size = (text: string): number => Buffer.byteLength(text, 'utf8');

/** The line, or as much of its text as stays within `most` bytes after escaping, and an ellipsis. */
export function fitLine(line: Line, most: number): string {
  const whole = lineMarkdown(line);
  if (size(whole) <= most) return whole;
  const letters = Array.from(line.map((span) => (typeof span === 'string' ? span : span.bold)).join(''));
  let fits = 0;
  for (let step = letters.length; step > 0; step = step > 1 ? Math.ceil(step / 2) : 0) {
    while (fits + step <= letters.length && size(shortened(letters, fits + step)) <= most) fits += step;
  }
  return shortened(letters, fits);
}

const shortened = (letters: readonly string[], count: number): string =>
  lineMarkdown([`${letters.slice(0, count).join('')}…`]);

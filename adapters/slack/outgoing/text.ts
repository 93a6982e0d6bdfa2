/** Text made fit for Slack: harmless, and within a length. Lengths are UTF-16 units, the larger way to count. */
const LINE_BREAKS = /[\n\r\t\u0085\u2028\u2029]+/gu;
/** Control characters, marks that turn the direction of reading, halves of a character, tags that nobody sees. */
const UNFIT = /[\p{Cc}\p{Cs}\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\u{e0000}-\u{e007f}]/gu;
const ZERO_WIDTH = '\u200b';

/** One line, and nothing in it that steers how it is shown. */
export const harmless = (text: string): string =>
  text.replaceAll(LINE_BREAKS, ' ').replaceAll(UNFIT, '\ufffd');

/** Line breaks stay. */
export const harmlessLines = (text: string): string => text.split(/\r?\n/u).map(harmless).join('\n');

/** Never ends in half a character. */
export function cut(text: string, most: number): string {
  if (text.length <= most) return text;
  const kept = text.slice(0, Math.max(0, most - 1));
  return `${/[\ud800-\udbff]$/u.test(kept) ? kept.slice(0, -1) : kept}…`;
}

/** For the notification text, which Slack reads as markup: nothing in it can ping, link or format. */
export const escaped = (text: string): string =>
  text
    .replaceAll(/[*_~`]/gu, (mark) => `${ZERO_WIDTH}${mark}${ZERO_WIDTH}`)
    .replaceAll(/^>/gmu, `${ZERO_WIDTH}>`)
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;');

/** Cut so that it fits when it is escaped. */
export function escapedWithin(text: string, most: number): string {
  const whole = escaped(text);
  if (whole.length <= most) return whole;
  let [low, high] = [0, text.length];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (escaped(cut(text, middle)).length <= most) low = middle;
    else high = middle - 1;
  }
  return escaped(cut(text, low));
}

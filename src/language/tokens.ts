/** Stage 2. Words, numbers and marks, each with its place in the message as it was sent. */
import { HEARD, SCOTS } from './english/words/respelled.ts';
import type { PlainText } from './normalise.ts';

export interface Token {
  readonly kind: 'word' | 'number' | 'mark';
  /** Folded: lower case, composed. */
  readonly text: string;
  readonly from: number;
  readonly to: number;
  readonly gap: boolean;
}

const WORD = /[\p{L}\p{M}][\p{L}\p{M}\d]*(?:'[\p{L}]+)?/uy;
/** 6.5 / 6,5 / 2,350 / .5; a dot or comma counts only between digits. */
const NUMBER = /\d+(?:[.,]\d+)*|\.\d+/uy;
const SPACE = /[^\S\n]+/uy;
const DOTS = /\.{2,}|…/uy;
/** Endings that stand for a word of their own: alder's, I'll, we've, ipa'd. */
const CLITIC = /^(.+)'(s|ll|ve|re|m|d)$/u;
const GLUE = new Set(['-', '/', "'"]);

function match(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.test(text) ? text.slice(at, pattern.lastIndex) : undefined;
}

/* Nearly every message is plain ASCII, which needs no pattern; what is not falls back to one. */
const PLAIN = 0x80;
const isDigit = (code: number): boolean => code >= 0x30 && code <= 0x39;
const isLetter = (code: number): boolean => (code >= 0x61 && code <= 0x7a) || (code >= 0x41 && code <= 0x5a);
const isBlank = (code: number): boolean => code === 0x20 || code === 0x09 || (code >= 0x0b && code <= 0x0d);
export const opensWithDigit = (text: string): boolean => isDigit(text.charCodeAt(0));

function spaceAt(text: string, at: number): number {
  let end = at;
  while (isBlank(text.charCodeAt(end))) end += 1;
  if (text.charCodeAt(end) >= PLAIN) return match(SPACE, text, at)?.length ?? 0;
  return end - at;
}
function wordAt(text: string, at: number): string | undefined {
  const first = text.charCodeAt(at);
  if (first < PLAIN && !isLetter(first)) return undefined;
  let end = at;
  while (isLetter(text.charCodeAt(end)) || (end > at && isDigit(text.charCodeAt(end)))) end += 1;
  const next = text.charCodeAt(end);
  return next >= PLAIN || next === APOSTROPHE ? match(WORD, text, at) : text.slice(at, end);
}
const APOSTROPHE = 0x27;
function numberAt(text: string, at: number): string | undefined {
  const code = text.charCodeAt(at);
  return isDigit(code) || code === 0x2e ? match(NUMBER, text, at) : undefined;
}
function dotsAt(text: string, at: number): string | undefined {
  const mark = text.charAt(at);
  return mark === '.' || mark === '…' ? match(DOTS, text, at) : undefined;
}

/** Typed without the apostrophe. */
const BARE_FORMS: Readonly<Record<string, string>> = {
  whats: "what's", hows: "how's", whos: "who's", whens: "when's", wheres: "where's", thats: "that's", theres: "there's", im: "i'm",
  ive: "i've", dont: "don't", doesnt: "doesn't", didnt: "didn't", isnt: "isn't", arent: "aren't", wasnt: "wasn't", werent: "weren't",
  havent: "haven't", hasnt: "hasn't", hadnt: "hadn't", wont: "won't", cant: "can't", couldnt: "couldn't", wouldnt: "wouldn't", shouldnt: "shouldn't",
  youre: "you're", theyre: "they're", theyve: "they've", weve: "we've", youve: "you've", hes: "he's", shes: "she's", youll: "you'll", theyll: "they'll",
}; // prettier-ignore

/** Nothing in it to take apart: what most of the word tables hold. */
export const isPlainWord = (word: string): boolean =>
  /^[a-z]+$/u.test(word) && !Object.hasOwn(BARE_FORMS, word);

const RESPELLED: ReadonlyMap<string, string> = new Map([
  ...Object.entries(SCOTS),
  ...Object.entries(HEARD),
  ...Object.entries(BARE_FORMS),
]);

function words(raw: string, at: number, gap: boolean, plain: PlainText): Token[] {
  const lower = raw.toLowerCase();
  const folded = RESPELLED.get(lower) ?? lower;
  const place = (text: string, start: number, end: number, space: boolean): Token => ({
    kind: 'word',
    text,
    from: plain.origin[start] ?? 0,
    to: plain.origin[end] ?? 0,
    gap: space,
  });
  const clitic = folded.includes("'") ? CLITIC.exec(folded) : null;
  if (!clitic) return [place(folded, at, at + raw.length, gap)];
  const cut = at + Math.min((clitic[1] ?? '').length, raw.length);
  return [place(clitic[1] ?? '', at, cut, gap), place(`'${clitic[2] ?? ''}`, cut, at + raw.length, false)];
}

export function tokenise(plain: PlainText): Token[] {
  const { text, origin } = plain;
  const tokens: Token[] = [];
  let gap = true;
  for (let at = 0; at < text.length;) {
    const space = spaceAt(text, at);
    if (space > 0) {
      gap = true;
      at += space;
      continue;
    }
    const word = wordAt(text, at);
    const number = word === undefined ? numberAt(text, at) : undefined;
    const packed =
      word !== undefined && !gap && tokens.at(-1)?.kind === 'number'
        ? /^(?:h|hr|hrs|m|min)(?=\d)/iu.exec(word)?.[0]
        : undefined;
    if (packed !== undefined) {
      tokens.push(...words(packed, at, gap, plain));
      at += packed.length;
      continue;
    }
    if (word !== undefined) tokens.push(...words(word, at, gap, plain));
    else {
      const mark = number ?? dotsAt(text, at) ?? String.fromCodePoint(text.codePointAt(at) ?? 0xfffd);
      const next = text.charAt(at + mark.length);
      const joins = GLUE.has(mark) && !gap && /[\p{L}\d]/u.test(next) && !betweenDigits(text, at);
      if (!joins && mark !== "'") {
        const kind = number === undefined ? 'mark' : 'number';
        const shown = mark === '…' || mark.startsWith('..') ? '...' : mark;
        tokens.push({ kind, text: shown, from: origin[at] ?? 0, to: origin[at + mark.length] ?? 0, gap });
      } else if (mark === '/') {
        tokens.push({ kind: 'mark', text: '/', from: origin[at] ?? 0, to: origin[at + 1] ?? 0, gap: false });
      }
      at += mark.length;
      gap = mark === '\n';
      continue;
    }
    at += word.length;
    gap = false;
  }
  return tokens;
}

/** "2-3 h" and "11/3" keep their mark; "heat-break" and "oil/grease" do not. */
function betweenDigits(text: string, at: number): boolean {
  return /\d/u.test(text.charAt(at - 1)) && /\d/u.test(text.charAt(at + 1));
}

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
  return pattern.exec(text)?.[0];
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

const respelled = (table: Readonly<Record<string, string>>, word: string): string | undefined =>
  Object.hasOwn(table, word) ? table[word] : undefined;

function words(raw: string, at: number, gap: boolean, plain: PlainText): Token[] {
  const lower = raw.toLowerCase();
  const folded = respelled(BARE_FORMS, lower) ?? respelled(HEARD, lower) ?? respelled(SCOTS, lower) ?? lower;
  const place = (text: string, start: number, end: number, space: boolean): Token => ({
    kind: 'word',
    text,
    from: plain.origin[start] ?? 0,
    to: plain.origin[end] ?? 0,
    gap: space,
  });
  const clitic = CLITIC.exec(folded);
  if (!clitic) return [place(folded, at, at + raw.length, gap)];
  const cut = at + Math.min((clitic[1] ?? '').length, raw.length);
  return [place(clitic[1] ?? '', at, cut, gap), place(`'${clitic[2] ?? ''}`, cut, at + raw.length, false)];
}

export function tokenise(plain: PlainText): Token[] {
  const { text, origin } = plain;
  const tokens: Token[] = [];
  let gap = true;
  for (let at = 0; at < text.length;) {
    const space = match(SPACE, text, at);
    if (space !== undefined) {
      gap = true;
      at += space.length;
      continue;
    }
    const word = match(WORD, text, at);
    const number = word === undefined ? match(NUMBER, text, at) : undefined;
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
      const mark = number ?? match(DOTS, text, at) ?? String.fromCodePoint(text.codePointAt(at) ?? 0xfffd);
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

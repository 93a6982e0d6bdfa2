/**
 * Stage 1. The message as plain text with a map back to what was sent: compatibility forms folded (NFKC),
 * zero-width and direction marks dropped, platform markup read or masked. One pass, bounded look-ahead.
 */
import { readMarkup } from './markup.ts';

export interface PlainText {
  readonly text: string;
  /** For each UTF-16 unit of `text`, and one past its end: the offset in the message as it was sent. */
  readonly origin: readonly number[];
}

/** Stands for masked text: code, quotes, struck-out words. No word of the lexicon holds it. */
export const MASK = '\uFFFC';

/** Zero-width, filling and direction characters: by category, and those letters and marks that only take up room. */
const INVISIBLE = /\p{Cf}|\p{Variation_Selector}|[\u115F\u1160\u3164\uFFA0]|\u034F|\u17B4|\u17B5/u;
const APOSTROPHE = /[\u2018\u2019\u201B\u02BC\u00B4\u2032]/u;
const DASH = /[\u2010-\u2015\u2212]/u;
const DOUBLE_QUOTE = /[\u201C\u201D\u201E\u00AB\u00BB]/u;
const COMBINING = /^\p{M}$/u;
/** No mark that composes comes before it. */
const FIRST_COMBINING = 0x300;
/** Nothing to fold and no markup: most of every message, taken as it stands. */
const AS_IT_STANDS = /[A-Za-z0-9 ,.!?'\n]+/uy;
const FRACTION: Readonly<Record<string, string>> = { '½': '.5', '¼': '.25', '¾': '.75' };

function foldCharacter(char: string): string {
  if (char === '\u2192' || char === '\u27A1') return ' to ';
  if (char < '\u0080') return char;
  if (INVISIBLE.test(char)) return '';
  if (APOSTROPHE.test(char)) return "'";
  if (DASH.test(char)) return ' - ';
  if (DOUBLE_QUOTE.test(char)) return '"';
  const fraction = FRACTION[char];
  if (fraction !== undefined) return fraction;
  if (char === '×') return 'x';
  return char.normalize('NFKC');
}

/** Characters from `at` that compose with what stands there: one base and its combining marks. */
function clusterEnd(sent: string, at: number): number {
  let end = at + ((sent.codePointAt(at) ?? 0) > 0xffff ? 2 : 1);
  while (
    end < sent.length &&
    end - at < 12 &&
    sent.charCodeAt(end) >= FIRST_COMBINING &&
    COMBINING.test(sent.charAt(end))
  )
    end += 1;
  return end;
}

/** Shorthand with a stroke in it, as benches write it. */
const SHORTHAND: readonly (readonly [said: string, meant: string])[] = [
  ['c/o?', 'change?'],
  ['c/o', 'changed out'],
  ['w/o', 'without'],
  ['w/', 'with '],
];

/** The end of what stands there as it is; the last letter is left to a mark, or to a stroke, that follows it. */
function plainEnd(sent: string, at: number): number {
  AS_IT_STANDS.lastIndex = at;
  const end = AS_IT_STANDS.test(sent) ? AS_IT_STANDS.lastIndex : at;
  const goesOn = end < sent.length && (sent.charCodeAt(end) >= FIRST_COMBINING || sent[end] === '/');
  return goesOn ? end - 1 : end;
}

export function normalise(sent: string): PlainText {
  const chunks: string[] = [];
  const origin: number[] = [];
  const put = (piece: string, from: number): void => {
    chunks.push(piece);
    for (let i = 0; i < piece.length; i += 1) origin.push(from);
  };
  const blind = { fence: false, tick: false, strike: false, bar: false, quote: false };
  for (let at = 0; at < sent.length;) {
    const plain = plainEnd(sent, at);
    if (plain > at) {
      chunks.push(sent.slice(at, plain));
      for (; at < plain; at += 1) origin.push(at);
      continue;
    }
    const markup = readMarkup(sent, at, blind);
    if (markup) {
      put(markup.plain, at);
      at = markup.end;
      continue;
    }
    if (sent.startsWith('->', at) || sent.startsWith('=>', at)) {
      put(' to ', at);
      at += 2;
      continue;
    }
    const shorthand = SHORTHAND.find(
      ([said]) =>
        sent.charAt(at + 1) === '/' &&
        sent.slice(at, at + said.length).toLowerCase() === said &&
        !/[a-z]/iu.test(sent.charAt(at - 1)) &&
        !/[a-z]/iu.test(sent.charAt(at + said.length)),
    );
    if (shorthand) {
      put(shorthand[1], at);
      at += shorthand[0].length;
      continue;
    }
    const end = clusterEnd(sent, at);
    const piece = end - at === 1 ? foldCharacter(sent.charAt(at)) : sent.slice(at, end).normalize('NFKC');
    put(piece, at);
    at = end;
  }
  origin.push(sent.length);
  return { text: chunks.join(''), origin };
}

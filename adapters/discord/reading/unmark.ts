/**
 * What a person typed, as plain words for reading: markup undone, people and channels by name. What was struck out
 * or quoted is not said by its writer and is left out, so that nothing is written down from it.
 */
import { instantOf } from '../snowflake.ts';

export interface Names {
  /** The bot's own account and role: a mention of them is an address, not a word. */
  own: ReadonlySet<string>;
  user(id: string): string | undefined;
  channel(id: string): string | undefined;
  role(id: string): string | undefined;
}

/** Escaped characters and code are kept out of the way as characters that nobody types. */
const KEPT = 0xe000;
const keep = (text: string): string =>
  text.replace(/[!-/:-@[-`{-~]/gu, (c) => String.fromCodePoint(KEPT + (c.codePointAt(0) ?? 0)));
const release = (text: string): string =>
  text.replace(/[\ue000-\ue07f]/gu, (c) => String.fromCodePoint((c.codePointAt(0) ?? KEPT) - KEPT));

const CODE = /```(?:[\w+-]+\n)?([\s\S]*?)```|`([^`\n]+)`/gu;
const MENTION = /<(@!|@&|@|#)(\d{15,21})>/gu;
const TIME = /<t:(-?\d{1,12})(?::[tTdDfFsSR])?>/gu;
/** Bold, underlined, hidden: the marks go, the words stay. */
const PAIRS = [/\*\*(?=\S)([\s\S]*?\S)\*\*/gu, /__(?=\S)([\s\S]*?\S)__/gu, /\|\|([\s\S]+?)\|\|/gu] as const;
const SLANTED = [
  /(?<![\w*])\*(?=\S)([^*\n]*?\S)\*(?![\w*])/gu,
  /(?<!\w)_(?=\S)([^_\n]*?\S)_(?!\w)/gu,
] as const;

export function unmark(content: string, names: Names, message: string): string {
  // private-use characters of the writer's own would be taken for kept ones
  const typed = content.replace(/[\ue000-\ue07f]/gu, '');
  const kept = typed
    .replace(/\\([!-/:-@[-`{-~])/gu, (_, c: string) => keep(c))
    .replace(CODE, (_, block: string | undefined, line: string | undefined) => keep(block ?? line ?? ''));
  const named = kept
    .replace(MENTION, (_, mark: string, id: string) => nameOf(mark, id, names))
    .replace(/<a?:\w+:\d+>/gu, ' ')
    .replace(/<\/([^:>]+):\d+>/gu, '/$1')
    .replace(TIME, (_, seconds: string) => timeWords(Number(seconds) * 1000, instantOf(message)))
    .replace(/\[([^\]\n]+)\]\(<?https?:[^)\s]*>?(?: [^)]*)?\)/gu, '$1')
    .replace(/<(https?:[^>\s]+)>/gu, '$1')
    .replace(/~~[\s\S]+?~~/gu, ' ');
  const bare = [...PAIRS, ...SLANTED].reduce((text, pair) => text.replace(pair, '$1'), named);
  return tidy(release(withoutQuotes(bare)));
}

function nameOf(mark: string, id: string, names: Names): string {
  if (names.own.has(id)) return ' ';
  if (mark === '#') return `#${names.channel(id) ?? 'channel'}`;
  return (mark === '@&' ? names.role(id) : names.user(id)) ?? 'someone';
}

const HOUR = 3_600_000;
const CENTURY_MS = 100 * 366 * 24 * HOUR;

/** Without a zone at hand: hours before or after the message while they are few, else the day. */
function timeWords(at: number, said: number): string {
  const hours = Math.round((said - at) / HOUR);
  // no day of any workshop: not said, rather than read as a number
  if (Math.abs(at - said) > CENTURY_MS) return ' ';
  if (hours === 0) return 'just now';
  if (hours > 0 && hours < 24) return `${hours} hour${hours === 1 ? '' : 's'} ago`;
  return new Date(at).toISOString().slice(0, 10);
}

function withoutQuotes(text: string): string {
  const lines = text
    .replace(/^>>> [\s\S]*$/mu, (all) => `> ${all.slice(4).split('\n').join('\n> ')}`)
    .split('\n');
  const own = lines.filter((line) => !/^\s*> /u.test(line));
  const kept = own.some((line) => line.trim() !== '') ? own : [];
  return kept.map((line) => line.replace(/^\s*(?:#{1,3} |-# |[-*•] )/u, '')).join('\n');
}

const tidy = (text: string): string =>
  text
    .replace(/[^\S\n]+/gu, ' ')
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .join('\n')
    // "@fettle, swapped …" and "@fettle: …"
    .replace(/^[,:;–-]\s+/u, '');

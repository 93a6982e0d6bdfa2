/** A reply as a list of blocks with their buttons, made short enough: what is shown, before components. */
import type { Button, Item, Line, Reply, Section } from '../../../src/index.ts';
import { fitLine, lineMarkdown, size } from './escape.ts';
import { MOST_TEXT } from './limits.ts';

export interface Key {
  button: Button;
  token: string;
}
export interface Row {
  text: string;
  keys: readonly Key[];
}
export interface Blocks {
  caution: readonly string[];
  rows: readonly Row[];
  keys: readonly Key[];
}

const SHORTENED = 'Shortened: ask about one machine to see all of it.';
const LONGEST_LINE = 1500;
/** Room for line feeds, list marks and the closing remark. */
const PER_LINE = 4;

interface Part {
  heading?: string;
  run: boolean;
  rows: Row[];
}

/** Buttons get their tokens in the order of `buttonsOf`: those of the items, then those of the reply. */
export function blocksOf(reply: Reply, tokens: readonly string[]): Blocks {
  let next = 0;
  const keysOf = (buttons: readonly Button[] = []): Key[] =>
    buttons.flatMap((button) => {
      const token = tokens[next++];
      return token === undefined ? [] : [{ button, token }];
    });
  const parts = reply.sections.map((section) => partOf(section, keysOf));
  const caution = linesOf(reply.caution ?? []);
  const title = reply.title ? linesOf([reply.title]) : [];
  const left = MOST_TEXT - total([...caution, ...title]) - size(SHORTENED) - PER_LINE;
  const cutShort = shorten(parts, left);
  const rows = [
    ...title.map((text) => ({ text, keys: [] })),
    ...parts.flatMap((part, place) => rowsOf(part, parts[place - 1]?.heading !== undefined)),
    ...(cutShort ? [{ text: SHORTENED, keys: [] }] : []),
  ];
  return { caution, rows, keys: keysOf(reply.buttons) };
}

/** Cautions and titles are ours and short; for any input they leave half of the room to the rest. */
function linesOf(lines: readonly Line[]): string[] {
  let room = MOST_TEXT / 4;
  return lines.flatMap((line) => {
    const text = fitLine(line, Math.min(LONGEST_LINE, room));
    if (text.trim() === '' || size(text) > room) return [];
    room -= size(text) + PER_LINE;
    return [text];
  });
}

function partOf({ heading, items, run }: Section, keysOf: (buttons?: readonly Button[]) => Key[]): Part {
  const row = ({ text, buttons }: Item): Row => ({
    text: fitLine(text, LONGEST_LINE),
    keys: keysOf(buttons),
  });
  const rows = items.map(row).filter(({ text, keys }) => text.trim() !== '' || keys.length > 0);
  const head = heading === undefined ? '' : lineMarkdown([{ bold: heading }]);
  return { ...(head === '' || size(head) > LONGEST_LINE ? {} : { heading: head }), run: run ?? false, rows };
}

const total = (lines: readonly string[]): number =>
  lines.reduce((sum, line) => sum + size(line) + PER_LINE, 0);
const sizeOf = ({ heading = '', rows }: Part): number => total([heading, ...rows.map((row) => row.text)]);

/** Takes the last line of the longest part until all fits: what is said once, such as a caution, stays. */
function shorten(parts: Part[], room: number): boolean {
  const sizes = parts.map(sizeOf);
  let over = sizes.reduce((sum, one) => sum + one, 0) - room;
  const cutShort = over > 0;
  while (over > 0) {
    const longest = sizes.indexOf(Math.max(...sizes));
    const gone = parts[longest]?.rows.pop();
    const less = gone ? size(gone.text) + PER_LINE : (sizes[longest] ?? 0);
    if (!gone) parts[longest] = { run: false, rows: [] };
    sizes[longest] = (sizes[longest] ?? 0) - less;
    over -= less;
    if (less === 0) break;
  }
  return cutShort;
}

/** `afterList`: an empty line keeps what follows a list out of it. */
function rowsOf({ heading, run, rows }: Part, afterList: boolean): Row[] {
  if (rows.length === 0) return [];
  if (run) return [runningLine(heading, rows)];
  if (heading === undefined)
    return rows.map((row, place) => (place === 0 && afterList ? { ...row, text: `\n${row.text}` } : row));
  return [
    { text: `\n${heading}`, keys: [] },
    ...rows.map((row) => (row.text === '' ? row : { ...row, text: `- ${row.text}` })),
  ];
}

const runningLine = (heading: string | undefined, rows: readonly Row[]): Row => ({
  text: `${heading === undefined ? '' : `\n${heading}: `}${rows.map((row) => row.text).join(' · ')}`,
  keys: rows.flatMap((row) => row.keys),
});

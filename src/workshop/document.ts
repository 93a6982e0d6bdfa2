/**
 * Text -> plain data, with the line of everything in it. A workshop file is written by hand, so every fault
 * must name its line; it may also come from anywhere, so size, depth and copies are bounded before they cost.
 */
import { isAlias, isCollection, isMap, isScalar, isSeq, LineCounter, parseDocument } from 'yaml';
import type { Document, Pair, YAMLError, YAMLMap } from 'yaml';
import type { Fault } from './fault.ts';
import { aliasFaults, keyFaults, keyText } from './harm.ts';

/** Where something stands: field names and list positions from the top. */
export type Path = readonly PropertyKey[];

export interface Sheet {
  value: unknown;
  /** The line of the deepest part of the path that is there. */
  lineOf(path: Path): number;
}

const MAX_BYTES = 1_000_000;
/** The schema nests five deep; a parser that follows brackets without end exhausts the process. */
const MAX_BRACKETS = 40;
const PARSER_SAYS: Readonly<Partial<Record<YAMLError['code'], string>>> = {
  BAD_ALIAS: 'an alias (*) here has no name',
  BAD_INDENT:
    'the indentation does not fit, or a bracket is not closed (a text that begins with # needs quotes: "#1")',
  BLOCK_AS_IMPLICIT_KEY: 'two fields on one line; or a text with ": " in it needs quotes',
  MISSING_CHAR: 'a bracket or quote is not closed, or a text that begins with # needs quotes: "#1"',
  MULTIPLE_ANCHORS: 'two anchors (&) on one thing',
  MULTIPLE_DOCS: 'a second document (---) begins here; a workshop file holds one',
  RESOURCE_EXHAUSTION: 'nested too deeply',
  TAB_AS_INDENT: 'a tab is used to indent; use spaces',
  TAG_RESOLVE_FAILED: 'tags (!) are not taken; a text that begins with ! needs quotes',
  UNEXPECTED_TOKEN: 'this does not belong here; a bracket or quote may be missing',
};

/** Found out only on the next line: the fault is where the text before it ended. */
const STARTS_BEFORE: ReadonlySet<string> = new Set(['BAD_INDENT', 'MISSING_CHAR']);

const sizeFault = (text: string): Fault[] =>
  text.length > MAX_BYTES || new TextEncoder().encode(text).length > MAX_BYTES
    ? [{ line: 1, text: 'the file is larger than 1 MB' }]
    : [];

function depthFault(text: string): Fault[] {
  let depth = 0;
  let line = 1;
  for (const character of text) {
    if (character === '\n') line += 1;
    else if (character === '[' || character === '{') depth += 1;
    else if (character === ']' || character === '}') depth -= 1;
    if (depth > MAX_BRACKETS) return [{ line, text: 'nested too deeply' }];
  }
  return [];
}

/** A field left empty says nothing, which is what leaving it out says. */
function withoutEmptyFields(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutEmptyFields);
  if (value === null || typeof value !== 'object') return value;
  const filled = Object.entries(value).filter(([, held]) => held !== null);
  return Object.fromEntries(filled.map(([key, held]) => [key, withoutEmptyFields(held)]));
}

/** The fields of a block by name; a file of many fields is asked for many lines. */
function fieldsOf(map: YAMLMap): ReadonlyMap<string, Pair> {
  const known = fieldIndex.get(map);
  if (known) return known;
  const index = new Map(map.items.map((pair): [string, Pair] => [keyText(pair.key) ?? '', pair]));
  fieldIndex.set(map, index);
  return index;
}
const fieldIndex = new WeakMap<YAMLMap, ReadonlyMap<string, Pair>>();

function nodeLine(document: Document.Parsed, lineAt: (node: unknown) => number, path: Path): number {
  let node: unknown = document.contents;
  let line = lineAt(node);
  for (const step of path) {
    const held: unknown = isAlias(node) ? node.resolve(document) : node;
    if (isMap(held)) {
      const pair = fieldsOf(held).get(String(step));
      if (!pair) return line;
      line = lineAt(pair.key);
      node = pair.value;
    } else if (isSeq(held)) {
      node = held.items[Number(step)];
      if (node === undefined) return line;
      line = lineAt(node);
    } else return line;
  }
  return line;
}

/** @returns the file's data, or up to a few faults with the line they stand on */
export function readSheet(text: string): { sheet: Sheet } | { faults: Fault[] } {
  const early = [...sizeFault(text), ...depthFault(text)];
  if (early.length > 0) return { faults: early };
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false, uniqueKeys: false });
  const lineOfOffset = (offset: number): number => Math.max(1, lines.linePos(offset).line);
  const lineAt = (node: unknown): number =>
    (isScalar(node) || isCollection(node) || isAlias(node)) && node.range ? lineOfOffset(node.range[0]) : 1;
  const parsing = [...document.errors, ...document.warnings].map((error) => ({
    line: lineOfOffset(
      STARTS_BEFORE.has(error.code) ? text.slice(0, error.pos[0]).trimEnd().length : error.pos[0],
    ),
    text: PARSER_SAYS[error.code] ?? `this is not YAML that can be read (${error.message.slice(0, 80)})`,
  }));
  if (parsing.length > 0) return { faults: parsing };
  const faults = [...keyFaults(document, lineAt), ...aliasFaults(document, lineAt)];
  if (faults.length > 0) return { faults };
  // the copies are bounded above; the library's own bound counts a shared build as a bomb
  const value = withoutEmptyFields(document.toJS({ maxAliasCount: -1 }));
  return { sheet: { value, lineOf: (path) => nodeLine(document, lineAt, path) } };
}

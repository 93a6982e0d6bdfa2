/** A schema's issue -> sentences with their place in words: "Birch, build, feed: must be one of: …". */
import type * as z from 'zod';
import type { Path } from './document.ts';

export interface Phrase {
  path: Path;
  text: string;
  /** The last step of the path is a field that the block does not know. */
  stranger?: true;
}
type Issue = z.core.$ZodIssue;

const isBlock = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A block was written: the branch that takes a block has the useful faults. Otherwise the union's own words. */
function unionPhrases(issue: z.core.$ZodIssueInvalidUnion): Phrase[] {
  const inside = isBlock(issue.input) ? issue.errors.at(-1) : undefined;
  if (!inside) return [{ path: issue.path, text: issue.message }];
  return inside.flatMap((inner) => phrasesOf({ ...inner, path: [...issue.path, ...inner.path] }));
}

/** The sentences of one issue, each with the path of what it is about. */
export function phrasesOf(issue: Issue): Phrase[] {
  const { path } = issue;
  if (issue.code === 'unrecognized_keys') {
    const says = issue.message.split('\n');
    return issue.keys.map((key, index) => ({
      path: [...path, key],
      text: says[index] ?? `unknown field "${key}"`,
      stranger: true,
    }));
  }
  if ('input' in issue && issue.input === undefined) return [{ path, text: 'is missing' }];
  if (issue.code === 'invalid_union') return unionPhrases(issue);
  return [{ path, text: issue.message }];
}

/** Where a path leads, in the file's own names: a machine by its name rather than its place in the list. */
export function placeOf(path: Path, value: unknown): string {
  const words: string[] = [];
  let held: unknown = value;
  for (const step of path) {
    held = isBlock(held) || Array.isArray(held) ? Reflect.get(Object(held), step) : undefined;
    if (typeof step === 'number') words.push(nameOf(held) ?? `no. ${step + 1}`);
    else words.push(String(step));
  }
  const byName = path[0] === 'machines' && words[1] !== undefined && !words[1].startsWith('no. ');
  return (byName ? words.slice(1) : words).join(', ');
}

function nameOf(held: unknown): string | undefined {
  const name: unknown = isBlock(held) ? Reflect.get(Object(held), 'name') : undefined;
  return typeof name === 'string' && name.length <= 60 ? name : undefined;
}

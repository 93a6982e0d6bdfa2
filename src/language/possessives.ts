/**
 * "alders nozzle", "elms rods": whose thing it is, typed without the apostrophe. Before a part, or before what is
 * wrong with it, a machine's name and an s is that machine; "alders are trees" stays what it is.
 */
import { lexicon } from './lexicon.ts';
import type { NameBook } from './names.ts';
import type { Corrected } from './spelling.ts';
import { longest } from './trie.ts';

const S = 's'.charCodeAt(0);
/** The name within the word as it was typed, put right by the speller or not. */
function ownerIn(token: Corrected, book: NameBook): string | undefined {
  const typed = token.said ?? token.text;
  if (typed.charCodeAt(typed.length - 1) !== S) return undefined;
  const stem = typed.slice(0, -1);
  if (token.kind !== 'word' || stem.length < 3) return undefined;
  if (token.said !== undefined && token.text !== stem) return undefined;
  return book.trie.next.get(stem)?.senses.some((s) => s.tag === 'machine') === true ? stem : undefined;
}

const wordAt = (tokens: readonly Corrected[], at: number): ReturnType<typeof longest> =>
  longest(lexicon().words, tokens, at);

/** What stands after it belongs to a printer, or is what ails one. "Two elms", "those elms" are counted trees. */
function owns(tokens: readonly Corrected[], at: number): boolean {
  const before = tokens[at - 1];
  if (before?.kind === 'number' || /^(?:two|three|some|these|those|many|few|tall|old)$/u.test(before?.text ?? '')) return false; // prettier-ignore
  const next = wordAt(tokens, at + 1);
  const skipped = next?.senses.some((s) => s.tag === 'fn' && (s.code === 'new' || s.code === 'old'));
  const noun = skipped === true ? wordAt(tokens, at + 1 + (next?.length ?? 1)) : next;
  if (noun?.senses.some((s) => s.tag === 'part' || s.tag === 'thing')) return true;
  const led = /^(?:the|an?|our)$/u.test(before?.text ?? '');
  return !led && (next?.senses.some((s) => s.tag === 'complaint' || s.tag === 'symptom') ?? false);
}

export function withPossessives(tokens: readonly Corrected[], book: NameBook): readonly Corrected[] {
  if (!tokens.some((token) => ownerIn(token, book) !== undefined)) return tokens;
  return tokens.flatMap((token, at): Corrected[] => {
    const name = ownerIn(token, book);
    if (name === undefined || !owns(tokens, at)) return [token];
    const { said: _, ...plain } = token;
    const cut = token.from + name.length;
    return [
      { ...plain, text: name, to: cut },
      { kind: 'word', text: "'s", from: cut, to: token.to, gap: false },
    ];
  });
}

/** A question about a machine that nobody here has: "what's due on oak" is not about the whole room. */
import { opens } from './english/ask/opens.ts';
import { hasTag, isFn, type Item } from './item.ts';
import type { Scene } from './scene.ts';

/** The word at the end of a question, behind "on" or "for", that nothing is known of. */
export function askedOfStranger(scenes: readonly Scene[]): string | undefined {
  return scenes.map(strangerAtEnd).find((said) => said !== undefined);
}

function strangerAtEnd(scene: Scene): string | undefined {
  if (scene.items.some((item) => hasTag(item, 'machine')) || !opens(scene)) return undefined;
  const last = scene.items.findLastIndex(
    (item) =>
      !hasTag(item, 'date') && !isFn(item, 'please', 'thanks', 'now') && /[\p{L}\p{N}]/u.test(item.text),
  );
  const word = scene.items[last];
  const before = scene.items[last - 1];
  const stands =
    isFn(before, 'on', 'for') || (last === 1 && /^(?:status|overdue|due)$/u.test(before?.text ?? ''));
  return isUnknown(word) && stands && !IDIOM.test(word.text) ? word.text : undefined;
}

/** Trees stand for nothing else where they stand in a machine's place. */
const isUnknown = (item: Item | undefined): item is Item =>
  item !== undefined && /^\p{L}{3,}$/u.test(item.text) && item.senses.every(({ tag }) => tag === 'timber');

/** What "on" and "for" make one phrase with. */
const IDIOM =
  /^(?:average|file|record|records|site|deck|duty|shift|shifts|holiday|vacation|hand|schedule|plan|top|paper|book|books|sure|real|ages|good|free|safety|list|call|time|demand|loan|purpose|everyone|everybody|everything|anything|something|maintenance|care|work|business|me|you|him|her|us|them|site|course|track|display|weekend|weekends|whole|board|mind|earth|starters|instance|example)$/u;

/** Stretches of text and buttons as blocks, within what a message holds. */
import type { types } from '@slack/bolt';
import { LIMITS } from './limits.ts';
import { lengthOf, lines, separator, type Part } from './rich.ts';

/** Text that is being gathered, `fresh` with some room above it, or buttons that end it. */
export type Piled = { parts: Part[]; fresh?: true } | { buttons: types.KnownBlock[] };

/** A message of that many blocks has none to spare for looks. */
const ROOMY = 30;
const MORE = 'There is more than fits here: ask for a part of it.';

/** Stretches that follow one another become one block, until it is long enough. */
export function stacked(piles: readonly Piled[]): types.KnownBlock[] {
  const blocks: types.KnownBlock[] = [];
  let gathered: Part[] = [];
  let length = 0;
  const flush = (): void => {
    if (gathered.length > 0) blocks.push({ type: 'rich_text', elements: joined(gathered) });
    gathered = [];
    length = 0;
  };
  for (const pile of piles) {
    if ('buttons' in pile) {
      if (pile.buttons.length === 0) continue;
      flush();
      blocks.push(...pile.buttons);
      continue;
    }
    if (pile.fresh && blocks.length < ROOMY) flush();
    for (const part of pile.parts) {
      const more = partLength(part);
      if (length + more > LIMITS.stretch) flush();
      gathered.push(part);
      length += more;
    }
  }
  flush();
  return blocks;
}

/** Neighbours of one kind as one: a list stays one list, and lines one paragraph. */
function joined(parts: readonly Part[]): Part[] {
  const out: Part[] = [];
  for (const part of parts) {
    const last = out.at(-1);
    if (last?.type === 'rich_text_list' && part.type === 'rich_text_list')
      out[out.length - 1] = { ...last, elements: [...last.elements, ...part.elements] };
    else if (last?.type === 'rich_text_section' && part.type === 'rich_text_section')
      out[out.length - 1] = {
        ...last,
        elements: [...last.elements, { type: 'text', text: '\n' }, ...part.elements],
      };
    else out.push(part);
  }
  return out;
}

const partLength = (part: Part): number =>
  part.type === 'rich_text_section'
    ? lengthOf(part.elements.flatMap((e) => (e.type === 'text' ? [e] : [])))
    : part.elements.reduce((sum, section) => sum + partLength(section), 0);

/** All that is read, wherever it stands in a block. */
function readLength(value: unknown): number {
  if (typeof value !== 'object' || value === null) return 0;
  return Object.entries(value).reduce(
    (sum, [key, inner]) =>
      sum + (key === 'text' && typeof inner === 'string' ? inner.length : readLength(inner)),
    0,
  );
}

/** What came first is what matters most; buttons of the whole reply come last and stay. */
export function fit(blocks: readonly types.KnownBlock[], most: number): types.KnownBlock[] {
  const last = blocks.at(-1);
  const tail = last?.type === 'actions' ? [last] : [];
  const body = blocks.slice(0, blocks.length - tail.length);
  let room = LIMITS.message - tail.reduce((sum, b) => sum + readLength(b), 0);
  const kept: types.KnownBlock[] = [];
  for (const block of body) {
    room -= readLength(block);
    if (room < 0 || kept.length + tail.length + 1 >= most) break;
    kept.push(block);
  }
  const more: types.KnownBlock[] =
    kept.length < body.length ? [{ type: 'rich_text', elements: [lines([[separator(MORE)]])] }] : [];
  return [...kept, ...more, ...tail];
}

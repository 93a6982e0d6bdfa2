/**
 * A reply as Slack's blocks: cautions first, a heading for a long one, one stretch of text for what belongs together,
 * buttons below what they are about. Holds Slack's limits for any reply; what does not fit is cut, and says so.
 */
import type { types } from '@slack/bolt';
import { plainText, textOf, type Button, type Item, type Reply, type Section } from '../../../src/index.ts';
import { buttonBlocks } from './buttons.ts';
import { LIMITS } from './limits.ts';
import { bullets, lines, pieces, separator, type Part, type Piece } from './rich.ts';
import { fit, stacked, type Piled } from './stack.ts';
import { cut, escapedWithin, harmless } from './text.ts';

export interface Rendered {
  /** The whole of it as plain text: notifications, screen readers. */
  text: string;
  blocks: types.KnownBlock[];
}

/** From this many headings on, the title stands as a heading. */
const LONG = 2;

export function render(
  reply: Reply,
  tokens: readonly string[],
  mostBlocks: number = LIMITS.messageBlocks,
): Rendered {
  return { text: plainOf(reply), blocks: blocksOf(reply, tokens, mostBlocks) };
}

/** Buttons below a single item are left out: between the lines they only disturb what is read aloud. */
function plainOf(reply: Reply): string {
  const sections = reply.sections.map(({ items, ...section }) => ({
    ...section,
    items: items.map(({ text }) => ({ text })),
  }));
  const text = textOf({ ...reply, sections }, { bold: (words) => words, plain: harmless, buttons: 'words' });
  return escapedWithin(text === '' ? plainText(reply) : text, LIMITS.plain);
}

function blocksOf(reply: Reply, tokens: readonly string[], mostBlocks: number): types.KnownBlock[] {
  const take = tokenTaker(tokens);
  const heading = headingOf(reply);
  const piles: Piled[] = [
    ...cautionOf(reply),
    ...(heading.length > 0 || !reply.title
      ? []
      : [{ parts: [lines([pieces(reply.title, LIMITS.stretch)])] }]),
    ...sectionsOf(reply.sections, take),
    { buttons: buttonBlocks(take(reply.buttons)) },
  ];
  return fit([...heading, ...stacked(piles)], mostBlocks);
}

export interface Wired extends Button {
  token: string;
}
export type Take = (buttons: readonly Button[]) => Wired[];

/** Tokens are given in the order in which the reply's buttons are counted. */
function tokenTaker(tokens: readonly string[]): Take {
  let next = 0;
  return (buttons) =>
    buttons.flatMap((button) => {
      const token = tokens[next];
      next += 1;
      return token === undefined ? [] : [{ ...button, token }];
    });
}

function headingOf({ title, sections }: Reply): types.HeaderBlock[] {
  if (!title || sections.filter((s) => s.heading !== undefined).length < LONG) return [];
  const text = title.map((span) => (typeof span === 'string' ? span : span.bold)).join('');
  return [
    { type: 'header', text: { type: 'plain_text', text: cut(harmless(text), LIMITS.header), emoji: false } },
  ];
}

const cautionOf = ({ caution = [] }: Reply): Piled[] =>
  caution.length === 0 ? [] : [{ parts: [lines(caution.map((line) => pieces(line, LIMITS.stretch, true)))] }];

function sectionsOf(sections: readonly Section[], take: Take): Piled[] {
  let withButtons = 0;
  return sections
    .filter(({ items }) => items.length > 0)
    .flatMap(({ heading, items, run }) => {
      const head = heading === undefined ? [] : pieces([{ bold: heading }], LIMITS.stretch);
      if (run)
        return [
          { parts: [running(head, items)] },
          ...items.map((i) => ({ buttons: buttonBlocks(take(i.buttons ?? [])) })),
        ];
      return [
        ...(head.length > 0 ? [{ parts: [lines([head])] }] : []),
        ...items.flatMap((item): Piled[] => {
          const wired = take(item.buttons ?? []);
          if (wired.length > 0) withButtons += 1;
          const shown = withButtons <= LIMITS.itemsWithButtons ? wired : [];
          return [itemPile(item, heading !== undefined), { buttons: buttonBlocks(shown) }];
        }),
      ];
    });
}

const itemPile = ({ text }: Item, bulleted: boolean): Piled => {
  const line = pieces(text, LIMITS.stretch);
  if (line.length === 0) return { parts: [] };
  return { parts: [bulleted ? bullets([line]) : lines([line])] };
};

/** Short items in one line, after their heading. */
function running(head: readonly Piece[], items: readonly Item[]): Part {
  const room = Math.floor(LIMITS.stretch / items.length);
  const line = items.flatMap(({ text }, i) => [...(i > 0 ? [separator(' · ')] : []), ...pieces(text, room)]);
  return lines([[...head, ...(head.length > 0 ? [separator(': ')] : []), ...line]]);
}

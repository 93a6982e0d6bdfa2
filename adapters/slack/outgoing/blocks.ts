/**
 * A reply as Slack's blocks: cautions first, a heading for a long one, one stretch of text for what belongs together,
 * buttons below what they are about. Holds Slack's limits for any reply; what does not fit is cut, and says so.
 */
import type { types } from '@slack/bolt';
import { textOf, type Button, type Item, type Reply, type Section } from '../../../src/index.ts';
import { buttonBlocks, plain } from './buttons.ts';
import { LIMITS } from './limits.ts';
import { bullets, lines, pieces, separator, type Part, type Piece } from './rich.ts';
import { fit, stacked, type Piled } from './stack.ts';
import { escapedWithin, harmless } from './text.ts';

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
  const text = textOf({ ...reply, sections }, { bold: harmless, plain: harmless, buttons: 'words' });
  return escapedWithin(text, LIMITS.plain);
}

function blocksOf(reply: Reply, tokens: readonly string[], mostBlocks: number): types.KnownBlock[] {
  const take = tokenTaker(tokens);
  const heading = headingOf(reply);
  const piles: Piled[] = [
    ...(heading.length > 0 || !reply.title
      ? []
      : [{ parts: [lines([pieces(reply.title, LIMITS.stretch)])] }]),
    ...sectionsOf(reply.sections, take),
    { buttons: buttonBlocks(take(reply.buttons)) },
  ];
  return fit([...stacked(cautionOf(reply)), ...heading, ...stacked(piles)], mostBlocks);
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
  const text = plainLine(title);
  return text === '' ? [] : [{ type: 'header', text: plain(text, LIMITS.header) }];
}

const cautionOf = ({ caution = [] }: Reply): Piled[] =>
  caution.map((line) => ({ parts: [lines([pieces(line, LIMITS.stretch, true)])] }));

function sectionsOf(sections: readonly Section[], take: Take): Piled[] {
  let withButtons = 0;
  return sections
    .filter(({ items }) => items.length > 0)
    .flatMap(({ heading, items, run }) => {
      const head = heading === undefined ? [] : pieces([{ bold: heading }], LIMITS.header);
      if (run)
        return [
          { parts: [running(head, items)] },
          ...items.map((i) => ({ buttons: buttonBlocks(take(i.buttons ?? []), plainLine(i.text)) })),
        ];
      return [
        ...(head.length > 0 ? [{ parts: [lines([head])], fresh: true as const }] : []),
        ...items.flatMap((item): Piled[] => {
          const wired = take(item.buttons ?? []);
          if (wired.length > 0) withButtons += 1;
          const shown = withButtons <= LIMITS.itemsWithButtons ? wired : [];
          return [
            itemPile(item, heading !== undefined && shown.length === 0),
            { buttons: buttonBlocks(shown, plainLine(item.text)) },
          ];
        }),
      ];
    });
}

const plainLine = (line: Item['text']): string =>
  line.map((span) => (typeof span === 'string' ? span : span.bold)).join('');

const itemPile = ({ text }: Item, bulleted: boolean): Piled => {
  const line = pieces(text, LIMITS.stretch);
  if (line.length === 0) return { parts: [] };
  return { parts: [bulleted ? bullets([line]) : lines([line])] };
};

/** Short items in one line, after their heading. */
function running(head: readonly Piece[], items: readonly Item[]): Part {
  const line = items.flatMap(({ text }, i) => [...(i > 0 ? [' · '] : []), ...text]);
  const colon = head.length > 0 ? [separator(': ')] : [];
  return lines([[...head, ...colon, ...pieces(line, LIMITS.stretch)]]);
}

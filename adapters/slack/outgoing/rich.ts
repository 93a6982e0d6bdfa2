/**
 * Stretches of text as Slack's rich text, which is not parsed: what a person typed cannot become a ping, a link or
 * emphasis, whatever it holds.
 */
import type { types } from '@slack/bolt';
import type { Line } from '../../../src/index.ts';
import { cut, harmless } from './text.ts';

export type Piece = types.RichTextText;
export type Part = types.RichTextSection | types.RichTextList;

const piece = (text: string, bold: boolean): Piece => ({
  type: 'text',
  text,
  ...(bold ? { style: { bold: true } } : {}),
});

/** `bold`: all of it. At most `most` characters; what is empty goes, Slack refuses it. */
export function pieces(line: Line, most: number, bold = false): Piece[] {
  let left = most;
  return line.flatMap((span) => {
    const text = cut(harmless(typeof span === 'string' ? span : span.bold), left);
    left -= text.length;
    return text === '' || left < 0 ? [] : [piece(text, bold || typeof span !== 'string')];
  });
}

export const lengthOf = (line: readonly Piece[]): number =>
  line.reduce((sum, { text }) => sum + text.length, 0);

/** Lines under one another, without bullets. */
export const lines = (parts: readonly (readonly Piece[])[]): types.RichTextSection => ({
  type: 'rich_text_section',
  elements: parts.flatMap((part, i) => [...(i > 0 ? [piece('\n', false)] : []), ...part]),
});

export const bullets = (parts: readonly (readonly Piece[])[]): types.RichTextList => ({
  type: 'rich_text_list',
  style: 'bullet',
  elements: parts.map((part): types.RichTextSection => ({ type: 'rich_text_section', elements: [...part] })),
});

export const separator = (text: string): Piece => piece(text, false);

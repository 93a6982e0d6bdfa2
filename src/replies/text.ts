/**
 * A reply as lines of text: the terminal's form, what `fettle say` prints, and the full text that stands beside
 * every platform's blocks. Buttons are numbered in the order of `buttonsOf`.
 */
import type { Button, Item, Line, Reply, Section } from './reply.ts';

export interface TextStyle {
  bold: (text: string) => string;
  /** What people typed, made fit for where it is shown. */
  plain: (text: string) => string;
  /** `numbers`: a number presses a button. `words`: a number would be taken as a figure. `none`: no buttons. */
  buttons: 'numbers' | 'words' | 'none';
}

const PLAIN: TextStyle = { bold: (text) => text, plain: (text) => text, buttons: 'none' };

/** Every button of a reply, in the order in which they are numbered. */
export const buttonsOf = (reply: Reply): Button[] => [
  ...reply.sections.flatMap((s) => s.items.flatMap((i) => i.buttons ?? [])),
  ...reply.buttons,
];

/** The text without buttons; lines separated by `\n`. */
export const plainText = (reply: Reply): string => textOf(reply, PLAIN);

export function textOf(reply: Reply, style: TextStyle): string {
  const keys = numbering(style);
  return [
    ...(reply.caution ?? []).map((line) => style.bold(lineText(line, { ...style, bold: PLAIN.bold }))),
    ...(reply.title ? [lineText(reply.title, style)] : []),
    ...reply.sections.filter((s) => s.items.length > 0).flatMap((s) => sectionText(s, style, keys)),
    ...(reply.buttons.length > 0 && style.buttons !== 'none' ? [keys(reply.buttons)] : []),
  ].join('\n');
}

type Keys = (buttons: readonly Button[]) => string;

function numbering({ buttons: kind, plain }: TextStyle): Keys {
  let number = 0;
  return (buttons) => {
    if (kind === 'none') return '';
    return buttons
      .map(({ label }) => {
        number += 1;
        return kind === 'words' ? `[${plain(label)}]` : `[${number} ${plain(label)}]`;
      })
      .join(' ');
  };
}

const lineText = (line: Line, style: TextStyle): string =>
  line
    .map((span) => (typeof span === 'string' ? style.plain(span) : style.bold(style.plain(span.bold))))
    .join('');

function itemText({ text, buttons = [] }: Item, style: TextStyle, keys: Keys): string {
  const beside = keys(buttons);
  return `${lineText(text, style)}${beside === '' ? '' : `  ${beside}`}`;
}

function sectionText({ heading, items, run }: Section, style: TextStyle, keys: Keys): string[] {
  const head = heading === undefined ? [] : [style.bold(style.plain(heading))];
  const lines = items.map((item) => itemText(item, style, keys));
  if (run) return [[...head, lines.join(' · ')].join(': ')];
  return [...head, ...lines.map((line) => (heading === undefined ? line : `  ${line}`))];
}

/** A reply for a terminal: emphasis as bold, buttons as numbers, nothing that a person typed as control codes. */
import { buttonsOf, type Answer, type Item, type Line, type Reply, type Section } from '../../src/index.ts';

export interface Paint {
  colour: boolean;
}

const BOLD = ['\u001b[1m', '\u001b[22m'] as const;

/** Control and direction characters in what people typed must not steer the terminal. */
const harmless = (text: string): string => text.replace(/[\p{Cc}\u202a-\u202e\u2066-\u2069]/gu, '\ufffd');

const line = (spans: Line, { colour }: Paint): string =>
  spans
    .map((span) => {
      if (typeof span === 'string') return harmless(span);
      return colour ? `${BOLD[0]}${harmless(span.bold)}${BOLD[1]}` : harmless(span.bold);
    })
    .join('');

interface Numbering {
  next: number;
  /** A figure is awaited, so a number is a figure and a button is typed by its words. */
  words: boolean;
}

const button = (label: string, numbering: Numbering): string => {
  const number = numbering.next;
  numbering.next += 1;
  return numbering.words ? `[${label}]` : `[${number} ${label}]`;
};

function item({ text, buttons = [] }: Item, paint: Paint, numbering: Numbering): string {
  const keys = buttons.map(({ label }) => button(label, numbering)).join(' ');
  return `${line(text, paint)}${keys === '' ? '' : `  ${keys}`}`;
}

function section({ heading, items, run }: Section, paint: Paint, numbering: Numbering): string[] {
  const head = heading === undefined ? [] : [line([{ bold: heading }], paint)];
  const lines = items.map((each) => item(each, paint, numbering));
  if (run) return [[...head, lines.join(' · ')].join(': ')];
  return [...head, ...lines.map((text) => (heading === undefined ? text : `  ${text}`))];
}

/** The whole answer; the buttons of the list items come first in the numbering, as in `buttonsOf`. */
export function render(
  { reply, question }: Pick<Answer, 'reply' | 'buttons' | 'question'>,
  paint: Paint,
): string {
  const numbering: Numbering = { next: 1, words: question?.field === 'hours' || question?.field === 'value' };
  const lines = [
    ...(reply.caution ?? []).map((spans) =>
      line([{ bold: spans.map((s) => (typeof s === 'string' ? s : s.bold)).join('') }], paint),
    ),
    ...(reply.title ? [line(reply.title, paint)] : []),
    ...reply.sections.filter((s) => s.items.length > 0).flatMap((s) => section(s, paint, numbering)),
  ];
  const keys = ownButtons(reply).map(({ label }) => button(label, numbering));
  return [...lines, ...(keys.length > 0 ? [keys.join(' ')] : [])].join('\n');
}

const ownButtons = (reply: Reply) => buttonsOf(reply).slice(-reply.buttons.length || Infinity);

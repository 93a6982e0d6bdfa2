/** A reply for a terminal: emphasis as bold, and nothing that a person typed as control codes. */
import { textOf, wantsFigure, type Answer } from '../../src/index.ts';

export interface Paint {
  colour: boolean;
}

const BOLD = ['\u001b[1m', '\u001b[22m'] as const;

/** Control and direction characters in what people typed must not steer the terminal. */
export const harmless = (text: string): string =>
  text.replace(/[\p{Cc}\p{Cs}\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\u{e0000}-\u{e007f}]/gu, '\ufffd');

export const render = ({ reply, question }: Pick<Answer, 'reply' | 'question'>, { colour }: Paint): string =>
  textOf(reply, {
    bold: (text) => (colour ? `${BOLD[0]}${text}${BOLD[1]}` : text),
    plain: harmless,
    buttons: wantsFigure(question) ? 'words' : 'numbers',
  });

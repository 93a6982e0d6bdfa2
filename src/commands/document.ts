/** An answer as JSON: the shape that `fettle say --json` prints. */
import type { LocalCalendar } from '../maintenance/calendar.ts';
import { entryDocument } from '../maintenance/entry/document.ts';
import { textOf } from '../replies/text.ts';
import type { Answer } from './message.ts';

export function answerDocument(answer: Answer, calendar: LocalCalendar): Record<string, unknown> {
  const { now, by, message, outcome, acts, results, entries, question } = answer;
  return {
    now: calendar.format(now),
    by,
    message,
    outcome,
    acts,
    results,
    entries: entries.map((entry) => entryDocument(entry, calendar, by)),
    question,
    reply: replyText(answer),
  };
}

/** A number is an answer then, not the number of a button. */
export const wantsFigure = (question: Answer['question']): boolean =>
  question?.field === 'hours' || question?.field === 'value';

/** What a terminal prints, without colour. */
export const replyText = ({ reply, question }: Pick<Answer, 'reply' | 'question'>): string =>
  textOf(reply, {
    bold: (text) => text,
    plain: (text) => text,
    buttons: wantsFigure(question) ? 'words' : 'numbers',
  });

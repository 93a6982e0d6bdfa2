/** An answer as JSON: the shape that `fettle say --json` prints. */
import type { LocalCalendar } from '../maintenance/calendar.ts';
import { entryDocument } from '../maintenance/entry/document.ts';
import { plainText } from '../replies/plain.ts';
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

/** What a terminal prints, without colour: the text, then the buttons with the number that presses each. */
export function replyText({
  reply,
  buttons,
  question,
}: Pick<Answer, 'reply' | 'buttons' | 'question'>): string {
  const text = plainText(reply);
  if (buttons.length === 0 || text === '') return text;
  const figure = question?.field === 'hours' || question?.field === 'value';
  return `${text}\n${buttons.map(({ label }, i) => (figure ? `[${label}]` : `[${i + 1} ${label}]`)).join(' ')}`;
}

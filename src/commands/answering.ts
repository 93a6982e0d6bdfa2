/** Is this message the answer to the question that is open? And what does it fill in? */
import type { Reading } from '../language/act.ts';
import { foldName } from '../maintenance/machine.ts';
import type { Deed } from '../maintenance/decide/deed.ts';
import type { Press } from '../replies/reply.ts';
import type { Conversation, OpenQuestion } from './conversation.ts';

/** "Leave it": the question is closed and nothing is written. */
export const LEAVE = 'leave';
/** "Yes, as I said it". */
export const CONFIRM = 'confirm';

/** A figure is meant as a figure where the question asks for one, never as the number of a button. */
const WANTS_FIGURE: ReadonlySet<OpenQuestion['field']> = new Set<OpenQuestion['field']>(['hours', 'value']);

/** What a typed number or a button's own words stand for. */
export function typedPress(text: string, conversation: Conversation): Press | undefined {
  const { presses = [], question } = conversation;
  const said = foldName(text.replace(/[.!)\]]+$|^[[(]+/gu, ''));
  const named = presses.find((p) => foldName(p.label) === said);
  if (named) return named.press;
  if (!/^\d{1,2}$/u.test(said) || (question && WANTS_FIGURE.has(question.field))) return undefined;
  return presses[Number(said) - 1]?.press;
}

/** The value that the message gives to the open question; undefined when it says something else. */
export function answerIn(text: string, reading: Reading, question: OpenQuestion): string | undefined {
  const said = foldName(text);
  // whatever is said next is what was found
  if (question.field === 'found') return text.trim() === '' ? undefined : text.trim();
  const option = question.options.find((o) => foldName(o.value) === said || foldName(o.label) === said);
  if (option) return option.value;
  const figure = figureIn(reading);
  if (WANTS_FIGURE.has(question.field) && figure !== undefined) return String(figure);
  const { bare } = reading;
  if (!bare || reading.acts.some(({ act }) => act.kind !== 'unclear')) return undefined;
  if (bare.yes !== undefined) return yesOrNo(bare.yes, question);
  if (question.field === 'machine') return bare.machine;
  if (question.field === 'reason') return bare.reason;
  if (question.field === 'until') return bare.date;
  return undefined;
}

function yesOrNo(yes: boolean, { options }: OpenQuestion): string | undefined {
  const wanted = yes ? CONFIRM : LEAVE;
  return options.find((o) => o.value === wanted)?.value;
}

/** "3", "3 h": a figure and nothing else. */
function figureIn({ bare, acts }: Reading): number | undefined {
  if (bare?.number !== undefined) return bare.number;
  const [only, ...more] = acts;
  if (!only || more.length > 0) return undefined;
  const { act } = only;
  if (act.kind === 'usage' && act.machine === undefined) return act.hours;
  return act.kind === 'amend' ? (act.hours ?? act.value) : undefined;
}

/** The waiting deed with the answer in the field that was asked about. */
export function filled(deed: Deed, field: OpenQuestion['field'], value: string): Deed {
  if (value === CONFIRM || field === 'other' || field === 'later') return deed;
  if (field === 'hours' || field === 'value') {
    const name = field === 'value' && deed.kind !== 'amend' ? 'hours' : field;
    return withField(deed, name, Number(value));
  }
  return withField(deed, field === 'entry' ? 'target' : field, value);
}

/** The value was one of the question's own options or was read as this field's kind: decide checks the rest. */
const withField = (deed: Deed, field: string, value: string | number): Deed => ({ ...deed, [field]: value });

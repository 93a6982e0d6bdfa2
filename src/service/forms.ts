/** Forms: a log by fields, and what a button asks for. Filled in, they do what the sentence would do. */
import type { Press, Reply } from '../replies/reply.ts';
import type { Of } from './kinds.ts';
import type { Works } from './parts.ts';
import type { Form, FormField, FormName, Received } from './platform.ts';
import { findPressable, marker, pressMessage, refusalOf, refuse } from './pressed.ts';
import type { Pressable } from './posts.ts';
import { replyWith } from './respond.ts';
import { incoming, say } from './said.ts';

const MOST_OPTIONS = 25;
const LABEL = 75;

export function logForm(machines: readonly string[], values: Readonly<Record<string, string>> = {}): Form {
  const fields: FormField[] = [
    {
      name: 'machine', label: 'Machine', required: true,
      ...(machines.length <= MOST_OPTIONS
        ? { kind: 'choice', options: machines.map((name) => ({ value: name, label: name.slice(0, LABEL) })) }
        : { kind: 'line', placeholder: 'Its name' }),
    },
    { name: 'what', label: 'Done, swapped or noticed', kind: 'text', required: false, placeholder: 'cleared a jam, cleaned the feeder' },
    { name: 'hours', label: 'Hours run', kind: 'line', required: false, placeholder: '6.5' },
    { name: 'when', label: 'When, if not today', kind: 'line', required: false, placeholder: 'yesterday' },
  ]; // prettier-ignore
  const filled = fields.map((field) => {
    const value = values[field.name];
    return value === undefined ? field : { ...field, value };
  });
  return { form: 'log', title: 'Log work', submit: 'Log it', fields: filled };
}

/** A day that is written counts for more than one that was picked. */
const OTHER = 'other';
const LATER = [
  { value: 'tomorrow', label: 'Tomorrow' },
  { value: 'in 3 days', label: '3 days' },
  { value: 'in a week', label: 'A week' },
  { value: 'in two weeks', label: 'Two weeks' },
  { value: OTHER, label: 'Another day, written below' },
] as const;

const ASKING: Readonly<Record<Exclude<FormName, 'log'>, Omit<Form, 'form' | 'token'>>> = {
  until: {
    title: 'Put off', submit: 'Put off',
    fields: [
      { name: 'until', label: 'Until when', kind: 'choice', required: true, options: LATER },
      { name: 'day', label: 'Another day', kind: 'line', required: false, placeholder: 'Friday, 24 March, in 5 weeks' },
      { name: 'reason', label: 'Why', kind: 'line', required: false, placeholder: 'waiting for the belt' },
    ],
  },
  found: {
    title: 'What was found', submit: 'Tell',
    fields: [{ name: 'found', label: 'Found and mended, by whom', kind: 'text', required: true, placeholder: 'loose plug, replaced by Tomasz' }],
  },
  fitted: {
    title: 'Which one', submit: 'Tell',
    fields: [{ name: 'fitted', label: 'Which one is in, or may be used', kind: 'line', required: true, placeholder: 'hardened 0.6' }],
  },
  change: {
    title: 'Change something', submit: 'Change',
    fields: [{ name: 'change', label: 'What should be different', kind: 'line', required: true, placeholder: 'make that 12 h' }],
  },
}; // prettier-ignore

const formFor = (press: Press): Exclude<FormName, 'log'> | undefined =>
  press.does === 'ask' ? press.field : press.does === 'change' ? 'change' : undefined;

export function formOfButton(token: string, { press }: Pressable): Form | undefined {
  const form = formFor(press);
  return form && { form, token, ...ASKING[form] };
}

/** "ran 6.5h yesterday. cleared a jam yesterday": the machine once in front, as in a message. */
export function logSentence(fields: Readonly<Record<string, string>>): string {
  const { machine = '', what = '', hours = '', when = '' } = fields;
  const day = when.trim() === '' ? '' : ` ${when.trim()}`;
  const figure = hours.trim().replace(/\s*h(?:ou)?r?s?\.?$/iu, '');
  const ran = figure === '' ? [] : [`ran ${figure}h${day}`];
  // each sentence has the day: one that stood on the last only would leave the others on today
  const did = what.split(/[.;\n]+(?=\s|$)/u).map((part) => part.trim());
  const told = did.filter((part) => part !== '').map((part) => `${part}${day}`);
  return `${machine.trim()}: ${[...told, ...ran].join('. ')}`;
}

export async function answerForm(works: Works, received: Of<'form'>): Promise<void> {
  const { form, fields, token } = received.what;
  if (form === 'log') {
    await say(works, received, { ...incoming(works, received), text: logSentence(fields) });
    return;
  }
  const button = token === undefined ? undefined : await findPressable(works, token);
  if (!button || token === undefined)
    return refuse(works, received, 'I do not know any more what that form was about. Say it in words.');
  const refusal = await refusalOf(works, received, token, button);
  if (refusal !== undefined) return refuse(works, received, refusal);
  const text = answerIn(form, fields);
  if (text === '') return refuse(works, received, 'Nothing put off: say until which day.');
  const opened = await works.bot.say({
    ...pressMessage(works, received, withReason(button, fields)),
    key: `${received.key}:open`,
  });
  // it was refused, or something else has to be settled first: what stands in the form would answer another question
  if (opened.question?.field !== form) return tell(works, received, opened.reply);
  const message = { ...incoming(works, received), place: button.talk, text };
  await say(works, received, message, { also: await marker(works, received, token, button) });
}

/** What the form answers, as a person would write it. */
function answerIn(form: Exclude<FormName, 'log'>, fields: Readonly<Record<string, string>>): string {
  const { day = '' } = fields;
  const picked = fields[form] ?? '';
  if (form !== 'until') return picked;
  return day.trim() || (picked === OTHER ? '' : picked);
}

async function tell(works: Works, received: Received, reply: Reply): Promise<void> {
  await works.store.transact((transaction) =>
    replyWith(works, transaction, received, { reply, audience: 'asker' }),
  );
  works.postsChanged();
}

const withReason = (button: Pressable, { reason }: Readonly<Record<string, string>>): Pressable => {
  const { press } = button;
  if (press.does !== 'ask' || press.about.kind !== 'defer' || !reason?.trim()) return button;
  return { ...button, press: { ...press, about: { ...press.about, reason: reason.trim() } } };
};

/** A form as Slack's modal, and a filled modal as its fields. Where it was opened from travels inside it. */
import type { ViewOutput, types } from '@slack/bolt';
import { z } from 'zod';
import type { Audience, Form, FormField, Place, PostRef } from '../../../src/index.ts';
import { plain } from './buttons.ts';
import { LIMITS } from './limits.ts';
import { cut, harmlessLines } from './text.ts';

/** What a filled form belongs to. */
export interface Origin {
  form: Form['form'];
  place: Place;
  audience: Audience;
  token?: string;
  on?: PostRef;
}

const origin = z.object({
  form: z.enum(['log', 'until', 'found', 'fitted', 'change']),
  place: z.object({
    platform: z.literal('slack'),
    space: z.string(),
    channel: z.string(),
    direct: z.boolean(),
    thread: z.string().exactOptional(),
  }),
  audience: z.enum(['place', 'asker']),
  token: z.string().exactOptional(),
  on: z
    .object({
      platform: z.literal('slack'),
      channel: z.string(),
      id: z.string(),
      thread: z.string().exactOptional(),
    })
    .exactOptional(),
});

export const FORM_VIEW = 'fettle-form';
/** Each field is a block of its name with one input. */
const INPUT = 'value';

export const modal = (form: Form, from: Omit<Origin, 'form' | 'token'>): types.ModalView => ({
  type: 'modal',
  callback_id: FORM_VIEW,
  private_metadata: JSON.stringify({
    ...from,
    form: form.form,
    ...(form.token === undefined ? {} : { token: form.token }),
  }),
  title: plain(form.title, LIMITS.modalTitle),
  submit: plain(form.submit, LIMITS.modalTitle),
  close: plain('Cancel', LIMITS.modalTitle),
  blocks: form.fields.map(inputOf),
});

const inputOf = (field: FormField): types.InputBlock => ({
  type: 'input',
  block_id: field.name,
  optional: !field.required,
  label: plain(field.label, LIMITS.fieldLabel),
  element: elementOf(field),
});

function elementOf({
  kind,
  placeholder,
  value,
  options = [],
}: FormField): types.PlainTextInput | types.StaticSelect {
  const hint = placeholder === undefined ? {} : { placeholder: plain(placeholder, LIMITS.placeholder) };
  if (kind !== 'choice' || options.length === 0)
    return {
      type: 'plain_text_input',
      action_id: INPUT,
      multiline: kind === 'text',
      max_length: LIMITS.fieldText,
      ...hint,
      ...(value === undefined || value === ''
        ? {}
        : { initial_value: cut(harmlessLines(value), LIMITS.fieldText) }),
    };
  const shown = options
    .slice(0, LIMITS.options)
    .map((o) => ({ text: plain(o.label, LIMITS.label), value: o.value }));
  const chosen = shown.find((o) => o.value === value);
  return {
    type: 'static_select',
    action_id: INPUT,
    options: shown,
    ...hint,
    ...(chosen ? { initial_option: chosen } : {}),
  };
}

export function originOf(metadata: string): Origin | undefined {
  try {
    return origin.parse(JSON.parse(metadata));
  } catch {
    // a view of an older version, or not ours
    return undefined;
  }
}

/** Empty fields are left out. */
export function fieldsOf(values: ViewOutput['state']['values']): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(values).flatMap(([name, inputs]): [string, string][] => {
      const input = inputs[INPUT];
      const text = (input?.value ?? input?.selected_option?.value ?? '').trim();
      return text === '' ? [] : [[name, text]];
    }),
  );
}

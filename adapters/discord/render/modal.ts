/** A form as Discord's modal, and a filled modal as fields. */
import {
  ComponentType,
  TextInputStyle,
  type APIComponentInLabel,
  type APIModalInteractionResponseCallbackData,
  type ModalSubmitComponent,
  type APIModalSubmission,
} from 'discord.js';
import type { Form, FormField, FormName } from '../../../src/index.ts';
import { harmless } from './escape.ts';
import {
  cut,
  MOST_FIELD_LABEL,
  MOST_FIELDS,
  MOST_INPUT,
  MOST_OPTION_LABEL,
  MOST_PLACEHOLDER,
  MOST_TITLE,
  OPTIONS_A_SELECT,
} from './limits.ts';

const FORMS: Readonly<Record<FormName, true>> = {
  log: true,
  until: true,
  found: true,
  fitted: true,
  change: true,
};
const isForm = (name: string): name is FormName => Object.hasOwn(FORMS, name);

export const modalOf = (form: Form): APIModalInteractionResponseCallbackData => ({
  custom_id: `form:${form.form}:${form.token ?? ''}`,
  title: label(form.title, MOST_TITLE),
  components: form.fields.slice(0, MOST_FIELDS).map((field) => ({
    type: ComponentType.Label,
    label: label(field.label, MOST_FIELD_LABEL),
    component: inputOf(field),
  })),
});

const label = (text: string, most: number): string => cut(harmless(text).trim(), most) || '…';

function inputOf(field: FormField): APIComponentInLabel {
  const options = field.options ?? [];
  if (field.kind === 'choice' && options.length > 0 && options.length <= OPTIONS_A_SELECT)
    return {
      type: ComponentType.StringSelect,
      custom_id: field.name,
      required: field.required,
      ...placeholder(field.placeholder),
      options: options.map((option) => ({
        label: label(option.label, MOST_OPTION_LABEL),
        value: option.value,
        ...(option.value === field.value ? { default: true } : {}),
      })),
    };
  return {
    type: ComponentType.TextInput,
    custom_id: field.name,
    style: field.kind === 'text' ? TextInputStyle.Paragraph : TextInputStyle.Short,
    required: field.required,
    max_length: MOST_INPUT,
    ...placeholder(field.placeholder ?? options.map((option) => option.label).join(', ')),
    ...(field.value === undefined ? {} : { value: cut(field.value, MOST_INPUT) }),
  };
}

const placeholder = (text: string | undefined): { placeholder?: string } =>
  text === undefined || text === '' ? {} : { placeholder: cut(harmless(text), MOST_PLACEHOLDER) };

export interface Filled {
  form: FormName;
  token?: string;
  fields: Readonly<Record<string, string>>;
}

/** Undefined: no form of ours. Empty fields are left out. */
export function filledForm({ custom_id, components }: APIModalSubmission): Filled | undefined {
  const [mark, form = '', ...rest] = custom_id.split(':');
  const token = rest.join(':');
  if (mark !== 'form' || !isForm(form)) return undefined;
  const fields = Object.fromEntries(
    components
      .flatMap((component): ModalSubmitComponent[] => {
        if (component.type === ComponentType.Label) return [component.component];
        return component.type === ComponentType.ActionRow ? component.components : [];
      })
      .map((input): [string, string] => [input.custom_id, valueOf(input).trim()])
      .filter(([, value]) => value !== ''),
  );
  return { form, fields, ...(token === '' ? {} : { token }) };
}

function valueOf(input: ModalSubmitComponent): string {
  if ('value' in input && typeof input.value === 'string') return input.value;
  return 'values' in input ? (input.values[0] ?? '') : '';
}

/** What the fields of a workshop file are made of. Each kind of field says in its own words what it expects. */
import * as z from 'zod';
import { isDate } from '../maintenance/calendar.ts';
import { nearest } from './fault.ts';

interface RawIssue {
  code?: string | undefined;
  keys?: readonly string[];
  input?: unknown;
}

/** A field that was left out is told by `phrase.ts`; anything else that does not fit gets these words. */
const expecting =
  (expected: string) =>
  ({ input }: RawIssue): string | undefined =>
    input === undefined ? undefined : expected;

const quoted = (words: readonly string[]): string => words.join(', ');

/** One line a key, in the order of the issue's keys: see `phrase.ts`, which pairs them again. */
const strangers = (issue: RawIssue, say: (key: string) => string): string | undefined =>
  issue.code === 'unrecognized_keys'
    ? issue.keys?.map(say).join('\n')
    : expecting('must be a block of fields')(issue);

const hint = (word: string, known: readonly string[]): string => {
  const near = nearest(word, known);
  if (near) return `; did you mean "${near}"?`;
  return known.length <= 12 ? `; known here: ${quoted(known)}` : '';
};

/** A block of named fields; a field that it does not know is a fault. */
export const section = <Shape extends z.ZodRawShape>(shape: Shape): z.ZodObject<Shape, z.core.$strict> =>
  z.strictObject(shape, {
    error: (issue) => strangers(issue, (key) => `unknown field "${key}"${hint(key, Object.keys(shape))}`),
  });

/** A block whose field names are codes: a task, a part. `elsewhere` may say where another word belongs. */
export const byCode = <Code extends string, Value extends z.ZodType>(
  noun: string,
  codes: readonly Code[],
  value: Value,
  elsewhere: (word: string) => string | undefined = () => undefined,
): z.ZodRecord<z.ZodEnum<z.core.util.ToEnum<Code>> & z.core.$partial, Value> =>
  z.partialRecord(z.enum(codes), value, {
    error: (issue) =>
      strangers(issue, (key) => elsewhere(key) ?? `"${key}" is not a ${noun}${hint(key, codes)}`),
  });

/** One of a few words. */
export const word = <const Code extends string>(
  codes: readonly Code[],
): z.ZodEnum<z.core.util.ToEnum<Code>> =>
  z.enum(codes, {
    error: ({ input }) => {
      if (input === undefined) return undefined;
      const said = typeof input === 'string' ? input : undefined;
      const near = said === undefined ? undefined : nearest(said, codes);
      if (near) return `"${said}" is not known; did you mean "${near}"?`;
      return codes.length <= 14
        ? `must be one of: ${quoted(codes)}`
        : `${JSON.stringify(input)} is not known`;
    },
  });

const FITTED = [true, 'fitted', 'yes'] as const;
const NOT_FITTED = [false, 'not fitted', 'no', 'none'] as const;
const fittedWords: ReadonlySet<unknown> = new Set(FITTED);
/** A feature that is there or is not. Left out, it is *not stated*, which is neither. */
export const fitted = z
  .literal([...FITTED, ...NOT_FITTED], {
    error: 'must be fitted or not fitted (leave it out when nobody knows)',
  })
  .transform((said) => fittedWords.has(said));

/** A plain yes or no. */
export const yesOrNo = z
  .literal([true, false, 'yes', 'no'], { error: expecting('must be true or false') })
  .transform((said) => said === true || said === 'yes');

/** A feature that comes in kinds; "not fitted" is the same as none. */
export const kindOrNone = <const Code extends string>(codes: readonly Code[]) =>
  z
    .literal([...codes, 'none', 'not fitted', 'no', false], {
      error: `must be one of: ${quoted([...codes, 'not fitted'])}`,
    })
    .transform((said): Code | 'none' => codes.find((code) => code === said) ?? 'none');

const MAX_TEXT = 200;
const printable = /^[^\p{Cc}]*\S[^\p{Cc}]*$/u;
/** Free text on one line, composed (NFC). */
export const text = z
  .string({ error: expecting('must be text (put a figure in quotes)') })
  .max(MAX_TEXT, `must be at most ${MAX_TEXT} characters`)
  .regex(printable, 'must be one line of text and not empty')
  .transform((said) => said.normalize('NFC').trim());

const MAX_NAME = 60;
/** What a machine or a person is called. */
export const name = text
  .refine((said) => said.length <= MAX_NAME, `must be at most ${MAX_NAME} characters`)
  .refine((said) => /[\p{L}\p{N}]/u.test(said), 'must hold a letter or a figure');

/** A local calendar date. */
export const date = z
  .string({ error: expecting('must be a date such as 2026-03-11') })
  .refine(isDate, 'must be a date that exists, such as 2026-03-11');

const clock = /^(?:[01]?\d|2[0-3]):[0-5]\d$/u;
/** A time of day; kept as HH:MM. */
export const timeOfDay = z
  .string({ error: expecting('must be a time such as 07:30') })
  .regex(clock, 'must be a time such as 07:30')
  .transform((said) => said.padStart(5, '0'));

const figure = z.number({ error: expecting('must be a number') });
export const amount = (most: number) =>
  figure.min(0, 'must not be below 0').max(most, `must be at most ${most}`);
export const positive = (most: number) =>
  figure.gt(0, 'must be more than 0').max(most, `must be at most ${most}`);

export const listOf = <Item extends z.ZodType>(item: Item) =>
  z.array(item, { error: expecting('must be a list') });

/** A message that can be an answer to a question that was asked, and says nothing else. */
import type { Reason } from '../maintenance/codes.ts';
import type { BareAnswer } from './act.ts';
import { hasTag, isFn, type Item, sensesOf } from './item.ts';
import type { LocalDate } from './act.ts';

const LONGEST_ANSWER = 9;
const SKIP: Parameters<typeof isFn>[1][] = [
  'article',
  'on',
  'it',
  'be',
  'this',
  'please',
  'thanks',
  'for',
  'of',
  'just',
  'in',
  'at',
  'now',
  'only',
  'i',
  'we',
  'up',
  'printer',
  'its',
  'to',
  'my',
  'sorry',
  'until',
];

function reasonOf(items: readonly Item[]): Reason | undefined {
  const planned = sensesOf(items, 'reason')[0]?.code;
  if (planned !== undefined) return planned;
  const text = items.map((item) => item.text).join(' ');
  if (/\b(?:worn|worn out|tired|wear)\b/u.test(text)) return 'worn';
  if (/\b(?:broken|broke|snapped|dead|cracked|burnt out)\b/u.test(text)) return 'broken';
  return /\bplanned\b/u.test(text) ? 'planned' : undefined;
}

const ORDINALS: readonly (readonly [RegExp, number])[] = [
  [/^(?:the )?(?:first|1st|former)(?: one| option)?$/u, 1], [/^(?:the )?(?:second|2nd|latter)(?: one| option)?$/u, 2],
  [/^(?:the )?(?:third|3rd)(?: one| option)?$/u, 3], [/^(?:the )?last(?: one)?$/u, -1],
]; // prettier-ignore

function choice(text: string): BareAnswer['choice'] {
  if (/^(?:just |only )?(?:these|those)(?: two| ones)?$|^(?:these|those) (?:two|both)$/u.test(text))
    return 'these';
  if (
    /^(?:all|all of them|both|both of them|every one|everything|the lot|all \d+|all eight|all of em|the whole lot)$/u.test(
      text,
    )
  )
    return text.startsWith('both') ? 'both' : 'all';
  return /^(?:none|none of them|neither|no one)$/u.test(text) ? 'none' : undefined;
}

export function readBare(text: string, all: readonly Item[], today: LocalDate): BareAnswer | undefined {
  const items = all.filter((item) => !/^[.,!?;:\n()]|^\.\.\.$/u.test(item.text));
  if (items.length === 0 || items.length > LONGEST_ANSWER) return undefined;
  const plain = items.map((item) => item.text).join(' ');
  const machines = [...new Set(sensesOf(items, 'machine').map((s) => s.code))];
  const values = sensesOf(items, 'value');
  const ordinal = ORDINALS.find(([pattern]) => pattern.test(plain))?.[1];
  const chosen = choice(plain);
  const yes = isFn(items[0], 'yes')
    ? true
    : isFn(items[0], 'no') && !/^\d/u.test(items[1]?.text ?? '')
      ? false
      : undefined;
  const reason = reasonOf(items);
  const day = sensesOf(items, 'date').find((s) => !s.vague);
  const part = sensesOf(items, 'part')[0]?.code;
  const said =
    machines.length + values.length > 0 ||
    ordinal !== undefined ||
    chosen !== undefined ||
    yes !== undefined ||
    reason !== undefined ||
    day !== undefined ||
    part !== undefined;
  const rest = items.filter(
    (item) =>
      !isFn(item, ...SKIP, 'yes', 'no', 'old') &&
      !hasTag(
        item,
        'joint',
        'machine',
        'value',
        'date',
        'reason',
        'complaint',
        'part',
        'spec',
        'number',
        'unit',
      ),
  );
  if (
    !said ||
    (rest.length > 0 && ordinal === undefined && chosen === undefined && yes === undefined) ||
    rest.length > 2
  )
    return undefined;
  const value = values[0];
  return {
    text,
    ...(value === undefined || value.code === 'range'
      ? {}
      : {
          number: value.value,
          ...(value.code === 'bare' || value.code === 'other' ? {} : { unit: value.code }),
        }),
    ...(machines.length === 1 && machines[0] !== undefined ? { machine: machines[0] } : {}),
    ...(machines.length > 0 ? { machines } : {}),
    ...(yes === undefined ? {} : { yes }),
    ...(reason === undefined ? {} : { reason }),
    ...(day === undefined
      ? {}
      : {
          date: day.past === today ? today : day.past,
          ...(day.future === day.past ? {} : { dateAhead: day.future }),
        }),
    ...(ordinal === undefined ? {} : { ordinal }),
    ...(chosen === undefined ? {} : { choice: chosen }),
    ...(part === undefined ? {} : { part }),
  };
}

/** Stage 5, rows of days: "this week", "last month", "the past three days", "in february". Weeks start on Monday. */
import type { LocalDate } from './act.ts';
import { addDays, dateOf, weekdayOf } from './calendar.ts';
import { isFn, type Item, sense, type SenseOf, type Stretch } from './item.ts';

export interface DateRead {
  readonly end: number;
  readonly date: SenseOf<'date'>;
}
type Span = readonly [from: LocalDate, to: LocalDate];

const clip = (today: LocalDate, [from, to]: Span): Stretch => ({
  back: [from, to > today ? today : to],
  ahead: [from < today ? today : from, to],
});
const mondayOf = (day: LocalDate): LocalDate => addDays(day, -((weekdayOf(day) + 6) % 7));

function monthSpan(index: number): Span {
  const first = dateOf(Math.floor(index / 12), (index % 12) + 1, 1) ?? '';
  const next = dateOf(Math.floor((index + 1) / 12), ((index + 1) % 12) + 1, 1) ?? '';
  return [first, addDays(next, -1)];
}
const monthIndex = (day: LocalDate): number => Number(day.slice(0, 4)) * 12 + Number(day.slice(5, 7)) - 1;
const yearSpan = (year: number): Span => [`${year}-01-01`, `${year}-12-31`];

const SPANS: Readonly<Record<string, (today: LocalDate, step: number) => Span>> = {
  week: (today, step) => {
    const monday = addDays(mondayOf(today), 7 * step);
    return [monday, addDays(monday, 6)];
  },
  weekend: (today, step) => {
    const saturday = addDays(mondayOf(today), 5 + 7 * step);
    return [saturday, addDays(saturday, 1)];
  },
  month: (today, step) => monthSpan(monthIndex(today) + step),
  year: (today, step) => yearSpan(Number(today.slice(0, 4)) + step),
};
/** About as many days, for what is put off by a stretch. */
const SIZES: Readonly<Record<string, number>> = { week: 7, weekend: 7, month: 30, year: 365 };
const STEPS: Readonly<Record<string, number>> = {
  last: -1,
  past: -1,
  previous: -1,
  this: 0,
  the: 0,
  next: 1,
};
const LED =
  /^(?:(?:in|of|for|over|during|at) )?(last|past|next|this|previous|the) (week|month|year|weekend)$/u;
const OPENS = /^(?:over|at|last|past|next|this|previous|the)(?: |$)/u;

function led(items: readonly Item[], at: number, today: LocalDate): DateRead | undefined {
  for (const length of [1, 2]) {
    const text = items.slice(at, at + length).map((item) => item.text).join(' '); // prettier-ignore
    const hit = LED.exec(text);
    const [word = '', unit = ''] = hit?.slice(1) ?? [];
    if (!hit || (word === 'the' && unit !== 'weekend')) continue;
    return { end: at + length, date: ledBy(word, unit, today) };
  }
  return undefined;
}
function ledBy(word: string, unit: string, today: LocalDate): SenseOf<'date'> {
  const step = STEPS[word] ?? 0;
  const size = SIZES[unit] ?? 7;
  const span = SPANS[unit]?.(today, step) ?? [today, today];
  const stretch: Stretch = step === 0 && unit === 'weekend' ? weekendOf(today, span) : step === 0 ? clip(today, span) : { back: span, ahead: span }; // prettier-ignore
  const near = { tag: 'date', vague: true, stretch } as const;
  if (word === 'the') return { ...near, past: today, future: today };
  if (step > 0) return { ...near, past: addDays(today, size), future: addDays(today, size), to: addDays(today, 2 * size) }; // prettier-ignore
  if (step < 0) return { ...near, past: addDays(today, -size), future: addDays(today, -size), to: today };
  return { ...near, past: addDays(today, -size + 1), future: today, to: addDays(today, size) };
}
/** Said on a Wednesday, "the weekend" is the one before for what was, the one after for what will be. */
function weekendOf(today: LocalDate, [from, to]: Span): Stretch {
  return today >= from ? { back: [from, today], ahead: [today, to] } : { back: [addDays(from, -7), addDays(to, -7)], ahead: [from, to] }; // prettier-ignore
}

/** "the last 3 days", "past two weeks", "in the next few days". */
function counted(items: readonly Item[], at: number, today: LocalDate): DateRead | undefined {
  const word = items[at]?.text ?? '';
  const value = sense(items[at + 1], 'value');
  if (!/^(?:last|past|next|previous)$/u.test(word) || !value) return undefined;
  if (value.code !== 'days' && value.code !== 'months') return undefined;
  const days = Math.min(36_500, Math.round(value.value * (value.code === 'months' ? 30 : 1)));
  const span: Span = word === 'next' ? [today, addDays(today, days)] : [addDays(today, -days), today];
  return { end: at + 2, date: vague(today, { back: span, ahead: span }) };
}
const vague = (today: LocalDate, stretch: Stretch): SenseOf<'date'> => ({ tag: 'date', past: today, future: today, vague: true, stretch }); // prettier-ignore

/** "in february", "last march": the whole month, the one nearest to what is spoken of. */
function ofMonth(items: readonly Item[], at: number, today: LocalDate): DateRead | undefined {
  const month = sense(items[at], 'calendar');
  if (month?.code !== 'month' || /^\d/u.test(items[at + 1]?.text ?? '')) return undefined;
  const before = items[at - 1];
  if (!isFn(before, 'in', 'since', 'until', 'during', 'of', 'for', 'last', 'this') || /^\d|^(?:st|nd|rd|th)$/u.test(items[at - 2]?.text ?? '')) return undefined; // prettier-ignore
  const year = Number(today.slice(0, 4));
  const index = year * 12 + month.n;
  const now = monthIndex(today);
  const back = clip(today, monthSpan(index <= now ? index : index - 12)).back;
  const ahead = clip(today, monthSpan(index >= now ? index : index + 12)).ahead;
  return { end: at + 1, date: vague(today, { back, ahead }) };
}

export function readStretch(items: readonly Item[], at: number, today: LocalDate): DateRead | undefined {
  const item = items[at];
  if (!item) return undefined;
  if (sense(item, 'calendar')?.code === 'month') return ofMonth(items, at, today);
  return OPENS.test(item.text) ? (counted(items, at, today) ?? led(items, at, today)) : undefined;
}

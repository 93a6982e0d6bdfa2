/**
 * Stage 5. Days said. Own grammar first; what it cannot read, but stands round a month's name or "ago",
 * goes to chrono-node in a small window. A weekday or a bare day of the month has a past and a future
 * reading: deeds look back, plans look forward, and only the clause's tense can tell.
 */
import { GB } from 'chrono-node/en';
import type { LocalDate } from './act.ts';
import { addDays, dateOf, weekdayOf } from './calendar.ts';
import { asSense, isFn, type Item, joinedItem, sense, type Sense, sensesOf } from './item.ts';
import { type DateRead, readStretch } from './stretches.ts';
import { figure } from './values.ts';

type DateSense = Extract<Sense, { tag: 'date' }>;
type Reader = (items: readonly Item[], at: number, today: LocalDate) => DateRead | undefined;

const one = (date: LocalDate): DateSense => ({ tag: 'date', past: date, future: date });
const calendar = (item: Item | undefined): Extract<Sense, { tag: 'calendar' }> | undefined =>
  sense(item, 'calendar');

const relative: Reader = (items, at, today) => {
  const day = calendar(items[at]);
  return day?.code === 'day' ? { end: at + 1, date: one(addDays(today, day.n)) } : undefined;
};

const vague: Reader = (items, at, today) =>
  calendar(items[at])?.code === 'vague'
    ? { end: at + 1, date: { tag: 'date', past: today, future: today, vague: true } }
    : undefined;

function weekday(items: readonly Item[], at: number): number | undefined {
  const item = items[at];
  const day = calendar(item);
  if (day?.code === 'weekday') return day.n;
  if (day?.code !== 'shy-weekday') return undefined;
  const before = items[at - 1];
  const can =
    isFn(before, 'on', 'last', 'until', 'this', 'since', 'by', 'for') ||
    /^(?:next|to|sat|sun)$/u.test(before?.text ?? '');
  return can || at === 0 || items[at + 1]?.text === ':' ? day.n : undefined;
}

function onWeekday(n: number, today: LocalDate): { past: LocalDate; future: LocalDate } {
  const back = (weekdayOf(today) - n + 7) % 7;
  return { past: addDays(today, -back), future: addDays(today, back === 0 ? 7 : 7 - back) };
}

/** "monday", "last friday", "next tuesday", "friday last week", "monday week". */
const weekdays: Reader = (items, at, today) => {
  const text = items[at]?.text ?? '';
  const led = /^(?:last|next|this|this coming|coming|on|past)$/u.test(text) ? text : '';
  const day = weekday(items, led ? at + 1 : at);
  if (day === undefined) return undefined;
  const { past, future } = onWeekday(day, today);
  let end = at + (led ? 2 : 1);
  if (led === 'last') return { end, date: one(past === today ? addDays(today, -7) : past) };
  if (led === 'next' || led === 'coming') return { end, date: one(future) };
  const after = items.slice(end, end + 2).map((item) => item.text).join(' '); // prettier-ignore
  // "mon 23rd": the day of the month says which Monday
  const dated = dayNumber(items, end);
  if (dated?.ordinal) {
    const exact = thatDay(dated.day, day, today);
    if (exact !== undefined) return { end: dated.end, date: exact };
  }
  // "the friday before last"
  if (after.startsWith('before last'))
    return {
      end: end + wordSpan(items, end, 'before last'),
      date: one(addDays(past === today ? addDays(past, -7) : past, -7)),
    };
  if (after.startsWith('last week'))
    return { end: end + wordSpan(items, end, 'last week'), date: one(lastWeek(day, today)) };
  if (after.startsWith('next week'))
    return { end: end + wordSpan(items, end, 'next week'), date: one(addDays(lastWeek(day, today), 14)) };
  if (/^week\b/u.test(after)) return { end: end + 1, date: one(addDays(future, 7)) };
  while (/^(?:morning|afternoon|evening|night|lunchtime|noon|lunch)$/u.test(items[end]?.text ?? '')) end += 1;
  return { end, date: { tag: 'date', past, future } };
};
/** The nearest days of the month that fall on that weekday, two months either way. */
function thatDay(day: number, weekdayOfIt: number, today: LocalDate): DateSense | undefined {
  const dates = [-2, -1, 0, 1, 2].flatMap((back) => {
    const index = Number(today.slice(0, 4)) * 12 + Number(today.slice(5, 7)) - 1 + back;
    const date = dateOf(Math.floor(index / 12), (index % 12) + 1, day);
    return date !== undefined && weekdayOf(date) === weekdayOfIt ? [date] : [];
  });
  const past = dates.filter((date) => date <= today).at(-1);
  const future = dates.find((date) => date >= today);
  const only = past ?? future;
  return only === undefined ? undefined : { tag: 'date', past: past ?? only, future: future ?? only };
}
const wordSpan = (items: readonly Item[], at: number, phrase: string): number =>
  items[at]?.text === phrase ? 1 : 2;
/** That day of the week before this one, weeks starting on Monday. */
function lastWeek(day: number, today: LocalDate): LocalDate {
  const monday = addDays(today, -((weekdayOf(today) + 6) % 7));
  return addDays(monday, -7 + ((day + 6) % 7));
}

/** "3 days ago", "two weeks ago", "a month ago", "in two weeks". */
const ago: Reader = (items, at, today) => {
  const lead = items[at]?.text === 'in' ? 1 : 0;
  const value = sense(items[at + lead], 'value');
  if (!value || (value.code !== 'days' && value.code !== 'months')) return undefined;
  const days = Math.min(36_500, Math.round(value.value * (value.code === 'months' ? 30 : 1)));
  const next = items[at + lead + 1];
  if (lead === 1) return { end: at + 2, date: one(addDays(today, days)) };
  return next?.text === 'ago' || next?.text === 'back'
    ? { end: at + 2, date: one(addDays(today, -days)) }
    : undefined;
};

function monthAt(items: readonly Item[], at: number): number | undefined {
  const month = calendar(items[at]);
  return month?.code === 'month' ? month.n + 1 : undefined;
}
const ORDINAL = /^(?:st|nd|rd|th)$/u;
function dayNumber(
  items: readonly Item[],
  at: number,
): { day: number; end: number; ordinal: boolean } | undefined {
  // "1 st" may be one item: the first one
  const joined = /^(\d{1,2}) (?:st|nd|rd|th)$/u.exec(items[at]?.text ?? '');
  if (joined) return { day: Number(joined[1]), end: at + 1, ordinal: true };
  const day = figure(items[at]);
  if (
    day === undefined ||
    !Number.isInteger(day) ||
    day < 1 ||
    day > 31 ||
    !/^\d/u.test(items[at]?.text ?? '')
  )
    return undefined;
  const ordinal = ORDINAL.test(items[at + 1]?.text ?? '') && !(items[at + 1]?.gap ?? true);
  return { day, end: at + (ordinal ? 2 : 1), ordinal };
}
function nearYear(month: number, day: number, today: LocalDate): DateSense | undefined {
  const year = Number(today.slice(0, 4));
  const dates = [year - 1, year, year + 1]
    .map((y) => dateOf(y, month, day))
    .filter((date) => date !== undefined);
  const past = dates.filter((date) => date <= today).at(-1);
  const future = dates.find((date) => date >= today);
  return past !== undefined && future !== undefined ? { tag: 'date', past, future } : undefined;
}
const yearAt = (items: readonly Item[], at: number): number | undefined =>
  /^20\d\d$/u.test(items[at]?.text ?? '') ? Number(items[at]?.text) : undefined;

function named(
  month: number,
  day: number,
  end: number,
  items: readonly Item[],
  today: LocalDate,
): DateRead | undefined {
  const comma = items[end]?.text === ',' ? 1 : 0;
  const year = yearAt(items, end + comma);
  const date = year === undefined ? nearYear(month, day, today) : dateOf(year, month, day);
  if (date === undefined) return undefined;
  return typeof date === 'string' ? { end: end + comma + 1, date: one(date) } : { end, date };
}

/** "4 March", "the 4th of March", "March 4th". */
const dayMonth: Reader = (items, at, today) => {
  const day = dayNumber(items, at);
  if (day) {
    const of = items[day.end]?.text === 'of' ? 1 : 0;
    const month = monthAt(items, day.end + of);
    return month === undefined ? undefined : named(month, day.day, day.end + of + 1, items, today);
  }
  const month = monthAt(items, at);
  const later =
    month === undefined ? undefined : dayNumber(items, at + (items[at + 1]?.text === 'the' ? 2 : 1));
  return month === undefined || !later ? undefined : named(month, later.day, later.end, items, today);
};

/** "2026-03-09", "9.3.", "9/3/26"; day first unless only the other order is a date. */
const digits: Reader = (items, at, today) => {
  const parts = items.slice(at, at + 5);
  const [a, sep, b, sep2, c] = parts.map((item) => item.text);
  if (/^\d{4}$/u.test(a ?? '') && sep === '-' && sep2 === '-') {
    const date = dateOf(Number(a), Number(b), Number(c));
    return date === undefined ? undefined : { end: at + 5, date: one(date) };
  }
  const dotted = /^(\d{1,2})[.](\d{1,2})(?:[.](\d{2,4}))?$/u.exec(a ?? '');
  if (dotted && (dotted[3] !== undefined || sep === '.') && isFn(items[at - 1], 'on', 'until', 'by', 'since'))
    return short(Number(dotted[1]), Number(dotted[2]), dotted[3], at + 1, today);
  if (sep !== '/' || !/^\d{1,2}$/u.test(a ?? '') || !/^\d{1,2}$/u.test(b ?? '') || (parts[1]?.gap ?? true))
    return undefined;
  const year = sep2 === '/' && /^\d{2,4}$/u.test(c ?? '') ? c : undefined;
  if (year === undefined && !isFn(items[at - 1], 'on', 'until', 'by', 'since') && !headsLine(items, at))
    return undefined;
  return short(Number(a), Number(b), year, at + (year === undefined ? 3 : 5), today);
};
/** "3/6: replaced …": what a line of a log opens with. */
const headsLine = (items: readonly Item[], at: number): boolean =>
  (at === 0 || /^(?:\n|[.;\u2022])$/u.test(items[at - 1]?.text ?? '')) &&
  /^[:,-]$/u.test(items[at + 3]?.text ?? '');
/** A day and a month whose order cannot be told: the nearer one, where the other one is far away. */
const NEAR_DAYS = 45;
const daysApart = (a: LocalDate, b: LocalDate): number =>
  Math.abs(Date.parse(a) - Date.parse(b)) / 86_400_000;
function eitherOrder(day: number, month: number, today: LocalDate): DateSense | undefined {
  const first = nearYear(month, day, today);
  const other = day <= 12 ? nearYear(day, month, today) : undefined;
  if (!first || !other) return first;
  const nearer = (a: LocalDate, b: LocalDate): LocalDate =>
    daysApart(a, today) > NEAR_DAYS && daysApart(b, today) <= NEAR_DAYS ? b : a;
  return { tag: 'date', past: nearer(first.past, other.past), future: nearer(first.future, other.future) };
}
function short(
  day: number,
  month: number,
  year: string | undefined,
  end: number,
  today: LocalDate,
): DateRead | undefined {
  const [d, m] = month > 12 ? [month, day] : [day, month];
  if (year === undefined) {
    const date = eitherOrder(d, m, today);
    return date ? { end, date } : undefined;
  }
  const date = dateOf(year.length === 2 ? 2000 + Number(year) : Number(year), m, d);
  return date === undefined ? undefined : { end, date: one(date) };
}

/** "on the 3rd": this month's or the nearest. */
const ofTheMonth: Reader = (items, at, today) => {
  const day = dayNumber(items, at);
  if (!day?.ordinal || items[at - 1]?.text !== 'the') return undefined;
  const month = (back: number): LocalDate | undefined => {
    const index = Number(today.slice(0, 4)) * 12 + Number(today.slice(5, 7)) - 1 + back;
    return dateOf(Math.floor(index / 12), (index % 12) + 1, day.day);
  };
  const dates = [-2, -1, 0, 1, 2].map(month).filter((date) => date !== undefined);
  const past = dates.filter((date) => date <= today).at(-1);
  const future = dates.find((date) => date >= today);
  return past !== undefined && future !== undefined
    ? { end: day.end, date: { tag: 'date', past, future } }
    : undefined;
};

/** "next day", "the day after that", "two days later", "the day before": counted from the day said last. */
const FROM_LAST: readonly (readonly [RegExp, number])[] = [
  [/^(?:on |by )?the day after that\b/u, 1],
  [/^(?:on |by )?the day after\b(?! tomorrow)/u, 1],
  [/^(?:on )?(?:the )?(?:next|following) (?:day|morning|afternoon|evening)\b/u, 1],
  [/^(?:a|one) day (?:later|after(?:wards)?)\b/u, 1],
  [/^(?:a couple of|two|2) days (?:later|after(?:wards)?|after that)\b/u, 2],
  [/^(?:three|3) days (?:later|after(?:wards)?|after that)\b/u, 3],
  [/^(?:a|one) week (?:later|after(?:wards)?|after that)\b/u, 7],
  [/^(?:on )?the day before that\b/u, -1],
  [/^(?:on )?the day before\b(?! yesterday)/u, -1],
  [/^(?:on )?(?:the )?(?:previous|preceding|prior) day\b/u, -1],
  [/^(?:a|one) day (?:earlier|before)\b/u, -1],
  [/^(?:two|2) days (?:earlier|before(?: that)?)\b/u, -2],
];
const LONGEST_FROM_LAST = 5;
function fromLast(items: readonly Item[], at: number, last: DateSense | undefined): DateRead | undefined {
  if (last === undefined || last.vague || !OPENS_FROM_LAST.test(items[at]?.text ?? '')) return undefined;
  const text = items.slice(at, at + LONGEST_FROM_LAST).map((item) => item.text).join(' '); // prettier-ignore
  for (const [pattern, days] of FROM_LAST) {
    const hit = pattern.exec(text)?.[0];
    const end = hit === undefined ? undefined : endOf(items, at, hit.split(' ').length);
    if (end !== undefined)
      return {
        end,
        date: {
          tag: 'date',
          past: addDays(last.past, days),
          future: addDays(last.future, days),
          counted: true,
        },
      };
  }
  return undefined;
}
const OPENS_FROM_LAST = /^(?:on|by|the|next|following|a|one|two|three|[123]|previous)\b/u;
/** The item after so many words; none where an item holds more than they do. */
function endOf(items: readonly Item[], at: number, count: number): number | undefined {
  let seen = 0;
  for (let i = at; i < items.length && seen <= count; i += 1) {
    if (seen === count) return i;
    seen += items[i]?.text.split(' ').length ?? 0;
  }
  return seen === count ? items.length : undefined;
}

const READERS: readonly Reader[] = [
  readStretch,
  relative,
  weekdays,
  dayMonth,
  digits,
  ofTheMonth,
  ago,
  vague,
];
const CHRONO_WINDOWS = 8;
const CHRONO_REACH = 40;

/** For what no rule of ours read: a month's name with a number near it. */
function byChrono(items: readonly Item[], at: number, today: LocalDate): DateRead | undefined {
  const near = items.slice(Math.max(0, at - 2), at + 3);
  if (!near.some((item) => /^\d/u.test(item.text))) return undefined;
  const window = near.map((item) => item.text).join(' ').slice(0, CHRONO_REACH); // prettier-ignore
  const instant = new Date(`${today}T12:00:00Z`);
  const start = GB.parse(window, { instant, timezone: 0 })[0]?.start;
  if (!start?.isCertain('day') || !start.isCertain('month')) return undefined;
  const date = nearYear(start.get('month') ?? 0, start.get('day') ?? 0, today);
  return date ? { end: at + 1, date } : undefined;
}

/** Most items open no date: looked at once before the readers are tried. */
const mayOpenDate = (items: readonly Item[], at: number): boolean => {
  const item = items[at];
  return (
    item !== undefined &&
    (/^(?:\d|on|in|last|past|next|this|previous|coming|the|over|at)/u.test(item.text) ||
      item.senses.some((s) => s.tag === 'calendar' || s.tag === 'value'))
  );
};

export function readDates(items: readonly Item[], today: LocalDate): Item[] {
  const out: Item[] = [];
  let windows = 0;
  let last: DateSense | undefined;
  for (let at = 0; at < items.length;) {
    const item = items[at];
    if (!item) break;
    let read: DateRead | undefined = fromLast(items, at, last);
    if (!read && mayOpenDate(items, at)) for (const reader of READERS) read ??= reader(items, at, today);
    if (
      !read &&
      calendar(item)?.code === 'month' &&
      item.text !== 'may' &&
      item.text !== 'mar' &&
      windows < CHRONO_WINDOWS
    ) {
      windows += 1;
      read = byChrono(items, at, today);
    }
    if (!read) {
      out.push(item);
      at += 1;
      continue;
    }
    const span = items.slice(at, read.end);
    if (!read.date.vague) last = read.date;
    // What a question is about may stand in its time words: "overnight".
    const asked = sensesOf(span, 'cue').filter(({ code }) => code === 'long-job');
    out.push(joinedItem(items, at, read.end, [asSense(read.date), ...asked], item.said));
    at = read.end;
  }
  return out;
}

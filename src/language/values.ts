/**
 * Stage 4. Numbers with their units become single items. Figures that are not running time (bore, speed,
 * temperature, layers, screw sizes) are read first as `other`, so that they can never become hours.
 */
import {
  asSense,
  hasTag,
  isFn,
  isThing,
  isVerb,
  type Item,
  joinedItem,
  makeItem,
  sense,
  type Sense,
  withSenses,
} from './item.ts';
import type { Unit } from './senses.ts';
import { opensWithDigit } from './tokens.ts';

/** As short words these are also something else ("in", "a", "x"): a unit only right behind the figure. */
const GLUED = new Set([
  'a',
  'in',
  'x',
  'f',
  'l',
  's',
  'w',
  'n',
  'v',
  'c',
  'k',
  'bar',
  'off',
  'pc',
  'set',
  'sets',
  'pm',
  'am',
]);

function parseNumber(text: string): number | undefined {
  if (/^\d{1,3}(?:[.,]\d{3})+$/u.test(text) && !text.startsWith('0'))
    return Number(text.replace(/[.,]/gu, ''));
  // "4,133.2", "4.133,2": one mark sets off thousands, the other the decimals.
  if (/^\d{1,3}(?:,\d{3})+\.\d+$/u.test(text)) return Number(text.replace(/,/gu, ''));
  if (/^\d{1,3}(?:\.\d{3})+,\d+$/u.test(text)) return Number(text.replace(/\./gu, '').replace(',', '.'));
  if (/^\d*[.,]?\d+$/u.test(text)) return Number(text.replace(',', '.'));
  return undefined;
}

/** A digit, a point or an x: what a figure opens with. */
const mayBeFigure = (text: string): boolean =>
  opensWithDigit(text) || text.startsWith('.') || text.startsWith('x');

/** The figure that an item is by itself. */
export function figure(item: Item | undefined): number | undefined {
  if (!item) return undefined;
  const word = sense(item, 'number');
  if (word) return word.value;
  return mayBeFigure(item.text) && /^x?[\d.]/u.test(item.text)
    ? parseNumber(item.text.replace(/^x(?=\d{1,3}$)/u, ''))
    : undefined;
}

const figureOf = (code: Unit | 'bare', value: number): Sense => asSense({ tag: 'value', code, value });

interface Read {
  end: number;
  unit: Unit | 'bare';
  value: number;
  each?: true;
}

function unitAt(items: readonly Item[], at: number): Unit | undefined {
  const item = items[at];
  if (!item) return undefined;
  const unit = sense(item, 'unit');
  if (!unit || unit.code === 'count') return undefined;
  const digits = /\d$/u.test(items[at - 1]?.text ?? '');
  if (GLUED.has(item.text) && (item.gap || !digits)) return undefined;
  // "20 pounds": money, unless filament is weighed.
  if (unit.code === 'pounds' && item.text.startsWith('pound') && !weighs(items, at)) return 'other';
  if (
    unit.code === 'days' &&
    item.text === 'd' &&
    !item.gap &&
    (items[at + 1]?.text.startsWith('print') ?? false)
  )
    return undefined;
  return unit.code;
}

/** "a pound of petg", "2 pound spool": what is weighed stands behind. */
const weighs = (items: readonly Item[], at: number): boolean =>
  items
    .slice(at + 1, at + 5)
    .some(
      (item, i) =>
        hasTag(item, 'material') ||
        isThing(item, 'spool') ||
        (i > 0 && hasTag(item, 'part') && /filament/u.test(item.text)),
    );

const HOURS: Readonly<Partial<Record<Unit, number>>> = {
  hours: 1,
  minutes: 1 / 60,
  seconds: 1 / 3600,
  days: 24,
  weeks: 168,
};

/** "6 h 30", "127 d 6 h", "2 hours and 15 minutes", "6 h 30 m". */
function duration(items: readonly Item[], at: number): Read | undefined {
  let total = 0;
  let end = at;
  let finest = Infinity;
  let first: Unit | undefined;
  for (let i = at; i < items.length;) {
    const value = figure(items[i]);
    if (value === undefined) break;
    let unit = unitAt(items, i + 1);
    if (first !== undefined && unit === 'metres') unit = 'minutes';
    if (unit === undefined && first === 'hours' && !(items[i]?.gap ?? true) && value < 60) {
      total += value / 60;
      end = i + 1;
      break;
    }
    if (
      unit === undefined &&
      first === 'hours' &&
      /^[0-5]\d$/u.test(items[i]?.text ?? '') &&
      endsThere(items[i + 1])
    ) {
      total += value / 60;
      end = i + 1;
      break;
    }
    const scale = unit === undefined ? undefined : HOURS[unit];
    if (unit === undefined || scale === undefined || scale >= finest) break;
    if (first === undefined) first = unit;
    total += value * scale;
    finest = scale;
    end = i + 2;
    i = end;
    if (isFn(items[i], 'with') || hasTag(items[i], 'joint') || items[i]?.text === ',')
      i += figure(items[i + 1]) !== undefined && unitAt(items, i + 2) ? 1 : 0;
  }
  if (first === undefined || end === at) return undefined;
  if (end === at + 2 && (first === 'days' || first === 'weeks')) return undefined;
  return { end, unit: 'hours', value: total };
}

/** "9 h 20, 310 g": two figures after the hours and nothing more are minutes. */
const endsThere = (next: Item | undefined): boolean => next === undefined || /^[,.;]$/u.test(next.text);

/** "6:30" as a span or a time of day: the frames decide, the figure is kept as hours. */
function clock(items: readonly Item[], at: number): Read | undefined {
  const hours = figure(items[at]);
  const minutes = figure(items[at + 2]);
  if (items[at + 1]?.text !== ':' || hours === undefined || minutes === undefined) return undefined;
  if (
    (items[at + 1]?.gap ?? true) ||
    (items[at + 2]?.gap ?? true) ||
    !/^\d\d$/u.test(items[at + 2]?.text ?? '')
  )
    return undefined;
  if (minutes >= 60) return undefined;
  const hourWord = unitAt(items, at + 3) === 'hours';
  // "11:30 of printing": how long, and no time of day
  if (items[at + 3]?.text === 'of' && isVerb(items[at + 4], 'print', 'run'))
    return { end: at + 3, unit: 'hours', value: hours + minutes / 60 };
  return { end: at + (hourWord ? 4 : 3), unit: hourWord ? 'hours' : 'clock', value: hours + minutes / 60 };
}

/** "2 x 3 h", "three 2-hour prints". */
function times(items: readonly Item[], at: number): Read | undefined {
  const count = figure(items[at]);
  if (count === undefined || !Number.isInteger(count) || count > 50) return undefined;
  const next = items[at + 1];
  const skip = next?.text === 'x' || next?.text === '*' ? 2 : 1;
  const inner = figure(items[at + skip]) === undefined ? undefined : duration(items, at + skip);
  if (!inner || (skip === 1 && !(items[at + skip]?.gap ?? false))) return undefined;
  const follows = items[inner.end];
  if (skip === 1 && !hasTag(follows, 'thing') && !/^(?:print|run|job)/u.test(follows?.text ?? ''))
    return undefined;
  return { ...inner, value: inner.value * count };
}

/** "2-3 h", "2 to 3 hours", "5 or 6 h": no figure can be taken. */
function range(items: readonly Item[], at: number): Read | undefined {
  const middle = items[at + 1];
  const dash =
    middle?.text === '-' ||
    isFn(middle, 'or') ||
    (middle?.text === 'to' && figure(items[at - 1]) === undefined);
  if (!dash || figure(items[at]) === undefined || figure(items[at + 2]) === undefined) return undefined;
  const unit = unitAt(items, at + 3);
  return unit === undefined ? undefined : { end: at + 4, unit: 'range', value: figure(items[at]) ?? 0 };
}

/** "printed 10:00-13:30": hours between two times; where nothing ran, only times. */
function betweenTimes(items: readonly Item[], at: number): Read | undefined {
  const start = clock(items, at);
  if (start?.unit !== 'clock' || items[start.end]?.text !== '-') return undefined;
  const stop = clock(items, start.end + 1);
  if (stop?.unit !== 'clock') return undefined;
  const ran = items
    .slice(Math.max(0, at - 2), at)
    .some((item) =>
      item.senses.some(
        (s) => s.tag === 'verb' && (s.code === 'run' || s.code === 'print') && s.form !== 'base',
      ),
    );
  const gap = stop.value - start.value;
  return { end: stop.end, unit: ran ? 'hours' : 'other', value: gap > 0 ? gap : gap + 24 };
}

/** "from 8 to 2:30", "from 9 till 5": hours between two times of day. */
function fromTo(items: readonly Item[], at: number): Read | undefined {
  if (!/(?:^| )from$/u.test(items[at - 1]?.text ?? '')) return undefined;
  const end = (i: number): Read | undefined => clock(items, i) ?? timeOfDay(items, i);
  const start = end(at);
  if (!start) return undefined;
  // "from nine this morning till half past two"
  const turn = hasTag(items[start.end], 'calendar') ? start.end + 1 : start.end;
  if (!/^(?:to|till|til|until|-)$/u.test(items[turn]?.text ?? '')) return undefined;
  const stop = end(turn + 1);
  if (!stop || start.value >= 24 || stop.value >= 25) return undefined;
  const gap = stop.value - start.value;
  const value = gap > 0 ? gap : gap + 12 > 0 ? gap + 12 : gap + 24;
  return { end: stop.end, unit: 'hours', value };
}
function timeOfDay(items: readonly Item[], at: number): Read | undefined {
  const part = PARTS_OF_HOUR.find(([words]) => items[at]?.text === words);
  const named = part === undefined ? undefined : figure(items[at + 1]);
  if (part && named !== undefined) return { end: at + 2, unit: 'clock', value: named + part[1] };
  const noon = NAMED_HOURS[items[at]?.text ?? ''];
  if (noon !== undefined) return { end: at + 1, unit: 'clock', value: noon };
  const value = figure(items[at]);
  if (value === undefined || !Number.isInteger(value) || value > 24) return undefined;
  const half = items[at + 1]?.text;
  if (unitAt(items, at + 1) !== undefined && half !== 'am' && half !== 'pm') return undefined;
  if (half !== 'am' && half !== 'pm') return { end: at + 1, unit: 'clock', value };
  return { end: at + 2, unit: 'clock', value: half === 'pm' && value < 12 ? value + 12 : value };
}

/** Noon and midnight by their names. */
const NAMED_HOURS: Readonly<Record<string, number>> = { noon: 12, midday: 12, midnight: 24, lunchtime: 12 };
const PARTS_OF_HOUR: readonly (readonly [string, number])[] = [
  ['half', 0.5],
  ['quarter to', -0.25],
  ['half past', 0.5],
  ['quarter past', 0.25],
];

const WEIGHT: Readonly<Partial<Record<Unit, readonly [Unit, number]>>> = {
  kilograms: ['grams', 1000],
  ounces: ['grams', 28.3495],
  pounds: ['grams', 453.592],
  minutes: ['hours', 1 / 60],
  weeks: ['days', 7],
  seconds: ['other', 1],
  years: ['days', 365],
};

function withUnit(items: readonly Item[], at: number): Read | undefined {
  const value = figure(items[at]);
  if (value === undefined) return undefined;
  if (items[at + 1]?.text === 'k' && !(items[at + 1]?.gap ?? true)) {
    const unit = unitAt(items, at + 2);
    return { end: at + (unit ? 3 : 2), unit: unit ?? 'bare', value: value * 1000 };
  }
  const unit = unitAt(items, at + 1);
  if (unit === undefined) return undefined;
  const [plainUnit, scale] = WEIGHT[unit] ?? [unit, 1];
  return { end: at + 2, unit: plainUnit, value: value * scale };
}

/** "2 350": thousands set off by a space, in front of a unit or after a counter's name. */
function spaced(items: readonly Item[], at: number): Read | undefined {
  const [head, tail] = [items[at]?.text ?? '', items[at + 1]?.text ?? ''];
  if (!/^[1-9]\d?$/u.test(head) || !/^\d{3}$/u.test(tail) || !(items[at + 1]?.gap ?? false)) return undefined;
  const unit = unitAt(items, at + 2);
  return unit === 'hours' || unit === 'grams' ? { end: at + 3, unit, value: Number(head + tail) } : undefined;
}

/** "half an hour", "an hour and a half", "quarter of an hour", "2 and a half hours", "1 1/2 h". */
function halves(items: readonly Item[], at: number): Read | undefined {
  const text = items.slice(at, at + 6).map((item) => item.text).join(' '); // prettier-ignore
  if (!OPENS_FRACTION.test(text)) return wholeAndHalf(items, at);
  for (const [pattern, words, value] of FRACTIONS)
    if (pattern.test(text)) return { end: at + wordsIn(items, at, words), unit: 'hours', value };
  for (const [pattern, part] of PARTS_OF_MASS) {
    const hit = pattern.exec(text);
    const end = hit === null ? at : at + wordsIn(items, at, hit[0]);
    const scale = hit?.[1] === undefined ? undefined : MASSES[hit[1]];
    if (hit && scale !== undefined && (!hit[1]?.startsWith('pound') || weighs(items, end - 1)))
      return { end, unit: 'grams', value: part * scale };
  }
  return wholeAndHalf(items, at);
}
/** "2 and a half hours", "1 1/2 h", "3 hours and a quarter". */
function wholeAndHalf(items: readonly Item[], at: number): Read | undefined {
  const whole = figure(items[at]);
  if (whole === undefined || !/^(?:h|and|1|\.5)/u.test(items[at + 1]?.text ?? '')) return undefined;
  const rest = items.slice(at + 1, at + 7).map((item) => item.text).join(' '); // prettier-ignore
  const quarters = /^(?:hours?|hrs?|h) and (a quarter|three quarters)/u.exec(rest);
  if (quarters)
    return {
      end: at + 1 + wordsIn(items, at + 1, quarters[0]),
      unit: 'hours',
      value: whole + (quarters[1] === 'a quarter' ? 0.25 : 0.75),
    };
  const tail =
    /^(?:hours?|hrs?|h) and a half|^and a half (?:hours?|hrs?|h)\b|^1 \/ 2 (?:hours?|hrs?|h)\b|^\.5 (?:hours?|hrs?|h)\b/u.exec(
      rest,
    )?.[0];
  return tail === undefined
    ? undefined
    : { end: at + 1 + wordsIn(items, at + 1, tail), unit: 'hours', value: whole + 0.5 };
}
const MASSES: Readonly<Record<string, number>> = {
  kilo: 1000,
  kg: 1000,
  kilogram: 1000,
  kilogramme: 1000,
  pound: 453.592,
  lb: 453.592,
};
const MASS = `(${Object.keys(MASSES).join('|')})`;
const PARTS_OF_MASS: readonly (readonly [RegExp, number])[] = [
  [new RegExp(`^(?:a )?half (?:an? )?${MASS}\\b`, 'u'), 0.5],
  [new RegExp(`^(?:a )?quarter (?:of )?(?:an? )?${MASS}\\b`, 'u'), 0.25],
  [new RegExp(`^three quarters of an? ${MASS}\\b`, 'u'), 0.75],
  [new RegExp(`^(?:an? )?${MASS} and a half\\b`, 'u'), 1.5],
  [new RegExp(`^(?:an? )?${MASS} and a quarter\\b`, 'u'), 1.25],
];
const FRACTIONS: readonly (readonly [RegExp, string, number])[] = [
  [/^an? hour and a half/u, 'an hour and a half', 1.5],
  [/^an? hour and a quarter/u, 'an hour and a quarter', 1.25],
  [/^half an? hour/u, 'half an hour', 0.5],
  [/^a half hour/u, 'a half hour', 0.5],
  [/^(?:three quarters of an hour|3 \/ 4 of an hour)/u, 'three quarters of an hour', 0.75],
  [/^a quarter of an hour/u, 'a quarter of an hour', 0.25],
  [/^quarter of an hour/u, 'quarter of an hour', 0.25],
  [/^half a day/u, 'half a day', 12],
  [/^a? ?full hour\b/u, 'full hour', 1],
  [/^an hour\b/u, 'an hour', 1],
];

/** One look settles it for nearly every figure. */
const OPENS_FRACTION = new RegExp(
  [...FRACTIONS, ...PARTS_OF_MASS].map(([{ source }]) => source).join('|'),
  'u',
);

/** How many items hold the words of `phrase`, from `at`. */
function wordsIn(items: readonly Item[], at: number, phrase: string): number {
  const wanted = phrase.split(' ').length;
  let seen = 0;
  let i = at;
  while (seen < wanted && i < items.length) {
    seen += (items[i]?.text ?? '').split(' ').length;
    i += 1;
  }
  return i - at;
}

/** "a kilo of petg", "a week", "another fortnight". */
function article(items: readonly Item[], at: number): Read | undefined {
  const mass = oneMass(items, at);
  if (mass) return mass;
  if (items[at]?.text === 'fortnight') return { end: at + 1, unit: 'days', value: 14 };
  if (items[at]?.text === 'a' && items[at + 1]?.text === 'fortnight')
    return { end: at + 2, unit: 'days', value: 14 };
  if (!/^(?:a|an|another|one more|1)$/u.test(items[at]?.text ?? '')) return undefined;
  const last = SIZED.test(items[at + 1]?.text ?? '') ? at + 2 : at + 1;
  const unit = sense(items[last], 'unit')?.code;
  const [code, scale] = unit === undefined ? [undefined, 1] : (WEIGHT[unit] ?? [unit, 1]);
  if (code === 'days' || code === 'months') {
    return (items[last]?.text.length ?? 0) < 2 ? undefined : { end: last + 1, unit: code, value: scale };
  }
  return undefined;
}

/** "a kilo of petg", "a whole new kilo", "a pound of pla": one, however it is praised. */
function oneMass(items: readonly Item[], at: number): Read | undefined {
  let end = at;
  if (/^(?:a|an|another|one more|1)$/u.test(items[end]?.text ?? '')) end += 1;
  while (SIZED.test(items[end]?.text ?? '') || (end > at && isFn(items[end], 'new'))) end += 1;
  const unit = sense(items[end], 'unit')?.code;
  const [code, scale] = (unit === undefined ? undefined : WEIGHT[unit]) ?? [];
  if (code !== 'grams' || scale === undefined || (items[end]?.text.length ?? 0) < 2) return undefined;
  if (unit === 'pounds' && !weighs(items, end)) return undefined;
  return end > at || items[end + 1]?.text === 'of' ? { end: end + 1, unit: code, value: scale } : undefined;
}
const SIZED = /^(?:whole|full|entire|complete|solid|good)$/u;

/** Figures that name a thing: "layer 40", "m3", "0.4 nozzle", "act two". */
function ordinal(items: readonly Item[], at: number): Read | undefined {
  const before = items[at - 1]?.text ?? '';
  const value = figure(items[at]);
  if (
    value === undefined ||
    !/^(?:layer|layers|act|scene|room|page|version|v|step|chapter|floor|level)$/u.test(before)
  )
    return undefined;
  return { end: at + 1, unit: 'other', value };
}

/** In order: what is more particular comes first. */
const READERS: readonly ((items: readonly Item[], at: number) => Read | undefined)[] = [
  ordinal, halves, fromTo, betweenTimes, range, times, spaced, clock, duration, withUnit, article,
]; // prettier-ignore

/** "idlers +2", "bearings -4": a change of what is on the shelf. */
function signed(items: readonly Item[], at: number): number | undefined {
  const [item, next] = [items[at], items[at + 1]];
  const behind = items[at - 1]?.text === ':' ? items[at - 2] : items[at - 1];
  if (
    !item?.gap ||
    (item.text !== '+' && item.text !== '-') ||
    next?.gap !== false ||
    !hasTag(behind, 'part')
  )
    return undefined;
  const value = /^\d{1,3}$/u.test(next.text) ? Number(next.text) : undefined;
  return unitAt(items, at + 2) === undefined ? value : undefined;
}

/** "ten hardened 0.4s": nozzles of that size, and no seconds. */
function boresAt(items: readonly Item[], at: number): Item | undefined {
  const [item, next] = [items[at], items[at + 1]];
  const text = item?.text ?? '';
  const value = opensWithDigit(text) && /^[01][.,]\d{1,2}$/u.test(text) ? figure(item) : undefined;
  if (!item || !next || value === undefined || value >= 2) return undefined;
  const bores = (next.text === 's' && !next.gap) || next.text === "'s";
  return bores
    ? makeItem(item.text, item.from, next.to, [figureOf('bare', value)], item.gap, item.said)
    : undefined;
}

export function readValues(items: readonly Item[]): Item[] {
  const out: Item[] = [];
  for (let at = 0; at < items.length;) {
    const item = items[at];
    if (!item) break;
    const change = signed(items, at);
    if (change !== undefined) {
      out.push(joinedItem(items, at, at + 2, [figureOf('bare', change)]));
      at += 2;
      continue;
    }
    const bore = boresAt(items, at);
    if (bore) {
      out.push(bore);
      at += 2;
      continue;
    }
    const read = hasTag(item, 'machine') ? undefined : firstRead(items, at);
    if (read) {
      out.push(joinedItem(items, at, read.end, [figureOf(read.unit, read.value)]));
      at = read.end;
      continue;
    }
    const value = hasTag(item, 'machine') ? undefined : figure(item);
    out.push(value === undefined ? item : withSenses(item, ...item.senses, figureOf('bare', value)));
    at += 1;
  }
  return out;
}

function firstRead(items: readonly Item[], at: number): Read | undefined {
  const text = items[at]?.text ?? '';
  if (
    !opensWithDigit(text) &&
    !text.startsWith('.') &&
    !hasTag(items[at], 'number') &&
    !/^(?:a|an|half|three|another|one more|full|entire|complete|quarter|fortnight|kilo|kg|pound|whole)\b/u.test(
      text,
    )
  )
    return undefined;
  for (const reader of READERS) {
    const read = reader(items, at);
    if (read) return read;
  }
  return undefined;
}

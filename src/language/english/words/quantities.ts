/** Number words, units and the words of the calendar. */
import type { Unit } from '../../senses.ts';

const TENS = ['twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];
const ONES = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
const TEENS = [
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
];

/** "twenty five" is one number; "a couple", "a dozen" too. */
export const NUMBER_WORDS: readonly (readonly [word: string, value: number])[] = [
  ...ONES.map((word, i) => [word, i + 1] as const),
  ...TEENS.map((word, i) => [word, i + 10] as const),
  ...TENS.map((word, i) => [word, (i + 2) * 10] as const),
  ...TENS.flatMap((tens, i) => ONES.map((one, j) => [`${tens} ${one}`, (i + 2) * 10 + j + 1] as const)),
  ['fourty', 40], ['a hundred', 100], ['one hundred', 100], ['hundred', 100], ['two hundred', 200], ['three hundred', 300], ['five hundred', 500],
  ['a couple', 2], ['a couple of', 2], ['couple of', 2], ['couple', 2], ['a pair of', 2], ['pair of', 2], ['a pair', 2], ['half a dozen', 6],
  ['a dozen', 12], ['dozen', 12], ['two dozen', 24], ['zero', 0], ['a single', 1], ['single', 1], ['a trio of', 3], ['a half dozen', 6],
  ['a thousand', 1000], ['thousand', 1000], ['one and a half', 1.5], ['two and a half', 2.5], ['three and a half', 3.5], ['four and a half', 4.5],
  ['five and a half', 5.5], ['six and a half', 6.5], ['seven and a half', 7.5], ['eight and a half', 8.5], ['nine and a half', 9.5], ['ten and a half', 10.5],
  ['twelve and a half', 12.5], ['eleven and a half', 11.5],
]; // prettier-ignore

export const UNIT_WORDS: Readonly<Record<Exclude<Unit, 'range' | 'clock'>, string>> = {
  hours:
    "h, hr, hrs, hour, hours, hs, hour 's, print hours, running hours, machine hours, hours of printing, print hour, hours of print time, run hours, hours runtime, hours of running, working hours, hrs., run hrs, running hrs, print hrs, printing hours, printing hrs, more hours, more hrs, more h, further hours, extra hours, additional hours, more print hours, more run hours, more running hours, more run hrs, hours more, hrs more, h more, hours of run time, hours of runtime, hours of use, machine hrs, hours printing, hours running, hours on the clock",
  minutes: 'min, mins, minute, minutes, mn',
  seconds: 's, sec, secs, second, seconds',
  days: 'd, day, days, night, nights, working days, more days, further days, days more, extra days, more day',
  weeks: 'week, weeks, wk, wks, w, more weeks, more week, weeks more, further weeks, extra weeks, extra week',
  months: 'month, months, mth, mths',
  years: 'year, years, yr, yrs',
  grams: 'g, gram, grams, gr, gramme, grammes, gms, gm',
  ounces: 'oz, ozs, ounce, ounces',
  /** Money too: of filament only where it is named (`values.ts`). */
  pounds: 'lb, lbs, lb., lbs., pound, pounds',
  kilograms: 'kg, kgs, kilo, kilos, kilogram, kilograms, kilogramme',
  metres: 'm, metre, metres, meter, meters, mtr, mtrs',
  other:
    "ml, millilitre, millilitres, milliliters, cl, mm, cm, mm/s, mms, mm s, millimetre, millimetres, millimeter, millimeters, micron, microns, um, degree, degrees, deg, c, °, °c, celsius, %, percent, per cent, hz, hertz, n, newton, newtons, nm, v, volt, volts, w, watt, watts, layer, layers, wall, walls, perimeters, infill, rpm, bar, x, m2, sqm, euro, euros, eur, dollars, bucks, $, €, £, quid, inch, inches, in, litre, litres, l, ml, amps, a, turn, turns, clicks, times, pages, people, seats, tickets, guests, copies, db, kb, mb, gb, lumens, chairs, points, pm, am, o 'clock, steps, teeth, notches, rpm, f, fahrenheit, centimetres, centimeters, centimetre, pc of, acts, kelvin, ohm, ohms, amp, kw, kwh, mph, km, miles",
  count:
    'off, pcs, pieces, pc, each, units, of them, x, packs, pack, packets, packet, spools, rolls, reels, bottles, bottle, cans, can, tubes, tins, tin, boxes, box, sets, set, bags, bag, litre bottles',
};

export const WEEKDAYS = 'sunday|monday|tuesday|wednesday|thursday|friday|saturday'.split('|');
export const WEEKDAY_WORDS: readonly string[] = [
  'sunday, sundays', 'monday, mon, mondays, mon.', 'tuesday, tue, tues, tuesdays', 'wednesday, wed, weds, wednesdays', 'thursday, thu, thur, thurs, thursdays', 'friday, fri, fridays', 'saturday, saturdays',
]; // prettier-ignore
/** "sat" and "sun" are weekdays only where a date can stand. */
export const SHY_WEEKDAYS: Readonly<Record<string, number>> = { sat: 6, sun: 0 };
export const MONTH_WORDS: readonly string[] = [
  'january, jan', 'february, feb, febr', 'march, mar', 'april, apr', 'may', 'june, jun', 'july, jul', 'august, aug', 'september, sept, sep', 'october, oct', 'november, nov', 'december, dec',
]; // prettier-ignore

/** Days relative to the day of saying. */
export const RELATIVE_DAYS: readonly (readonly [words: string, offset: number])[] = [
  ['today, tonight, this morning, this afternoon, this evening, this noon, at lunch, earlier today, later today, at noon, tonite, this arvo, lunchtime, at lunchtime, todays', 0],
  ['yesterday, yesterday morning, yesterday afternoon, yesterday evening, last night, yesterday night, the previous day, y day, yday, yesterday lunchtime, yest, yesterday at lunch, late yesterday, late last night, last evening, yesterdays, yesterday at noon', -1],
  ['the day before yesterday, day before yesterday, two days back, 2 days back, the other night, night before last, two nights ago, two days ago, 2 days ago', -2],
  ['tomorrow, tomorrow morning, tomorrow afternoon, tomorrow evening, tmrw, tomorrow night, tmr, tomorow, first thing tomorrow, tommorow, tomorrow at noon, tomo, tmw, tomorrow first thing, 2moro', 1],
  ['the day after tomorrow, day after tomorrow, overmorrow', 2],
  ['a week ago, this day last week, a week back', -7],
  ['a fortnight ago, two weeks ago, 2 weeks ago', -14],
]; // prettier-ignore

/** Stretches that name no day of their own. */
export const VAGUE_TIMES =
  'overnight, mid run, mid print, mid job, this week, over the weekend, at the weekend, the weekend, this weekend, over night, during the night, after lunch, before lunch, after work, before work, this shift, first thing, at the end of the day, before closing, in the morning, in the afternoon, in the evening, this month, the other day, all day, all night, all morning, during the day, at night, after closing, since this morning, before the show, after the show, at break, before the break, after the break, before i left, before going home, over lunch, on my shift, in a bit, in a minute, in a moment, later on, soon, shortly, asap, through the night';

import { describe, expect, it } from 'vitest';
import { addDays, dateOf, weekdayOf } from '../../src/language/calendar.ts';
import { actsOf } from './support/workshop.ts';

const onOf = (text: string): string | undefined => {
  const act = actsOf(text)[0];
  return act && 'on' in act ? act.on : undefined;
};

describe('the day of a deed looks back (said on Wednesday 2026-03-11)', () => {
  it.each([
    ['oiled the rods on alder yesterday', '2026-03-10'],
    ['oiled the rods on alder on friday', '2026-03-06'],
    ['last monday I oiled the rods on alder', '2026-03-09'],
    ['oiled the rods on alder 3 days ago', '2026-03-08'],
    ['oiled the rods on alder two weeks ago', '2026-02-25'],
    ['oiled the rods on alder on the 3rd', '2026-03-03'],
    ['oiled the rods on alder on 4 March', '2026-03-04'],
    ['oiled the rods on alder on March 4th', '2026-03-04'],
    ['oiled the rods on alder on 2026-02-28', '2026-02-28'],
    ['oiled the rods on alder on 9/3', '2026-03-09'],
    ['oiled the rods on alder on sat', '2026-03-07'],
    ['oiled the rods on alder the day before yesterday', '2026-03-09'],
  ])('%s', (text, on) => expect(onOf(text)).toBe(on));

  it('a plan looks ahead', () => {
    expect(actsOf("push alder's belts to friday")[0]).toMatchObject({ kind: 'defer', until: '2026-03-13' });
    expect(actsOf("I'll do alder's belts on monday")[0]).toMatchObject({ kind: 'claim', on: '2026-03-16' });
  });
  it('today and clock times name no other day', () => {
    for (const when of ['today', 'this morning', 'just now', 'before lunch', 'at 9']) expect(onOf(`oiled the rods on alder ${when}`), when).toBeUndefined();
  });
  it('"the fan sat loose" and "the sun gear" are no days', () => {
    expect(onOf('the fan sat loose on elm so I tightened the screws')).toBeUndefined();
  });
}); // prettier-ignore

describe('the calendar', () => {
  it('counts across months and leap years', () => {
    expect(addDays('2028-02-28', 1)).toBe('2028-02-29');
    expect(addDays('2026-12-31', 1)).toBe('2027-01-01');
    expect(weekdayOf('2026-03-11')).toBe(3); // a Wednesday by any calendar
  });
  it('knows no 30 February', () => expect(dateOf(2026, 2, 30)).toBeUndefined());
});

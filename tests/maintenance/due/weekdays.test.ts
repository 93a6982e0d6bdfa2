/** Which weekdays may stand for each other in a forecast. */
import { describe, expect, it } from 'vitest';
import { alikeWeekdays } from '../../../src/maintenance/due/weekdays.ts';

const WEEKS = 12;
/** Twelve weeks, seven days each, by week and day of the week. */
const weeks = (hours: (day: number, week: number) => number, n = WEEKS): Float64Array =>
  Float64Array.from({ length: n * 7 }, (_, at) => hours(at % 7, Math.floor(at / 7)));
/** Goes up and down by two hours, differently on each weekday. */
const varied = (day: number, week: number): number => 6 + 2 * Math.sin(week * 2.1 + day * 1.7);

describe('weekdays that may stand for each other', () => {
  it('are all on which it runs, where they differ by chance alone; the free ones stay by themselves', () => {
    const office = alikeWeekdays(weeks((day, week) => (day >= 5 ? 0 : varied(day, week))));
    expect(office[0]).toEqual([0, 1, 2, 3, 4]);
    expect(office[4]).toEqual([0, 1, 2, 3, 4]);
    expect(office[6]).toEqual([6]);
  });
  it('are none where one of them has its own load: a long job every Friday', () => {
    const friday = alikeWeekdays(weeks((day, week) => varied(day, week) + (day === 4 ? 8 : 0)));
    expect(friday.map((like) => like.length)).toEqual([1, 1, 1, 1, 1, 1, 1]);
  });
  it('are none on a machine too young to tell', () => {
    expect(alikeWeekdays(weeks(varied, 3))[0]).toEqual([0]);
  });
  it('are all where nothing ever varies, and none where only the weekday does', () => {
    expect(alikeWeekdays(weeks(() => 4))[0]).toHaveLength(7);
    expect(alikeWeekdays(weeks((day) => day))[3]).toEqual([3]);
  });
});

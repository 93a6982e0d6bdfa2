import { describe, expect, it } from 'vitest';
import { atLevelOfNow } from '../../../src/maintenance/due/trend.ts';

/** Seven equal days a week, the youngest week first. */
const weeks = (...hoursADay: number[]): Float64Array =>
  Float64Array.from(hoursADay.flatMap((hours) => Array<number>(7).fill(hours)));
/** The past at the level of now. */
const atNow = (hours: Float64Array): Float64Array => atLevelOfNow(hours).hours;
const mean = (hours: Float64Array): number => hours.reduce((sum, h) => sum + h, 0) / hours.length;

describe('the level of now', () => {
  it('is where a straight rise ends: half a week beyond the youngest week', () => {
    const risen = atNow(weeks(8, 7, 6, 5, 4, 3, 2, 1));
    expect(risen[0]).toBeCloseTo(8.5, 9);
    expect(risen[7 * 3]).toBeCloseTo(8.5, 9);
  });
  it('never brings a week up by more than two and a half times', () => {
    const risen = atNow(weeks(8, 7, 6, 5, 4, 3, 2, 1));
    expect(risen[7 * 7]).toBe(2.5);
  });
  it('leaves weeks alone that only vary', () => {
    const same = weeks(5, 3, 6, 4, 5, 3, 6, 4);
    expect(atNow(same)).toEqual(same);
  });
  it('leaves fewer than four weeks alone, and a machine that never ran', () => {
    const three = weeks(9, 5, 1);
    expect(atNow(three)).toEqual(three);
    expect(mean(atNow(weeks(0, 0, 0, 0, 0)))).toBe(0);
  });
  it('never makes a day longer than a day', () => {
    expect(Math.max(...atNow(weeks(24, 21, 18, 15, 12)))).toBeLessThanOrEqual(24);
  });
  it('lowers the past of a machine that runs less and less, and no week below zero', () => {
    const fallen = atNow(weeks(0, 1, 2, 3, 4, 5, 6, 7));
    expect(Math.min(...fallen)).toBeGreaterThanOrEqual(0);
    expect(mean(fallen)).toBeLessThan(3.5);
  });
  it('goes on rising for four weeks, damped, and stays there', () => {
    const { growth } = atLevelOfNow(weeks(8, 7, 6, 5, 4, 3, 2, 1));
    expect(growth(0)).toBeGreaterThan(1);
    expect(growth(3)).toBeGreaterThan(growth(0));
    expect(growth(5)).toBe(growth(4));
  });
  it('does not grow where weeks only vary', () =>
    expect(atLevelOfNow(weeks(5, 3, 6, 4, 5, 3, 6, 4)).growth(3)).toBe(1));
});

import { describe, expect, it } from 'vitest';
import { atLevelOfNow } from '../../../src/maintenance/due/trend.ts';

/** Seven equal days a week, the youngest week first. */
const weeks = (...hoursADay: number[]): Float64Array =>
  Float64Array.from(hoursADay.flatMap((hours) => Array<number>(7).fill(hours)));
const mean = (hours: Float64Array): number => hours.reduce((sum, h) => sum + h, 0) / hours.length;

describe('the level of now', () => {
  it('is where a straight rise ends: half a week beyond the youngest week', () => {
    const risen = atLevelOfNow(weeks(8, 7, 6, 5, 4, 3, 2, 1));
    expect(risen[0]).toBeCloseTo(8.5, 9);
    expect(risen[7 * 3]).toBeCloseTo(8.5, 9);
  });
  it('never doubles or halves a week more than once', () => {
    const risen = atLevelOfNow(weeks(8, 7, 6, 5, 4, 3, 2, 1));
    expect(risen[7 * 7]).toBe(2);
  });
  it('leaves weeks alone that only vary', () => {
    const same = weeks(5, 3, 6, 4, 5, 3, 6, 4);
    expect(atLevelOfNow(same)).toEqual(same);
  });
  it('leaves fewer than four weeks alone, and a machine that never ran', () => {
    const three = weeks(9, 5, 1);
    expect(atLevelOfNow(three)).toEqual(three);
    expect(mean(atLevelOfNow(weeks(0, 0, 0, 0, 0)))).toBe(0);
  });
  it('never makes a day longer than a day', () => {
    expect(Math.max(...atLevelOfNow(weeks(24, 21, 18, 15, 12)))).toBeLessThanOrEqual(24);
  });
  it('lowers the past of a machine that runs less and less, and no week below zero', () => {
    const fallen = atLevelOfNow(weeks(0, 1, 2, 3, 4, 5, 6, 7));
    expect(Math.min(...fallen)).toBeGreaterThanOrEqual(0);
    expect(mean(fallen)).toBeLessThan(3.5);
  });
});

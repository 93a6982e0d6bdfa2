import { describe, expect, it } from 'vitest';
import { forecastDate } from '../../../src/replies/format/date.ts';

const TODAY = '2026-03-11';

describe('a forecast day', () => {
  it.each([
    ['sure', ['2026-03-12', '2026-03-12', '2026-03-12'], 'tomorrow'],
    ['near: a band would start today', ['2026-03-11', '2026-03-12', '2026-03-13'], 'likely tomorrow, else by Friday'],
    ['near, and hardly later', ['2026-03-11', '2026-03-12', '2026-03-12'], 'likely tomorrow'],
    ['today', ['2026-03-11', '2026-03-11', '2026-03-12'], 'likely today, else by tomorrow'],
    ['near, and perhaps never', ['2026-03-12', '2026-03-12', null], 'likely tomorrow'],
    ['of the week', ['2026-03-16', '2026-03-16', '2026-03-18'], 'about Monday (between 16 and 18 March)'],
    ['farther off', ['2026-03-19', '2026-03-24', '2026-03-31'], 'about 24 March (between 19 and 31)'],
    ['over the month’s end', ['2026-03-28', '2026-04-02', '2026-04-09'], 'about 2 April (between 28 March and 9 April)'],
    ['without a latest day', ['2026-03-28', '2026-04-02', null], 'about 2 April (not before 28 March)'],
  ] as const)('%s', (_, [p10, p50, p90], words) => expect(forecastDate(p10, p50, p90, TODAY)).toBe(words)); // prettier-ignore
});

/**
 * Sums without the noise of binary fractions: 2311.5000000000005 h is 2311.5 h. Rounded to the microsecond, which
 * holds every millionth of an hour and every minute exactly, so that 900 prints of 20 minutes are 300 h.
 */
const STEPS_AN_HOUR = 3_600_000_000;

/** Hours (or grams, as fine). */
export const tidy = (hours: number): number => Math.round(hours * STEPS_AN_HOUR) / STEPS_AN_HOUR;

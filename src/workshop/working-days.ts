/** "[mon, tue, wed]", "mon-sat", "[mon-thu, sat]" -> days of the week, 0 is Monday (as `weekdayOf` counts). */
import * as z from 'zod';

const DAYS = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'] as const;
const expected = 'must be days of the week, such as [mon, tue, wed] or mon-sat';

const dayNumber = (word: string): number => {
  const said = word.trim().toLowerCase();
  return said.length < 3 ? -1 : DAYS.findIndex((day) => day.startsWith(said));
};

/** @returns undefined where a word is no day; a span may run over the weekend (fri-mon) */
function daysIn(words: readonly string[]): number[] | undefined {
  const days = new Set<number>();
  for (const word of words) {
    const [from = -1, to = from, ...more] = word.split(/-|–/u).map(dayNumber);
    if (from < 0 || to < 0 || more.length > 0) return undefined;
    const length = ((to - from + 7) % 7) + 1;
    for (let step = 0; step < length; step += 1) days.add((from + step) % 7);
  }
  return days.size > 0 ? [...days].toSorted((a, b) => a - b) : undefined;
}

export const workingDays = z
  .union([z.array(z.string()), z.string()], { error: expected })
  .transform((said, context) => {
    const days = daysIn(typeof said === 'string' ? said.split(',') : said);
    if (days) return days;
    context.addIssue({ code: 'custom', message: expected });
    return z.NEVER;
  });

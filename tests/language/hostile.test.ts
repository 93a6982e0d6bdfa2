/** Time grows with length, and with nothing else. The best of several runs is taken: the machine is shared. */
import { describe, expect, it } from 'vitest';
import { NOW, readDemo } from './support/workshop.ts';

const UNITS = ['1 hour ', 'alder ', 'alder, ', ', ', 'and ', 'jam cleared on birch. ', 'may ', '1 ', '9', '"a b c ', '`a ', '<@', '\n> x', '(((', 'a', 'zzqxj ', 'why is alder jammed? ', 'swapped the nozzle ', 'not alder, ', 'no, make that 5 ', 'monday 5 march ', 'half an ', '\ud800', '&amp;', 'all but ']; // prettier-ignore
const fill = (unit: string, length: number): string =>
  unit.repeat(Math.ceil(length / unit.length)).slice(0, length);

function best(text: string, runs: number): number {
  let least = Infinity;
  for (let i = 0; i < runs; i += 1) {
    const start = performance.now();
    readDemo(text, NOW);
    least = Math.min(least, performance.now() - start);
  }
  return least;
}

describe.each(UNITS)('a message of nothing but %j', (unit) => {
  it('takes no more than in proportion when it is twice as long', { timeout: 60_000, retry: 3 }, () => {
    best(fill(unit, 2_000), 3);
    const [half, whole] = [best(fill(unit, 5_000), 8), best(fill(unit, 10_000), 8)];
    // Below a few milliseconds the clock and the collector are all that is measured.
    expect(whole).toBeLessThan(Math.max(2.3 * half, half + 12));
    expect(best(fill(unit, 40_000), 1)).toBeLessThan(1_500);
  });
});

/** A thousand machines in the digest: a guard against a forgotten loop, with room for a slow computer. */
import { expect, it } from 'vitest';
import { digestOf } from '../../../src/maintenance/due/digest.ts';
import { BUILDS } from '../../support/builds.ts';
import { contextOn, recordOf, shopOf } from '../../support/machines.ts';

it('digests 1,000 machines with a half-year of days each', () => {
  const builds = Object.entries(BUILDS);
  const eight = builds.map(([name, build], n) =>
    recordOf(name, build, {
      ran: (day, weekday) => (weekday < 6 ? 2 + ((day * (n + 3)) % 7) : 0),
      baseline: `2026-0${1 + (n % 3)}-05`,
      seen: { 'no-extrusion': ['2026-03-01'], crash: ['2026-01-20'] },
    }),
  );
  const machines = Array.from({ length: 1000 }, (_, n) => {
    const like = eight[n % 8] ?? recordOf('alder', BUILDS.alder);
    return { ...like, name: `${like.name} ${n}` };
  });
  const shop = shopOf(machines);
  digestOf(shop, contextOn());
  const from = performance.now();
  const digest = digestOf(shop, contextOn());
  const took = performance.now() - from;
  console.log(`digest of 1,000 machines: ${took.toFixed(0)} ms`);
  expect(digest.overdue.length).toBeGreaterThan(1000);
  expect(took).toBeLessThan(5000);
});

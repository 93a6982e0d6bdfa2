/** Every line of the digest can say in one sentence why it is there. */
import { describe, expect, it } from 'vitest';
import { dueRows } from '../../../src/maintenance/due/rows.ts';
import { why } from '../../../src/replies/wording/due.ts';
import { BUILDS } from '../../support/builds.ts';
import {
  calendar,
  contextOn,
  emptyRoom,
  recordOf,
  shopOf,
  sixDaysAWeek,
  today,
} from '../../support/machines.ts';

const view = { calendar, today, personName: () => 'Ines', calledAs: () => undefined };

describe('why', () => {
  const machines = Object.entries(BUILDS).map(([name, build]) =>
    recordOf(name, build, {
      baseline: '2025-09-01',
      ran: sixDaysAWeek(9),
      seen: { 'no-extrusion': ['2026-03-10'], crash: ['2026-03-09'] },
    }),
  );
  const rows = dueRows(shopOf(machines, emptyRoom({ baseline: '2025-09-01' })), contextOn());
  const owed = rows.filter(({ state }) => ['overdue', 'due', 'coming-up', 'no-record'].includes(state));

  it('is one sentence for whatever is late, due or coming', () => {
    expect(owed.length).toBeGreaterThan(100);
    for (const row of owed) {
      const said = why(row, view);
      expect(said, row.task).toMatch(/^[^.]*(?:\d\.\d[^.]*)*\.$/u);
      expect(said, row.task).not.toMatch(/undefined|NaN|; \.$/u);
    }
  });
  it('names the event that raised it, the interval’s source and when it was last done', () => {
    const feeder = owed.find(({ machine, task }) => machine === 'birch' && task === 'clean-feeder');
    expect(feeder && why(feeder, view)).toMatch(
      /^raised by “[^”]+”, yesterday; every .+ by common practice; stated for 1 September 2025 at [\d,.]+ h\.$/u,
    );
  });
});

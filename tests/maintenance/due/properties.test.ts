/** What holds for every machine and every history. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rankOf } from '../../../src/maintenance/care/rule.ts';
import { rulesFor } from '../../../src/maintenance/care/index.ts';
import { dateOfDay } from '../../../src/maintenance/calendar.ts';
import type { Material, Symptom, Task } from '../../../src/maintenance/codes.ts';
import { SYMPTOMS } from '../../../src/maintenance/codes.ts';
import { digestOf } from '../../../src/maintenance/due/digest.ts';
import { dueRow, dueRows, machineDue } from '../../../src/maintenance/due/rows.ts';
import { BUILDS } from '../../support/builds.ts';
import type { DemoMachine } from '../../support/builds.ts';
import { contextOn, emptyRoom, recordOf, shopOf, today } from '../../support/machines.ts';
import type { Story } from '../../support/machines.ts';

const machine = fc.constantFrom(...(Object.keys(BUILDS) as DemoMachine[]));
const material = fc.constantFrom<Material>('pla', 'petg', 'tpu', 'abs', 'nylon-cf', 'pla-wood');
const daysAgo = fc.integer({ min: 1, max: 300 });
const dateAgo = (days: number): string => dateOfDay(today - days);
const symptom = fc.constantFrom<Symptom>(...SYMPTOMS);

describe('more usage', () => {
  it('never lowers a share', () => {
    fc.assert(
      fc.property(machine, material, daysAgo, fc.integer({ min: 0, max: 12 }), fc.integer({ min: 1, max: 8 }), (name, of, ago, hours, more) => {
        const story = (a: number): Story => ({ ran: () => a, material: of, baseline: dateAgo(ago) });
        const shares = (a: number) =>
          new Map(machineDue(recordOf(name, BUILDS[name], story(a)), contextOn()).map((row) => [row.task, row.share ?? 0]));
        const [less, plenty] = [shares(hours), shares(hours + more)];
        for (const [task, share] of less) expect([task, plenty.get(task) ?? -1]).toSatisfy(([, s]) => s >= share - 1e-12);
      }),
      { numRuns: 60 },
    ); // prettier-ignore
  });
});

describe('a task that was just done', () => {
  it('is not due at once, unless something raises it later', () => {
    fc.assert(
      fc.property(
        machine,
        material,
        fc.array(symptom, { maxLength: 4 }),
        fc.integer(),
        (name, of, seen, pick) => {
          const tasks = rulesFor(BUILDS[name]).map(({ rule }) => rule.task);
          const task: Task = tasks[Math.abs(pick) % tasks.length] ?? 'dust-off';
          const story: Story = {
          ran: () => 6, material: of, baseline: '2025-07-01', done: { [task]: '2026-03-11 07:00' },
          seen: Object.fromEntries(seen.map((one) => [one, ['2026-03-09']])),
        }; // prettier-ignore
          const row = dueRow(recordOf(name, BUILDS[name], story), task, contextOn());
          expect(row?.state ?? 'fine').toMatch(/^(?:fine|coming-up)$/u);
        },
      ),
      { numRuns: 200 },
    );
  });
});

describe('any list', () => {
  it('is in the order of class, then lateness, then effort, and share is used over interval', () => {
    fc.assert(
      fc.property(
        machine,
        material,
        daysAgo,
        fc.array(symptom, { maxLength: 3 }),
        daysAgo,
        (name, of, ago, seen, when) => {
          const story: Story = {
          ran: (_, weekday) => (weekday < 6 ? 5 : 0), material: of, baseline: dateAgo(ago),
          seen: Object.fromEntries(seen.map((one) => [one, [dateAgo(when)]])),
        }; // prettier-ignore
          const rows = machineDue(recordOf(name, BUILDS[name], story), contextOn());
          for (const [place, row] of rows.entries()) {
            const next = rows[place + 1];
            if (next) {
              expect(rankOf(row.class)).toBeLessThanOrEqual(rankOf(next.class));
              if (row.class === next.class) expect(row.lateness).toBeGreaterThanOrEqual(next.lateness);
            }
            for (const use of row.all) expect(use.share).toBeCloseTo(use.used / use.interval, 9);
            if (row.share !== null) expect(row.share).toBe(Math.max(...row.all.map(({ share }) => share)));
          }
          expect(new Set(rows.map(({ task }) => task)).size).toBe(rows.length);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('the digest', () => {
  it('passes over nothing that the list has as overdue, due or coming up', () => {
    fc.assert(
      fc.property(machine, material, daysAgo, fc.integer({ min: 0, max: 24 }), (name, of, ago, hours) => {
        const record = recordOf(name, BUILDS[name], {
          ran: () => hours,
          material: of,
          baseline: dateAgo(ago),
        });
        const shop = shopOf([record], emptyRoom({ baseline: '2026-03-10' }));
        const rows = dueRows(shop, contextOn());
        const digest = digestOf(shop, contextOn());
        const tasks = (state: string) => rows.filter((row) => row.state === state).map(({ task }) => task);
        expect(digest.overdue.map(({ task }) => task)).toEqual(tasks('overdue'));
        expect(digest.due.map(({ task }) => task)).toEqual(tasks('due'));
        expect(digest.comingUp.map(({ task }) => task)).toEqual(tasks('coming-up'));
      }),
      { numRuns: 150 },
    );
  });
});

/**
 * The digest of 1,000 machines with 20 tasks each, warm, after one year and after ten. Twenty tasks of each build
 * have an interval of their own, all with a record; the first layer comes on top, raised by the new nozzle. Fourteen
 * of the 21 are overdue: more than any workshop should see.
 */
import { openCalendar } from '../../../src/index.ts';
import { digestOf } from '../../../src/maintenance/due/digest.ts';
import { foldShop } from '../../../src/maintenance/record/fold.ts';
import type { ShopRecord } from '../../../src/maintenance/record/record.ts';
import type { Figures } from '../case.ts';
import { journalOf, NOW, ZONE } from '../journal.ts';

const RUNS = 15;
const calendar = openCalendar(ZONE);
const context = { now: NOW, calendar, workingDays: [0, 1, 2, 3, 4, 5], holidays: [] };

const recordAfter = (years: number): ShopRecord =>
  foldShop([...journalOf({ machines: 1000, years, usagePerYear: 26, tasksPerYear: 1 })], calendar);

function median(record: ShopRecord): number {
  const times: number[] = [];
  for (let i = 0; i < RUNS; i += 1) {
    const start = performance.now();
    digestOf(record, context);
    times.push(performance.now() - start);
  }
  return times.toSorted((a, b) => a - b)[RUNS >> 1] ?? NaN;
}

export async function run(): Promise<Figures> {
  const [one, ten] = [recordAfter(1), recordAfter(10)];
  median(one);
  median(ten);
  const [warmOne, warmTen] = [median(one), median(ten)];
  return {
    'digest of 1,000 machines x 20 tasks, one year, ms': warmOne,
    'digest of 1,000 machines x 20 tasks, ten years, ms': warmTen,
    'ten years to one, ratio': warmTen / warmOne,
  };
}

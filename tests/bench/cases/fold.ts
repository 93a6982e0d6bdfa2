/** A million entries folded in memory: CPU of the fold alone, of entries as a store gives them out. */
import { openCalendar, type Entry } from '../../../src/index.ts';
import { foldShop } from '../../../src/maintenance/record/fold.ts';
import type { Figures } from '../case.ts';
import { journalOf, ZONE } from '../journal.ts';

const SHAPE = { machines: 200, years: 10, usagePerYear: 300, tasksPerYear: 10 };
const RUNS = 3;

export async function run(): Promise<Figures> {
  const entries: Entry[] = [];
  for (const entry of journalOf(SHAPE)) entries.push(JSON.parse(JSON.stringify(entry)));
  const calendar = openCalendar(ZONE);
  const spent: number[] = [];
  for (let run = 0; run < RUNS; run += 1) {
    const before = process.cpuUsage();
    foldShop(entries, calendar);
    const { user, system } = process.cpuUsage(before);
    spent.push((user + system) / 1e6);
  }
  return {
    'entries folded': entries.length,
    'fold in memory, best of three, s of CPU': Math.min(...spent),
    'first fold, s of CPU': spent[0] ?? NaN,
  };
}

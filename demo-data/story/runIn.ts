/** A new machine's first weeks: protection tested before the first print, the run-in at 20 and at 50 h. */
import { foldName } from '../../src/index.ts';
import type { Day, Task, WorkshopMachine } from '../../src/index.ts';
import type { Days } from './days.ts';
import type { Ledger } from './ledger.ts';
import type { Telling } from './telling.ts';

const RUN_IN_HOURS = [20, 50] as const;

export function runIn(machine: WorkshopMachine, ledger: Ledger, began: Day, days: Days): Telling[] {
  const name = foldName(machine.name);
  const told = (day: Day, task: Task): Telling => ({
    at: days.at(day, 6 * 60 + 40),
    by: 'tomasz',
    facts: [{ kind: 'done', machine: name, task }],
  });
  const runIns = RUN_IN_HOURS.flatMap((hours) => {
    for (let day = began; day < days.today; day += 1)
      if (days.isOpen(day) && ledger.at(day).hours >= hours) return [told(day, 'run-in')];
    return [];
  });
  return [told(began, 'test-protection'), ...runIns];
}

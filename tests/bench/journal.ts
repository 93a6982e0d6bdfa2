/** A long journal of many machines, made by arithmetic: the same for the same numbers. */
import {
  openCalendar,
  VERSIONS,
  entryId,
  type Entry,
  type EntryFields,
  type LocalCalendar,
  type Task,
} from '../../src/index.ts';

export const ZONE = 'Europe/Copenhagen';
export const NOW = Date.parse('2026-03-11T07:30:00+01:00');
const DAY = 86_400_000;

/** The twenty tasks that a calendar asks for on such a machine; each gets done in its turn, so that none is unknown. */
export const TASKS: readonly Task[] = [
  'clean-plate', 'dust-off', 'clear-debris', 'lubricate-rods', 'grease-screw', 'check-fasteners', 'clean-feeder',
  'check-feeder-gear', 'check-nozzle', 'replace-nozzle', 'level-bed', 'tighten-pulleys', 'check-plate', 'check-wiring',
  'check-heater', 'check-fans', 'check-mains-lead', 'test-protection', 'check-notices', 'save-settings',
]; // prettier-ignore

export interface Shape {
  machines: number;
  years: number;
  /** Usage entries a machine and year, evenly spread. */
  usagePerYear: number;
  /** Times each task is done a year. */
  tasksPerYear: number;
}

export const machineName = (m: number): string => `machine ${m}`;

export function stamped(fields: EntryFields, at: number, key: string, act = 0): Entry {
  return {
    ...fields, id: entryId(key, act, 0), v: VERSIONS[fields.kind], at, precision: 'instant', saidAt: at, writtenAt: at,
    by: 'p-bench', platform: 'bench', message: key, act,
  }; // prettier-ignore
}

/** In order of time, so that every entry comes on top of what is there. */
export function* journalOf({ machines, years, usagePerYear, tasksPerYear }: Shape): Generator<Entry> {
  const days = Math.round(years * 365);
  const start = NOW - days * DAY;
  for (let m = 0; m < machines; m += 1)
    yield stamped(enrolled(m, openCalendar(ZONE), start), start, `enrol ${m}`);
  const usageEvery = 365 / usagePerYear;
  const taskEvery = 365 / tasksPerYear / TASKS.length;
  let nextUsage = 1;
  let nextTask = 1;
  let [usages, turns] = [0, 0];
  for (let day = 1; day < days; day += 1) {
    for (; nextUsage <= day; nextUsage += usageEvery)
      for (let m = 0; m < machines; m += 1)
        yield stamped(
          { kind: 'usage', machine: machineName(m), hours: 5 + ((m + day) % 5), material: 'pla' },
          start + day * DAY + m,
          `u ${m} ${(usages += 1)}`,
        );
    for (; nextTask <= day; nextTask += taskEvery) {
      const task = TASKS[turns % TASKS.length] ?? 'clean-plate';
      for (let m = 0; m < machines; m += 1)
        yield stamped(
          { kind: 'done', machine: machineName(m), task },
          start + day * DAY + machines + m,
          `t ${m} ${turns}`,
        );
      turns += 1;
    }
  }
}

const enrolled = (m: number, calendar: LocalCalendar, at: number): EntryFields => ({
  kind: 'enrolled',
  machine: machineName(m),
  build: {
    x: 'rods', y: 'rods', z: 'rods', rodBearing: 'ball', zDrive: 'lead-screw', screwNut: 'metal', belts: 'none', feed: 'direct',
    hotEnd: 'all-metal', nozzle: { material: 'brass', boreMm: 0.4 }, bed: 'springs', printedParts: 'none', filter: 'none',
  },
  startHours: 0,
  inUseSince: calendar.dateOf(at),
}); // prettier-ignore

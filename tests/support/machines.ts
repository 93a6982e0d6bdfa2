/**
 * Records for tests of what is due, told in a few words: when a machine ran, what was done and seen on it.
 * A deed is at 12:00 of its date unless told otherwise; what a machine ran on a day counts from 18:00 on.
 */
import { rulesFor } from '../../src/maintenance/care/index.ts';
import { dayOfDate, openCalendar } from '../../src/maintenance/calendar.ts';
import type { Day } from '../../src/maintenance/calendar.ts';
import type { Finding, Material, Part, Symptom, Task } from '../../src/maintenance/codes.ts';
import type { DueContext } from '../../src/maintenance/due/context.ts';
import type { Instant, LocalDate } from '../../src/maintenance/entry/entry.ts';
import type { Build } from '../../src/maintenance/machine.ts';
import { blankMachine } from '../../src/maintenance/record/blank.ts';
import { RUN_WINDOW_DAYS } from '../../src/maintenance/record/record.ts';
import type {
  FittedPart, MachineRecord, Mark, ShelfItem, ShopRecord, SymptomRecord, TaskDone, Totals,
} from '../../src/maintenance/record/record.ts'; // prettier-ignore

export const calendar = openCalendar('Europe/Copenhagen');
/** Wednesday, before the first print of the day. */
export const TODAY: LocalDate = '2026-03-11';
export const today = dayOfDate(TODAY);
export const MONDAY_TO_SATURDAY = [0, 1, 2, 3, 4, 5];
const MORNING = 7 * 60 + 30;
const NOON = 12 * 60;
const EVENING = 18 * 60;

export function contextOn(date: LocalDate = TODAY, more: Partial<DueContext> = {}): DueContext {
  const now = calendar.at(dayOfDate(date), MORNING);
  return { now, calendar, workingDays: MONDAY_TO_SATURDAY, holidays: [], ...more };
}

/** 'YYYY-MM-DD' or 'YYYY-MM-DD HH:MM'. */
export type When = string;
const instantOf = (when: When): Instant => {
  const [date = '', clock] = when.split(' ');
  const [hour, minute] = (clock ?? '').split(':').map(Number);
  return calendar.at(dayOfDate(date), clock === undefined ? NOON : (hour ?? 0) * 60 + (minute ?? 0));
};

interface Told {
  on: When;
  finding?: Finding;
  why?: TaskDone['why'];
  hoursUnknown?: true;
  id?: string;
}
type Given = When | Told;
const told = (given: Given): Told => (typeof given === 'string' ? { on: given } : given);

export interface Story {
  startHours?: number;
  /** First date of its record. */
  from?: LocalDate;
  /** Until which date it is told (exclusive): usage of the day itself is not known in the morning. */
  until?: LocalDate;
  new?: true;
  /** Hours of one day, given days since 1970 and the weekday (0 is Monday). */
  ran?: (day: Day, weekday: number) => number;
  /** What ran, from which date on; grams an hour where somebody weighed. */
  material?: Material;
  gramsAnHour?: number;
  done?: Partial<Record<Task, Given>>;
  swapped?: Partial<Record<Part, Given>>;
  seen?: Partial<Record<Symptom, readonly When[]>>;
  seenAt?: Partial<Record<Symptom, { part: Part; on: When }>>;
  baseline?: When;
  down?: When;
  loaded?: { material: Material; on: When };
  more?: Partial<MachineRecord>;
}

export const sixDaysAWeek =
  (hours: number) =>
  (_: Day, weekday: number): number =>
    weekday < 6 ? hours : 0;
const weekdayOf = (day: Day): number => (day + 3) % 7;

/** Totals at an instant: whole days before it, and the day itself after 18:00. */
function totalsAt(at: Instant, story: Story, first: Day): Totals {
  const day = calendar.dayOf(at);
  const last = Math.min(
    calendar.minuteOf(at) >= EVENING ? day : day - 1,
    dayOfDate(story.until ?? '9999-12-31') - 1,
  );
  let [hours, runDays] = [0, 0];
  for (let d = first; d <= last; d += 1) {
    const ran = story.ran?.(d, weekdayOf(d)) ?? 0;
    hours += ran;
    if (ran > 0) runDays += 1;
  }
  const material = story.material ?? 'pla';
  const weighed = story.gramsAnHour !== undefined;
  return {
    hours: (story.startHours ?? 0) + hours,
    runDays,
    hoursOf: { [material]: hours },
    gramsOf: weighed ? { [material]: hours * (story.gramsAnHour ?? 0) } : {},
    unweighedHoursOf: weighed ? {} : { [material]: hours },
  };
}

let made = 0;

/** A machine's record by its story, as of the morning of `date`. */
export function recordOf(
  name: string,
  build: Build,
  story: Story = {},
  date: LocalDate = TODAY,
): MachineRecord {
  const first = dayOfDate(story.from ?? '2025-06-02');
  const now = calendar.at(dayOfDate(date), MORNING);
  const mark = (when: When, id?: string): Mark => {
    made += 1;
    const at = instantOf(when);
    const day = calendar.dayOf(at);
    return {
      at,
      day,
      precision: 'instant',
      entry: id ?? `e${made}`,
      by: 'ines',
      totals: totalsAt(at, story, first),
    };
  };
  const taskDone = (given: Given): TaskDone => {
    const { on, finding, why, hoursUnknown, id } = told(given);
    return {
      ...mark(on, id),
      why: why ?? 'done',
      ...(finding && { finding }),
      ...(hoursUnknown && { hoursUnknown }),
    };
  };
  const fitted = (given: Given): FittedPart => ({
    ...mark(told(given).on, told(given).id),
    why: 'swapped',
    ageKnown: true,
  });
  const symptoms: Partial<Record<Symptom, SymptomRecord>> = {};
  for (const [symptom, whens] of Object.entries(story.seen ?? {}))
    symptoms[symptom as Symptom] = { recent: whens.map((when) => mark(when)), count: whens.length };
  for (const [symptom, { part, on }] of Object.entries(story.seenAt ?? {})) {
    const at = mark(on);
    symptoms[symptom as Symptom] = { recent: [at], count: 1, byPart: { [part]: at } };
  }
  const totals = totalsAt(now, story, first);
  const swaps = Object.fromEntries(
    Object.entries(story.swapped ?? {}).map(([part, given]) => [part, fitted(given)]),
  );
  const lastDay = dayOfDate(date) - 1;
  const hours = Array.from(
    { length: Math.min(RUN_WINDOW_DAYS, Math.max(0, lastDay - first + 1)) },
    (_, back) => {
      const day = lastDay - back;
      return day < first ? 0 : (story.ran?.(day, weekdayOf(day)) ?? 0);
    },
  ).toReversed();
  const dones = Object.fromEntries(
    Object.entries(story.done ?? {}).map(([task, given]) => [task, taskDone(given)]),
  );
  const replaced = Object.fromEntries(
    Object.entries(swaps).map(([part, at]) => {
      const { ageKnown: _, text: __, ...since } = at;
      return [`replace-${part}`, since];
    }),
  );
  return {
    ...blankMachine(name),
    build,
    nozzle: build.nozzle ?? {},
    enrolled: mark(story.from ?? '2025-06-02', 'enrolment'),
    inUseSince: first,
    startedNew: story.new === true,
    totals,
    counterKnown: true,
    runByDay: { lastDay, hours },
    ...(totals.runDays > 0 && { firstRunDay: firstRun(story, first) }),
    ...(story.loaded && {
      loaded: { material: story.loaded.material, mark: mark(story.loaded.on) },
    }),
    tasks: { ...replaced, ...dones },
    ...(story.baseline !== undefined && { baseline: taskDone({ on: story.baseline, why: 'stated' }) }),
    parts: swaps,
    symptoms,
    ...(story.down !== undefined && { down: mark(story.down) }),
    ...story.more,
  };
}

function firstRun(story: Story, first: Day): Day {
  let day = first;
  while ((story.ran?.(day, weekdayOf(day)) ?? 0) === 0) day += 1;
  return day;
}

/** Everything that is planned on such a machine, done at that time, each by itself and not as a run-in. */
export const allDone = (build: Build, on: When): Partial<Record<Task, Given>> =>
  Object.fromEntries(
    rulesFor(build)
      .filter(({ rule }) => rule.task !== 'run-in')
      .map(({ rule }) => [rule.task, on]),
  );

export const emptyRoom = (story: Story = {}, date: LocalDate = TODAY): MachineRecord =>
  recordOf('room', {}, story, date);

export const shopOf = (
  machines: readonly MachineRecord[],
  room: MachineRecord = emptyRoom(),
  shelf: readonly ShelfItem[] = [],
): ShopRecord => ({
  machines: new Map(machines.map((machine) => [machine.name, machine])),
  room,
  shelf,
  notes: [],
  conflicts: [],
});

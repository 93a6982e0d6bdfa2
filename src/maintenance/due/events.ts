/** When an event that a rule takes notice of last happened to a machine. */
import type { Event, RuleFacts } from '../care/rule.ts';
import type { Day } from '../calendar.ts';
import type { Symptom, Task } from '../codes.ts';
import type { Mark, MachineRecord, TaskDone } from '../record/record.ts';
import { ranSince } from './measure.ts';
import { NOTHING_USED } from '../record/blank.ts';

/** What an event is judged against. */
export interface EventScene {
  record: MachineRecord;
  facts: RuleFacts;
  /** Only what happened after the task was last done counts; of two at one moment the deed is the later. */
  since: TaskDone | undefined;
  today: Day;
}
type SymptomEvent = Extract<Event, { symptom: Symptom }>;

const isAfter = (mark: Mark, since: Mark | undefined): boolean => !since || mark.at > since.at;
const after = (mark: Mark | undefined, since: Mark | undefined): Mark | undefined =>
  mark && isAfter(mark, since) ? mark : undefined;

function within(first: Mark, last: Mark, event: SymptomEvent): boolean {
  const hours =
    event.withinHours !== undefined && last.totals.hours - first.totals.hours <= event.withinHours;
  const days = event.withinDays !== undefined && last.day - first.day <= event.withinDays;
  return (event.withinHours === undefined && event.withinDays === undefined) || hours || days;
}

/** The n-th occurrence, where the n of them lie within the window. */
function nth(marks: readonly Mark[], times: number, event: SymptomEvent): Mark | undefined {
  for (let last = marks.length - 1; last >= times - 1; last -= 1) {
    const [from, to] = [marks[last - times + 1], marks[last]];
    if (from && to && within(from, to, event)) return to;
  }
  return undefined;
}

function doneAt(record: MachineRecord, task: Task): Mark | undefined {
  return record.tasks[task];
}

function symptomEvent(event: SymptomEvent, { record, since, today }: EventScene): Mark | undefined {
  if (event.ifOlderThanDays !== undefined && since && today - since.day <= event.ifOlderThanDays)
    return undefined;
  const known = record.symptoms[event.symptom];
  if (!known) return undefined;
  if (event.part) return after(known.byPart?.[event.part], since);
  const base = event.afterTask === undefined ? undefined : doneAt(record, event.afterTask);
  if (event.afterTask !== undefined && !base) return undefined;
  const latest = known.recent.at(-1);
  if (!latest || !isAfter(latest, since) || !isAfter(latest, base)) return undefined;
  const counted = known.recent.filter((mark) => isAfter(mark, since) && isAfter(mark, base));
  if (base && event.times === undefined) return counted.filter((mark) => within(base, mark, event)).at(-1);
  return nth(counted, event.times ?? 1, event);
}

/** The last time that the event happened since the task was last done; undefined when it has not. */
export function lastOf(event: Event, scene: EventScene): Mark | undefined {
  const { record, since } = scene;
  if ('symptom' in event) return symptomEvent(event, scene);
  if ('done' in event) {
    const done = record.tasks[event.done];
    return event.finding === undefined || done?.finding === event.finding ? after(done, since) : undefined;
  }
  if ('swapped' in event) {
    const fitted = record.parts[event.swapped];
    return fitted?.why === 'swapped' ? after(fitted, since) : undefined;
  }
  // counting from the start is no deed: what a new machine needs is owed until somebody did it
  if ('started' in event)
    return record.startedNew && (!since || since.why === 'started') ? record.enrolled : undefined;
  if ('backAfterDays' in event)
    return record.back && record.back.idleDays >= event.backAfterDays ? after(record.back, since) : undefined;
  const { loaded } = record;
  if (!loaded?.material) return undefined;
  if ('loaded' in event)
    return event.loaded.includes(loaded.material) ? after(loaded.mark, since) : undefined;
  return event.spoolEnded.includes(loaded.material) ||
    !ranBefore(event.spoolEnded, record, loaded.mark, since)
    ? undefined
    : after(loaded.mark, since);
}

/** Did one of them run between the last time the task was done and the mounting of the spool that is on now? */
function ranBefore(
  materials: Parameters<typeof ranSince>[0],
  record: MachineRecord,
  mounted: Mark,
  since: Mark | undefined,
): boolean {
  const { loaded: _, ...bare } = record;
  const from = since ?? { ...mounted, totals: record.enrolled?.totals ?? NOTHING_USED };
  return ranSince(materials, { ...bare, totals: mounted.totals }, from);
}

/** What may be planned on a machine, and how long a task may wait. */
import { roomRules, ruleOf, rulesFor } from '../care/index.ts';
import { classOf } from '../care/rule.ts';
import { dateOfDay } from '../calendar.ts';
import type { Day } from '../calendar.ts';
import { ROOM } from '../codes.ts';
import type { Task } from '../codes.ts';
import type { LocalDate } from '../entry/entry.ts';
import type { Build } from '../machine.ts';
import type { MachineRecord } from '../record/record.ts';
import type { DueContext } from './context.ts';
import { onceForecast, termForecast } from './forecast.ts';
import { raisedGraceDays } from './lateness.ts';
import { sceneOf } from './machine.ts';
import type { MachineScene } from './machine.ts';
import type { TriggerUse } from './row.ts';
import { standingOf } from './standing.ts';
import type { Standing } from './standing.ts';

/** Is it a safety task by its rule? What raised it may make a task graver: see `latestPutOff`. */
export const isSafety = (task: Task, build: Build): boolean => classOf(ruleOf(task), build) === 'safety';

/** Does this machine (or the room) have the task at all? A feature that is not stated is not planned on. */
export function planned(task: Task, record: MachineRecord): boolean {
  const rules = record.name === ROOM ? roomRules() : rulesFor(record.build);
  return rules.some(({ rule }) => rule.task === task);
}

/** The same trigger with its grace taken in: when it is reached, the task is overdue. */
const withGrace = (use: TriggerUse): TriggerUse => ({ ...use, interval: use.interval + use.grace });

function lastDays(standing: Standing, scene: MachineScene): Day[] {
  const { since, measured, onces, raised } = standing;
  const ends = [
    ...measured.flatMap(({ term, use }) => (since ? [termForecast(term, withGrace(use), since, scene)] : [])),
    ...onces.map((use) => onceForecast(withGrace(use), { ...use.mark, why: 'done' }, scene)),
  ].flatMap((dates) => dates?.p50 ?? []);
  return [...ends.map(Math.floor), ...(raised ? [raised.mark.day + raisedGraceDays(standing)] : [])];
}

/**
 * The last local date to which a safety task may be put off: the end of its grace. In the past or today when
 * there is none left, and today when nobody knows since when it counts. Undefined where the task may wait.
 */
export function latestPutOff(record: MachineRecord, task: Task, context: DueContext): LocalDate | undefined {
  const rule = ruleOf(task);
  const scene = sceneOf(record, context);
  const standing = standingOf(rule, scene);
  const isGrave = standing ? standing.class === 'safety' : isSafety(task, record.build);
  if (!isGrave) return undefined;
  const days = standing ? lastDays(standing, scene) : [];
  const unknown = standing !== undefined && standing.since === undefined && standing.terms.length > 0;
  return dateOfDay(Math.min(...(days.length === 0 || unknown ? [scene.today, ...days] : days)));
}

/** A look at releases is what the list asks for; the update itself is never due on its own. */
const LISTED: Readonly<Partial<Record<Task, Task>>> = { 'update-firmware': 'check-notices' };
export const listed = (task: Task): Task => LISTED[task] ?? task;
